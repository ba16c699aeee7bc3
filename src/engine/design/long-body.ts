import { pathLength } from '../geometry/index.ts';
import { edgeEnd, edgeOf, pieceOf, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { moveFoot } from './bodice-foot.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam } from './step.ts';

/** Shortest side seam that may be left, mm. */
const SHORTEST_SIDE = 40;

/** A tall and thin (or a short and stout) child: the bodice gets longer (or shorter) between underarm and waist. */
export const longBody = defineStep({
  id: 'long-body',
  stage: 'figure',
  kind: 'long-body',
  params: {
    way: choiceParam(['longer', 'shorter'], 'longer', COMMON_PRACTICE),
    by: lengthParam(
      () => 15,
      () => [0, 80],
      'the difference to her own measure, where the block was drafted to an average (common practice, no source)',
    ),
  },
  words: {
    title: 'Longer or shorter body',
    about: 'Lengthens the bodice between underarm and waist, for a tall and thin child, or shortens it.',
    way: 'Body',
    'way.longer': 'Longer',
    'way.shorter': 'Shorter',
    by: 'By',
    'too-short': 'Shortening the body by {by} leaves no side seam. {most} is the most here.',
    'draw.front': 'Longer body, front',
    'draw.back': 'Longer body, back',
    'draw.longer':
      'Move the waist down by {by} at the side and at the centre. Rule the side seam again and draw the waist with the same curve, square at both ends.',
    'draw.shorter':
      'Move the waist up by {by} at the side and at the centre. Rule the side seam again and draw the waist with the same curve, square at both ends.',
  },
  apply: ({ garment, bench }, values) => {
    const by = bench.rounded(values.by) * (values.way === 'longer' ? 1 : -1);
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const room = pathLength(edgeOf(piece, 'side').path) - SHORTEST_SIDE;
      if (-by > room)
        return cannot('long-body.too-short', { by: { mm: -by }, most: { mm: Math.max(room, 0) } });
      const [foot, centre] = [edgeEnd(piece, 'side'), edgeEnd(piece, 'waist')];
      const moved = moveFoot(piece, { x: foot.x, y: foot.y + by }, { x: centre.x, y: centre.y + by });
      bench.part(
        { key: `long-body.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        by < 0 ? 'long-body.draw.shorter' : 'long-body.draw.longer',
        { by: { mm: Math.abs(by) } },
        { lines: [edgeOf(moved, 'side').path, edgeOf(moved, 'waist').path] },
      );
      dress = withPiece(dress, moved);
    }
    return done(dress);
  },
});
