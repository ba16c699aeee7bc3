import {
  cubic,
  linePath,
  type Path,
  type Point,
  pathJoin,
  pathMap,
  pathMirrorX,
  pathOf,
} from '../geometry/index.ts';
import type { SketchLine } from './sketch.ts';
import { hiddenUnder, type LaidOn } from './sketch-cover.ts';
import { closedShape } from './sketch-path.ts';

/** The bow that is drawn when nothing tells its size, mm: half its span, the height of a loop, its knot. */
export const BOW = { half: 62, height: 44, knot: 9 } as const;
/** Tails are drawn no longer than this, so that the sketch stays readable, mm. */
const LONGEST_TAIL = 260;

/** A bow with its knot at a place, as wide as it is, and its tails. */
export function bowAt(at: Point, half: number, tail: number): LaidOn {
  const k = half / BOW.half;
  const put = (path: Path): Path => pathMap(path, { a: k, b: 0, c: 0, d: k, e: at.x, f: at.y });
  const pair = (path: Path): readonly Path[] => [put(path), put(pathMirrorX(path))];
  const loops = pair(closedShape(LOOP));
  const tails = tail * k < BOW.height ? [] : pair(tailShape(Math.min(tail, LONGEST_TAIL) / k));
  const drawn = (paths: readonly Path[]): readonly SketchLine[] =>
    paths.map((path) => ({ stroke: 'outline', path }));
  return {
    lines: [...hiddenUnder(drawn(tails), loops), ...drawn(pair(LOOP)), ...drawn(pair(MIDDLE))],
    covers: [...loops, ...tails.map((path) => closedShape(path)), put(KNOT)],
  };
}

const { half: HALF, height: HEIGHT, knot: KNOT_SIZE } = BOW;

const LOOP: Path = pathOf(
  cubic(
    { x: KNOT_SIZE, y: -KNOT_SIZE / 2 },
    { x: HALF * 0.5, y: -HEIGHT * 0.75 },
    { x: HALF, y: -HEIGHT * 0.75 },
    { x: HALF, y: -HEIGHT * 0.3 },
  ),
  cubic(
    { x: HALF, y: -HEIGHT * 0.3 },
    { x: HALF, y: HEIGHT * 0.6 },
    { x: HALF * 0.5, y: HEIGHT * 0.4 },
    { x: KNOT_SIZE, y: KNOT_SIZE / 2 },
  ),
);

/** Half the knot, seen from the centre round to the centre. */
const MIDDLE: Path = linePath(
  { x: 0, y: -KNOT_SIZE },
  { x: KNOT_SIZE, y: -KNOT_SIZE },
  { x: KNOT_SIZE, y: KNOT_SIZE },
  { x: 0, y: KNOT_SIZE },
);

const KNOT: Path = closedShape(
  MIDDLE,
  linePath({ x: -KNOT_SIZE, y: KNOT_SIZE }, { x: -KNOT_SIZE, y: -KNOT_SIZE }),
);

function tailShape(length: number): Path {
  const spread = length * 0.22;
  return pathJoin(
    linePath({ x: KNOT_SIZE * 0.4, y: KNOT_SIZE }, { x: spread, y: length }),
    linePath({ x: spread, y: length }, { x: spread + 24, y: length - 14 }),
    linePath({ x: spread + 24, y: length - 14 }, { x: KNOT_SIZE, y: KNOT_SIZE }),
  );
}
