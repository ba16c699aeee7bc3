import { place } from '../construct/index.ts';
import {
  curveBetween,
  direction,
  linePath,
  outlineSelfCrossings,
  outward,
  type Path,
  type Point,
  pathAt,
  pathCrossings,
  pathEnd,
  pathLength,
  pathMirrorX,
  pathReverse,
  pathSlice,
  pathStart,
  pathStartTangent,
} from '../geometry/index.ts';
import {
  type Edge,
  edgeOf,
  edgeStart,
  findEdge,
  type Garment,
  outlineOf,
  type Piece,
  pieceOf,
  withPiece,
} from '../piece/index.ts';
import { cannot, defineStep, done, lengthParam } from './step.ts';
import { OVERLAP, OVERLAP_END, wrapSeams } from './wrap-overlap.ts';

/** Least that the two fronts overlap at the waist, to each side of the centre, mm. */
const LEAST_OVERLAP = 30;
/** A stretch of waist shorter than this beside the overlap is taken in, mm. */
const SHORT = 15;
/** Height of the blunt end of the overlap, mm: a point could not be turned. */
const END_HEIGHT = 20;

/** The stretch of front waist that reaches the centre: all of it, or what a dart or a panel has left. */
const innerWaist = (front: Piece): Edge | undefined => front.edges.findLast((edge) => edge.kind === 'waist');

const mostOverlap = (garment: Garment): number => {
  const waist = innerWaist(pieceOf(garment, 'front'));
  return waist === undefined ? LEAST_OVERLAP : Math.max(pathStart(waist.path).x, LEAST_OVERLAP);
};

/** Two fronts that cross each other; the neck runs on slanting to the waist of the other side. */
export const wrapFront = defineStep({
  id: 'wrap-front',
  stage: 'panel',
  kind: 'wrap-front',
  params: {
    reach: lengthParam(
      ({ garment }) => mostOverlap(garment),
      ({ garment }) => [LEAST_OVERLAP, mostOverlap(garment)],
      'to the side seam of the other front, or as far as its dart (common practice, no source)',
    ),
  },
  words: {
    title: 'Wrapped front',
    about:
      'Two fronts cross each other and are held together in the waist seam; the neck slants to the waist.',
    reach: 'Reaches beyond the centre at the waist by',
    parted:
      'A wrapped front has a slanting neck down to the waist, and a yoke has taken the neck away. Leave the yoke out in front.',
    'no-room':
      'The slanting neck would meet another line of the front. Let the fronts overlap less, or use a narrower neckline.',
    draw: 'Wrapped front',
    'place.wrap-end': 'the end of the overlap',
    'place.wrap-top': 'the lower end of the neck',
    'draw.waist':
      'Fold the paper on the centre and trace the waist through to the other side, {overlap} far. The overlap ends there.',
    'draw.neck':
      'From the end of the overlap measure {up} up. Draw the neck from there to the neck point, square to the shoulder line.',
    'draw.cut':
      'Cut two fronts that mirror each other and mark the centre on both. The slanting neck lies on the bias: stay-stitch it or tape it before anything else is sewn. Tack the overlap at the waist before the skirt is sewn on.',
  },
  apply: ({ garment, bench }, values) => {
    const front = pieceOf(garment, 'front');
    if (['neckline', 'shoulder', 'waist'].some((name) => findEdge(front, name) === undefined))
      return cannot('wrap-front.parted');
    const overlap = bench.rounded(values.reach);
    bench.part(
      { key: 'wrap-front.draw', values: {} },
      front.edges.map((edge) => edge.path),
    );
    const wrapped = wrap(front, overlap);
    if (outlineSelfCrossings(outlineOf(wrapped)).length > 0) return cannot('wrap-front.no-room');
    const end = pathStart(edgeOf(wrapped, OVERLAP_END).path);
    bench.tell(
      'wrap-front.draw.waist',
      { overlap: { mm: -end.x } },
      { places: [place('wrap-front.place.wrap-end', end)], lines: [edgeOf(wrapped, OVERLAP).path] },
    );
    bench.tell(
      'wrap-front.draw.neck',
      { up: { mm: END_HEIGHT } },
      {
        places: [place('wrap-front.place.wrap-top', edgeStart(wrapped, 'neckline'))],
        lines: [edgeOf(wrapped, 'neckline').path],
      },
    );
    bench.tell('wrap-front.draw.cut', {});
    const dress = withPiece(garment, wrapped);
    const whole = garment.whole.front;
    return done({
      ...dress,
      seams: [...dress.seams, ...wrapSeams(wrapped)],
      whole: whole === undefined ? dress.whole : { ...dress.whole, front: wrap(whole, overlap) },
    });
  },
});

/** The waist parted where the other front ends on it; in one where that is at its own end. */
function cutWaistAt(waist: Edge, overlap: number): readonly Edge[] {
  const { path } = waist;
  const plumb = linePath({ x: overlap, y: -1000 }, { x: overlap, y: 2000 });
  const [hit] = pathCrossings(plumb, path);
  if (hit === undefined || hit.atB < SHORT) return [waist];
  return [
    { ...waist, path: pathSlice(path, 0, hit.atB) },
    { ...waist, name: `${waist.name}-inner`, path: pathSlice(path, hit.atB, pathLength(path)) },
  ];
}

function wrap(front: Piece, wished: number): Piece {
  const inner = innerWaist(front) ?? edgeOf(front, 'waist');
  const waist = cutWaistAt(inner, wished);
  const covered = waist.at(-1) ?? inner;
  const overlap = pathReverse(pathMirrorX(covered.path));
  const end = pathEnd(overlap);
  const top: Point = { x: end.x, y: end.y - END_HEIGHT };
  const neckPoint = edgeStart(front, 'shoulder');
  const arriving = outward(pathStartTangent(edgeOf(front, 'shoulder').path));
  const neck = curveBetween(top, direction(top, neckPoint), neckPoint, arriving);
  const edges = front.edges.flatMap((edge): readonly Edge[] => {
    if (edge.name === 'neckline') return [{ ...edge, path: neck }];
    if (edge === inner) return waist;
    if (edge.name !== 'centre') return [edge];
    return [
      { name: OVERLAP, kind: 'attach', path: overlap },
      { name: OVERLAP_END, kind: 'free', path: linePath(end, top) },
    ];
  });
  return {
    ...front,
    edges,
    cutting: { as: 'pair', copies: 2 },
    notches: front.notches.filter((notch) => notch.edge !== 'neckline' && notch.edge !== inner.name),
    markings: [...front.markings, { kind: 'centre', path: centreLine(covered, neck) }],
  };
}

/** The centre front from the waist up to the slanting neck. */
function centreLine(waist: Edge, neck: Path): Path {
  const foot = pathEnd(waist.path);
  const [hit] = pathCrossings(linePath(foot, { x: foot.x, y: foot.y - 1000 }), neck);
  return linePath(foot, hit?.point ?? pathAt(neck, pathLength(neck) / 2).point);
}
