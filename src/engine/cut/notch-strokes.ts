import {
  add,
  distance,
  type Line,
  line,
  linePath,
  outward,
  type Path,
  pathAt,
  pathCrossings,
  pathLength,
  scale,
} from '../geometry/index.ts';
import type { Notch } from '../piece/index.ts';
import type { AllowedEdge } from './allowed-edge.ts';

/** Between the two strokes of a double notch, mm (common practice, no source). */
const DOUBLE = 6;
/** Length of a stroke, mm; in a narrow allowance it stays this share away from the stitching. */
const STROKE = 6;
const SHARE = 0.6;
/** On an edge without allowance the stroke runs into the piece, so it is kept short, mm. */
const STROKE_WITHOUT = 3;

/**
 * The strokes of a notch: from the cutting line inwards, square to the stitching line at the place that must
 * match. A double notch is two strokes with the place in the middle, moved along where the edge ends.
 */
export function notchStrokes(notch: Notch, { edge, allowance }: AllowedEdge, cuttingLine: Path): Line[] {
  const length = pathLength(edge.path);
  if (notch.style === 'single') return [strokeAt(edge.path, notch.at, allowance, cuttingLine)];
  const room = Math.max(0, length - DOUBLE);
  const first = Math.min(room, Math.max(0, notch.at - DOUBLE / 2));
  return [first, Math.min(length, first + DOUBLE)].map((at) =>
    strokeAt(edge.path, at, allowance, cuttingLine),
  );
}

function strokeAt(stitching: Path, at: number, allowance: number, cuttingLine: Path): Line {
  const { point, tangent } = pathAt(stitching, at);
  const out = outward(tangent);
  const expected = add(point, scale(out, allowance));
  if (allowance === 0) return line(expected, add(expected, scale(out, -STROKE_WITHOUT)));
  // Near a corner the cutting line lies elsewhere than the allowance says: look where the way out crosses it.
  const ray = linePath(point, add(point, scale(out, 4 * allowance)));
  const hit = pathCrossings(ray, cuttingLine)[0]?.point ?? expected;
  const depth = Math.min(STROKE, SHARE * distance(point, hit));
  return line(hit, add(hit, scale(out, -depth)));
}
