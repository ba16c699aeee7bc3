import { readAll } from './book.ts';
import { answer, type Desk } from './database.ts';
import { type BackupContents, openBackup } from './read-backup.ts';
import { type OrderRecord, readRecord, summaryOf } from './record.ts';
import { settingsIn } from './settings.ts';
import type { Answer, BackupEntry, BackupPlan, ClashChoice, Settings, Standing } from './types.ts';
import { hasSeen, revisionOf } from './versions.ts';

/** What was compared, behind a plan: the records to write, and what was here at that time. */
interface Compared {
  readonly contents: BackupContents;
  /** By id: the revision of what is here, null where it can't be read. Absent: not here. */
  readonly seen: ReadonlyMap<string, number | null>;
}

/** Plans that this page has read, and what stands behind them; forgotten with the plan. */
export type Plans = WeakMap<BackupPlan, Compared>;

export function planRestore(
  desk: Desk,
  plans: Plans,
  bytes: Uint8Array,
  leaveOutDamaged: boolean,
): Promise<Answer<BackupPlan>> {
  return answer(async () => {
    const opened = await openBackup(bytes, leaveOutDamaged);
    if (!opened.ok) return opened;
    const contents = opened.value;
    const here = new Map(
      (await readAll(desk.db)).map(([id, raw, fetched]) => {
        const read = fetched ? readRecord(raw) : null;
        return [id, read?.ok ? read.record : null] as const;
      }),
    );
    const plan: BackupPlan = {
      madeAt: contents.madeAt,
      entries: contents.orders.map(([id, theirs]) => entryOf(id, theirs, here.get(id))),
      unreadable: contents.unreadable,
      settings: differing(contents.settings, await settingsIn(desk.db)),
    };
    const seen = new Map([...here].map(([id, mine]) => [id, mine && revisionOf(mine.versions)]));
    plans.set(plan, { contents, seen });
    return { ok: true, value: plan };
  });
}

const SUGGESTED: Readonly<Record<Standing, ClashChoice>> = {
  new: 'take-theirs',
  same: 'keep-mine',
  older: 'keep-mine',
  newer: 'take-theirs',
  conflicting: 'keep-both',
};

function entryOf(id: string, theirs: OrderRecord, mine: OrderRecord | null | undefined): BackupEntry {
  const standing = standingOf(theirs, mine);
  return {
    id,
    standing,
    theirs: summaryOf(id, theirs),
    mine: mine ? summaryOf(id, mine) : null,
    suggested: SUGGESTED[standing],
  };
}

/** Contents come first, so that two states that came to the same are no clash. A broken order here is one. */
function standingOf(theirs: OrderRecord, mine: OrderRecord | null | undefined): Standing {
  if (mine === undefined) return 'new';
  if (mine === null) return 'conflicting';
  if (contentText(theirs) === contentText(mine)) return 'same';
  const [weKnow, theyKnow] = [
    hasSeen(mine.versions, theirs.versions),
    hasSeen(theirs.versions, mine.versions),
  ];
  if (weKnow === theyKnow) return 'conflicting';
  return weKnow ? 'older' : 'newer';
}

function contentText({ file, archived, deletedAt }: OrderRecord): string {
  return JSON.stringify([file, archived, deletedAt]);
}

function differing(theirs: Partial<Settings>, mine: Settings): Partial<Settings> | null {
  const entries = Object.entries(theirs).filter(
    ([name, value]) => JSON.stringify(mine[name as keyof Settings]) !== JSON.stringify(value),
  );
  return entries.length === 0 ? null : Object.fromEntries(entries);
}
