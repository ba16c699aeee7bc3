import {
  add,
  curveThrough,
  direction,
  distance,
  linePath,
  outward,
  pathAt,
  pathLength,
  scale,
} from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Piece, pieceOf, reshape, withPiece } from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam } from './step.ts';
import { turnEnd } from './turn-end.ts';

/** Shortest side seam that may be left when the armhole comes down, mm. */
const SHORTEST_SIDE = 40;

/** Sloping or square shoulders: the shoulder tip comes down or up, and the whole armhole with it. */
export const shoulderSlope = defineStep({
  id: 'shoulder-slope',
  stage: 'figure',
  kind: 'shoulder-slope',
  params: {
    shoulders: choiceParam(['sloping', 'square'], 'sloping', COMMON_PRACTICE),
    by: lengthParam(
      () => 6,
      () => [0, 25],
      'measured on the child, from the level of the neck point; 5-10 mm is a clear difference (common practice, no source)',
    ),
  },
  words: {
    title: 'Slope of the shoulders',
    about:
      'Lowers the shoulder tips for sloping shoulders, or raises them for square ones; the armholes go with them.',
    shoulders: 'Shoulders',
    'shoulders.sloping': 'Sloping',
    'shoulders.square': 'Square',
    by: 'Shoulder tips lower, or higher, by',
    'above-neck': 'Raising the shoulder tips by {by} would put them above the neck. {most} is the most here.',
    'no-side-left': 'Lowering the armhole by {by} leaves no side seam. {most} is the most here.',
    'draw.front': 'Slope of the shoulder, front',
    'draw.back': 'Slope of the shoulder, back',
    'draw.lower':
      'Move the shoulder tip down by {by}; keep the length of the shoulder. Move the underarm along the side seam as far, and draw the armhole again with the same curve.',
    'draw.raise':
      'Move the shoulder tip up by {by}; keep the length of the shoulder. Draw the side seam on upward as far, and draw the armhole again with the same curve.',
  },
  apply: ({ garment, bench }, values) => {
    const by = bench.rounded(values.by) * (values.shoulders === 'sloping' ? 1 : -1);
    let dress = garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const fall = edgeEnd(piece, 'shoulder').y - edgeStart(piece, 'shoulder').y;
      if (-by > fall)
        return cannot('shoulder-slope.above-neck', { by: { mm: -by }, most: { mm: Math.max(fall, 0) } });
      const room = pathLength(edgeOf(piece, 'side').path) - SHORTEST_SIDE;
      if (by > room)
        return cannot('shoulder-slope.no-side-left', { by: { mm: by }, most: { mm: Math.max(room, 0) } });
      const sloped = slopeShoulder(piece, by);
      bench.part(
        { key: `shoulder-slope.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell(
        by < 0 ? 'shoulder-slope.draw.raise' : 'shoulder-slope.draw.lower',
        { by: { mm: Math.abs(by) } },
        { lines: [edgeOf(sloped, 'shoulder').path, edgeOf(sloped, 'armhole').path] },
      );
      dress = withPiece(dress, sloped);
    }
    return done(dress);
  },
});

/** The armhole keeps its depth and its middle; neckline and armhole still meet the shoulder square. */
function slopeShoulder(piece: Piece, by: number): Piece {
  const neckPoint = edgeStart(piece, 'shoulder');
  const oldTip = edgeEnd(piece, 'shoulder');
  const length = distance(neckPoint, oldTip);
  const fall = oldTip.y - neckPoint.y + by;
  const tip = {
    x: neckPoint.x + Math.sqrt(Math.max(length * length - fall * fall, 0)),
    y: neckPoint.y + fall,
  };
  const along = direction(neckPoint, tip);
  const [underarm, foot] = [edgeStart(piece, 'side'), edgeEnd(piece, 'side')];
  const downSide = direction(underarm, foot);
  const newUnderarm = add(underarm, scale(downSide, by));
  const armhole = edgeOf(piece, 'armhole').path;
  const middle = pathAt(armhole, pathLength(armhole) * MIDDLE).point;
  return reshape(piece, {
    neckline: turnEnd(edgeOf(piece, 'neckline').path, outward(along)),
    shoulder: linePath(neckPoint, tip),
    armhole: curveThrough([tip, { x: middle.x, y: middle.y + by }, newUnderarm], {
      start: scale(outward(along), -1),
      end: outward(downSide),
    }),
    side: linePath(newUnderarm, foot),
  });
}

/** Where along the armhole its shape is kept: where the block's own middle point lies, about. */
const MIDDLE = 0.45;
