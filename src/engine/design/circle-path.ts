import { cubic, type Path, type Point, pathOf } from '../geometry/index.ts';

/** Handle of a cubic quarter circle of radius 1. */
const QUARTER = 0.5522847498;

/** A circle, begun at its right and walked with the inside on the right hand. */
export function circlePath({ x, y }: Point, radius: number): Path {
  const at = (i: number, out: number, on: number): Point => {
    const turn = (i * Math.PI) / 2;
    const [cos, sin] = [Math.round(Math.cos(turn)), Math.round(Math.sin(turn))];
    return { x: x + radius * (cos * out - sin * on), y: y + radius * (sin * out + cos * on) };
  };
  const quarter = (i: number) =>
    cubic(at(i, 1, 0), at(i, 1, QUARTER), at(i + 1, 1, -QUARTER), at(i + 1, 1, 0));
  return pathOf(quarter(0), quarter(1), quarter(2), quarter(3));
}
