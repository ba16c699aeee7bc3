import * as v from 'valibot';
import { listBook } from './book.ts';
import { answer, type Desk, write } from './database.ts';
import type { Answer, BackupDue, BackupFile, BackupState, Instant } from './types.ts';

/** After so many days a backup is old, if anything has changed since. Rule of this program. */
const DAYS_TILL_OLD = 14;
/** So many orders changed since are many, however young the backup is. Rule of this program. */
const MANY_CHANGED = 10;
/** A first order is backed up once it has stood for a day: not while she tries the page. Rule of this program. */
const DAYS_BEFORE_FIRST = 1;

const DAY_MS = 86_400_000;

export interface BackupFacts {
  readonly last: Instant | null;
  readonly changedOrders: number;
  /** When the oldest order of the book was made; null for an empty book. */
  readonly oldestOrder: Instant | null;
}

/** Whether to remind of a backup, and why. */
export function backupDue({ last, changedOrders, oldestOrder }: BackupFacts, now: Instant): BackupDue | null {
  if (changedOrders === 0) return null;
  if (last === null)
    return oldestOrder !== null && daysBetween(oldestOrder, now) >= DAYS_BEFORE_FIRST ? 'never' : null;
  if (changedOrders >= MANY_CHANGED) return 'many-changes';
  return daysBetween(last, now) >= DAYS_TILL_OLD ? 'old' : null;
}

function daysBetween(from: Instant, to: Instant): number {
  return (Date.parse(to) - Date.parse(from)) / DAY_MS;
}

/** What was in the book at the last backup: changes are counted by revision, so no clock has to be right. */
const NOTE = v.object({ madeAt: v.string(), revisions: v.record(v.string(), v.number()) });

export function noteBackup(desk: Desk, { madeAt, revisions }: BackupFile): Promise<Answer<null>> {
  return answer(async () => {
    await write(desk.db, ['notes'], (tx) =>
      tx.objectStore('notes').put({ madeAt, revisions }, 'last-backup'),
    );
    return { ok: true, value: null };
  });
}

export function backupState(desk: Desk): Promise<Answer<BackupState>> {
  return answer(async () => {
    const note = v.safeParse(NOTE, await desk.db.get('notes', 'last-backup'));
    const listed = await listBook(desk);
    if (!listed.ok) return listed;
    const orders = listed.value.filter((entry) => entry.kind === 'order');
    const known = new Map(note.success ? Object.entries(note.output.revisions) : []);
    const changedOrders = orders.filter(({ id, revision }) => known.get(id) !== revision).length;
    const last = note.success ? note.output.madeAt : null;
    const oldestOrder = orders.map(({ createdAt }) => createdAt).sort()[0] ?? null;
    const due = backupDue({ last, changedOrders, oldestOrder }, desk.now());
    return { ok: true, value: { last, changedOrders, due } };
  });
}
