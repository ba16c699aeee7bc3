import { backupState, noteBackup } from './backup-state.ts';
import { discardableIn, discardFrom, listBook, rawOrder } from './book.ts';
import { answer, type Book, type Desk, openBook, write } from './database.ts';
import { askToKeep, keepingNow } from './keeping.ts';
import { copyOrder, createOrder, loadOrder, markOrder, saveOrder } from './orders.ts';
import { takeNumber } from './paper-numbers.ts';
import { type Plans, planRestore } from './plan-restore.ts';
import { isId } from './record.ts';
import { restorePlan } from './restore-backup.ts';
import { settingsIn, writeSettings } from './settings.ts';
import { claimOrder, openTabs, type Tabs } from './tabs.ts';
import type { Answer, OpenStore, Store } from './types.ts';
import { makeBackup } from './write-backup.ts';

const NAME = 'frockwright';
const PATIENCE_MS = 3000;

export const openStore: OpenStore = async (options = {}) => {
  const { name = NAME, now = deviceTime, newId = randomId, patience = PATIENCE_MS } = options;
  const tabs = openTabs(name);
  const opened = await openBook(name, {
    patience,
    onClosed: (problem) => tabs.tell({ kind: 'closed', problem }),
  });
  const writer = opened.ok ? await answer(() => writerOf(opened.value, newId)) : opened;
  if (opened.ok && writer.ok) {
    const desk: Desk = { db: opened.value, writer: writer.value, now, newId, announce: tabs.announce };
    return { ok: true, store: storeOn(desk, tabs, name) };
  }
  tabs.close();
  if (opened.ok) opened.value.close();
  return opened.ok ? (writer as Extract<typeof writer, { ok: false }>) : opened;
};

function storeOn(desk: Desk, tabs: Tabs, name: string): Store {
  const plans: Plans = new WeakMap();
  return {
    list: () => listBook(desk),
    load: (id) => loadOrder(desk, id),
    create: (content) => createOrder(desk, content),
    save: (id, expectedRevision, content) => saveOrder(desk, id, expectedRevision, content),
    copy: (id) => copyOrder(desk, id),
    archive: (id, archived) => markOrder(desk, id, { archived }),
    delete: (id) => markOrder(desk, id, { deleted: true }),
    undelete: (id) => markOrder(desk, id, { deleted: false }),
    discardable: () => discardableIn(desk),
    discard: (ids) => discardFrom(desk, ids),
    raw: (id) => rawOrder(desk, id),
    subscribe: tabs.subscribe,
    claim: (id) => claimOrder(name, id),
    settings: () => answer(async () => ({ ok: true, value: await settingsIn(desk.db) })),
    saveSettings: (change) => writeSettings(desk, change),
    takeNumber: (kind) => takeNumber(desk, kind),
    makeBackup: () => makeBackup(desk),
    noteBackup: (backup) => noteBackup(desk, backup),
    backupState: () => backupState(desk),
    readBackup: (bytes, { leaveOutDamaged = false } = {}) => planRestore(desk, plans, bytes, leaveOutDamaged),
    restore: (plan, choices) => restorePlan(desk, plans, plan, choices),
    keeping: keepingNow,
    askToKeep,
    close: () => {
      tabs.close();
      desk.db.close();
    },
  };
}

/** This device's name among the writers, made once. */
async function writerOf(db: Book, newId: () => string): Promise<Answer<string>> {
  const known = await db.get('notes', 'writer');
  if (typeof known === 'string' && isId(known)) return { ok: true, value: known };
  const value = await write(db, ['notes'], async (tx) => {
    const notes = tx.objectStore('notes');
    const other = await notes.get('writer');
    if (typeof other === 'string' && isId(other)) return other;
    const writer = newId();
    await notes.put(writer, 'writer');
    return writer;
  });
  return { ok: true, value };
}

function deviceTime(): string {
  return new Date().toISOString();
}

/** 96 random bits in letters that may stand in a file name. Works where `randomUUID` does not (plain http). */
function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
