import type { Draft } from 'immer';
import { findStep } from '../../../engine/design/index.ts';
import type { OrderFile, StepFile } from '../../../engine/order/index.ts';
import { holderOf, type Scope } from '../scope.ts';
import {
  findListed,
  type Given,
  keyOf,
  keyText,
  listSteps,
  type StepKey,
  sameStep,
  sourceOf,
} from './dress-list.ts';

/** The file as a recipe of the session changes it. Every function here is such a recipe, or a part of one. */
type File = Draft<OrderFile>;
type Entry = Draft<StepFile>;

const entriesOf = (file: File, scope: Scope): readonly Entry[] => holderOf(file, scope)?.dress ?? [];

/** A list must not be empty in the file: then it is left out. */
function writeEntries(file: File, scope: Scope, entries: readonly Entry[]): void {
  const holder = holderOf(file, scope);
  if (holder === undefined) return;
  if (entries.length === 0) delete holder.dress;
  else holder.dress = [...entries];
}

const entryOf = (file: File, scope: Scope, key: StepKey): Entry | undefined =>
  entriesOf(file, scope).find((entry) => sameStep(keyOf(entry), key));

const newEntry = ({ step, as }: StepKey): Entry => (as === null ? { step } : { step, as });

function ensureEntry(file: File, scope: Scope, key: StepKey): Entry {
  const there = entryOf(file, scope, key);
  if (there !== undefined) return there;
  writeEntries(file, scope, [...entriesOf(file, scope), newEntry(key)]);
  const made = entryOf(file, scope, key);
  if (made === undefined) throw new Error('A step is written for a child of the order.');
  return made;
}

/** What the lists below say of a step, the list of the scope left out. */
function below(file: OrderFile, scope: Scope, key: StepKey) {
  const bare: OrderFile =
    scope === 'party'
      ? { ...file, dress: undefined }
      : {
          ...file,
          children: file.children.map((child, i) => (i === scope ? { ...child, dress: undefined } : child)),
        };
  return findListed(bare, scope, key);
}

/** An entry that says nothing which the lists below do not say already is taken out. */
function tidy(file: File, scope: Scope, key: StepKey): void {
  const entry = entryOf(file, scope, key);
  if (entry === undefined) return;
  const { step: _, as: __, off = false, ...given } = entry;
  if (off || Object.keys(given).length > 0 || below(file, scope, key)?.on !== true) return;
  dropEntry(file, scope, key);
}

function dropEntry(file: File, scope: Scope, key: StepKey): void {
  writeEntries(
    file,
    scope,
    entriesOf(file, scope).filter((entry) => !sameStep(keyOf(entry), key)),
  );
}

/** Gives a number, or takes it back (`undefined`), so that what lies below it holds again. */
export function setParam(
  file: File,
  scope: Scope,
  key: StepKey,
  param: string,
  value: Given | undefined,
): void {
  if (value === undefined) {
    const entry = entryOf(file, scope, key);
    if (entry === undefined) return;
    delete entry[param];
    tidy(file, scope, key);
  } else ensureEntry(file, scope, key)[param] = value;
}

/** Leaves a step out, or puts it back; what excludes it steps aside. */
export function switchStep(file: File, scope: Scope, key: StepKey, on: boolean): void {
  if (!on) {
    if (scope !== 'party' && below(file, scope, key) === undefined) dropEntry(file, scope, key);
    else ensureEntry(file, scope, key).off = true;
    return;
  }
  const entry = ensureEntry(file, scope, key);
  delete entry.off;
  const kind = findStep(key.step)?.kind ?? null;
  for (const other of entriesOf(file, scope)) {
    if (kind === null || other.step === key.step || findStep(other.step)?.kind !== kind) continue;
    if (scope === 'party' || below(file, scope, keyOf(other)) !== undefined) other.off = true;
    else dropEntry(file, scope, keyOf(other));
  }
  tidy(file, scope, key);
}

/** The name under which one more copy of a step can stand anywhere in the order; null where none is needed. */
export function nameForCopy(file: OrderFile, step: string): string | null {
  const known = findStep(step);
  if (known === undefined || known.kind !== null) return null;
  const taken = scopesOf(file)
    .flatMap((scope) => listSteps(file, scope))
    .filter((listed) => listed.step === step)
    .map(({ as }) => as);
  if (!taken.includes(null)) return null;
  for (let number = 2; ; number++) {
    const name = `${known.words.title} ${number}`;
    if (!taken.includes(name)) return name;
  }
}

/** Adds a step at the end of the list; one of the same kind that stands in that list makes room for it. */
export function addStep(file: File, scope: Scope, key: StepKey): void {
  const listed = findListed(file, scope, key);
  if (listed !== undefined) {
    switchStep(file, scope, key, true);
    return;
  }
  const kind = findStep(key.step)?.kind ?? null;
  const rivals = entriesOf(file, scope).filter(
    (entry) => kind !== null && findStep(entry.step)?.kind === kind && entry.off !== true,
  );
  for (const rival of rivals) takeOut(file, scope, keyOf(rival));
  writeEntries(file, scope, [...entriesOf(file, scope), newEntry(key)]);
  dropLooseOffs(file);
}

/** Whether a step can be taken out here: it stands in this list and in none below. */
export function canTakeOut(file: OrderFile, scope: Scope, key: StepKey): boolean {
  const listed = findListed(file, scope, key);
  return listed?.layers.every(({ from }) => from === sourceOf(scope)) === true;
}

/** Takes a step out. Out of the order's list it goes with what single children changed of it. */
export function removeStep(file: File, scope: Scope, key: StepKey): void {
  takeOut(file, scope, key);
  dropLooseOffs(file);
}

function takeOut(file: File, scope: Scope, key: StepKey): void {
  dropEntry(file, scope, key);
  if (scope === 'party') for (const child of file.children.keys()) dropEntry(file, child, key);
}

/** The child wears this step as all the others again. */
export function forAllAgain(file: File, child: number, key: StepKey): void {
  dropEntry(file, child, key);
}

/** Her own changes run in the order of the list: this one goes before or behind its neighbour. */
export function moveStep(file: File, scope: Scope, key: StepKey, by: -1 | 1): void {
  const entries = [...entriesOf(file, scope)];
  const from = entries.findIndex((entry) => sameStep(keyOf(entry), key));
  const to = neighbourOf(entries, from, by);
  const [moved, other] = [entries[from], to === null ? undefined : entries[to]];
  if (moved === undefined || other === undefined || to === null) return;
  // Plain copies: a draft must not stand in two places.
  [entries[from], entries[to]] = [{ ...other }, { ...moved }];
  writeEntries(file, scope, entries);
}

/** Whether it has such a neighbour in the list. */
export function canMove(file: OrderFile, scope: Scope, key: StepKey, by: -1 | 1): boolean {
  const entries = entriesOf(file, scope);
  return (
    neighbourOf(
      entries,
      entries.findIndex((entry) => sameStep(keyOf(entry), key)),
      by,
    ) !== null
  );
}

function neighbourOf(entries: readonly StepFile[], from: number, by: -1 | 1): number | null {
  if (from < 0) return null;
  for (let at = from + by; at >= 0 && at < entries.length; at += by)
    if (findStep(entries[at]?.step ?? '')?.stage === 'own') return at;
  return null;
}

const scopesOf = (file: OrderFile): readonly Scope[] => ['party', ...file.children.keys()];

/** Whether a copy of a step may be called so: no other is, in any list. Its own name is free to it. */
export function isFreeName(file: OrderFile, key: StepKey, as: string): boolean {
  const wished: StepKey = { step: key.step, as: as.trim().normalize('NFC') };
  if (sameStep(wished, key)) return true;
  return !scopesOf(file).some((scope) => findListed(file, scope, wished) !== undefined);
}

/** Calls one copy of a step by another name, in every list that means it; `isFreeName` says whether it may. */
export function renameStep(file: File, key: StepKey, as: string): void {
  for (const scope of scopesOf(file)) {
    const entry = entryOf(file, scope, key);
    if (entry !== undefined) entry.as = as.trim().normalize('NFC');
  }
}

/** Begins from a dress of the library, or from nothing but a neckline (`null`); `keep`: with all changes made so far. */
export function startFrom(file: File, dress: string | null, keep: boolean): void {
  if (!keep) for (const scope of scopesOf(file)) writeEntries(file, scope, []);
  if (dress === null) {
    delete file.startFrom;
    if (entriesOf(file, 'party').length === 0) writeEntries(file, 'party', [{ step: 'neckline' }]);
  } else file.startFrom = dress;
  dropLooseOffs(file);
}

/** A child can't leave out what the order has not. */
function dropLooseOffs(file: File): void {
  const party = new Set(listSteps(file, 'party').map(keyText));
  for (const child of file.children.keys()) {
    const entries = entriesOf(file, child);
    const kept = entries.filter((entry) => entry.off !== true || party.has(keyText(keyOf(entry))));
    if (kept.length < entries.length) writeEntries(file, child, kept);
  }
}

/** The children who have numbers or switches of their own for a step, by their place in the order. */
export function childrenWithOwn(file: OrderFile, key: StepKey): readonly number[] {
  return [...file.children.entries()].flatMap(([i, { dress = [] }]) =>
    dress.some((entry) => sameStep(keyOf(entry), key)) ? [i] : [],
  );
}
