import {
  boundsUnion,
  type Outline,
  outlineContains,
  type Path,
  pathAt,
  pathBounds,
  pathLength,
  pathNearest,
  pathSlice,
} from '../geometry/index.ts';
import type { SketchLine } from './sketch.ts';

/** What is sewn on: its own lines, and the outlines beneath which the dress is no longer seen. */
export interface LaidOn {
  readonly lines: readonly SketchLine[];
  readonly covers: readonly Outline[];
}

export const NOTHING_ON: LaidOn = { lines: [], covers: [] };

export const bothOn = (...parts: readonly LaidOn[]): LaidOn => ({
  lines: parts.flatMap((part) => part.lines),
  covers: parts.flatMap((part) => part.covers),
});

/** Lays something over what is drawn: its own lines come last, and hide what lies under them. */
export const layOver = (lines: readonly SketchLine[], on: LaidOn): readonly SketchLine[] => [
  ...hiddenUnder(lines, on.covers),
  ...on.lines,
];

/** A line so near to the rim of a cover is the rim itself, and seen, mm. */
const RIM = 0.5;
/** What is left of a line between a cover and its rim is not drawn when it is shorter than this, mm. */
const LEAST = 4 * RIM;
/** A line is looked at so often along its way, mm; less is not told apart. */
const STEP = 3;

/** Leaves out what lies under the covers. A closed shape of net stays whole, as it is a light layer. */
export function hiddenUnder(lines: readonly SketchLine[], covers: readonly Outline[]): readonly SketchLine[] {
  return covers.reduce((left, cover) => left.flatMap((line) => outside(line, cover)), lines);
}

function outside(line: SketchLine, cover: Outline): readonly SketchLine[] {
  const [box, path] = [pathBounds(cover), pathBounds(line.path)];
  const all = boundsUnion(box, path);
  const apart =
    all.maxX - all.minX > box.maxX - box.minX + path.maxX - path.minX ||
    all.maxY - all.minY > box.maxY - box.minY + path.maxY - path.minY;
  if (line.net === true || apart) return [line];
  return seenParts(line.path, cover).map((part) => (part === line.path ? line : { ...line, path: part }));
}

function seenParts(path: Path, cover: Outline): readonly Path[] {
  const length = pathLength(path);
  const box = pathBounds(cover);
  const covered = (at: number): boolean => {
    const { point } = pathAt(path, at);
    if (point.x < box.minX || point.x > box.maxX || point.y < box.minY || point.y > box.maxY) return false;
    return outlineContains(cover, point) && pathNearest(cover, point).distance > RIM;
  };
  const count = Math.max(8, Math.ceil(length / STEP));
  const states = Array.from({ length: count + 1 }, (_, i) => covered((i * length) / count));
  if (states.every((state) => !state)) return [path];
  const parts: Path[] = [];
  let from: number | null = states[0] === false ? 0 : null;
  for (let i = 1; i <= count; i++) {
    if (states[i] === states[i - 1]) continue;
    const at = changeBetween(covered, ((i - 1) * length) / count, (i * length) / count);
    if (from === null) from = at;
    else {
      if (at - from > LEAST) parts.push(pathSlice(path, from, at));
      from = null;
    }
  }
  if (from !== null && length - from > LEAST) parts.push(pathSlice(path, from, length));
  return parts;
}

/** Where a line goes under or comes out, by halving. */
function changeBetween(covered: (at: number) => boolean, from: number, to: number): number {
  const start = covered(from);
  let [low, high] = [from, to];
  for (let i = 0; i < 12; i++) {
    const middle = (low + high) / 2;
    if (covered(middle) === start) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
