import type { Edge, Garment, Piece } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';
import { COMMON_PRACTICE, defineStep, done, flagParam, lengthParam } from './step.ts';

/** Gives the seams that are let out when the child grows more allowance than is usual. */
export const letOutSeams = defineStep({
  id: 'let-out-seams',
  stage: 'finish',
  kind: 'let-out-seams',
  params: {
    allowance: lengthParam(
      () => inches(1.5),
      () => [inches(1), inches(3)],
      'side seam and centre back of a party dress 1 in so that they can be let out; more for a dress that is to last (common practice, no source)',
    ),
    centre: flagParam(false, COMMON_PRACTICE),
    lining: flagParam(true, COMMON_PRACTICE),
  },
  words: {
    title: 'Seams to let out',
    about: 'Wider allowances at the side seams, so that the dress can be let out as the child grows.',
    allowance: 'Allowance at the side seams',
    centre: 'At the centre back too, where it is a seam or an opening',
    lining: 'In the lining too',
    draw: 'Seams to let out',
    'draw.add':
      'Add {allowance} at the side seams when you cut. Sew them on the drawn line, neaten the edges singly and press them open; do not clip them.',
  },
  apply: ({ garment, bench }, values) => {
    const allowance = bench.rounded(values.allowance);
    bench.part({ key: 'let-out-seams.draw', values: {} });
    bench.tell('let-out-seams.draw.add', { allowance: { mm: allowance } });
    const wished = (edge: Edge): boolean =>
      edge.kind === 'side' || (values.centre && (edge.kind === 'centre' || edge.kind === 'closing'));
    const pieces = upperPieces(garment, values.lining);
    return done({
      ...garment,
      pieces: garment.pieces.map((piece) =>
        pieces.includes(piece)
          ? { ...piece, edges: piece.edges.map((edge) => (wished(edge) ? { ...edge, allowance } : edge)) }
          : piece,
      ),
    });
  },
});

/** The bodice only: skirts are full or flare, and have their own room. */
const upperPieces = (garment: Garment, lining: boolean): readonly Piece[] =>
  HALVES.flatMap((half) => [
    ...bodicePieces(garment, half),
    ...(lining ? bodicePieces(garment, half, 'lining') : []),
  ]);
