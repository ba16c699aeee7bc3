import { shown } from './shown.ts';

/** Changes an order file of one version into the next, without losing what the maker wrote. Pure. */
type Migration = (order: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/**
 * In order: the first changes version 1 into version 2, and so on. To change the form of an order file, add one
 * here, keep a sample of the old form among the tests, and leave the older ones alone.
 */
const MIGRATIONS: readonly Migration[] = [];

const NEWEST = MIGRATIONS.length + 1;

/** The field that holds the version; it also tells an order from any other JSON file. */
export const VERSION_FIELD = 'frockwright';

export type MigrateResult =
  | {
      readonly ok: true;
      readonly order: Readonly<Record<string, unknown>>;
      readonly fromOlderForm: boolean;
    }
  | { readonly ok: false; readonly code: 'no-version' }
  | { readonly ok: false; readonly code: 'unknown-version'; readonly found: string; readonly known: string };

/** Brings an order file of any version that was ever written into the newest form. */
export function migrateOrder(order: Readonly<Record<string, unknown>>): MigrateResult {
  const version = Object.hasOwn(order, VERSION_FIELD) ? order[VERSION_FIELD] : undefined;
  if (version === undefined) return { ok: false, code: 'no-version' };
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > NEWEST) {
    const known = Array.from({ length: NEWEST }, (_, i) => i + 1).join(', ');
    return { ok: false, code: 'unknown-version', found: shown(version), known };
  }
  return {
    ok: true,
    order: MIGRATIONS.slice(version - 1).reduce((form, migrate) => migrate(form), order),
    fromOlderForm: version < NEWEST,
  };
}
