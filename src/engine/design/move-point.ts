import {
  add,
  distance,
  dot,
  outward,
  type Path,
  pathEnd,
  pathEndTangent,
  pathStart,
  pathStartTangent,
  scale,
  type Vector,
  vectorLength,
} from '../geometry/index.ts';
import { type EdgeName, edgeOf, type Garment, type Piece, pieceOf, reshape } from '../piece/index.ts';
import {
  edgeParam,
  type Found,
  notchesKept,
  type OwnEdge,
  ownEdge,
  pieceParam,
  withChanged,
} from './own-place.ts';
import { sewnTo } from './own-sewn.ts';
import { pullEnd } from './pull-end.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  flagParam,
  lengthParam,
  ratioParam,
} from './step.ts';

type End = 'start' | 'end';

/** Furthest that a corner is moved, mm. */
const FARTHEST = 300;
/** Less than this no ruler shows, mm. */
const NOTHING = 0.05;

const way = (mm: number) =>
  lengthParam(
    () => mm,
    () => [0, FARTHEST],
    COMMON_PRACTICE,
  );
const shareOfEdge = () => ratioParam(() => 0, [-1, 1], COMMON_PRACTICE);

/** Moves the corner at one end of an edge; both edges that meet there follow. */
export const movePoint = defineStep({
  id: 'move-point',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    edge: edgeParam('waist'),
    end: choiceParam(['start', 'end'], 'end', COMMON_PRACTICE),
    down: way(10),
    up: way(0),
    out: way(0),
    inward: way(0),
    downShare: shareOfEdge(),
    outShare: shareOfEdge(),
    alsoOnSeam: flagParam(false, COMMON_PRACTICE),
  },
  words: {
    title: 'Move a corner',
    about: 'Moves a corner of a piece; the two edges that meet there follow.',
    piece: 'Piece',
    edge: 'Edge',
    end: 'Which end of the edge',
    'end.start': 'Its start',
    'end.end': 'Its end',
    down: 'Down by',
    up: 'Up by',
    out: 'Away from the centre by',
    inward: 'Toward the centre by',
    downShare: 'Down by this share of the edge (less than 0: up)',
    outShare: 'Away from the centre by this share of the edge (less than 0: toward it)',
    alsoOnSeam: 'The edge that is sewn to it changes alike',
    'no-corner': 'The "{edge}" of {piece} runs round without a corner. Bend it instead.',
    stays: 'The corner would stay where it is. Say how far it moves.',
    'no-mate':
      'No corner of another edge is sewn flat to this end of "{edge}" of {piece}, so nothing can change alike. Leave that out.',
    draw: 'A corner moved: {piece}',
    'draw.follow': 'Draw both edges again to {makes}, with the ends away from it as they were.',
    'place.corner': 'the corner',
    'place.across': 'the point beside the corner',
    'place.moved': 'the moved corner',
  },
  apply: ({ garment, bench }, values) => {
    const on = ownEdge(garment, values.piece, values.edge);
    if (!on.ok) return on;
    const { piece, edge, length } = on.found;
    if (piece.edges.length === 1)
      return cannot('move-point.no-corner', { piece: piece.title, edge: edge.name });
    const by = {
      x: bench.rounded(values.out - values.inward + values.outShare * length),
      y: bench.rounded(values.down - values.up + values.downShare * length),
    };
    if (vectorLength(by) < NOTHING) return cannot('move-point.stays');
    const corners = [{ ...on.found, end: values.end, by }];
    if (values.alsoOnSeam) {
      const mate = mateCorner(garment, on.found, values.end, by);
      if (mate === null) return cannot('move-point.no-mate', { piece: piece.title, edge: edge.name });
      corners.push({ ...mate, by: { x: bench.rounded(mate.by.x), y: bench.rounded(mate.by.y) } });
    }
    let dress = garment;
    for (const corner of corners) {
      const moved = moveCorner(dress, corner);
      if (!moved.ok) return moved;
      dress = moved.found;
    }
    for (const corner of corners) {
      const after = pieceOf(dress, corner.piece.id);
      bench.part(
        { key: 'move-point.draw', values: { piece: after.title } },
        corner.piece.edges.map(({ path }) => path),
      );
      const { x, y } = corner.by;
      let made = bench.start('move-point.place.corner', cornerOf(corner.edge.path, corner.end));
      const name = (isLast: boolean) => (isLast ? 'move-point.place.moved' : 'move-point.place.across');
      if (x !== 0) made = bench.from(made)[x > 0 ? 'out' : 'inward'](Math.abs(x), name(y === 0));
      if (y !== 0) made = bench.from(made)[y > 0 ? 'down' : 'up'](Math.abs(y), name(true));
      const [first, second] = meetingEdges(after, corner.edge.name, corner.end);
      bench.tell(
        'move-point.draw.follow',
        { makes: { word: made.name } },
        { places: [made], lines: [edgeOf(after, first).path, edgeOf(after, second).path] },
      );
    }
    return done(dress);
  },
});

interface Corner extends OwnEdge {
  readonly end: End;
  readonly by: Vector;
}

function moveCorner(garment: Garment, { piece, edge, end, by }: Corner): Found<Garment> {
  const now = pieceOf(garment, piece.id);
  const [before, after] = meetingEdges(now, edge.name, end);
  const moved = reshape(now, {
    [before]: pullEnd(edgeOf(now, before).path, 'end', by),
    [after]: pullEnd(edgeOf(now, after).path, 'start', by),
  });
  return withChanged(garment, notchesKept(now, moved));
}

/** The edge that arrives at a corner and the one that leaves it. */
function meetingEdges(piece: Piece, name: EdgeName, end: End): readonly [EdgeName, EdgeName] {
  const here = piece.edges.indexOf(edgeOf(piece, name));
  const neighbour = piece.edges.at((here + (end === 'start' ? -1 : 1)) % piece.edges.length)?.name ?? name;
  return end === 'start' ? [neighbour, name] : [name, neighbour];
}

/**
 * The corner that is sewn to this one, and how it moves. Where one line cuts two pieces apart, the line moves as one.
 * Otherwise the seam is a mirror: what moves outward on one side moves outward on the other, so that both edges
 * grow alike.
 */
function mateCorner(garment: Garment, on: OwnEdge, end: End, by: Vector): Corner | null {
  const at = end === 'start' ? 0 : on.length;
  const mate = sewnTo(garment, on.piece.id, on.edge.name, at).find(({ seam }) => seam.join.kind === 'flat');
  if (mate === undefined) return null;
  const other = ownEdge(garment, mate.piece, mate.edge);
  if (!other.ok) return null;
  const mateEnd = mate.at < AT_CORNER ? 'start' : mate.at > other.found.length - AT_CORNER ? 'end' : null;
  if (mateEnd === null) return null;
  const [mine, its] = [on.edge.path, other.found.edge.path];
  if (isSameLine(mine, its)) return { ...other.found, end: mateEnd, by };
  const [along, alongMate] = [tangentAt(mine, end), tangentAt(its, mateEnd)];
  const forward = dot(by, along) * (mate.sameWay ? 1 : -1);
  const mirrored = add(scale(alongMate, forward), scale(outward(alongMate), dot(by, outward(along))));
  return { ...other.found, end: mateEnd, by: mirrored };
}

/** A place this near to the end of an edge is its corner, mm. */
const AT_CORNER = 0.5;

const cornerOf = (path: Path, end: End) => (end === 'start' ? pathStart(path) : pathEnd(path));
const tangentAt = (path: Path, end: End) => (end === 'start' ? pathStartTangent(path) : pathEndTangent(path));

/** True where both edges are one line of the draft, walked from opposite ends. */
const isSameLine = (a: Path, b: Path): boolean =>
  distance(pathStart(a), pathEnd(b)) < 0.01 && distance(pathEnd(a), pathStart(b)) < 0.01;
