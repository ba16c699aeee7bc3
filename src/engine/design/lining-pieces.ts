import type { Half } from '../block/index.ts';
import {
  curveOfLength,
  offsetOutline,
  type Path,
  pathCrossings,
  pathEnd,
  pathLength,
  pathNearest,
  pathSlice,
  pathStart,
} from '../geometry/index.ts';
import {
  type EdgeName,
  edgeLength,
  edgeOf,
  findEdge,
  type Garment,
  type OutlinePlace,
  type Piece,
  pieceOf,
  reshape,
  splitPiece,
} from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { OVERLAP_END } from './wrap-overlap.ts';

/**
 * Edges that lining and shell share and that are turned: there the lining is cut back so that it rolls inside. Not
 * where the opening makes a point at the underarm (there is no room to roll, and something may be sewn to it).
 */
const turnedEdges = (garment: Garment): readonly EdgeName[] =>
  garment.seams.some((seam) => seam.name === 'side' && seam.smoothStart)
    ? ['neckline', 'armhole', 'sleeve-edge', OVERLAP_END]
    : ['neckline', 'armhole', OVERLAP_END];

/**
 * The lining of one half of the bodice: traced from the outline before a yoke line cut it, trimmed, and then cut
 * along the yoke line where it follows that. Trimming first keeps both sides of the yoke seam one line.
 * Null when trimming leaves no outline.
 */
export function linedPieces(
  garment: Garment,
  half: Half,
  cut: 'whole' | 'follow-yoke' | 'below-yoke',
  turn: number,
): readonly Piece[] | null {
  const whole = garment.whole[half];
  const lined = lineFrom(whole ?? pieceOf(garment, half), turn, turnedEdges(garment));
  const upper = garment.pieces.find((piece) => piece.id === `${half}-yoke`);
  if (lined === null || whole === undefined || upper === undefined || cut === 'whole')
    return lined === null ? null : [lined];
  const line = edgeOf(upper, 'yoke-line').path;
  const from = startOfLine(lined, line);
  if (from === null) return null;
  const centre = edgeOf(lined, 'centre').path;
  const { cutOff, rest } = splitPiece(
    lined,
    from.place,
    { edge: 'centre', at: pathNearest(centre, pathEnd(line)).at },
    pathSlice(line, from.along, pathLength(line)),
    'yoke-line',
    { id: `${half}-yoke-lining`, title: { key: `lining.piece.${half}-yoke`, values: {} }, cloth: 'lining' },
  );
  return cut === 'below-yoke' ? [rest] : [cutOff, rest];
}

/** Where the yoke line now starts: on the side seam as before, or where it crosses the trimmed armhole. */
function startOfLine(
  lined: Piece,
  line: Path,
): { readonly place: OutlinePlace; readonly along: number } | null {
  const side = edgeOf(lined, 'side').path;
  const onSide = pathNearest(side, pathStart(line));
  if (onSide.distance < 0.01) return { place: { edge: 'side', at: onSide.at }, along: 0 };
  for (const name of ['armhole', 'sleeve-edge']) {
    const opening = findEdge(lined, name);
    const [first] = opening === undefined ? [] : pathCrossings(line, opening.path);
    if (first !== undefined) return { place: { edge: name, at: first.atB }, along: first.atA };
  }
  return null;
}

function lineFrom(source: Piece, turn: number, turned: readonly EdgeName[]): Piece | null {
  const paths = source.edges.map((edge) => edge.path);
  const distances = source.edges.map((edge) => (turned.includes(edge.name) ? -turn : 0));
  const moved = turn === 0 ? paths : offsetOutline(paths, distances);
  const edges = source.edges.flatMap((edge, i) => {
    const path: Path | undefined = moved[i];
    return path === undefined ? [] : [{ ...edge, path }];
  });
  if (edges.length !== source.edges.length) return null;
  return {
    ...source,
    id: `${source.id}-lining`,
    title: { key: `lining.piece.${source.id}`, values: {} },
    edges,
    cloth: 'lining',
    layer: 'lining',
    notches: [],
  };
}

/**
 * Trimming the sleeve edge shortens two overarms of different slope by different amounts; the one that can be bent
 * is brought to the length of the other again.
 */
export function trueOverarms(pieces: readonly Piece[]): readonly Piece[] {
  const [front, back] = HALVES.map((half) =>
    pieces.find((piece) => piece.id.startsWith(half) && findEdge(piece, 'overarm') !== undefined),
  );
  if (front === undefined || back === undefined) return pieces;
  const trued = overarmLike(back, front) ?? overarmLike(front, back);
  return pieces.map((piece) => (piece.id === trued?.id ? trued : piece));
}

function overarmLike(piece: Piece, model: Piece): Piece | null {
  const path = curveOfLength(edgeOf(piece, 'overarm').path, edgeLength(model, 'overarm'));
  return path === null ? null : reshape(piece, { overarm: path });
}
