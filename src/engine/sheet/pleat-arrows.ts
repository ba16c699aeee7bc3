import type { CutPiece } from '../cut/index.ts';
import { type Bounds, type Point, pathBounds, pathEnd, pathFlatten, pathStart } from '../geometry/index.ts';
import type { Marking } from '../piece/index.ts';
import type { Lettering } from './lettering.ts';
import { boxAround, runMeetsBox } from './runs.ts';
import type { Mark } from './scene.ts';
import { arrowHead, strokeLine } from './shapes.ts';

const HEAD = 3;
/** From the ends of a fold to its arrows, mm, and how far they may move on to keep clear of other marks. */
const FROM_END = 16;
const STEP = 7;
const MOST_STEPS = 6;
/** How far an arrow runs out of the piece when its meeting line lies on the next width, mm. */
const RUN_OUT = 4;
/** A meeting line this near to the stitching line of a join lies on it, mm. */
const ON_EDGE = 0.6;
/** Room kept above and below an arrow, mm. */
const AIR = 2;

/**
 * Arrows near the top and the foot of every pleat fold, from the fold to the line that it is brought to. They are set
 * before any word, so that words keep off them.
 */
export function writePleatArrows(lettering: Lettering, cut: CutPiece): void {
  const folds = cut.piece.markings.filter((marking) => (marking.brought ?? 0) !== 0);
  if (folds.length === 0) return;
  const inside = boxAround(lettering.outline);
  const outside = pathBounds(cut.cuttingLine);
  const others = [
    [cut.piece.grain.from, cut.piece.grain.to],
    ...cut.piece.markings.filter(isNoPleatLine).map((marking) => pathFlatten(marking.path, 1)),
    ...cut.notches.map((notch) => [notch.from, notch.to]),
  ];
  for (const fold of folds) {
    const [top, foot] = [pathStart(fold.path), pathEnd(fold.path)].sort((a, b) => a.y - b.y);
    if (top === undefined || foot === undefined) continue;
    const tip = tipOf(top.x, fold.brought ?? 0, inside, outside);
    for (const [end, way] of [
      [top, 1],
      [foot, -1],
    ] as const) {
      const y = heightOf(end.y, way, foot.y - top.y, { from: top.x, tip }, others);
      lettering.marks.push(...arrow(top.x, tip, y));
      lettering.obstacles.push(arrowRun(top.x, tip, y));
    }
  }
}

const isNoPleatLine = ({ kind }: Marking): boolean => kind !== 'pleat-fold' && kind !== 'pleat-meet';

function tipOf(fold: number, brought: number, inside: Bounds, outside: Bounds): number {
  const wished = fold + brought;
  if (wished > inside.maxX + ON_EDGE) return outside.maxX + RUN_OUT;
  return wished < inside.minX - ON_EDGE ? outside.minX - RUN_OUT : wished;
}

/** The first height from an end of the fold at which the arrow touches no other mark. */
function heightOf(
  end: number,
  way: 1 | -1,
  length: number,
  { from, tip }: { readonly from: number; readonly tip: number },
  others: readonly (readonly Point[])[],
): number {
  const inset = Math.min(FROM_END, length / 5);
  const step = Math.min(STEP, length / 20);
  for (let i = 0; i <= MOST_STEPS; i++) {
    const y = end + way * (inset + i * step);
    const box = { minX: Math.min(from, tip), maxX: Math.max(from, tip), minY: y - AIR, maxY: y + AIR };
    if (!others.some((run) => runMeetsBox(run, box))) return y;
  }
  return end + way * inset;
}

function arrow(from: number, tip: number, y: number): readonly Mark[] {
  const way = Math.sign(tip - from);
  const head = Math.min(HEAD, Math.abs(tip - from) / 2);
  return [
    strokeLine({ x: from, y }, { x: tip - way * head * 0.8, y }, 'measure'),
    arrowHead({ x: tip, y }, { x: way, y: 0 }, head),
  ];
}

function arrowRun(from: number, tip: number, y: number): readonly Point[] {
  return [
    { x: from, y: y - HEAD / 2 },
    { x: tip, y: y - HEAD / 2 },
    { x: tip, y: y + HEAD / 2 },
    { x: from, y: y + HEAD / 2 },
  ];
}
