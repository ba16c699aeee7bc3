/** Points [x, y] with x rising; at least two. */
export type Curve = readonly [CurvePoint, CurvePoint, ...CurvePoint[]];

type CurvePoint = readonly [x: number, y: number];

/** Value and steepness at x by straight lines between the points; beyond the ends the last line is carried on. */
export function readCurve(curve: Curve, x: number): { readonly y: number; readonly slope: number } {
  let [from, to] = curve;
  for (let i = 2; i < curve.length && x > to[0]; i++) {
    from = to;
    to = curve[i] ?? to;
  }
  const slope = (to[1] - from[1]) / (to[0] - from[0]);
  return { y: from[1] + (x - from[0]) * slope, slope };
}

/** The x at which a rising curve has the value y. */
export function readCurveBackwards(curve: Curve, y: number): { readonly x: number; readonly slope: number } {
  const [first, second, ...rest] = curve;
  const turned: Curve = [flip(first), flip(second), ...rest.map(flip)];
  const { y: x, slope } = readCurve(turned, y);
  return { x, slope };
}

function flip([x, y]: CurvePoint): CurvePoint {
  return [y, x];
}

/** Beyond the ends of a curve nothing is known: true there. */
export function isBeyond(curve: Curve, x: number): boolean {
  return x < curve[0][0] || x > (curve.at(-1) ?? curve[0])[0];
}

/** As `readCurve`, but beyond the ends the end value stays. */
export function readCurveWithin(curve: Curve, x: number): number {
  const last = curve.at(-1) ?? curve[0];
  return readCurve(curve, Math.min(Math.max(x, curve[0][0]), last[0])).y;
}
