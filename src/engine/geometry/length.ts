import { distance } from './points.ts';
import type { Cubic, Path, Segment } from './types.ts';

/** Nodes and weights of the 12-point Gauss-Legendre rule on -1..1 (half of them; the rule is symmetric). */
const NODES = [
  0.1252334085114689, 0.3678314989981802, 0.5873179542866175, 0.7699026741943047, 0.9041172563704749,
  0.9815606342467192,
];
const WEIGHTS = [
  0.2491470458134028, 0.2334925365383548, 0.2031674267230659, 0.1600783285433462, 0.1069393259953184,
  0.0471753363865118,
];

/** Two estimates of a stretch that agree to this need no further halving, mm. */
const AGREED = 1e-9;
/** Enough to follow a cusp down to lengths that do not count. */
const DEEPEST = 40;

/** The derivative of a cubic as a + b t + c t2 in each coordinate. */
interface Velocity {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
}

function velocityOf(s: Cubic): Velocity {
  const ax = 3 * (s.c1.x - s.from.x);
  const ay = 3 * (s.c1.y - s.from.y);
  const mx = 3 * (s.c2.x - s.c1.x);
  const my = 3 * (s.c2.y - s.c1.y);
  return {
    ax,
    ay,
    bx: 2 * (mx - ax),
    by: 2 * (my - ay),
    cx: ax - 2 * mx + 3 * (s.to.x - s.c2.x),
    cy: ay - 2 * my + 3 * (s.to.y - s.c2.y),
  };
}

function speedAt(v: Velocity, t: number): number {
  const x = v.ax + t * (v.bx + t * v.cx);
  const y = v.ay + t * (v.by + t * v.cy);
  return Math.sqrt(x * x + y * y);
}

function gauss(v: Velocity, t0: number, t1: number): number {
  const half = (t1 - t0) / 2;
  const middle = (t0 + t1) / 2;
  let sum = 0;
  for (let i = 0; i < 6; i++) {
    const step = half * (NODES[i] ?? 0);
    sum += (WEIGHTS[i] ?? 0) * (speedAt(v, middle - step) + speedAt(v, middle + step));
  }
  return sum * half;
}

function adaptive(v: Velocity, t0: number, t1: number, whole: number, depth: number): number {
  const middle = (t0 + t1) / 2;
  const first = gauss(v, t0, middle);
  const second = gauss(v, middle, t1);
  if (Math.abs(first + second - whole) <= AGREED || depth >= DEEPEST) return first + second;
  return adaptive(v, t0, middle, first, depth + 1) + adaptive(v, middle, t1, second, depth + 1);
}

function stretch(v: Velocity, t0: number, t1: number): number {
  return t1 > t0 ? adaptive(v, t0, t1, gauss(v, t0, t1), 0) : 0;
}

const knownLengths = new WeakMap<Cubic, number>();

/** Length of a segment in mm. Remembered for each segment object, as segments never change. */
export function segmentLength(s: Segment): number {
  if (s.kind === 'line') return distance(s.from, s.to);
  const known = knownLengths.get(s);
  if (known !== undefined) return known;
  const length = stretch(velocityOf(s), 0, 1);
  knownLengths.set(s, length);
  return length;
}

/** Length from the start of a segment to the parameter `t`, mm. */
export function segmentLengthTo(s: Segment, t: number): number {
  if (t <= 0) return 0;
  if (t >= 1) return segmentLength(s);
  if (s.kind === 'line') return t * segmentLength(s);
  return stretch(velocityOf(s), 0, t);
}

/** The parameter at a length from the start: Newton's steps, kept inside a bracket by bisection. */
export function segmentParameterAt(s: Segment, length: number): number {
  const total = segmentLength(s);
  if (length <= 0 || total <= 0) return 0;
  if (length >= total) return 1;
  if (s.kind === 'line') return length / total;
  const v = velocityOf(s);
  let low = 0;
  let high = 1;
  let t = length / total;
  let sum = stretch(v, 0, t);
  for (let i = 0; i < 80; i++) {
    const miss = sum - length;
    if (Math.abs(miss) < 1e-10) break;
    if (miss > 0) high = t;
    else low = t;
    const speed = speedAt(v, t);
    let next = speed > 0 ? t - miss / speed : Number.NaN;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (next === t) break;
    sum += next > t ? stretch(v, t, next) : -stretch(v, next, t);
    t = next;
  }
  return t;
}

/** Length of a path in mm, to 1e-6 mm, also where a curve nearly has a cusp. */
export function pathLength(p: Path): number {
  let sum = 0;
  for (const s of p.segments) sum += segmentLength(s);
  return sum;
}
