import { edgeOf, pieceOf, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { footMovedOut, moveFoot } from './bodice-foot.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam } from './step.ts';

/** Room for nappies: a wider waist, and a note for whatever lies close over the seat. */
export const nappyRoom = defineStep({
  id: 'nappy-room',
  stage: 'figure',
  kind: 'nappy-room',
  params: {
    seat: lengthParam(
      () => 50,
      () => [0, 100],
      'babies to about 24 months: 4-6 cm in the seat of lining or drawers; full skirts need nothing (common practice, no source)',
    ),
    waist: lengthParam(
      () => 10,
      () => [0, 60],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Room for nappies',
    about: 'A little more at the waist, and room over the seat where the dress lies close there.',
    seat: 'Room over the seat, all round',
    waist: 'Waist wider by, all round',
    'side-leans': 'Widening the waist by {wider} would make the short side seam lean too far. Widen it less.',
    'draw.front': 'Room for nappies, front',
    'draw.back': 'Room for nappies, back',
    'draw.wider':
      'Move the foot of the side seam out by {out}, keep the length of the seam, and rule it again. Draw the waist square to it.',
    'draw.seat':
      'Give drawers, and a lining or a dropped waist that lies close over the seat, {seat} more than the hip measures. A full skirt needs nothing.',
  },
  apply: ({ garment, bench }, values) => {
    const out = bench.rounded(values.waist / 4);
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const foot = footMovedOut(piece, out);
      if (foot === null) return cannot('nappy-room.side-leans', { wider: { mm: values.waist } });
      const moved = moveFoot(piece, foot);
      bench.part(
        { key: `nappy-room.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        'nappy-room.draw.wider',
        { out: { mm: out } },
        { lines: [edgeOf(moved, 'side').path, edgeOf(moved, 'waist').path] },
      );
      if (half === 'back') bench.tell('nappy-room.draw.seat', { seat: { mm: values.seat } });
      dress = withPiece(dress, moved);
    }
    return done({ ...dress, seatRoom: values.seat });
  },
});
