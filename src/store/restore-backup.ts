import type { Desk, WriteTx } from './database.ts';
import { answer, write } from './database.ts';
import { countPast } from './paper-numbers.ts';
import type { Plans } from './plan-restore.ts';
import { failure } from './problem.ts';
import { type OrderRecord, readRecord } from './record.ts';
import type { Answer, BackupPlan, ClashChoice, RestoreChoices, RestoreReport, Standing } from './types.ts';
import { hasSeen, merged, revisionOf, written } from './versions.ts';

/** Writes what she chose, all in one transaction. Writes nothing if an order has changed since they were compared. */
export function restorePlan(
  desk: Desk,
  plans: Plans,
  plan: BackupPlan,
  choices: RestoreChoices,
): Promise<Answer<RestoreReport>> {
  const compared = plans.get(plan);
  if (compared === undefined) throw new Error('A plan that this store did not make');
  return answer(async () => {
    const chosen = chosenIn(plan, new Map(compared.contents.orders), choices);
    const settings = choices.takeSettings ? Object.entries(plan.settings ?? {}) : [];
    const ids = await write(desk.db, ['orders', 'histories', 'settings', 'notes'], async (tx) => {
      const here = await ordersHere(tx, chosen, compared.seen);
      if (here === null) return null;
      const written: string[] = [];
      for (const taken of chosen) written.push(...(await take(tx, desk, taken, here.get(taken.id) ?? null)));
      for (const [name, value] of settings) await tx.objectStore('settings').put(value, name);
      await countPast(
        tx,
        chosen.map(({ theirs }) => theirs),
      );
      return written;
    });
    if (ids === null) return failure('changed-meanwhile', 'store.backup.changed-meanwhile');
    if (ids.length > 0) desk.announce({ orders: ids });
    if (settings.length > 0) desk.announce('settings');
    const countOf = (way: Way) => chosen.filter((taken) => taken.way === way).length;
    const [added, replaced, keptBoth] = [countOf('add'), countOf('replace'), countOf('beside')];
    return {
      ok: true,
      value: { added, replaced, keptBoth, leftAlone: plan.entries.length - chosen.length },
    };
  });
}

type Way = 'add' | 'replace' | 'beside';
interface Taken {
  readonly id: string;
  readonly theirs: OrderRecord;
  readonly way: Way;
}

function chosenIn(
  plan: BackupPlan,
  records: ReadonlyMap<string, OrderRecord>,
  { orders }: RestoreChoices,
): readonly Taken[] {
  return plan.entries.flatMap(({ id, standing, mine }) => {
    const theirs = records.get(id);
    const way = wayFor(standing, Object.hasOwn(orders, id) ? orders[id] : undefined, mine === null);
    return theirs === undefined || way === null ? [] : [{ id, theirs, way }];
  });
}

/** What she did not choose overwrites nothing. A broken order is not replaced: it may yet be rescued. */
function wayFor(standing: Standing, choice: ClashChoice | undefined, mineIsBroken: boolean): Way | null {
  if (standing === 'same' || choice === 'keep-mine') return null;
  if (standing === 'new') return 'add';
  if (choice === undefined) return null;
  return choice === 'keep-both' || mineIsBroken ? 'beside' : 'replace';
}

/** What is here of the chosen; null if any of it is not what they were compared with. */
async function ordersHere(
  tx: WriteTx,
  chosen: readonly Taken[],
  seen: ReadonlyMap<string, number | null>,
): Promise<ReadonlyMap<string, OrderRecord> | null> {
  const here = new Map<string, OrderRecord>();
  for (const { id } of chosen) {
    const revision = seen.get(id);
    const key = await tx.objectStore('orders').getKey(id);
    if ((key === undefined) !== (revision === undefined)) return null;
    // A broken one is not read again: that could end the transaction.
    if (key === undefined || revision === null) continue;
    const read = readRecord(await tx.objectStore('orders').get(id));
    if (!read.ok || revisionOf(read.record.versions) !== revision) return null;
    here.set(id, read.record);
  }
  return here;
}

/** Writes one order of the backup; answers the ids written. */
async function take(
  tx: WriteTx,
  desk: Desk,
  { id, theirs, way }: Taken,
  mine: OrderRecord | null,
): Promise<readonly string[]> {
  const orders = tx.objectStore('orders');
  if (way === 'beside') {
    const copyId = desk.newId();
    const origin = { kind: 'backup', of: id } as const;
    await orders.put({ ...theirs, origin, versions: written({}, desk.writer) }, copyId);
    return [copyId];
  }
  const histories = tx.objectStore('histories');
  if (mine === null) {
    await orders.put(theirs, id);
    return [id];
  }
  const oldId = desk.newId();
  const old = {
    ...mine,
    origin: { kind: 'replaced', of: id },
    deletedAt: mine.deletedAt ?? desk.now(),
  } as const;
  await orders.put({ ...old, versions: written({}, desk.writer) }, oldId);
  const history = await histories.get(id);
  if (history !== undefined) await histories.put(history, oldId);
  await histories.delete(id);
  const versions = hasSeen(theirs.versions, mine.versions)
    ? theirs.versions
    : written(merged(theirs.versions, mine.versions), desk.writer);
  await orders.put({ ...theirs, versions }, id);
  return [id, oldId];
}
