import { add, cubic, type Path, type Point, pathOf, type Segment } from '../geometry/index.ts';

/** One cubic for at most this angle: the radius then errs by less than a ten-millionth of itself. */
const ARC_STEP = Math.PI / 12;

/** An arc about a hub; angles turn from straight down toward the side. */
export function arc(hub: Point, radius: number, from: number, to: number): Path {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / ARC_STEP));
  const step = (to - from) / count;
  const handle = radius * (4 / 3) * Math.tan(step / 4);
  const on = (a: number): Point => add(hub, { x: radius * Math.sin(a), y: radius * Math.cos(a) });
  const pull = (a: number, by: number): Point => add(on(a), { x: by * Math.cos(a), y: -by * Math.sin(a) });
  const piece = (i: number): Segment => {
    const [a, b] = [from + i * step, i === count - 1 ? to : from + (i + 1) * step];
    return cubic(on(a), pull(a, handle), pull(b, -handle), on(b));
  };
  return pathOf(piece(0), ...Array.from({ length: count - 1 }, (_, i) => piece(i + 1)));
}
