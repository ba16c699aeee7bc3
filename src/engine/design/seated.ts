import { edgeEnd, edgeOf, edgeStart, pieceOf, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { moveFoot } from './bodice-foot.ts';
import { cannot, defineStep, done, lengthParam } from './step.ts';

/** Shortest centre that may be left in front, mm. */
const SHORTEST_CENTRE = 60;

/** For a child who sits all day, as in a wheelchair: the back longer, the front shorter, sides as they are. */
export const seated = defineStep({
  id: 'seated',
  stage: 'figure',
  kind: 'seated',
  params: {
    backLonger: lengthParam(
      () => 20,
      () => [0, 60],
      'measured on the seated child, nape to seat level (common practice, no source)',
    ),
    frontShorter: lengthParam(
      () => 15,
      () => [0, 50],
      'measured on the seated child, neck to lap (common practice, no source)',
    ),
  },
  words: {
    title: 'For sitting',
    about:
      'For a wheelchair user: the back is longer and the front shorter, so that the waist lies level when she sits.',
    backLonger: 'Centre back longer by',
    frontShorter: 'Centre front shorter by',
    'too-short': 'Shortening the front by {by} leaves no room below the neckline. {most} is the most here.',
    'draw.front': 'For sitting, front',
    'draw.back': 'For sitting, back',
    'draw.longer':
      'Move the waist at the centre down by {by} and draw it again in one smooth curve, square at the side and at the centre.',
    'draw.shorter':
      'Move the waist at the centre up by {by} and draw it again in one smooth curve, square at the side and at the centre.',
    'draw.opening':
      'Place the opening where she is dressed. When she is dressed seated and leaning forward, let it run the whole way down the back: choose a closing in the back, and “Back open to the hem”. Keep thick seams, buttons and bows away from where she leans and sits, and ask whoever dresses her.',
  },
  apply: ({ garment, bench }, values) => {
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const by = half === 'back' ? bench.rounded(values.backLonger) : -bench.rounded(values.frontShorter);
      const foot = edgeEnd(piece, 'side');
      const centre = edgeEnd(piece, 'waist');
      // Not above the underarm either: the waist must still run inward.
      const room =
        centre.y - Math.max(edgeEnd(piece, 'centre').y + SHORTEST_CENTRE, edgeStart(piece, 'side').y + 20);
      if (-by > room) return cannot('seated.too-short', { by: { mm: -by }, most: { mm: Math.max(room, 0) } });
      const moved = moveFoot(piece, foot, { x: centre.x, y: centre.y + by });
      bench.part(
        { key: `seated.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        by < 0 ? 'seated.draw.shorter' : 'seated.draw.longer',
        { by: { mm: Math.abs(by) } },
        { lines: [edgeOf(moved, 'waist').path] },
      );
      if (half === 'back') bench.tell('seated.draw.opening', {});
      dress = withPiece(dress, moved);
    }
    return done(dress);
  },
});
