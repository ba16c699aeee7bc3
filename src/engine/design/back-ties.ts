import type { Garment, Trim } from '../piece/index.ts';
import { belowWaist, centreBackLength, openBack } from './back-opening.ts';
import { withPlacket } from './back-placket.ts';
import { COMMON_PRACTICE, choiceParam, defineStep, done, flagParam, lengthParam } from './step.ts';
import { stripPiece } from './strip.ts';

/** Narrowest and widest tie that is made, and the longest, mm. */
const TIE_WIDTH = [8, 60] as const;
const LONGEST_TIE = 700;

const PLACES = {
  waist: ['waist-back'],
  neck: ['nape'],
  both: ['nape', 'waist-back'],
} as const;

/** The centre back stands open and is tied together. */
export const backTies = defineStep({
  id: 'back-ties',
  stage: 'closing',
  kind: 'closing',
  params: {
    tied: choiceParam(
      ['waist', 'neck', 'both'],
      'waist',
      'no ties at the neck for children under 7 (EN 14682, as a consumer office sums it up)',
    ),
    tieWidth: lengthParam(
      () => 20,
      () => TIE_WIDTH,
      COMMON_PRACTICE,
    ),
    tieLength: lengthParam(
      ({ body }) => Math.min(280, (body.values.waistHeight.mm - body.values.kneeHeight.mm) * 0.8),
      () => [80, LONGEST_TIE],
      'enough for a bow, and above the hem when it is undone (common practice; 36 cm at most in the 2007 edition of EN 14682)',
    ),
    belowWaist,
    placket: flagParam(true, COMMON_PRACTICE),
  },
  words: {
    title: 'Back ties',
    about: 'The centre back opens from the neck to below the waist and is tied.',
    tied: 'Tied at',
    'tied.waist': 'The waist; a press stud holds the neck',
    'tied.neck': 'The neck',
    'tied.both': 'Neck and waist',
    tieWidth: 'Width of a tie',
    tieLength: 'Length of a tie',
    belowWaist: 'Opening below the waist',
    placket: 'Strip to bind the slit in the skirt',
    'piece.tie': 'Tie',
    draw: 'Ties',
    'draw.strip':
      'Rule a strip {length} long and {width} wide and fold it lengthwise. Cut {count}; sew one to each back edge.',
    'draw.neck': 'At the neck: level with the neck edge.',
    'draw.waist': 'At the waist: just above the waist seam.',
    'draw.stud': 'A press stud holds the neck.',
    'draw.ends': 'No knots or beads on the ends. Ties can catch: follow the rules where you sell.',
  },
  apply: ({ garment, bench }, values) => {
    const places = PLACES[values.tied];
    const width = bench.rounded(values.tieWidth);
    const length = bench.rounded(values.tieLength);
    const below = bench.rounded(values.belowWaist);
    const tie = stripPiece({
      id: 'tie',
      title: { key: 'back-ties.piece.tie', values: {} },
      length,
      width,
      upper: 'fold',
      lower: 'free',
      left: 'attach',
      right: 'free',
      cutting: { as: 'fold', copies: 2 * places.length },
      grain: 'along',
    });
    bench.part({ key: 'back-ties.draw', values: {} });
    bench.tell(
      'back-ties.draw.strip',
      { length: { mm: length }, width: { mm: 2 * width }, count: 2 * places.length },
      { lines: tie.edges.map((edge) => edge.path) },
    );
    for (const place of places)
      bench.tell(place === 'nape' ? 'back-ties.draw.neck' : 'back-ties.draw.waist', {});
    if (values.tied === 'waist') bench.tell('back-ties.draw.stud', {});
    bench.tell('back-ties.draw.ends', {});
    const open = openBack(garment);
    const dress: Garment = {
      ...open,
      pieces: [...open.pieces, tie],
      closing: {
        kind: 'ties',
        openingLength: centreBackLength(garment) + below,
        pairs: places.length,
      },
      trims: [
        ...garment.trims,
        ...places.map((place): Trim => ({ kind: 'ties', place, tail: length, pieces: [tie.id] })),
      ],
    };
    return done(values.placket ? withPlacket(dress, bench, below) : dress);
  },
});
