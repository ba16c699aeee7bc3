import { edgeLength, edgeOf, findEdge, type Garment, type Piece, withPiece } from '../piece/index.ts';
import { bandOn, SLEEVE_END_WORDS, sleeveEdgeAs } from './sleeve-ends.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam } from './step.ts';

/** A folded band round the end of a sleeve that has a plain hem. */
export const sleeveBand = defineStep({
  id: 'sleeve-band',
  stage: 'finish',
  kind: 'sleeve-end',
  params: {
    bandEase: lengthParam(
      () => 30,
      () => [25, 40],
      'sleeve hem on the bare arm 2.5-4 cm (common practice, no source)',
    ),
    bandDepth: lengthParam(
      () => 20,
      () => [10, 60],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Sleeve band',
    about: 'A folded band round the end of a short sleeve.',
    bandEase: 'Ease round the arm',
    bandDepth: 'Finished depth; the sleeve gets so much longer',
    'no-sleeve':
      'A sleeve band needs a sleeve that closes round the arm and has a plain hem. Add a set-in sleeve, or give the puff sleeve its own band.',
    ...SLEEVE_END_WORDS,
  },
  apply: ({ garment, body, bench }, values) => {
    const sleeve = plainSleeve(garment);
    if (sleeve === null) return cannot('sleeve-band.no-sleeve');
    const hem = edgeLength(sleeve, 'sleeve-edge');
    const wished = bench.rounded(body.values.upperArmGirth.mm + values.bandEase);
    return done(
      bandOn(withPiece(garment, sleeveEdgeAs(sleeve, 'attach')), bench, {
        step: 'sleeve-band',
        kind: 'band',
        // A band that would be wider than the sleeve is as wide.
        length: Math.min(wished, hem),
        overlap: 0,
        depth: bench.rounded(values.bandDepth),
        hem: [{ piece: sleeve.id, edge: 'sleeve-edge', times: 2, reversed: true }],
      }),
    );
  },
});

/** The sleeve whose hem nothing else is done to yet. */
function plainSleeve(garment: Garment): Piece | null {
  const sleeve = garment.pieces.find(
    (piece) => piece.id === 'sleeve' && findEdge(piece, 'underarm-front') !== undefined,
  );
  if (sleeve === undefined || sleeve.markings.some((marking) => marking.kind === 'gather')) return null;
  const { kind } = edgeOf(sleeve, 'sleeve-edge');
  return kind === 'sleeve-hem' || kind === 'curved-sleeve-hem' ? sleeve : null;
}
