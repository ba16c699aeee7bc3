import { cubic, linePath, type Point, pathLength, pathOf } from '../geometry/index.ts';
import { edgeLength, findEdge, type Garment, type Piece, type Seam } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';

/** Half a skirt as it is seen: how wide and where its top and its hem lie. */
interface SkirtShape {
  readonly top: number;
  readonly y: number;
  readonly hem: number;
  readonly length: number;
  /** How much longer the centre is than the side. */
  readonly centreLonger: number;
}

/** Widest that a full skirt stands off, radians from straight down. */
const WIDEST = (38 * Math.PI) / 180;
/** A straight skirt without fullness still falls a little outward, radians. */
const LEAST = (4 * Math.PI) / 180;
/** How much each time the waist adds to the angle, radians. */
const PER_FULLNESS = (11 * Math.PI) / 180;

/** Every layer of the skirt of one side, from the waist down, tier after tier. */
export function sketchSkirt(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const waist = waistOf(garment, side);
  if (waist === null) return [];
  const layers = garment.seams
    .filter((seam) => seam.name === 'skirt-waist' || seam.name === 'overskirt-waist')
    .flatMap((seam) => {
      const piece = skirtPiece(garment, seam, side);
      return piece === null || piece.layer === 'lining' ? [] : sketchLayer(garment, seam, piece, side, waist);
    });
  return side === 'front' || layers.length === 0 ? layers : [...layers, ...closingBelow(garment, waist.y)];
}

/** What of the back's opening runs on below the waist. */
function closingBelow(garment: Garment, y: number): readonly SketchLine[] {
  const onBodice = bodiceOf(garment, 'back')
    .flatMap((piece) => piece.edges.filter((edge) => edge.kind === 'closing'))
    .reduce((sum, edge) => sum + pathLength(edge.path), 0);
  const below = (garment.closing?.openingLength ?? 0) - onBodice;
  if (onBodice === 0 || below <= 0) return [];
  return [{ stroke: 'opening', path: linePath({ x: 0, y }, { x: 0, y: y + below }) }];
}

function waistOf(garment: Garment, side: SketchSide): { readonly half: number; readonly y: number } | null {
  const pieces = bodiceOf(garment, side).filter((piece) => findEdge(piece, 'waist') !== undefined);
  const ends = pieces.flatMap((piece) => {
    const edge = findEdge(piece, 'waist');
    return edge === undefined ? [] : [edge.path.segments[0].from];
  });
  if (ends.length === 0) return null;
  return { half: Math.max(...ends.map((end) => end.x)), y: Math.max(...ends.map((end) => end.y)) };
}

/** The piece on the skirt's side of a seam that belongs to the front or the back; any, where it is one ring. */
function skirtPiece(garment: Garment, seam: Seam, side: SketchSide): Piece | null {
  const ids = seam.b.map((edge) => edge.piece);
  const id = ids.find((name) => name.endsWith(side)) ?? ids[0];
  return garment.pieces.find((piece) => piece.id === id) ?? null;
}

function sketchLayer(
  garment: Garment,
  seam: Seam,
  piece: Piece,
  side: SketchSide,
  waist: { readonly half: number; readonly y: number },
): readonly SketchLine[] {
  const shape = shapeOf(seam, piece, waist.half, waist.y, garment);
  const lines = [...silhouette(shape, piece.cloth === 'net'), ...folds(seam, shape)];
  const below = garment.seams.find((s) => s.name === 'tier' && s.a.some((edge) => edge.piece === piece.id));
  if (below === undefined) return lines;
  const next = skirtPiece(garment, below, side);
  if (next === null) return lines;
  return [
    ...lines,
    ...sketchLayer(garment, below, next, side, { half: shape.hem, y: shape.y + shape.length }),
  ];
}

function shapeOf(seam: Seam, piece: Piece, top: number, y: number, garment: Garment): SkirtShape {
  const length = sideLength(piece);
  const fullness = hemTimesTop(seam, piece, garment);
  const angle = Math.min(WIDEST, LEAST + PER_FULLNESS * Math.max(0, fullness - 1));
  const centreLonger = centreLength(piece) - length;
  return { top, y, length, hem: top + length * Math.tan(angle), centreLonger };
}

/** How many times the top edge the hem measures; gathers and pleats count as the cloth that they take. */
function hemTimesTop(seam: Seam, piece: Piece, garment: Garment): number {
  const hem = findEdge(piece, 'hem');
  const [top] = seam.b.filter((edge) => edge.piece === piece.id);
  if (hem === undefined || top === undefined) return 1;
  const flare = edgeLength(piece, 'hem') / edgeLength(piece, top.edge);
  return flare * clothTimesTop(seam, garment);
}

function clothTimesTop(seam: Seam, garment: Garment): number {
  const sum = (side: Seam['a']): number =>
    side.reduce((total, edge) => {
      const piece = garment.pieces.find((p) => p.id === edge.piece);
      return total + (piece === undefined ? 0 : edge.times * edgeLength(piece, edge.edge));
    }, 0);
  return sum(seam.b) / sum(seam.a);
}

const sideLength = (piece: Piece): number => {
  const side = ['side', 'right'].find((name) => findEdge(piece, name) !== undefined);
  return side === undefined ? 1 : edgeLength(piece, side);
};

/** Along the fold, the closing or the middle seam; a straight width is as long there as at its side. */
function centreLength(piece: Piece): number {
  const centre = piece.edges.find(({ kind }) => kind === 'fold' || kind === 'closing' || kind === 'centre');
  return centre === undefined ? sideLength(piece) : pathLength(centre.path);
}

/** Hems bow down a little, as a circle does when it is seen from the front. */
const HEM_BOW = 0.04;

function silhouette(shape: SkirtShape, net: boolean): readonly SketchLine[] {
  const stroke = net ? 'light' : 'outline';
  const foot: Point = { x: shape.hem, y: shape.y + shape.length };
  const down = shape.hem * HEM_BOW * 2 + shape.centreLonger;
  const hem = pathOf(
    cubic(
      foot,
      { x: foot.x * 0.6, y: foot.y + down * 0.75 },
      { x: foot.x * 0.3, y: foot.y + down },
      { x: 0, y: foot.y + down },
    ),
  );
  return [
    ...bothHalves(stroke, linePath({ x: shape.top, y: shape.y }, foot)),
    ...bothHalves(stroke, hem),
  ].map((line) => (net ? { ...line, net } : line));
}

/** Gathers as short strokes that run out from the seam, pleats as folds from the seam to the hem. */
function folds(seam: Seam, shape: SkirtShape): readonly SketchLine[] {
  const along = (share: number, depth: number): Point => ({
    x: share * (shape.top + (shape.hem - shape.top) * depth),
    y: shape.y + shape.length * depth,
  });
  if (seam.join.kind === 'pleated') {
    const count = Math.max(1, Math.round(seam.join.pleats / 4));
    return Array.from({ length: count }, (_, i) => (i + 0.5) / count).flatMap((share) =>
      bothHalves('pleat', linePath(along(share, 0), along(share, 1))),
    );
  }
  if (seam.join.kind === 'gathered') {
    const count = Math.max(3, Math.round(seam.join.ratio * 4));
    return Array.from({ length: count }, (_, i) => i).flatMap((i) =>
      bothHalves(
        'gather',
        linePath(along((i + 0.5) / count, 0.01), along((i + 0.5) / count, i % 2 === 0 ? 0.28 : 0.16)),
      ),
    );
  }
  return [];
}
