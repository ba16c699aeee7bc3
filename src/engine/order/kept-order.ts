import * as v from 'valibot';
import { migrateOrder } from './migrate.ts';
import { isPassedOver } from './passed-over.ts';
import { pathText } from './path.ts';
import { ORDER_SCHEMA, type OrderFile } from './schema.ts';
import { shown } from './shown.ts';

export type KeptOrder =
  /** `fromOlderForm`: the file was written by an older program and has been brought to the newest form. */
  | { readonly ok: true; readonly file: OrderFile; readonly fromOlderForm: boolean }
  | { readonly ok: false; readonly code: 'not-an-order' | 'no-version' }
  | { readonly ok: false; readonly code: 'version'; readonly found: string; readonly known: string }
  | { readonly ok: false; readonly code: 'form'; readonly path: string };

/** An order in the making may lack these; everything else must have the form of an order. */
const MAY_BE_UNFINISHED: ReadonlySet<string> = new Set(['not-empty', 'not-blank']);

/**
 * Reads an order file that is kept while it is still being written. Like `readOrderFile` it looks at the form only,
 * but a name may still be blank and a list empty: what she has typed so far must be kept. Nothing in the file is
 * changed except by bringing it from an older form to the newest.
 */
export function readKeptOrder(raw: unknown): KeptOrder {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return { ok: false, code: 'not-an-order' };
  const migrated = migrateOrder({ ...raw });
  if (!migrated.ok) {
    if (migrated.code === 'no-version') return { ok: false, code: 'no-version' };
    return { ok: false, code: 'version', found: migrated.found, known: migrated.known };
  }
  const { order } = migrated;
  const fromOlderForm = migrated.fromOlderForm;
  if (!hasForm(order)) return { ok: false, code: 'form', path: wrongPlace(order) };
  const unseen = passedOver(order);
  return unseen === null
    ? { ok: true, file: order, fromOlderForm }
    : { ok: false, code: 'form', path: shown(unseen) };
}

/** The library tells by `typed` whether only the contents are unfinished while every field has its type. */
function hasForm(order: Readonly<Record<string, unknown>>): order is OrderFile {
  const read = v.safeParse(ORDER_SCHEMA, order);
  return read.typed && (read.issues ?? []).every(({ message }) => MAY_BE_UNFINISHED.has(message));
}

function wrongPlace(order: Readonly<Record<string, unknown>>): string {
  const issues = v.safeParse(ORDER_SCHEMA, order).issues ?? [];
  const issue = issues.find(({ message }) => !MAY_BE_UNFINISHED.has(message)) ?? issues[0];
  const path = (issue?.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
  return shown(pathText(path));
}

/** A field that the schema has not seen at all. What lies in it may be anything, so it is not entered. */
function passedOver(value: unknown): string | null {
  if (typeof value !== 'object' || value === null) return null;
  for (const [name, inside] of Object.entries(value)) {
    const found = isPassedOver(name) ? name : passedOver(inside);
    if (found !== null) return found;
  }
  return null;
}
