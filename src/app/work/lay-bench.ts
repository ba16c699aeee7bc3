import type { Packer } from '../../engine/lay/index.ts';
import {
  boughtByTable,
  type LaidCloths,
  layInTurn,
  layRefusalSentence,
  lengthSoFar,
  type Order,
} from '../../engine/order/index.ts';
import { type DrawnOrder, drawnOnce, laysShown } from './lay-order.ts';
import type {
  LayAnswer,
  LayGrounds,
  LayLook,
  LayWish,
  LengthFound,
  OnLaid,
  OnLayProgress,
} from './lay-wish.ts';

/** Lays the cloths of orders. Runs in a worker. */
export interface LayBench {
  /**
   * The lays that the order keeps, and short ones where it keeps none; each is told as soon as it is there, and again
   * when it has become shorter. Rests while a search is under way; null: another look was asked for meanwhile.
   */
  look(grounds: LayGrounds, onLaid: OnLaid): Promise<LayLook | null>;
  /** A longer search for one of them. Progress comes about ten times a second. */
  search(wish: LayWish, onProgress: OnLayProgress): Promise<LayAnswer>;
  /** What the width table would say to buy of a cloth, mm, child by child; null where it says nothing. */
  byTable(grounds: LayGrounds, cloth: string): Promise<number | null>;
  /** Ends the search; `search` then answers with the best so far. */
  enough(): void;
}

/** A second search that helps; `waiting`: the first one waits for news of it, which has `arrived` when that resolves. */
export interface Help {
  readonly pack: Packer;
  readonly waiting: () => boolean;
  readonly arrived: () => Promise<void>;
}

/** So long the search goes on before it tells how far it is and listens whether it is enough, ms. */
const LISTEN = 100;
/** So long it waits for the other one before it tells that it is still there, ms. */
const PATIENCE = 250;
/** The clock ends the search, not a count of tries. */
const ENDLESS = 1e12;
/** A shorter search is over before a second one could help, s. */
const HELPED_FROM = 5;

/** `clock` in ms; `pause` lets the worker hear what was said to it; `help`: null where there is none to be had. */
export function createLayBench(
  clock: () => number,
  pause: (ms: number) => Promise<unknown>,
  help: () => Help | null,
): LayBench {
  const drawn = drawnOnce();
  let isEnough = false;
  let searches = 0;
  let looks = 0;
  const searched: LayBench['search'] = async (wish, onProgress) => {
    isEnough = false;
    const read = drawn(wish);
    if (!read.ok) return { ok: false, refused: [] };
    const { until } = wish;
    const began = clock();
    const isTimed = 'seconds' in until;
    const gone = (): number => (isEnough ? 1 : isTimed ? (clock() - began) / (1000 * until.seconds) : 0);
    const helped = isTimed && until.seconds > HELPED_FROM ? help() : null;
    const evaluations = isTimed ? ENDLESS : until.evaluations;
    const run = searchOf(read, wish, { seed: wish.seed, evaluations, gone }, helped?.pack);
    let heard = clock();
    let shortest = Number.POSITIVE_INFINITY;
    let spent = 0;
    for (;;) {
      const { value, done } = run.next();
      if (done === true) return answerOf(value, read.order, spent);
      spent = value.evaluations;
      if (clock() - heard < LISTEN && helped?.waiting() !== true) continue;
      const length = lengthSoFar(value) ?? Number.POSITIVE_INFINITY;
      const lengths = length < shortest - 1e-9 ? placesOnly(value.lengths ?? []) : null;
      shortest = Math.min(shortest, length);
      onProgress({ gone: Math.min(1, Math.max(gone(), spent / evaluations)), evaluations: spent, lengths });
      await (helped?.waiting() === true ? Promise.race([helped.arrived(), pause(PATIENCE)]) : pause(0));
      heard = clock();
    }
  };
  return {
    enough: () => {
      isEnough = true;
    },
    look: async (grounds, onLaid) => {
      const mine = ++looks;
      const read = drawn(grounds);
      if (!read.ok) return read;
      const run = laysShown(read);
      let heard = clock();
      for (;;) {
        const { value, done } = run.next();
        if (done === true) return { ok: true, ...value };
        if (value !== null) onLaid(value);
        if (clock() - heard < LISTEN) continue;
        await pause(0);
        while (searches > 0 && mine === looks) await pause(PATIENCE);
        if (mine !== looks) return null;
        heard = clock();
      }
    },
    search: async (wish, onProgress) => {
      searches++;
      try {
        return await searched(wish, onProgress);
      } finally {
        searches--;
      }
    },
    byTable: async (grounds, name) => {
      const read = drawn(grounds);
      if (!read.ok) return null;
      return boughtByTable(
        read.order,
        name,
        read.children.map(({ pieces }) => pieces),
      );
    },
  };
}

function searchOf(
  { order, children }: DrawnOrder,
  { cloth, child }: Pick<LayWish, 'cloth' | 'child'>,
  settings: { readonly seed: number; readonly evaluations: number; readonly gone: () => number },
  pack: Packer | undefined,
) {
  const pieces = children.flatMap((own) => (child === null || own.name === child ? own.pieces : []));
  const onlyThere = ({ name }: { readonly name: string }) => (name === cloth ? settings : null);
  return layInTurn(order, pieces, null, onlyThere, 'go-on', pack);
}

function answerOf({ lists, problems }: LaidCloths, { units }: Order, evaluations: number): LayAnswer {
  const [found] = lists;
  if (found !== undefined) return { ok: true, lengths: placesOnly(found.lengths), evaluations };
  return { ok: false, refused: problems.map((problem) => layRefusalSentence(problem, units)) };
}

/** The plan is known on the other side, and large. */
const placesOnly = (lengths: readonly LengthFound[]): readonly LengthFound[] =>
  lengths.map(({ at, placed }) => ({ at, placed }));
