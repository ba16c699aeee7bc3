import { linePath, type Path, pathEnd, pathJoin, pathStart } from '../geometry/index.ts';
import { edgeLength, findEdge, type Garment, type Notch, type Piece, type Seam } from '../piece/index.ts';
import { bodicePieces } from './bodice.ts';
import { lengthParam } from './step.ts';

/** How far every opening of the back runs on below the waist seam. */
export const belowWaist = lengthParam(
  () => 100,
  () => [0, 250],
  '8-12 cm below the waist seam for a fitted waist (common practice, no source)',
);

/** The pieces of the back that reach the centre, from the neck down. */
export const centreBackPieces = (garment: Garment): readonly Piece[] =>
  bodicePieces(garment, 'back').filter((piece) => findEdge(piece, 'centre') !== undefined);

/** From the finished neck edge down to the waist seam, mm. */
export const centreBackLength = (garment: Garment): number =>
  centreBackPieces(garment).reduce((sum, piece) => sum + edgeLength(piece, 'centre'), 0);

/**
 * Opens the centre back: every piece that reaches it is cut as a pair. With a `stand` each half runs on past the
 * centre line by so much, straight across, and what is sewn to neck and waist is made as much longer.
 */
export function openBack(garment: Garment, stand = 0): Garment {
  const open = centreBackPieces(garment).map((piece) => piece.id);
  const { back } = garment.whole;
  return {
    ...garment,
    pieces: garment.pieces.map((piece) => (open.includes(piece.id) ? openCentre(piece, stand) : piece)),
    whole: back === undefined ? garment.whole : { ...garment.whole, back: openCentre(back, stand) },
    seams: [...garment.seams, centreBackSeam(open)],
  };
}

function openCentre(piece: Piece, stand: number): Piece {
  const at = piece.edges.findIndex((edge) => edge.name === 'centre');
  const centre = piece.edges[at];
  const before = piece.edges.at(at - 1);
  const after = piece.edges[(at + 1) % piece.edges.length];
  if (centre === undefined || before === undefined || after === undefined) return piece;
  const paths = new Map([
    [before, stand === 0 ? before.path : pathJoin(before.path, outward(pathStart(centre.path), stand))],
    [centre, stand === 0 ? centre.path : shifted(centre.path, stand)],
    [after, stand === 0 ? after.path : pathJoin(inward(pathEnd(centre.path), stand), after.path)],
  ]);
  const moved = (notch: Notch): Notch =>
    notch.edge === after.name ? { ...notch, at: notch.at + stand } : notch;
  return {
    ...piece,
    cutting: { as: 'pair', copies: 2 },
    edges: piece.edges.map((edge) => ({
      ...edge,
      path: paths.get(edge) ?? edge.path,
      kind: edge === centre ? 'closing' : edge.kind,
    })),
    notches: piece.notches.map(moved),
    markings: stand === 0 ? piece.markings : [...piece.markings, { kind: 'centre', path: centre.path }],
  };
}

/** From a place on the centre line out past it, and back to it. */
const outward = (at: { x: number; y: number }, stand: number): Path =>
  linePath(at, { x: at.x - stand, y: at.y });
const inward = (at: { x: number; y: number }, stand: number): Path =>
  linePath({ x: at.x - stand, y: at.y }, at);

const shifted = (path: Path, stand: number): Path => {
  const [from, to] = [pathStart(path), pathEnd(path)];
  return linePath({ x: from.x - stand, y: from.y }, { x: to.x - stand, y: to.y });
};

function centreBackSeam(back: readonly string[]): Seam {
  const side = back.map((piece) => ({ piece, edge: 'centre', times: 1, reversed: true }));
  return {
    id: 'centre-back',
    name: 'closing',
    a: side,
    b: side,
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  };
}
