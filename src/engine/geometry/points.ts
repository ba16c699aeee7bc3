import type { Point, Vector } from './types.ts';

export function point(x: number, y: number): Point {
  return { x, y };
}

export function add(a: Point, b: Vector): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The shift that leads from `b` to `a`. */
export function subtract(a: Point, b: Point): Vector {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function scale(v: Vector, k: number): Vector {
  return { x: v.x * k, y: v.y * k };
}

export function dot(a: Vector, b: Vector): number {
  return a.x * b.x + a.y * b.y;
}

/** Positive when `b` turns to the right hand of `a` (y points down). */
export function cross(a: Vector, b: Vector): number {
  return a.x * b.y - a.y * b.x;
}

export function vectorLength(v: Vector): number {
  return Math.sqrt(v.x * v.x + v.y * v.y);
}

export function distance(a: Point, b: Point): number {
  return vectorLength(subtract(a, b));
}

/** The point a share `t` of the way from `a` to `b`; beyond them for t outside 0..1. */
export function between(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

export function midpoint(a: Point, b: Point): Point {
  return between(a, b, 0.5);
}

/** The same direction with length 1. Throws on a vector without length: that is a mistake of the caller. */
export function unit(v: Vector): Vector {
  const length = vectorLength(v);
  if (!(length > 0)) throw new Error('A vector without length has no direction.');
  return { x: v.x / length, y: v.y / length };
}

/** Unit vector from one point to another. Throws when they are the same point. */
export function direction(from: Point, to: Point): Vector {
  return unit(subtract(to, from));
}

/** Turned by an angle in radians, positive to the right hand (clockwise on paper, as y points down). */
export function rotate(v: Vector, radians: number): Vector {
  const cosine = Math.cos(radians);
  const sine = Math.sin(radians);
  return { x: v.x * cosine - v.y * sine, y: v.x * sine + v.y * cosine };
}

/** The normal on the left hand of a direction, where the waste lies when an outline is walked. */
export function outward(v: Vector): Vector {
  return { x: v.y, y: -v.x };
}

/** Angle between two directions in radians, 0 to pi. */
export function angleBetween(a: Vector, b: Vector): number {
  return Math.atan2(Math.abs(cross(a, b)), dot(a, b));
}

/** Where the straight line through `p` meets the one through `q`; null when they run parallel. */
export function lineCrossing(p: Point, dirP: Vector, q: Point, dirQ: Vector): Point | null {
  const turn = cross(dirP, dirQ);
  if (Math.abs(turn) <= 1e-12 * vectorLength(dirP) * vectorLength(dirQ)) return null;
  return add(p, scale(dirP, cross(subtract(q, p), dirQ) / turn));
}
