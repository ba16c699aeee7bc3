import { useEffect, useMemo, useRef } from 'react';
import type { LayFile, OrderFile } from '../../../engine/order/index.ts';
import { today } from '../../device/today.ts';
import { useOrderFile, useSessionState } from '../../session/use-session.ts';
import { lookAtLays, stopLaying } from '../../work/lay.ts';
import type { ClothLaid, LayGrounds, LayLook, LengthFound } from '../../work/lay-wish.ts';
import { changeDesk, clearDesk, deskNow, useDesk } from './desk.ts';
import { keyOf, layIn, type SeenLay, seenLay } from './seen-lay.ts';

/** Nothing is laid before she has paused this long, ms. */
const PAUSE = 200;

/** Whose lays she looks at. */
export function useOf(): number | 'party' {
  const child = useSessionState((state) => state.child);
  const children = useOrderFile((file) => file.children.length);
  const forWhom = useDesk((desk) => desk.forWhom);
  return forWhom === 'party' && children > 1 ? 'party' : child;
}

/** The fields of an order that change no lay; the lays themselves are put on the pieces by the page. */
const NOT_LAID: readonly string[] = ['title', 'customer', 'paper', 'sizes', 'pay', 'lays'];

/** The file, and the same object as long as nothing has changed from which pieces and cloths come. */
function useGroundsOfLays(): OrderFile {
  const file = useOrderFile((order) => order);
  const known = useRef(file);
  const parts = (order: OrderFile): readonly unknown[] =>
    Object.entries(order)
      .filter(([name]) => !NOT_LAID.includes(name))
      .flat();
  const [was, is] = [parts(known.current), parts(file)];
  if (was.length !== is.length || was.some((part, i) => part !== is[i])) known.current = file;
  return known.current;
}

/** Keeps the desk at what the order asks for, and ends the worker on leaving the place. */
export function useLayLook(): void {
  const file = useGroundsOfLays();
  const newest = useOrderFile((order) => order);
  const now = useRef(newest);
  now.current = newest;
  const of = useOf();
  const isAsked = useDesk(({ look }) => needsAnotherLook(look?.ok === true ? look.laid : [], newest));
  const line = useMemo(createLine, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a lay that was dropped is laid anew.
  useEffect(() => line.ask(() => ({ file: now.current, today: today(), of })), [line, file, of, isAsked]);
  useEffect(
    () => () => {
      line.close();
      stopLaying();
      clearDesk();
    },
    [line],
  );
}

/** The places that the worker told are those of a kept lay, which is kept no longer, or of other lengths. */
function needsAnotherLook(laid: readonly ClothLaid[], file: OrderFile): boolean {
  return laid.some((one) => {
    const kept = layIn(file, keyOf(one));
    return kept === undefined ? one.kept !== null : one.lengths.length > 1 && !sameLengths(one, kept);
  });
}

function sameLengths({ lengths }: ClothLaid, kept: LayFile): boolean {
  const onLength = lengths.map(({ at, plan }) => [
    at,
    plan.stretches.reduce((sum, { items }) => sum + items.length, 0),
  ]);
  const keptOn = kept.lengths.map(({ at, places }) => [at ?? null, places.length]);
  return JSON.stringify(onLength) === JSON.stringify(keptOn);
}

interface Line {
  ask(grounds: () => LayGrounds): void;
  close(): void;
}

/** What is asked for last counts; the worker lets go of what it was asked before. */
function createLine(): Line {
  let pause: ReturnType<typeof setTimeout> | undefined;
  let last = 0;
  const look = async (grounds: LayGrounds): Promise<void> => {
    const mine = ++last;
    const end = await lookAtLays(grounds, (one) => {
      if (mine === last) layOnDesk(one, grounds.of);
    });
    if (mine !== last) return;
    // What a worker tells on its way comes by a way of its own, and may come after the answer.
    last++;
    if (end.ok && end.value !== null) changeDesk({ look: end.value, of: grounds.of, looking: false });
    else if (end.ok || end.code === 'failed') changeDesk({ look: null, looking: false });
    else void look(grounds);
  };
  return {
    ask(grounds) {
      last++;
      changeDesk({ looking: true });
      clearTimeout(pause);
      pause = setTimeout(() => void look(grounds()), PAUSE);
    },
    close() {
      last++;
      clearTimeout(pause);
    },
  };
}

/** Puts one lay in the place of the one before it, also while others are still to come. */
function layOnDesk(one: ClothLaid, of: LayGrounds['of']): void {
  const before = deskNow();
  const look = before.of === of && before.look?.ok === true ? before.look : NOTHING;
  const key = keyOf(one);
  const isNew = look.laid.every((other) => keyOf(other) !== key);
  const laid = isNew ? [...look.laid, one] : look.laid.map((other) => (keyOf(other) === key ? one : other));
  changeDesk({ look: { ...look, laid }, of });
}

const NOTHING: Extract<LayLook, { ok: true }> = { ok: true, laid: [], refused: [] };

/** The lays that are laid for whom she looks at; empty before the first answer. */
export function useLaid(): readonly ClothLaid[] {
  const of = useOf();
  const look = useDesk((desk) => (desk.of === of ? desk.look : null));
  return look?.ok === true ? look.laid : NONE;
}

const NONE: readonly ClothLaid[] = [];

/** The lay that is drawn. */
export function useSeen(): SeenLay | null {
  const laid = useLaid();
  const shown = useDesk((desk) => desk.shown);
  const one = laid.find((other) => keyOf(other) === shown) ?? laid[0];
  return useSeenOf(one ?? null);
}

/** One of the lays as she sees it. */
export function useSeenOf(one: ClothLaid | null): SeenLay | null {
  const key = one === null ? '' : keyOf(one);
  const kept = useOrderFile((file) => layIn(file, key));
  const found = useDesk(({ search }) => (search?.key === key ? search.found : null));
  return one === null ? null : seenOnce(one, kept, found);
}

type Found = readonly LengthFound[] | null;

/** Panel and drawing ask for the same lay at the same time. */
const known = new WeakMap<
  ClothLaid,
  { readonly kept: LayFile | undefined; readonly found: Found; readonly seen: SeenLay }
>();

function seenOnce(one: ClothLaid, kept: LayFile | undefined, found: Found): SeenLay {
  const last = known.get(one);
  if (last !== undefined && last.kept === kept && last.found === found) return last.seen;
  const seen = seenLay(one, kept, found);
  known.set(one, { kept, found, seen });
  return seen;
}
