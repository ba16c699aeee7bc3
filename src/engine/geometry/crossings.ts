import { boundsMeet, pathBounds, segmentBounds } from './bounds.ts';
import { segmentLength, segmentLengthTo } from './length.ts';
import { distance } from './points.ts';
import { segmentCrossings } from './segment-crossings.ts';
import type { Path, Point } from './types.ts';

/** Meetings nearer than this along both paths are one, mm. */
const ONE = 1e-4;

/** A place where two paths meet, with its distance along each, mm. */
export interface Crossing {
  readonly point: Point;
  readonly atA: number;
  readonly atB: number;
}

/**
 * Where two paths meet: crossings, touches and ends that lie on the other, in the order of `a`.
 * Stretches along which both run together are told by their two ends. Curves that lie within about 0.01 mm
 * of each other over a distance without coinciding may be told with fewer or more meetings than there are.
 */
export function pathCrossings(a: Path, b: Path): Crossing[] {
  if (!boundsMeet(pathBounds(a), pathBounds(b), 1e-6)) return [];
  const found: Crossing[] = [];
  const boxesB = b.segments.map(segmentBounds);
  let beforeA = 0;
  for (const s of a.segments) {
    const boxA = segmentBounds(s);
    let beforeB = 0;
    for (const [j, r] of b.segments.entries()) {
      const boxB = boxesB[j];
      if (boxB !== undefined && boundsMeet(boxA, boxB, 1e-6)) {
        for (const hit of segmentCrossings(s, r)) {
          const atA = beforeA + segmentLengthTo(s, hit.ta);
          const atB = beforeB + segmentLengthTo(r, hit.tb);
          keep(found, { point: hit.point, atA, atB });
        }
      }
      beforeB += segmentLength(r);
    }
    beforeA += segmentLength(s);
  }
  return found.sort((p, q) => p.atA - q.atA || p.atB - q.atB);
}

function keep(found: Crossing[], hit: Crossing): void {
  const known = found.some(
    (f) =>
      Math.abs(f.atA - hit.atA) < ONE &&
      Math.abs(f.atB - hit.atB) < ONE &&
      distance(f.point, hit.point) < ONE,
  );
  if (!known) found.push(hit);
}
