import * as v from 'valibot';
import { type KeptOrder, readKeptOrder, timedSteps } from '../engine/order/index.ts';
import type { Saying } from '../engine/words/index.ts';
import type { BrokenOrder, Instant, OrderSummary, Origin, StoreWord } from './types.ts';
import { revisionOf, type Versions } from './versions.ts';

/** What lies in the database under an order's id, and in a part of a backup. */
export interface OrderRecord {
  readonly versions: Versions;
  readonly origin: Origin;
  readonly createdAt: Instant;
  readonly changedAt: Instant;
  readonly archived: boolean;
  readonly deletedAt: Instant | null;
  /** The order file; see `StoredOrder`. */
  readonly file: Extract<KeptOrder, { ok: true }>['file'];
}

export const instant = v.pipe(v.string(), v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/));
const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/));
const count = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(1e12));
const origin = v.variant('kind', [
  v.object({ kind: v.literal('new') }),
  v.object({ kind: v.picklist(['copy', 'two-tabs', 'backup', 'replaced']), of: id }),
]);
const RECORD = v.object({
  versions: v.pipe(
    v.record(id, count),
    v.check((versions) => {
      const writers = Object.keys(versions).length;
      return writers > 0 && writers <= 1000;
    }),
  ),
  origin,
  createdAt: instant,
  changedAt: instant,
  archived: v.boolean(),
  deletedAt: v.nullable(instant),
  file: v.unknown(),
});

export type ReadRecord =
  | { readonly ok: true; readonly record: OrderRecord; readonly fromOlderForm: boolean }
  | { readonly ok: false; readonly why: Saying };

/** Whether a text can be the id of an order: it becomes a part of file names. */
export const isId = (text: string): boolean => v.is(id, text);

/** Reads whatever lies in the store or in a backup. Never throws, whatever it is given. */
export function readRecord(raw: unknown): ReadRecord {
  const read = v.safeParse(RECORD, raw);
  if (!read.success) return { ok: false, why: saying('store.broken.not-a-record') };
  const kept = readKeptOrder(read.output.file);
  if (kept.ok) {
    return { ok: true, record: { ...read.output, file: kept.file }, fromOlderForm: kept.fromOlderForm };
  }
  switch (kept.code) {
    case 'not-an-order':
      return { ok: false, why: saying('store.broken.not-a-record') };
    case 'no-version':
      return { ok: false, why: saying('store.broken.no-version') };
    case 'version':
      return { ok: false, why: saying('store.broken.version', { found: kept.found, known: kept.known }) };
    case 'form':
      return { ok: false, why: saying('store.broken.form', { path: kept.path }) };
  }
}

export function saying(key: StoreWord, values: Saying['values'] = {}): Saying {
  return { key, values };
}

export function summaryOf(id: string, record: OrderRecord): OrderSummary {
  const { file, versions, ...facts } = record;
  return {
    kind: 'order',
    id,
    revision: revisionOf(versions),
    ...facts,
    title: file.title,
    customer: textIn(file, 'customer'),
    dueDay: file.dueDay,
    children: file.children.map(({ name }) => name),
    kept: file.pay?.kept ?? [],
    timed: file.children.flatMap(({ sewing }) => timedSteps(sewing)),
  };
}

export function brokenEntry(id: string, raw: unknown, why: Saying): BrokenOrder {
  const changedAt = textIn(raw, 'changedAt');
  return {
    kind: 'broken',
    id,
    title: textIn(isObject(raw) ? raw.file : null, 'title'),
    changedAt: changedAt !== null && v.is(instant, changedAt) ? changedAt : null,
    why,
  };
}

function textIn(raw: unknown, field: string): string | null {
  const value = isObject(raw) && Object.hasOwn(raw, field) ? raw[field] : null;
  return typeof value === 'string' ? value : null;
}

function isObject(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null;
}
