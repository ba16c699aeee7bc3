import { ENDS, longStrip } from './long-strip.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam } from './step.ts';
import { tellStrip } from './strip.ts';
import { finishedWaist } from './trim-params.ts';
import { JOIN_ROOM } from './waist-ring.ts';

/** A doubled, stiffened belt that laps over and is hooked or buttoned. */
export const belt = defineStep({
  id: 'belt',
  stage: 'trim',
  kind: 'belt',
  params: {
    beltWidth: lengthParam(
      () => 35,
      () => [10, 120],
      COMMON_PRACTICE,
    ),
    beltOverlap: lengthParam(
      () => 50,
      () => [20, 150],
      'laps over by 4-6 cm (common practice, no source)',
    ),
    ends: choiceParam(ENDS, 'straight', COMMON_PRACTICE),
  },
  words: {
    title: 'Belt',
    about: 'A belt of doubled cloth round the waist, lapped and closed with hooks or a button.',
    beltWidth: 'Finished width',
    beltOverlap: 'Laps over by',
    ends: 'Ends',
    'ends.straight': 'Straight',
    'ends.slanted': 'Slanted at 45 degrees',
    'no-waist': 'The bodice has no waist for a belt.',
    'piece.belt': 'Belt',
    'piece.middle': 'Belt, middle length',
    draw: 'Belt',
    'draw.length': 'Waist {waist} and {overlap} to lap over: {length}. Stiffen it.',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const halves = finishedWaist(garment);
    if (halves === null) return cannot('belt.no-waist');
    const waist = 2 * (halves.front + halves.back);
    const [width, overlap] = [bench.rounded(values.beltWidth), bench.rounded(values.beltOverlap)];
    const strip = longStrip({
      id: 'belt',
      middleId: 'belt-middle',
      title: { key: 'belt.piece.belt', values: {} },
      middleTitle: { key: 'belt.piece.middle', values: {} },
      length: waist + overlap,
      width,
      ends: values.ends,
      strips: 'one',
      most: clothWidth.trim - JOIN_ROOM,
    });
    bench.part({ key: 'belt.draw', values: {} });
    const length = waist + overlap;
    bench.tell('belt.draw.length', {
      waist: { mm: waist },
      overlap: { mm: overlap },
      length: { mm: length },
    });
    for (const piece of strip.pieces) tellStrip(bench, piece, width);
    return done({
      ...garment,
      pieces: [...garment.pieces, ...strip.pieces],
      seams: [...garment.seams, ...strip.seams],
    });
  },
});
