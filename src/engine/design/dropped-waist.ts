import { girthBelowWaist, waistToHip } from '../body/index.ts';
import {
  curveBetween,
  curveOfLength,
  linePath,
  outward,
  type Path,
  pathEnd,
  pathEndTangent,
  pathJoin,
  pathLength,
  scale,
  type Vector,
} from '../geometry/index.ts';
import { edgeEnd, edgeOf, type Piece, pieceOf, reshape, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam } from './step.ts';

/** Shortest skirt that must still find room below a dropped waist, mm. */
const SKIRT_BELOW = 110;

/** Lets the bodice run on below the natural waist, over the hip. */
export const droppedWaist = defineStep({
  id: 'dropped-waist',
  stage: 'shape',
  kind: 'waist-level',
  params: {
    drop: lengthParam(
      ({ body }) => Math.max(20, 0.6 * waistToHip(body)),
      ({ body }) => [10, Math.max(20, body.values.waistHeight.mm - body.values.kneeHeight.mm - SKIRT_BELOW)],
      'between the waist and the widest part of the hip (common practice, no source)',
    ),
    hipEase: lengthParam(
      () => 50,
      () => [25, 120],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Dropped waist',
    about: 'The bodice runs on below the natural waist, wide enough for the hip.',
    drop: 'How far below the waist',
    hipEase: 'Ease over the hip, all round',
    'too-narrow':
      'The hip is so much wider than the waist that the side seam would flare out by {flare} over {drop}. Drop the waist further, or give less ease.',
    'draw.front': 'Dropped waist, front',
    'draw.back': 'Dropped waist, back',
    'draw.side':
      'From the waist at the side go down {drop} and move {out} out. Run the side seam on to there in a smooth curve. Draw the seam to the centre, as far below the waist there, square at both ends.',
    'draw.match-side':
      'Measure the side seam; it must be {length}, as in front. Make the curve flatter or fuller until it is.',
  },
  apply: ({ garment, bench, body }, values) => {
    const drop = bench.rounded(values.drop);
    const feet = HALVES.map((half) => edgeEnd(pieceOf(garment, half), 'side').x);
    const [front = 0, back = 0] = feet;
    const needed = (girthBelowWaist(body, drop) + values.hipEase + (garment.seatRoom ?? 0)) / 2;
    // Both halves take the same step out, so that their side seams run alike; they never get narrower than above.
    const out = bench.rounded(Math.max((needed - front - back) / 2, 0));
    if (out > drop * MOST_FLARE)
      return cannot('dropped-waist.too-narrow', { flare: { mm: out }, drop: { mm: drop } });
    let dress = garment;
    let sideLength: number | null = null;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const dropped = dropWaist(piece, drop, out, sideLength);
      bench.part(
        { key: `dropped-waist.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        'dropped-waist.draw.side',
        { drop: { mm: drop }, out: { mm: out } },
        { lines: [edgeOf(dropped, 'side').path, edgeOf(dropped, 'waist').path] },
      );
      if (sideLength !== null) bench.tell('dropped-waist.draw.match-side', { length: { mm: sideLength } });
      sideLength ??= pathLength(edgeOf(dropped, 'side').path);
      dress = withPiece(dress, dropped);
    }
    return done(dress);
  },
});

const DOWN: Vector = { x: 0, y: 1 };

/** Most that the side seam may flare below the waist, as a share of the way down. */
const MOST_FLARE = 0.9;

function dropWaist(piece: Piece, drop: number, out: number, sideLength: number | null): Piece {
  const side = edgeOf(piece, 'side').path;
  const waist = edgeOf(piece, 'waist').path;
  const foot = { x: pathEnd(side).x + out, y: pathEnd(side).y + drop };
  const below = curveBetween(pathEnd(side), pathEndTangent(side), foot, DOWN);
  const wished = sideLength === null ? null : curveOfLength(below, sideLength - pathLength(side));
  const lower: Path = wished ?? below;
  const centre = { x: pathEnd(waist).x, y: pathEnd(waist).y + drop };
  return reshape(piece, {
    side: pathJoin(side, lower),
    waist: curveBetween(foot, scale(outward(pathEndTangent(lower)), -1), centre, pathEndTangent(waist)),
    centre: linePath(centre, edgeEnd(piece, 'centre')),
  });
}
