import { linePath, midpoint, type Path, pathEnd, pathStart } from '../geometry/index.ts';
import {
  type Edge,
  type EdgeKind,
  type EdgeName,
  type Garment,
  type Marking,
  type Notch,
  type Piece,
  withPiece,
} from '../piece/index.ts';
import { ownLine } from './own-line.ts';
import { copiesOf, edgeParam, freeName, pieceParam, unsound } from './own-place.ts';
import { foldedSeam, seamsOverParts } from './own-seams.ts';
import { bridged, isOpened, type OpenedEdge, spreadPiece } from './spread-piece.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam, ratioParam } from './step.ts';

/** Lets a sewn fold into a piece along a straight line; what is sewn to the piece fits as before. */
export const addTuck = defineStep({
  id: 'add-tuck',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    from: edgeParam('shoulder'),
    fromShare: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    to: edgeParam('waist'),
    toShare: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    depth: lengthParam(
      () => 6,
      () => [1, 150],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'A tuck more',
    about:
      'Lets a sewn fold into a piece. It takes up twice its depth in cloth; the finished piece keeps its size.',
    piece: 'Piece',
    from: 'From this edge',
    fromShare: 'At this share of it from its start (0 to 1)',
    to: 'To this edge',
    toShare: 'At this share of that from its start (0 to 1)',
    depth: 'Depth of the tuck',
    'at-corner':
      'A tuck runs from inside one edge to inside another, not from a corner of {piece}. Place the ends of its line further in.',
    draw: 'A tuck: {piece}',
    'draw.line':
      'Mark a place {fromAt} from the start of "{from}", and one {toAt} from the start of "{to}". Cut along a straight line from the first to the second.',
    'draw.apart':
      'Lay both parts {takes} apart, square to the cut, and draw the fold in the middle between them.',
    'draw.along-fold':
      'Lay both parts {takes} apart along the fold of the piece, and draw the fold of the tuck in the middle between them.',
    'draw.fold': 'Fold the tuck before you cut the edges, so that they run on across it.',
  },
  apply: ({ garment, bench }, values) => {
    const level = ownLine(garment, bench, values);
    if (!level.ok) return level;
    const { piece, from, to, path } = level.found;
    if (from.at <= 0 || from.at >= from.length || to.at <= 0 || to.at >= to.length)
      return cannot('add-tuck.at-corner', { piece: piece.title });
    const takes = 2 * bench.rounded(values.depth);
    const spread = spreadPiece(piece, level.found, 'parallel', takes);
    const taken = piece.edges.map((edge) => edge.name);
    const tucks = new Map(
      spread.edges.filter(isOpened).map((open) => [open.edge.name, tuckIn(open, taken)] as const),
    );
    const meet = spread.move(path);
    const folds: readonly Marking[] = [
      { kind: 'pleat-meet', path },
      { kind: 'pleat-fold', path: middleOf(path, meet) },
      { kind: 'pleat-meet', path: meet },
    ];
    const wide: Piece = {
      ...piece,
      edges: spread.edges.flatMap((edge) =>
        isOpened(edge) ? (tucks.get(edge.edge.name)?.edges ?? []) : [edge],
      ),
      markings: [...spread.markings, ...folds],
      notches: piece.notches.map((notch) => pastTuck(notch, tucks.get(notch.edge))),
    };
    const problem = unsound(piece, wide);
    if (problem !== null) return problem;
    bench.part(
      { key: 'add-tuck.draw', values: { piece: piece.title } },
      piece.edges.map((edge) => edge.path),
    );
    const words = { from: from.edge.name, to: to.edge.name };
    bench.tell(
      'add-tuck.draw.line',
      { ...words, fromAt: { mm: from.at }, toAt: { mm: to.at } },
      { lines: [path] },
    );
    bench.tell(
      `add-tuck.draw.${spread.alongFold ? 'along-fold' : 'apart'}`,
      { takes: { mm: takes } },
      { lines: folds.map((fold) => fold.path) },
    );
    bench.tell('add-tuck.draw.fold', {}, { lines: wide.edges.map((edge) => edge.path) });
    let dress = withPiece(garment, wide);
    for (const tuck of tucks.values()) dress = sewTuck(dress, wide, tuck);
    return done(dress);
  },
});

/** An edge that a tuck runs into: what lies before it, the two sides of the fold, and what lies beyond. */
interface TuckedEdge {
  readonly edges: readonly [Edge] | readonly [Edge, Edge, Edge, Edge];
  readonly at: number;
}

/**
 * What lies in the fold is not seen, so it must not count as waist or neck when the finished dress is measured; it
 * is cut with the same allowance.
 */
const IN_THE_FOLD: Partial<Record<EdgeKind, EdgeKind>> = { waist: 'join', neck: 'free' };

function tuckIn(open: OpenedEdge, taken: readonly EdgeName[]): TuckedEdge {
  const { edge, at, before, beyond } = open;
  // A fold is not sewn: it only gets longer.
  if (edge.kind === 'fold') return { edges: [{ ...edge, path: bridged(open) }], at };
  const [from, to] = [pathEnd(before), pathStart(beyond)];
  const middle = midpoint(from, to);
  const kind = IN_THE_FOLD[edge.kind] ?? edge.kind;
  return {
    edges: [
      { ...edge, path: before },
      { ...edge, kind, name: freeName(taken, `${edge.name}-tuck-in`), path: linePath(from, middle) },
      { ...edge, kind, name: freeName(taken, `${edge.name}-tuck-out`), path: linePath(middle, to) },
      { ...edge, name: freeName(taken, edge.name), path: beyond },
    ],
    at,
  };
}

const pastTuck = (notch: Notch, tuck: TuckedEdge | undefined): Notch =>
  tuck?.edges.length === 4 && notch.at > tuck.at
    ? { ...notch, edge: tuck.edges[3].name, at: notch.at - tuck.at }
    : notch;

function sewTuck(garment: Garment, piece: Piece, { edges }: TuckedEdge): Garment {
  if (edges.length === 1) return garment;
  const [before, first, second, beyond] = edges;
  const seams = seamsOverParts(garment.seams, piece.id, before.name, [before.name, beyond.name]);
  const id = freeName(
    seams.map((seam) => seam.id),
    'own-tuck',
  );
  const tuck = foldedSeam(id, 'own', piece.id, [first.name, second.name], copiesOf(piece));
  return { ...garment, seams: [...seams, tuck] };
}

/** The straight line half-way between two that run side by side. */
const middleOf = (a: Path, b: Path): Path =>
  linePath(midpoint(pathStart(a), pathStart(b)), midpoint(pathEnd(a), pathEnd(b)));
