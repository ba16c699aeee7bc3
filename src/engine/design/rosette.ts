import { freshId } from './long-strip.ts';
import { defineStep, done, lengthParam, ratioParam } from './step.ts';
import { stripPiece, tellStrip } from './strip.ts';

/** A doubled strip, gathered and rolled up into a flower. */
export const rosette = defineStep({
  id: 'rosette',
  stage: 'trim',
  kind: null,
  params: {
    rosetteDiameter: lengthParam(
      () => 60,
      () => [20, 200],
      'finished; the doubled strip is half as wide (common practice, no source)',
    ),
    turns: ratioParam(() => 2.5, [1, 6], 'how often it is rolled round (common practice, no source)'),
    rosetteRatio: ratioParam(() => 1.5, [1, 3], 'gathered lightly (common practice, no source)'),
  },
  words: {
    title: 'Rosette',
    about: 'A flower rolled from a gathered strip of doubled cloth.',
    rosetteDiameter: 'Finished, across',
    turns: 'Turns',
    rosetteRatio: 'Gathered, times',
    'piece.strip': 'Rosette strip',
    draw: 'Rosette',
    'draw.roll':
      'Round the ends off, gather the raw edges together, roll the strip up from one end and sew the foot through, firmly. A rosette that comes off is a small part.',
  },
  apply: ({ garment, bench }, values) => {
    const diameter = bench.rounded(values.rosetteDiameter);
    const width = diameter / 2;
    // The rolled edge lies half-way out on the average.
    const length = bench.rounded(Math.PI * (diameter / 2) * values.turns * values.rosetteRatio);
    const strip = stripPiece({
      id: freshId(garment, 'rosette'),
      title: { key: 'rosette.piece.strip', values: {} },
      length,
      width,
      upper: 'fold',
      lower: 'attach',
      left: 'attach',
      right: 'attach',
      cutting: { as: 'fold', copies: 1 },
      grain: 'along',
    });
    bench.part({ key: 'rosette.draw', values: {} });
    tellStrip(bench, strip, width);
    bench.tell('rosette.draw.roll', {});
    return done({ ...garment, pieces: [...garment.pieces, strip] });
  },
});
