import { edgeEnd, edgeOf, type Piece, pieceOf, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { moveFoot } from './bodice-foot.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam } from './step.ts';

/** Takes the side seams in, or lets them out, at the waist. */
export const sideShaping = defineStep({
  id: 'side-shaping',
  stage: 'shape',
  kind: 'side-shaping',
  params: {
    takeIn: lengthParam(
      () => 0,
      () => [0, 40],
      COMMON_PRACTICE,
    ),
    letOut: lengthParam(
      () => 0,
      () => [0, 60],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Side shaping',
    about: 'Takes each side seam in at the waist, or lets it out.',
    takeIn: 'Take in at each side seam',
    letOut: 'Let out at each side seam',
    both: 'Side seams are taken in by {takeIn} and let out by {letOut}. Give one of the two.',
    'draw.front': 'Side shaping, front',
    'draw.back': 'Side shaping, back',
    'draw.in':
      'From the waist at the side measure {by} toward the centre. Join to the underarm with a straight line.',
    'draw.out':
      'From the waist at the side measure {by} away from the centre. Join to the underarm with a straight line.',
  },
  apply: ({ garment, bench }, { takeIn, letOut }) => {
    if (takeIn > 0 && letOut > 0) {
      return cannot('side-shaping.both', { takeIn: { mm: takeIn }, letOut: { mm: letOut } });
    }
    const shift = bench.rounded(letOut) - bench.rounded(takeIn);
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const shaped = shift === 0 ? piece : shapeSide(piece, shift);
      bench.part(
        { key: `side-shaping.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        shift < 0 ? 'side-shaping.draw.in' : 'side-shaping.draw.out',
        { by: { mm: Math.abs(shift) } },
        { lines: [edgeOf(shaped, 'side').path, edgeOf(shaped, 'waist').path] },
      );
      dress = withPiece(dress, shaped);
    }
    return done(dress);
  },
});

/** Moves the foot of the side seam along the level of the waist. */
function shapeSide(piece: Piece, shift: number): Piece {
  const foot = edgeEnd(piece, 'side');
  return moveFoot(piece, { x: foot.x + shift, y: foot.y });
}
