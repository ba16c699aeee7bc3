import {
  boundsUnion,
  linePath,
  type Path,
  pathBounds,
  pathEnd,
  pathLength,
  pathOffset,
  pathStart,
} from '../geometry/index.ts';
import {
  type Edge,
  type EdgeKind,
  findEdge,
  type Garment,
  type Piece,
  partsNeckAtBack,
} from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';
import { bothOn, type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { neckOf } from './sketch-neck.ts';
import { joinNear } from './sketch-path.ts';
import { depthOf, type Hand, ruffleOn, stripAlong } from './sketch-strip.ts';

/** A frill round the neck lies on the dress, from the centre to the shoulder, where front and back are as deep. */
export function sketchNeckFrill(garment: Garment, side: SketchSide): LaidOn {
  const seam = garment.seams.find(({ id, name }) => name === 'frill' && id === 'neck-frill');
  const frill = garment.pieces.find((piece) => piece.id === seam?.b[0]?.piece);
  const neck = neckOf(garment, side);
  const [sewn, free] = frill === undefined ? [] : [findEdge(frill, 'upper'), findEdge(frill, 'lower')];
  if (seam === undefined || frill === undefined || neck === null || !sewn || !free) return NOTHING_ON;
  const ratio = seam.join.kind === 'gathered' ? seam.join.ratio : null;
  // A ring cut from a circle is as deep as its ends are long.
  const across = ratio === null ? findEdge(frill, 'right') : undefined;
  return stripAlong(neck, {
    depth: across === undefined ? depthOf(frill) : pathLength(across.path),
    fullness: ratio ?? pathLength(free.path) / pathLength(sewn.path),
    gathered: ratio !== null,
    hand: 'right',
    parts: side === 'back' && partsNeckAtBack(garment.closing),
  });
}

/**
 * Ruffles along the edges of the bodice. One at the neck lies on the dress; one at the outer edge of a piece hangs
 * from it; one in a seam within the bodice hangs down.
 */
export function sketchRuffles(garment: Garment, side: SketchSide): LaidOn {
  return bothOn(
    ...bodiceOf(garment, side).flatMap((piece) =>
      piece.edges.map((edge) => ruffleOn(garment, piece, edge.name, lineOf(edge), handAt(piece, edge))),
    ),
  );
}

/** A ruffle round an arm stands off straight, as a strip there does; along other edges it follows them. */
const lineOf = ({ kind, path }: Edge): Path =>
  ROUND_ARM.includes(kind) ? linePath(pathStart(path), pathEnd(path)) : path;

const ROUND_ARM: readonly EdgeKind[] = ['armhole', 'sleeve-hem', 'curved-sleeve-hem'];

function handAt(piece: Piece, { kind, path }: Edge): Hand {
  if (kind === 'neck') return 'right';
  if (kind !== 'style-line') return 'left';
  // The cloth lies on the right hand; what hangs down lies over it where it is the lower piece.
  const { minY, maxY } = piece.edges.map((edge) => pathBounds(edge.path)).reduce(boundsUnion);
  const line = pathBounds(path);
  return (line.minY + line.maxY) / 2 < (minY + maxY) / 2 ? 'right' : 'left';
}

/** A bias strip seen as a narrow line along the edge that it finishes: stitched down, or wrapped round it. */
export function sketchBindings(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const bodice = bodiceOf(garment, side);
  return garment.seams
    .filter(({ name, b }) => name === 'binding' && b.every((at) => at.edge === 'upper'))
    .flatMap((seam): readonly SketchLine[] => {
      const strip = garment.pieces.find((piece) => piece.id === seam.b[0]?.piece);
      if (strip === undefined) return [];
      const edges = bodice.flatMap((piece) =>
        piece.edges.filter((edge) => seam.a.some((at) => at.piece === piece.id && at.edge === edge.name)),
      );
      const isNeck = edges.some((edge) => edge.kind === 'neck');
      const line = isNeck ? neckOf(garment, side) : joinNear(edges.map((edge) => edge.path));
      // Folded once over the edge, so it shows half its width.
      return line === null ? [] : bothHalves('seam', pathOffset(line, -depthOf(strip) / 2));
    });
}
