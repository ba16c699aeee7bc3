import type { Piece } from '../piece/index.ts';
import { freshId } from './long-strip.ts';
import { COMMON_PRACTICE, choiceParam, defineStep, done, lengthParam } from './step.ts';
import { stripPiece, tellStrip } from './strip.ts';
import { BOW_PLACE_WORDS, BOW_PLACES } from './trim-params.ts';

/** The ends of the tube overlap by 2 to 3 cm (common practice, no source). */
const OVERLAP = 25;
/** The band is twice as long as the gathered tube is thick, and this, mm (common practice, no source). */
const BAND_OVERLAP = 20;

/** A bow that is made up of a tube, a band round its middle and loose tails, and sewn on. */
export const sewnBow = defineStep({
  id: 'sewn-bow',
  stage: 'trim',
  kind: null,
  params: {
    place: choiceParam(BOW_PLACES, 'waist-back', COMMON_PRACTICE),
    bowSpan: lengthParam(
      () => 120,
      () => [30, 500],
      COMMON_PRACTICE,
    ),
    bowWidth: lengthParam(
      () => 60,
      () => [15, 250],
      COMMON_PRACTICE,
    ),
    bandRound: lengthParam(
      () => 20,
      () => [4, 80],
      'measure the gathered tube; 2 cm in satin (common practice, no source)',
    ),
    bandWidth: lengthParam(
      () => 25,
      () => [8, 100],
      COMMON_PRACTICE,
    ),
    bowTail: lengthParam(
      () => 80,
      () => [0, 900],
      'tails of a sewn-on bow are decorative cords; free ends of 14 cm at most (summaries of EN 14682)',
    ),
    tailWidth: lengthParam(
      () => 45,
      () => [10, 200],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Sewn bow',
    about: 'A bow made of a tube with a band round its middle, sewn on; tails if you like.',
    place: 'Where',
    ...BOW_PLACE_WORDS,
    bowSpan: 'Span of the bow',
    bowWidth: 'Finished width of the tube',
    bandRound: 'Thickness of the tube where the band holds it',
    bandWidth: 'Finished width of the band',
    bowTail: 'Length of a tail (0 for none)',
    tailWidth: 'Finished width of a tail',
    'piece.tube': 'Bow, tube',
    'piece.band': 'Bow, band',
    'piece.tail': 'Bow, tail',
    draw: 'Sewn bow',
    'draw.sew':
      'Sew the tube and overlap its ends by {overlap} behind the middle. Gather it, close the band over it, and sew the bow on firmly.',
    'draw.slant':
      'Slant one end of each tail at 45 degrees, the point on the fold. No knots or beads on the ends.',
  },
  apply: ({ garment, bench }, values) => {
    const id = freshId(garment, 'sewn-bow');
    const width = bench.rounded(values.bowWidth);
    const bandWidth = bench.rounded(values.bandWidth);
    const tail = bench.rounded(values.bowTail);
    const tailWidth = bench.rounded(values.tailWidth);
    const tube = bowPart(id, 'tube', 2 * bench.rounded(values.bowSpan) + OVERLAP, width, 1);
    const band = bowPart(
      `${id}-band`,
      'band',
      2 * bench.rounded(values.bandRound) + BAND_OVERLAP,
      bandWidth,
      1,
    );
    const tails = tail === 0 ? [] : [bowPart(`${id}-tail`, 'tail', tail + tailWidth, tailWidth, 2)];
    const pieces = [tube, band, ...tails];
    bench.part({ key: 'sewn-bow.draw', values: {} });
    tellStrip(bench, tube, width);
    tellStrip(bench, band, bandWidth);
    for (const piece of tails) tellStrip(bench, piece, tailWidth);
    bench.tell('sewn-bow.draw.sew', { overlap: { mm: OVERLAP } });
    if (tails.length > 0) bench.tell('sewn-bow.draw.slant', {});
    return done({
      ...garment,
      pieces: [...garment.pieces, ...pieces],
      trims: [
        ...garment.trims,
        {
          kind: 'sewn-bow',
          place: values.place,
          tail: tail === 0 ? 0 : tail + tailWidth,
          pieces: pieces.map((piece) => piece.id),
        },
      ],
    });
  },
});

const bowPart = (
  id: string,
  part: 'tube' | 'band' | 'tail',
  length: number,
  width: number,
  copies: number,
): Piece =>
  stripPiece({
    id,
    title: { key: `sewn-bow.piece.${part}`, values: {} },
    length,
    width,
    upper: 'fold',
    lower: 'free',
    left: 'attach',
    right: part === 'tail' ? 'free' : 'attach',
    cutting: { as: 'fold', copies },
    ...(part === 'tail' ? { slant: { left: 0, right: width } } : {}),
    grain: 'along',
  });
