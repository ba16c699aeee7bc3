import {
  between,
  cubic,
  type Path,
  type Point,
  pathEnd,
  pathFlatten,
  pathLength,
  pathOf,
  pathStart,
} from '../geometry/index.ts';
import { findEdge, type Garment, type Piece, type Seam } from '../piece/index.ts';
import type { SketchSide } from './sketch.ts';
import { bodiceOf } from './sketch-bodice.ts';

/** Half a layer or a tier of a skirt, as it is seen. Shares run from the centre (0) to the side (1). */
export interface SkirtLayer {
  readonly seam: Seam;
  readonly piece: Piece;
  /** On the seam from which it hangs. */
  readonly top: (share: number) => Point;
  readonly foot: (share: number) => Point;
  /** From the side to the centre. */
  readonly hem: Path;
  /** How many times the seam above the hem measures. */
  readonly fullness: number;
  /** Whether another tier hangs from it. */
  readonly carries: boolean;
}

/** Widest that a full skirt stands off, radians from straight down. */
const WIDEST = (38 * Math.PI) / 180;
/** A straight skirt without fullness still falls a little outward, radians. */
const LEAST = (4 * Math.PI) / 180;
/** How much each time the waist adds to the angle, radians. */
const PER_FULLNESS = (11 * Math.PI) / 180;
/** Hems bow down a little, as a circle does when it is seen from the front. */
const HEM_BOW = 0.04;

/** Every layer of the skirt of one side, from the waist down, each tier before the one that hangs from it. */
export function skirtLayers(garment: Garment, side: SketchSide): readonly SkirtLayer[] {
  const waist = waistOf(garment, side);
  if (waist === null) return [];
  return garment.seams
    .filter((seam) => seam.name === 'skirt-waist' || seam.name === 'overskirt-waist')
    .flatMap((seam) => hanging(garment, seam, side, waist));
}

/** The waist of one side from the centre to the side. Darts and seams that part it are bridged. */
export function waistOf(garment: Garment, side: SketchSide): ((share: number) => Point) | null {
  const points = bodiceOf(garment, side)
    .flatMap((piece) => piece.edges.filter((edge) => edge.kind === 'waist'))
    .flatMap((edge) => pathFlatten(edge.path, 0.2))
    .toSorted((p, q) => p.x - q.x);
  const side0 = points.at(-1);
  if (side0 === undefined) return null;
  return (share) => {
    const x = share * side0.x;
    const beyond = points.findIndex((p) => p.x >= x);
    const [before, after] = [points[beyond - 1], points[beyond] ?? side0];
    if (before === undefined || after.x === before.x) return { x, y: after.y };
    return between(before, after, (x - before.x) / (after.x - before.x));
  };
}

function hanging(
  garment: Garment,
  seam: Seam,
  side: SketchSide,
  top: (share: number) => Point,
): readonly SkirtLayer[] {
  const piece = skirtPiece(garment, seam, side);
  if (piece === null || piece.layer === 'lining') return [];
  const below = garment.seams.find((s) => s.name === 'tier' && s.a.some((edge) => edge.piece === piece.id));
  const atSide = top(1);
  const length = sideLength(piece);
  const fullness = hemTimesTop(seam, garment);
  const angle = Math.min(WIDEST, LEAST + PER_FULLNESS * Math.max(0, fullness - 1));
  const width = atSide.x + length * Math.tan(angle);
  // The hem is as much lower at the centre as the piece is longer there.
  const down = width * HEM_BOW * 2 + centreLength(piece) - length;
  const foot: Point = { x: width, y: atSide.y + length };
  const hem = pathOf(
    cubic(
      foot,
      { x: width * 0.6, y: foot.y + down * 0.75 },
      { x: width * 0.3, y: foot.y + down },
      { x: 0, y: foot.y + down },
    ),
  );
  const layer: SkirtLayer = {
    seam,
    piece,
    top,
    hem,
    foot: footOf(hem),
    fullness,
    carries: below !== undefined,
  };
  return [layer, ...(below === undefined ? [] : hanging(garment, below, side, layer.foot))];
}

/** The place of the hem that lies at a share of its width. */
function footOf(hem: Path): (share: number) => Point {
  const points = pathFlatten(hem, 0.1);
  const [side, centre] = [pathStart(hem), pathEnd(hem)];
  return (share) => {
    const x = share * side.x;
    const beyond = points.findIndex((p) => p.x <= x);
    const [before, after] = [points[beyond - 1], points[beyond]];
    if (after === undefined) return centre;
    if (before === undefined || before.x === after.x) return after;
    return between(before, after, (before.x - x) / (before.x - after.x));
  };
}

/** The piece on the skirt's side of a seam that belongs to the front or the back; any, where it is one ring. */
function skirtPiece(garment: Garment, seam: Seam, side: SketchSide): Piece | null {
  const ids = seam.b.map((edge) => edge.piece);
  const id = ids.find((name) => name.endsWith(side)) ?? ids[0];
  return garment.pieces.find((piece) => piece.id === id) ?? null;
}

/** How many times the edge above the hem measures, all round; gathers and pleats count as the cloth that they take. */
function hemTimesTop(seam: Seam, garment: Garment): number {
  const sum = (side: Seam['a'], edgeOfPiece: (edge: string) => string): number =>
    side.reduce((total, at) => {
      const piece = garment.pieces.find((p) => p.id === at.piece);
      const edge = piece === undefined ? undefined : findEdge(piece, edgeOfPiece(at.edge));
      return edge === undefined ? total : total + at.times * pathLength(edge.path);
    }, 0);
  const [hem, top] = [sum(seam.b, () => 'hem'), sum(seam.a, (edge) => edge)];
  return hem === 0 || top === 0 ? 1 : hem / top;
}

/** Down the side, with its tucks sewn. */
function sideLength(piece: Piece): number {
  const side = findEdge(piece, 'side') ?? findEdge(piece, 'right');
  return side === undefined ? 1 : pathLength(side.path) - takenByTucks(piece);
}

/** Along the fold, the closing or the middle seam; a straight width is as long there as at its side. */
function centreLength(piece: Piece): number {
  const centre = piece.edges.find(({ kind }) => kind === 'fold' || kind === 'closing' || kind === 'centre');
  return centre === undefined ? sideLength(piece) : pathLength(centre.path) - takenByTucks(piece);
}

/** A tuck round a skirt: its depth, and where it is sewn, above the hem of the finished skirt, mm. */
interface SkirtTuck {
  readonly depth: number;
  readonly above: number;
}

/** Tucks sewn level round a width of skirt, from the hem up. Each takes the cloth between its two lines. */
export function tucksOf(piece: Piece): readonly SkirtTuck[] {
  const hem = findEdge(piece, 'hem');
  if (hem === undefined) return [];
  const foot = pathStart(hem.path).y;
  const levels = piece.markings
    .filter(({ kind, path }) => kind === 'pleat-meet' && pathStart(path).y === pathEnd(path).y)
    .map(({ path }) => pathStart(path).y)
    .toSorted((p, q) => q - p);
  const tucks: SkirtTuck[] = [];
  let taken = 0;
  for (let i = 0; i + 1 < levels.length; i += 2) {
    const [low, high] = [levels[i] ?? 0, levels[i + 1] ?? 0];
    tucks.push({ depth: (low - high) / 2, above: foot - low - taken });
    taken += low - high;
  }
  return tucks;
}

const takenByTucks = (piece: Piece): number => tucksOf(piece).reduce((sum, tuck) => sum + 2 * tuck.depth, 0);
