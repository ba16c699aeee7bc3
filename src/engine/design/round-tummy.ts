import { edgeEnd, edgeOf, pieceOf, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { footMovedOut, moveFoot } from './bodice-foot.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam } from './step.ts';

/** A round tummy: the front is longer at the centre, and the waist wider. */
export const roundTummy = defineStep({
  id: 'round-tummy',
  stage: 'figure',
  kind: 'round-tummy',
  params: {
    longer: lengthParam(
      () => 10,
      () => [0, 30],
      'front longer than back by 0.5-1.5 cm for the tummy, beyond what the block has (common practice, no source)',
    ),
    wider: lengthParam(
      () => 20,
      () => [0, 80],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Round tummy',
    about: 'A longer centre front and a wider waist.',
    longer: 'Centre front longer by',
    wider: 'Waist wider by, all round',
    'side-leans': 'Widening the waist by {wider} would make the short side seam lean too far. Widen it less.',
    'draw.front': 'Round tummy, front',
    'draw.back': 'Round tummy, back',
    'draw.wider':
      'Move the foot of the side seam out by {out}, keep the length of the seam, and rule it again.',
    'draw.longer':
      'Move the waist at the centre down by {by} and draw it again in one smooth curve, square at the side and at the centre.',
  },
  apply: ({ garment, bench }, values) => {
    const out = bench.rounded(values.wider / 4);
    const longer = bench.rounded(values.longer);
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const foot = footMovedOut(piece, out);
      if (foot === null) return cannot('round-tummy.side-leans', { wider: { mm: values.wider } });
      const down = half === 'front' ? longer : 0;
      const centre = edgeEnd(piece, 'waist');
      const moved = moveFoot(piece, foot, { x: centre.x, y: centre.y + down });
      const lines = [edgeOf(moved, 'side').path, edgeOf(moved, 'waist').path];
      bench.part(
        { key: `round-tummy.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell('round-tummy.draw.wider', { out: { mm: out } }, { lines });
      if (down > 0) bench.tell('round-tummy.draw.longer', { by: { mm: down } }, { lines });
      dress = withPiece(dress, moved);
    }
    return done(dress);
  },
});
