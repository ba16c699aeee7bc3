import type { Piece } from '../piece/index.ts';
import { COMMON_PRACTICE, defineStep, done, lengthParam } from './step.ts';
import { stripPiece, tellStrip } from './strip.ts';

/** The ends of the tube overlap by 2 to 3 cm; the band is 2 cm longer than round the gathers (common practice, no source), mm. */
const OVERLAP = 25;
const BAND_OVERLAP = 20;

/** A sewn bow without tails at the edge of each sleeve or armhole, over the shoulder. */
export const sleeveBow = defineStep({
  id: 'sleeve-bow',
  stage: 'trim',
  kind: 'sleeve-bow',
  params: {
    bowSpan: lengthParam(
      ({ body }) => body.values.upperArmGirth.mm * 0.5,
      () => [30, 250],
      COMMON_PRACTICE,
    ),
    bowWidth: lengthParam(
      () => 45,
      () => [15, 120],
      COMMON_PRACTICE,
    ),
    bandRound: lengthParam(
      () => 15,
      () => [4, 60],
      'measure the gathered tube (common practice, no source)',
    ),
    bandWidth: lengthParam(
      () => 20,
      () => [8, 60],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Bow on the sleeve edge',
    about: 'A sewn bow without tails on the edge of each sleeve, over the shoulder.',
    bowSpan: 'Span of the bow',
    bowWidth: 'Finished width of the tube',
    bandRound: 'Thickness of the tube where the band holds it',
    bandWidth: 'Finished width of the band',
    'piece.tube': 'Sleeve bow, tube',
    'piece.band': 'Sleeve bow, band',
    draw: 'Bow on the sleeve edge',
    'draw.sew':
      'For each arm sew a tube and overlap its ends by {overlap} behind the middle. Gather it and close the band over it. Sew the bow on firmly at the edge of the sleeve, in line with the shoulder seam: a child must not be able to pull it off. It has no tails; local rules may limit them.',
  },
  apply: ({ garment, bench }, values) => {
    const part = (name: 'tube' | 'band', length: number, width: number): Piece =>
      stripPiece({
        id: name === 'tube' ? 'sleeve-bow' : 'sleeve-bow-band',
        title: { key: `sleeve-bow.piece.${name}`, values: {} },
        length,
        width,
        upper: 'fold',
        lower: 'free',
        left: 'attach',
        right: 'attach',
        cutting: { as: 'fold', copies: 2 },
        grain: 'along',
      });
    const [width, bandWidth] = [bench.rounded(values.bowWidth), bench.rounded(values.bandWidth)];
    const tube = part('tube', 2 * bench.rounded(values.bowSpan) + OVERLAP, width);
    const band = part('band', 2 * bench.rounded(values.bandRound) + BAND_OVERLAP, bandWidth);
    bench.part({ key: 'sleeve-bow.draw', values: {} });
    tellStrip(bench, tube, width);
    tellStrip(bench, band, bandWidth);
    bench.tell('sleeve-bow.draw.sew', { overlap: { mm: OVERLAP } });
    return done({
      ...garment,
      pieces: [...garment.pieces, tube, band],
      trims: [...garment.trims, { kind: 'sewn-bow', place: 'sleeve', tail: 0, pieces: [tube.id, band.id] }],
    });
  },
});
