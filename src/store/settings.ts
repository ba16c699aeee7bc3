import * as v from 'valibot';
import { isWorkroomPart, type WorkroomPart } from '../engine/order/index.ts';
import { answer, type Book, type Desk, read, write } from './database.ts';
import type { Answer, Settings } from './types.ts';

const workroom = (part: WorkroomPart) => v.custom((value) => isWorkroomPart(part, value));

/** What each setting may be. A new setting is a line here, one among the defaults and one in `Settings`. */
const FIELDS = {
  units: v.picklist(['in', 'cm']),
  theme: v.picklist(['device', 'light', 'dark']),
  maker: workroom('maker'),
  rates: workroom('rates'),
  week: workroom('week'),
  times: workroom('times'),
  prices: workroom('prices'),
  stash: workroom('stash'),
};
const DEFAULTS: Settings = {
  units: 'in',
  theme: 'device',
  maker: {},
  rates: {},
  week: {},
  times: {},
  prices: [],
  stash: [],
};
const NAMES = Object.keys(DEFAULTS) as (keyof Settings)[];

/** What of it is a setting with a value that it may have; the rest is passed over. */
export function givenSettings(raw: unknown): Partial<Settings> {
  if (typeof raw !== 'object' || raw === null) return {};
  const entries = Object.entries(raw).filter(
    ([name, value]) => Object.hasOwn(FIELDS, name) && v.is(FIELDS[name as keyof Settings], value),
  );
  return Object.fromEntries(entries);
}

/** Each setting lies under a key of its own, so that two tabs that change two of them do not undo each other. */
export async function settingsIn(db: Book): Promise<Settings> {
  const values = await read(db, ['settings'], (tx) =>
    Promise.all(NAMES.map(async (name) => [name, await tx.objectStore('settings').get(name)] as const)),
  );
  return { ...DEFAULTS, ...givenSettings(Object.fromEntries(values)) };
}

export function writeSettings(desk: Desk, change: Partial<Settings>): Promise<Answer<Settings>> {
  return answer(async () => {
    const given = givenSettings(change);
    await write(desk.db, ['settings'], async (tx) => {
      for (const [name, value] of Object.entries(given)) await tx.objectStore('settings').put(value, name);
    });
    desk.announce('settings');
    return { ok: true, value: await settingsIn(desk.db) };
  });
}
