import { pathLength } from '../geometry/index.ts';
import {
  edgeLength,
  type Garment,
  type Notch,
  type Piece,
  pieceOf,
  type Seam,
  type SeamEdge,
  withPiece,
} from '../piece/index.ts';
import { ownLine } from './own-line.ts';
import { edgeParam, pieceParam, unsound } from './own-place.ts';
import { bridged, isOpened, type OpenedEdge, spreadPiece } from './spread-piece.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam, ratioParam } from './step.ts';

/** Cuts a piece open along a line and spreads it, to give it fullness or a flare. */
export const slashAndSpread = defineStep({
  id: 'slash-and-spread',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    from: edgeParam('waist'),
    fromShare: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    to: edgeParam('shoulder'),
    toShare: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    by: lengthParam(
      () => 20,
      () => [1, 1000],
      COMMON_PRACTICE,
    ),
    way: choiceParam(['hinged', 'parallel'], 'hinged', COMMON_PRACTICE),
    seam: choiceParam(['as-it-is', 'gathered'], 'as-it-is', COMMON_PRACTICE),
  },
  words: {
    title: 'Slash and spread',
    about:
      'Cuts a piece open along a line and spreads it. Hinged, only the first edge opens; parallel, both do.',
    piece: 'Piece',
    from: 'From this edge',
    fromShare: 'At this share of it from its start (0 to 1)',
    to: 'To this edge',
    toShare: 'At this share of that from its start (0 to 1)',
    by: 'Spread by',
    way: 'How',
    'way.hinged': 'Hinged at the second edge',
    'way.parallel': 'Parallel',
    seam: 'What is sewn to the edges that open',
    'seam.as-it-is': 'Stays as it is',
    'seam.gathered': 'The wider edge is gathered to it',
    'at-corner':
      'A piece is slashed from inside one edge to inside another, not from a corner of {piece}. Place the ends of the line further in.',
    draw: 'Slash and spread: {piece}',
    'draw.line':
      'Mark a place {fromAt} from the start of "{from}", and one {toAt} from the start of "{to}". Cut along a straight line from the first to the second.',
    'draw.hinged': 'Leave a hinge at "{to}" and open "{from}" by {by}.',
    'draw.parallel': 'Lay both parts {by} apart, square to the cut.',
    'draw.along-fold': 'Lay both parts {by} apart, along the fold.',
    'draw.again': 'Draw the edges again across the opening, so that they run on smoothly.',
  },
  apply: ({ garment, bench }, values) => {
    const drawn = ownLine(garment, bench, values);
    if (!drawn.ok) return drawn;
    const { piece, from, to } = drawn.found;
    const isInside = ({ at, length }: typeof from): boolean => at > 0 && at < length;
    if (!isInside(from) || (values.way === 'parallel' && !isInside(to)))
      return cannot('slash-and-spread.at-corner', { piece: piece.title });
    const by = bench.rounded(values.by);
    const spread = spreadPiece(piece, drawn.found, values.way, by);
    const edges = spread.edges.map((edge) => (isOpened(edge) ? { ...edge.edge, path: bridged(edge) } : edge));
    const opened = spread.edges.filter(isOpened);
    const wide = { ...piece, edges, markings: spread.markings };
    const changed = { ...wide, notches: piece.notches.map((n) => spreadNotch(n, opened, wide, values.seam)) };
    const problem = unsound(piece, changed);
    if (problem !== null) return problem;
    let dress = withPiece(garment, changed);
    if (values.seam === 'gathered')
      for (const { edge } of opened)
        dress = { ...dress, seams: dress.seams.map((s) => gathered(dress, s, piece, edge.name)) };
    bench.part(
      { key: 'slash-and-spread.draw', values: { piece: piece.title } },
      piece.edges.map(({ path }) => path),
    );
    const words = { from: from.edge.name, to: to.edge.name };
    bench.tell(
      'slash-and-spread.draw.line',
      { ...words, fromAt: { mm: from.at }, toAt: { mm: to.at } },
      { lines: [drawn.found.path] },
    );
    bench.tell(`slash-and-spread.draw.${spread.alongFold ? 'along-fold' : values.way}`, {
      ...words,
      by: { mm: by },
    });
    bench.tell('slash-and-spread.draw.again', {}, { lines: edges.map(({ path }) => path) });
    return done(dress);
  },
});

/** A notch beyond the opening moves on with its part; on an edge that is gathered it keeps its share of the edge. */
function spreadNotch(
  notch: Notch,
  opened: readonly OpenedEdge[],
  wide: Piece,
  seam: 'as-it-is' | 'gathered',
): Notch {
  const open = opened.find(({ edge }) => edge.name === notch.edge);
  if (open === undefined) return notch;
  const [was, is] = [pathLength(open.edge.path), edgeLength(wide, notch.edge)];
  if (seam === 'gathered') return { ...notch, at: (notch.at * is) / was };
  return notch.at > open.at ? { ...notch, at: notch.at + is - was } : notch;
}

/** The seam with the side that holds this edge gathered to the other; pleats and what is gathered to us stay. */
function gathered(garment: Garment, seam: Seam, piece: Piece, edge: string): Seam {
  const holds = (side: readonly SeamEdge[]): boolean =>
    side.some((use) => use.piece === piece.id && use.edge === edge);
  const [inA, inB] = [holds(seam.a), holds(seam.b)];
  const plain = seam.join.kind === 'flat' || seam.join.kind === 'eased';
  if (inA === inB || seam.bareEnd !== undefined) return seam;
  if (!plain && (inA || seam.join.kind !== 'gathered' || seam.join.plainEnd !== undefined)) return seam;
  const [to, ours] = inB ? [seam.a, seam.b] : [seam.b, seam.a];
  const length = (side: readonly SeamEdge[]): number =>
    side.reduce((sum, use) => sum + use.times * edgeLength(pieceOf(garment, use.piece), use.edge), 0);
  return { ...seam, a: to, b: ours, join: { kind: 'gathered', ratio: length(ours) / length(to) } };
}
