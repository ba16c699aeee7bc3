import { place } from '../construct/index.ts';
import {
  add,
  direction,
  distance,
  linePath,
  midpoint,
  outlineContains,
  outward,
  type Path,
  pathAt,
  pathEnd,
  pathLength,
  pathRotate,
  pathSlice,
  pathStart,
  scale,
  subtract,
} from '../geometry/index.ts';
import {
  type Edge,
  type EdgeName,
  edgeOf,
  type Garment,
  type Notch,
  outlineOf,
  type Piece,
  replaceEdge,
  reshape,
  withPiece,
} from '../piece/index.ts';
import { copiesOf, edgeParam, freeName, ownEdge, pieceParam, refused, unsound } from './own-place.ts';
import { foldedSeam, seamsOverParts } from './own-seams.ts';
import { pullEnd } from './pull-end.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam, ratioParam } from './step.ts';

/** What must be left of the edge on either side of a dart, mm. */
const LEAST_BESIDE = 5;

/** Takes a dart out of an edge. The neighbouring edge is swung out by as much, so that what is sewn keeps its length. */
export const addDart = defineStep({
  id: 'add-dart',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    edge: edgeParam('waist'),
    share: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    width: lengthParam(
      () => 15,
      () => [2, 120],
      COMMON_PRACTICE,
    ),
    length: lengthParam(
      () => 60,
      () => [15, 500],
      COMMON_PRACTICE,
    ),
    letOut: choiceParam(['start', 'end', 'none'], 'start', COMMON_PRACTICE),
  },
  words: {
    title: 'A dart more',
    about: 'Takes a dart out of an edge, and lets the piece out beside it so that the seam still fits.',
    piece: 'Piece',
    edge: 'Edge',
    share: 'At this share of the finished edge from its start (0 to 1)',
    width: 'Width of the dart',
    length: 'Length of the dart',
    letOut: 'Let out by its width',
    'letOut.start': 'At the start of the edge',
    'letOut.end': 'At the end of the edge',
    'letOut.none': 'Not at all: the edge gets shorter',
    'no-room':
      'A dart {width} wide has no room on "{edge}" of {piece}. Make it narrower, or place it nearer to the middle.',
    'tip-outside': 'The dart would reach out of {piece}. Make it shorter.',
    'cannot-let-out':
      '{piece} cannot be let out at the {end} of "{edge}". Let it out at the other end, or not at all.',
    'word.start': 'start',
    'word.end': 'end',
    draw: 'A dart: {piece}',
    'draw.swing':
      'Swing the edge that meets the {end} of "{edge}" outward about its far end, until "{edge}" has become {width} longer.',
    'draw.mouth': 'Mark the dart on "{edge}" from {from} to {to}, measured along it from its start.',
    'draw.legs':
      'Go {length} square in from the middle between both marks: this is the tip. Draw a leg from each mark to it.',
    'place.tip': 'the tip of the dart',
  },
  apply: ({ garment, bench }, values) => {
    const on = ownEdge(garment, values.piece, values.edge);
    if (!on.ok) return on;
    const { piece, edge, length: before } = on.found;
    const facts = { piece: piece.title, edge: edge.name };
    if (edge.kind === 'fold') return refused('own.on-fold', facts);
    const [width, depth] = [bench.rounded(values.width), bench.rounded(values.length)];
    const wide = letOut(piece, edge, values.letOut, width);
    if (wide === null)
      return cannot('add-dart.cannot-let-out', { ...facts, end: { word: `add-dart.word.${values.letOut}` } });
    const path = edgeOf(wide, edge.name).path;
    const [length, sewn] = [pathLength(path), pathLength(path) - width];
    const from = bench.rounded(
      values.letOut === 'none' ? values.share * before - width / 2 : values.share * sewn,
    );
    if (edge.kind === 'dart' || from < LEAST_BESIDE || from + width > length - LEAST_BESIDE)
      return cannot('add-dart.no-room', { ...facts, width: { mm: width } });
    const [a, b] = [pathAt(path, from).point, pathAt(path, from + width).point];
    const tip = add(midpoint(a, b), scale(outward(direction(a, b)), -depth));
    if (!outlineContains(outlineOf(wide), tip)) return cannot('add-dart.tip-outside', facts);
    const names = dartNames(piece, edge.name);
    const cut = replaceEdge(wide, edge.name, [
      { ...edge, path: pathSlice(path, 0, from) },
      { name: names.first, kind: 'dart', path: linePath(a, tip) },
      { name: names.second, kind: 'dart', path: linePath(tip, b) },
      { ...edge, name: names.beyond, path: pathSlice(path, from + width, length) },
    ]);
    const shift = values.letOut === 'none' ? width : 0;
    const dressed = {
      ...cut,
      notches: cut.notches.map((n) => overDart(n, edge.name, from, shift, names.beyond)),
    };
    const problem = unsound(piece, dressed);
    if (problem !== null) return problem;
    bench.part(
      { key: 'add-dart.draw', values: { piece: piece.title } },
      piece.edges.map((e) => e.path),
    );
    if (values.letOut !== 'none') {
      const swung = neighbourOf(wide, edge.name, values.letOut);
      bench.tell(
        'add-dart.draw.swing',
        { end: { word: `add-dart.word.${values.letOut}` }, edge: edge.name, width: { mm: width } },
        { lines: [swung.path, path] },
      );
    }
    bench.tell('add-dart.draw.mouth', { edge: edge.name, from: { mm: from }, to: { mm: from + width } });
    bench.tell(
      'add-dart.draw.legs',
      { length: { mm: depth } },
      { places: [place('add-dart.place.tip', tip)], lines: [linePath(a, tip), linePath(tip, b)] },
    );
    return done(sewDart(withPiece(garment, dressed), piece, edge.name, names));
  },
});

interface DartNames {
  readonly first: EdgeName;
  readonly second: EdgeName;
  /** What lies beyond the dart on the edge that it cuts. */
  readonly beyond: EdgeName;
}

function dartNames(piece: Piece, edge: EdgeName): DartNames {
  const taken = piece.edges.map(({ name }) => name);
  const number = piece.edges.filter(({ kind }) => kind === 'dart').length / 2 + 1;
  return {
    first: freeName(taken, `dart-${number}-outer`),
    second: freeName(taken, `dart-${number}-inner`),
    beyond: freeName(taken, edge),
  };
}

function sewDart(garment: Garment, piece: Piece, edge: EdgeName, names: DartNames): Garment {
  const seams = seamsOverParts(garment.seams, piece.id, edge, [edge, names.beyond]);
  const id = freeName(
    seams.map((seam) => seam.id),
    `own-dart-${piece.id}`,
  );
  return {
    ...garment,
    seams: [...seams, foldedSeam(id, 'dart', piece.id, [names.first, names.second], copiesOf(piece))],
  };
}

/** A notch keeps its place on the finished edge; `taken` of it is lost in the dart where nothing was let out. */
function overDart(notch: Notch, edge: EdgeName, from: number, taken: number, beyond: EdgeName): Notch {
  if (notch.edge !== edge || notch.at <= from) return notch;
  return { ...notch, edge: beyond, at: Math.max(0, notch.at - from - taken) };
}

function neighbourOf(piece: Piece, name: EdgeName, end: 'start' | 'end'): Edge {
  const here = piece.edges.findIndex((edge) => edge.name === name);
  const neighbour = piece.edges.at((here + (end === 'start' ? -1 : 1)) % piece.edges.length);
  return neighbour ?? edgeOf(piece, name);
}

/** Furthest that a neighbouring edge is swung, radians: beyond it the piece would no longer hang. */
const MOST_SWING = Math.PI / 4;

/**
 * The piece with one neighbour of an edge swung out about its far end, so that the edge is `by` longer and the
 * neighbour as long as it was. Null where the neighbour is a fold or can't be swung so far.
 */
function letOut(piece: Piece, edge: Edge, end: 'start' | 'end' | 'none', by: number): Piece | null {
  if (end === 'none') return piece;
  const neighbour = neighbourOf(piece, edge.name, end);
  if (neighbour.kind === 'fold' || neighbour.kind === 'dart') return null;
  const [hinge, corner] =
    end === 'start'
      ? [pathStart(neighbour.path), pathEnd(neighbour.path)]
      : [pathEnd(neighbour.path), pathStart(neighbour.path)];
  const wanted = pathLength(edge.path) + by;
  const swing = (radians: number): { readonly side: Path; readonly edge: Path } => {
    const side = pathRotate(neighbour.path, radians, hinge);
    const moved = end === 'start' ? pathEnd(side) : pathStart(side);
    return { side, edge: pullEnd(edge.path, end, subtract(moved, corner)) };
  };
  // The corner moves away from the edge whichever way makes the edge longer.
  const way = pathLength(swing(0.01).edge) > pathLength(swing(-0.01).edge) ? 1 : -1;
  let [low, high] = [0, MOST_SWING];
  if (distance(hinge, corner) < by || pathLength(swing(way * high).edge) < wanted) return null;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (pathLength(swing(way * middle).edge) < wanted) low = middle;
    else high = middle;
  }
  const found = swing(way * high);
  return reshape(piece, { [neighbour.name]: found.side, [edge.name]: found.edge });
}
