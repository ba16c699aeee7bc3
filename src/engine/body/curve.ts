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

/** The x at which a rising curve has the value y, and how fast x moves with y; never beyond the ends. */
export function readCurveBackwards(curve: Curve, y: number): { readonly x: number; readonly slope: number } {
  const [first, second, ...rest] = curve;
  const { y: x, slope } = readCurve([flip(first), flip(second), ...rest.map(flip)], y);
  return { x: Math.min(Math.max(x, first[0]), lastPoint(curve)[0]), slope };
}

function flip([x, y]: CurvePoint): CurvePoint {
  return [y, x];
}

/** Beyond the ends of a curve nothing is known: true there. */
export function isBeyond(curve: Curve, x: number): boolean {
  return x < curve[0][0] || x > lastPoint(curve)[0];
}

/** As `readCurve`, but beyond the ends the end value stays. */
export function readCurveWithin(curve: Curve, x: number): number {
  return readCurve(curve, Math.min(Math.max(x, curve[0][0]), lastPoint(curve)[0])).y;
}

function lastPoint(curve: Curve): CurvePoint {
  return curve.at(-1) ?? curve[0];
}
