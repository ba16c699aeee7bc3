import { ENDS, freshId, longStrip } from './long-strip.ts';
import { COMMON_PRACTICE, choiceParam, defineStep, done, lengthParam } from './step.ts';
import { BOW_PLACE_WORDS, BOW_PLACES } from './trim-params.ts';
import { JOIN_ROOM } from './waist-ring.ts';

/** A bow tied from one strip and sewn on through its knot. */
export const tiedBow = defineStep({
  id: 'tied-bow',
  stage: 'trim',
  kind: null,
  params: {
    place: choiceParam(BOW_PLACES, 'waist-back', COMMON_PRACTICE),
    bowSpan: lengthParam(
      () => 140,
      () => [40, 500],
      'from loop end to loop end, tied (common practice, no source)',
    ),
    bowWidth: lengthParam(
      () => 50,
      () => [15, 200],
      COMMON_PRACTICE,
    ),
    bowTail: lengthParam(
      () => 85,
      () => [0, 900],
      'tails of a sewn-on bow count as decorative cords; free ends of 14 cm at most (summaries of EN 14682)',
    ),
    bowKnot: lengthParam(
      () => 60,
      () => [20, 150],
      'a knot takes 2 to 3 in (worked out; common practice)',
    ),
    ends: choiceParam(ENDS, 'slanted', COMMON_PRACTICE),
  },
  words: {
    title: 'Tied bow',
    about: 'A bow tied from one strip of doubled cloth.',
    place: 'Where',
    ...BOW_PLACE_WORDS,
    bowSpan: 'Span of the bow',
    bowWidth: 'Finished width of the strip',
    bowTail: 'Length of a tail',
    bowKnot: 'For the knot',
    ends: 'Ends',
    'ends.straight': 'Straight',
    'ends.slanted': 'Slanted at 45 degrees',
    'piece.strip': 'Bow',
    'piece.middle': 'Bow, middle length',
    draw: 'Tied bow',
    'draw.strip':
      'A loop is half the span and lies double: twice the span, twice the tail and the knot make {length}. Rule a strip so long and {width} wide with one long edge on the fold of the cloth.',
    'draw.slant': 'Slant the ends at 45 degrees, the point on the fold; this adds {width} to the fold.',
    'draw.joins': 'The cloth is too narrow: make the strip up of {lengths} equal lengths.',
    'draw.sew': 'Tie it and sew it on through the knot, firmly. No knots or beads on the ends.',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const [span, width, tail, knot] = [values.bowSpan, values.bowWidth, values.bowTail, values.bowKnot].map(
      bench.rounded,
    ) as [number, number, number, number];
    const length = 2 * span + 2 * tail + knot;
    const id = freshId(garment, 'tied-bow');
    const strip = longStrip({
      id,
      middleId: `${id}-middle`,
      title: { key: 'tied-bow.piece.strip', values: {} },
      middleTitle: { key: 'tied-bow.piece.middle', values: {} },
      length,
      width,
      ends: values.ends,
      strips: 'one',
      most: clothWidth.trim - JOIN_ROOM,
    });
    bench.part({ key: 'tied-bow.draw', values: {} });
    bench.tell(
      'tied-bow.draw.strip',
      { length: { mm: length }, width: { mm: width } },
      { lines: strip.pieces.flatMap((piece) => piece.edges.map((edge) => edge.path)) },
    );
    if (values.ends === 'slanted') bench.tell('tied-bow.draw.slant', { width: { mm: width } });
    if (strip.lengths > 1) bench.tell('tied-bow.draw.joins', { lengths: strip.lengths });
    bench.tell('tied-bow.draw.sew', {});
    const hangs = tail + (values.ends === 'slanted' ? width : 0);
    return done({
      ...garment,
      pieces: [...garment.pieces, ...strip.pieces],
      seams: [...garment.seams, ...strip.seams],
      trims: [
        ...garment.trims,
        { kind: 'tied-bow', place: values.place, tail: hangs, pieces: strip.pieces.map((p) => p.id) },
      ],
    });
  },
});
