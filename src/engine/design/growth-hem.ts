import { type Piece, withPiece } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { cannot, defineStep, done, lengthParam } from './step.ts';
import { straightDepth, straightHemmed } from './straight-hems.ts';

/** A deep hem on a straight skirt, to be let down as the child grows. */
export const growthHem = defineStep({
  id: 'growth-hem',
  stage: 'finish',
  kind: 'growth-hem',
  params: {
    hemDepth: lengthParam(
      (c) => Math.min(inches(4), 0.5 * straightDepth(c.garment)),
      (c) => {
        const depth = straightDepth(c.garment);
        return [Math.min(inches(3), 0.3 * depth), Math.min(inches(5), 0.8 * depth)];
      },
      "3-5 in on a straight gathered child's skirt, 4 typical (a maker's page on growth tucks, 2 March 2014; 5 in in Wakeman, Scientific Sewing and Garment Cutting)",
    ),
  },
  words: {
    title: 'Growth hem',
    about: 'A deep hem on a straight skirt, to be let down as the child grows.',
    hemDepth: 'Depth of the hem',
    'no-straight-hem':
      'Only a straight skirt takes a deep hem: gathered, pleated or tiered. A flared or circle skirt takes a narrow one.',
    draw: 'Growth hem',
    'draw.hem':
      '{piece}: cut {depth} more below the hem line and turn it up. It lets the skirt down by as much.',
  },
  apply: ({ garment, bench }, values) => {
    const pieces = straightHemmed(garment);
    if (pieces.length === 0) return cannot('growth-hem.no-straight-hem');
    const depth = bench.rounded(values.hemDepth);
    for (const piece of pieces) {
      bench.part(
        { key: 'growth-hem.draw', values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell('growth-hem.draw.hem', { piece: piece.title, depth: { mm: depth } });
    }
    const deep = (piece: Piece): Piece => ({
      ...piece,
      edges: piece.edges.map((edge) => (edge.name === 'hem' ? { ...edge, allowance: depth } : edge)),
    });
    return done(pieces.map(deep).reduce(withPiece, garment));
  },
});
