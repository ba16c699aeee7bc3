import {
  curveBetween,
  pathEnd,
  pathEndTangent,
  pathLength,
  pathSlice,
  pathStart,
  pathStartTangent,
} from '../geometry/index.ts';
import { edgeLength, edgeOf, type Piece, pieceOf, reshape, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { cannot, defineStep, done, lengthParam } from './step.ts';

/** Shortest side seam that is left above a raised waist, mm: enough to hold the two halves together. */
const SHORTEST_SIDE = 25;

/** Moves the waist seam above the natural waist, as dresses for young children are often cut. */
export const waistLevel = defineStep({
  id: 'waist-level',
  stage: 'shape',
  kind: 'waist-level',
  params: {
    raise: lengthParam(
      ({ body }) => (body.ageMonths !== null && body.ageMonths < 96 ? 25 : 0),
      ({ garment }) => [0, edgeLength(pieceOf(garment, 'front'), 'side') - SHORTEST_SIDE],
      '1-2 in above the waist, most of all for the youngest (childrenswear designer, 4 May 2006)',
    ),
  },
  words: {
    title: 'Waist level',
    about: 'Puts the waist seam above the natural waist.',
    raise: 'How far above the waist',
    'too-high': 'Raising the waist by {raise} leaves no side seam. Raise it by {most} at most.',
    'draw.front': 'Waist level, front',
    'draw.back': 'Waist level, back',
    'draw.raise':
      'Move the waist line up by {raise} at the side and at the centre, and draw it again with the same curve.',
  },
  apply: ({ garment, bench }, { raise: wished }) => {
    const raise = bench.rounded(wished);
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const most = edgeLength(piece, 'side') - SHORTEST_SIDE;
      if (raise > most) return cannot('waist-level.too-high', { raise: { mm: raise }, most: { mm: most } });
      const raised = raise === 0 ? piece : raiseWaist(piece, raise);
      bench.part(
        { key: `waist-level.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        'waist-level.draw.raise',
        { raise: { mm: raise } },
        { lines: [edgeOf(raised, 'waist').path] },
      );
      dress = withPiece(dress, raised);
    }
    return done(dress);
  },
});

function raiseWaist(piece: Piece, raise: number): Piece {
  const side = edgeOf(piece, 'side').path;
  const centre = edgeOf(piece, 'centre').path;
  const waist = edgeOf(piece, 'waist').path;
  const shorterSide = pathSlice(side, 0, pathLength(side) - raise);
  const shorterCentre = pathSlice(centre, raise, pathLength(centre));
  const [from, to] = [pathEnd(shorterSide), pathStart(shorterCentre)];
  return reshape(piece, {
    side: shorterSide,
    waist: curveBetween(from, pathStartTangent(waist), to, pathEndTangent(waist)),
    centre: shorterCentre,
  });
}
