import { tell } from '../../engine/design/index.ts';
import { formatSellingLength } from '../../engine/lay/index.ts';
import { type LaidCloths, layPack, readOrderValue } from '../../engine/order/index.ts';
import { createTextMeasure, type PaperFonts } from '../../pdf/index.ts';
import type { LaidOn, LayAnswer, LayWish, OnLayProgress } from './lay-wish.ts';

/** Lays the cloths of orders. Runs in a worker. */
export interface LayBench {
  lay(wish: LayWish, onProgress: OnLayProgress): Promise<LayAnswer>;
  /** Ends the search; `lay` then answers with the best so far. */
  enough(): void;
}

/** So long the search goes on before it listens whether it is enough, ms. */
const LISTEN = 100;
/** The clock ends the search, not a count of tries. */
const ENDLESS = 1e12;

/** `clock` in ms; `pause` lets the worker hear what was said to it. */
export function createLayBench(
  fonts: PaperFonts,
  clock: () => number,
  pause: () => Promise<unknown>,
): LayBench {
  const measure = createTextMeasure(fonts);
  let isEnough = false;
  return {
    enough: () => {
      isEnough = true;
    },
    lay: async ({ file, today, of, seconds, seed }, onProgress) => {
      isEnough = false;
      const read = readOrderValue(file);
      if (!read.ok) return { ok: false, problems: read.problems };
      const { order } = read;
      const child = of === 'party' ? null : of;
      const whole = 1000 * seconds;
      const lays = order.cloths.length * (child === null && !order.layTogether ? order.children.length : 1);
      const start = clock();
      const search = () => {
        const began = clock();
        return {
          seed,
          evaluations: ENDLESS,
          gone: () => (isEnough ? 1 : (clock() - began) / (whole / lays)),
        };
      };
      const run = layPack(order, { today, measure }, child, search);
      let heard = clock();
      for (;;) {
        const { value, done } = run.next();
        if (done === true) {
          if (!value.ok) return value;
          const { cloths, pages } = value.laid;
          const refused = cloths.problems.map((problem) => tell(problem, order.units));
          return { ok: true, cloths: laidOn(cloths, order.children.length > 1), pages, refused };
        }
        if (clock() - heard < LISTEN) continue;
        const gone = Math.min(1, (clock() - start) / whole);
        onProgress({ cloth: value.cloth.name, length: value.length, gone });
        await pause();
        heard = clock();
      }
    },
  };
}

function laidOn({ lists }: LaidCloths, nameChild: boolean): readonly LaidOn[] {
  return lists.map(({ cloth, pieces, lengths, toBuy, saved }): LaidOn => {
    const children = new Set(pieces.map(({ label }) => label.child));
    const length = lengths.reduce((sum, { lay }) => sum + lay.length, 0);
    const covered = lengths.reduce((sum, { lay }) => sum + lay.density * lay.length, 0);
    return {
      cloth: cloth.name,
      child: nameChild && children.size === 1 ? ([...children][0] ?? null) : null,
      buy: formatSellingLength(toBuy, cloth.unit),
      length,
      percent: Math.round((100 * covered) / length),
      saves: saved === null || saved.saved <= 0 ? null : formatSellingLength(saved.saved, cloth.unit),
    };
  });
}
