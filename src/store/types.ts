import type { OrderFile, PaperKind, TimedStep, WorkroomFile } from '../engine/order/index.ts';
import type { UnitSystem } from '../engine/units/index.ts';
import type { Saying, WordKey } from '../engine/words/index.ts';

/** A moment as ISO 8601 in UTC, `2027-04-24T09:30:00.000Z`; such texts sort by time. */
export type Instant = string;

/** Why the store could not do something. `say` is for the maker: what happened, that nothing is lost, what to do. */
export interface StoreProblem {
  readonly code: StoreProblemCode;
  readonly say: Saying;
}

export type StoreProblemCode =
  /** A tab with an older program holds the data open; it must be closed or reloaded. */
  | 'older-tab'
  /** A newer program has taken the data over; this page must be reloaded. Also told as an event. */
  | 'newer-tab'
  /** The browser gives no storage here (private window, storage switched off). */
  | 'no-storage'
  /** The data on this device were written by a newer program than this one. */
  | 'newer-data'
  /** The device or the browser's share of it is full. Nothing was written, what was there is there. */
  | 'storage-full'
  /** The order was removed for good, or never was here. */
  | 'not-here'
  /** The order is larger than an order may be (2 MB of text); it was not written. */
  | 'too-large'
  /** The stored order can't be read; it is among the broken ones and can be fetched as it is. */
  | 'broken'
  /** The browser's storage gave another failure; `say` carries its own words. */
  | 'failed'
  /** A backup file that can't be used: damaged, too large, not ours, of a newer form. `say` names the part. */
  | 'bad-backup'
  /** The book has changed since the backup was compared with it: read the backup again. */
  | 'changed-meanwhile';

export type Failure = { readonly ok: false; readonly problem: StoreProblem };
/** Every method of the store answers so; a rejected promise is a bug. */
export type Answer<T> = { readonly ok: true; readonly value: T } | Failure;

/**
 * One step that can be undone, as the page writes it. The store carries it and never looks inside `patches` and
 * `inverse`: anything that is plain JSON.
 */
export interface HistoryStep {
  /** Names the step to the maker ("Undo: chest of Amina"). */
  readonly label: Saying;
  /** What made it, for joining the steps of one drag into one; the page's own word. */
  readonly cause: string;
  readonly patches: readonly unknown[];
  readonly inverse: readonly unknown[];
}

/** The steps in the order in which they were made; `position` of them are in force, the rest can be redone. */
export interface History {
  readonly steps: readonly HistoryStep[];
  readonly position: number;
}

export const NO_HISTORY: History = { steps: [], position: 0 };

/** Where an order came from. `of` is the id of the order that it was made from. */
export type Origin =
  | { readonly kind: 'new' }
  /** She copied it. */
  | { readonly kind: 'copy'; readonly of: string }
  /** Two tabs changed one order: this is the later one, kept beside the other. */
  | { readonly kind: 'two-tabs'; readonly of: string }
  /** A backup held another state of an order that was here, and she kept both. */
  | { readonly kind: 'backup'; readonly of: string }
  /** What was here before she took over another state from a backup; it lies among the deleted. */
  | { readonly kind: 'replaced'; readonly of: string };

interface OrderFacts {
  readonly id: string;
  /** Grows by one with every write of this order, on this device. Give it back when saving. */
  readonly revision: number;
  readonly origin: Origin;
  readonly createdAt: Instant;
  /** When the order itself was last changed; archiving and deleting leave it. */
  readonly changedAt: Instant;
  readonly archived: boolean;
  /** When she deleted it; null while it stands in the book. */
  readonly deletedAt: Instant | null;
}

/** An order as it is kept. */
export interface StoredOrder extends OrderFacts {
  /**
   * The order file as she typed it, brought to the newest form and never rewritten otherwise. It has the types of
   * an order file, but may be unfinished: a blank name, no children yet, a length that can't be read. `readOrder`
   * and `checkOrder` judge it.
   */
  readonly file: OrderFile;
  /** Undo steps; empty after the file was brought from an older form, which the steps would not fit any more. */
  readonly history: History;
}

/** What the order book shows of an order. */
export interface OrderSummary extends OrderFacts {
  readonly kind: 'order';
  readonly title: string;
  /** Null where the order file names none. */
  readonly customer: string | null;
  /** As typed; sorts by time when it is a day at all. Empty when not yet given. */
  readonly dueDay: string;
  readonly children: readonly string[];
  /** Minutes that she keeps free for it, by day. */
  readonly kept: readonly { readonly day: string; readonly minutes: number }[];
  /** The steps of sewing that she has timed in it. */
  readonly timed: readonly TimedStep[];
}

/** A record that can't be read. It hinders nothing else; fetch it with `raw`, remove it with `discard`. */
export interface BrokenOrder {
  readonly kind: 'broken';
  readonly id: string;
  /** As far as one can be found in what is left. */
  readonly title: string | null;
  readonly changedAt: Instant | null;
  /** What is wrong with it. */
  readonly why: Saying;
}

/** All that is kept, deleted ones too (`deletedAt`), the last changed first; broken ones at the end. */
export type BookEntry = OrderSummary | BrokenOrder;

/** What a save hands over. Without `history` the steps that are kept stay as they are. */
export interface OrderContent {
  readonly file: OrderFile;
  readonly history?: History;
}

export type SaveResult =
  /** It is on the device: the transaction is complete. */
  | { readonly ok: true; readonly revision: number; readonly changedAt: Instant }
  /**
   * Someone else wrote this order since `expectedRevision` (another tab). Nothing was overwritten: theirs stands
   * under the id, `copy` is a new order with what was given here, already on the device. Go on with one of the two;
   * saving again under the old revision would make one more copy.
   */
  | { readonly ok: false; readonly conflict: { readonly theirs: StoredOrder; readonly copy: StoredOrder } }
  | (Failure & { readonly conflict?: undefined });

export type StoreEvent =
  /** Another tab wrote these orders. */
  | { readonly kind: 'orders'; readonly ids: readonly string[] }
  /** Another tab changed the settings. */
  | { readonly kind: 'settings' }
  /** The store is closed under this page (`newer-tab`, `failed`): ask for a reload. Nothing can be saved any more. */
  | { readonly kind: 'closed'; readonly problem: StoreProblem };

/** Whether this tab is the only one that has the order open; `unknown` in browsers without Web Locks. */
export interface EditClaim {
  readonly held: 'here' | 'elsewhere' | 'unknown';
  /** Lets go; call when the order is left. The browser does it when the tab closes or crashes. */
  release(): void;
}

/** What the maker has set for the whole workroom, with what holds when she has not. */
export interface Settings extends Required<WorkroomFile> {
  readonly units: UnitSystem;
  /** `device` follows the device's own light or dark. */
  readonly theme: 'device' | 'light' | 'dark';
}

export interface Keeping {
  /** `yes`: the browser has promised not to clear the data by itself. */
  readonly lasting: 'yes' | 'no' | 'unknown';
  readonly usedBytes: number | null;
  /** What the browser would let us use in all. */
  readonly roomBytes: number | null;
}

export interface BackupState {
  readonly last: Instant | null;
  /** Orders written since the last backup (all, if there was none). */
  readonly changedOrders: number;
  /** Null: no reminder. See `backupDue`. */
  readonly due: BackupDue | null;
}
/** Never backed up; the last one is old and something changed; much has changed since. */
export type BackupDue = 'never' | 'old' | 'many-changes';

export interface BackupFile {
  readonly fileName: string;
  /** A zip. Hand it to the maker, then call `noteBackup`. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly madeAt: Instant;
  readonly orders: number;
  /** How many of them can't be read; they lie in the file as they are. */
  readonly broken: number;
  /** What was in the book, by id, for `noteBackup`. */
  readonly revisions: Readonly<Record<string, number>>;
}

/** How an order of a backup stands to the one that is here. */
export type Standing =
  /** Not here. */
  | 'new'
  | 'same'
  /** The one here was changed on from it. */
  | 'older'
  /** It was changed on from the one here. */
  | 'newer'
  /** Both were changed since they were one. */
  | 'conflicting';

export interface BackupEntry {
  readonly id: string;
  readonly standing: Standing;
  readonly theirs: OrderSummary;
  /** Null when new, or when what is here under the id is broken. */
  readonly mine: OrderSummary | null;
  /** What the page should show as chosen first. Nothing is taken over that she did not see. */
  readonly suggested: ClashChoice;
}

export interface UnreadablePart {
  /** The name of the part in the zip. */
  readonly part: string;
  readonly why: Saying;
}

/**
 * A backup read and compared with the book; nothing is written yet. Undo steps are not in a backup: they stay on the
 * device where they were made.
 */
export interface BackupPlan {
  readonly madeAt: Instant;
  readonly entries: readonly BackupEntry[];
  readonly unreadable: readonly UnreadablePart[];
  /** Settings in the backup that differ from those here; null if none do. */
  readonly settings: Partial<Settings> | null;
}

/** `take-theirs` puts the order that was here among the deleted, so that she can bring it back. */
export type ClashChoice = 'keep-mine' | 'take-theirs' | 'keep-both';

export interface RestoreChoices {
  /**
   * By id, for those that are older, newer or conflicting; one that is not listed keeps mine. New ones are taken
   * (`keep-mine` leaves one out), same ones need nothing.
   */
  readonly orders: Readonly<Record<string, ClashChoice>>;
  readonly takeSettings: boolean;
}

export interface RestoreReport {
  readonly added: number;
  readonly replaced: number;
  readonly keptBoth: number;
  readonly leftAlone: number;
}

export interface OpenOptions {
  /** Name of the database; another name is another book. */
  readonly name?: string;
  /** The clock; the device's by default. */
  readonly now?: () => Instant;
  /** Makes ids; random by default. */
  readonly newId?: () => string;
  /** How long to wait for an older tab to let go before saying so, ms. */
  readonly patience?: number;
}

export type OpenResult = { readonly ok: true; readonly store: Store } | Failure;

/** Opens the book of this device, making it if there is none. Never throws for what a browser may refuse. */
export type OpenStore = (options?: OpenOptions) => Promise<OpenResult>;

/**
 * The order book of one device. Every write is one transaction that reads, checks and writes, with the bytes on the
 * disk (`durability: 'strict'`) before the answer comes. Nothing is ever sent anywhere.
 */
export interface Store {
  /** All that is kept; see `BookEntry`. Reads no histories. */
  list(): Promise<Answer<readonly BookEntry[]>>;
  load(id: string): Promise<Answer<StoredOrder>>;
  /** A new order. */
  create(content: OrderContent): Promise<Answer<StoredOrder>>;
  save(id: string, expectedRevision: number, content: OrderContent): Promise<SaveResult>;
  /** A new order with the same file and no history; the page gives it another title if it wants to. */
  copy(id: string): Promise<Answer<StoredOrder>>;
  /** Takes an order off the table or puts it back. Counts as a write: answers the new summary. */
  archive(id: string, archived: boolean): Promise<Answer<OrderSummary>>;
  /** Marks it deleted; it is kept and `undelete` brings it back. */
  delete(id: string): Promise<Answer<OrderSummary>>;
  undelete(id: string): Promise<Answer<OrderSummary>>;
  /** Deleted orders that may go for good: 30 days have passed, or 100 newer ones are deleted. Asks nothing, removes nothing. */
  discardable(): Promise<Answer<readonly OrderSummary[]>>;
  /** Removes deleted or broken records for good; others in the list stay. Answers the ids removed. */
  discard(ids: readonly string[]): Promise<Answer<readonly string[]>>;
  /** Any record as it lies in the store, as the text of a file, for what can't be read. */
  raw(id: string): Promise<Answer<{ readonly fileName: string; readonly text: string }>>;

  /** Tells what other tabs do. Answers the function that ends it. */
  subscribe(listener: (event: StoreEvent) => void): () => void;
  /** Claims an order for editing; never waits. Saving is safe without it, this only tells her in time. */
  claim(id: string): Promise<EditClaim>;

  settings(): Promise<Answer<Settings>>;
  /** Writes what is given, leaves the rest. */
  saveSettings(change: Partial<Settings>): Promise<Answer<Settings>>;

  /** A number for a quote, an invoice or a receipt that was never given before, in any tab, and never will be again. */
  takeNumber(kind: PaperKind): Promise<Answer<string>>;

  makeBackup(): Promise<Answer<BackupFile>>;
  /** Notes that the file has been handed over; reminders count from its `madeAt`. */
  noteBackup(backup: BackupFile): Promise<Answer<null>>;
  backupState(): Promise<Answer<BackupState>>;
  /**
   * Reads a backup file and compares it with the book. A file of which a part is damaged is refused, naming the
   * part; with `leaveOutDamaged` the rest is offered and the damaged parts stand under `unreadable`.
   */
  readBackup(
    bytes: Uint8Array,
    options?: { readonly leaveOutDamaged?: boolean },
  ): Promise<Answer<BackupPlan>>;
  /** Writes what she chose in one transaction: all of it or nothing. Takes the very plan that `readBackup` gave. */
  restore(plan: BackupPlan, choices: RestoreChoices): Promise<Answer<RestoreReport>>;

  /** Whether the browser promises to keep the data, and how much there is. Asks nobody. */
  keeping(): Promise<Keeping>;
  /** Asks the browser to keep the data; some browsers ask the maker. Best after the first saved order. */
  askToKeep(): Promise<Keeping>;

  /** Ends the connection; for tests and for leaving the page. */
  close(): void;
}

/** A key of the catalogue; keeps the sayings of this folder checked by the compiler. */
export type StoreWord = Extract<WordKey, `store.${string}`>;
