import type { CutPiece } from '../cut/index.ts';
import {
  type Affine,
  type Bounds,
  linePath,
  type Path,
  type Point,
  pathBounds,
  pathEnd,
  pathFlatten,
  pathJoin,
  pathMap,
  pathMirrorLine,
  pathOf,
  pathReverse,
  pathStart,
  type Segment,
  subtract,
} from '../geometry/index.ts';
import { type FoldLine, type GrownOutline, grownOutline } from './grown-outline.ts';
import { largest, polygonsArea, polygonsUnion, polygonsWithout } from './polygons.ts';
import { MIRROR_ACROSS, MIRROR_ALONG, type Turn, turnsJoined, turnToGrain } from './turns.ts';

/** A piece as it lies on the cloth, grain along x with the head towards x = 0; a half piece begins at its fold line. */
export interface PieceShape {
  readonly path: Path;
  /** Of the cutting line, exact. */
  readonly box: Bounds;
  readonly grown: GrownOutline;
  /** From the piece's own coordinates. */
  readonly frame: Affine;
  /** The same after mirroring in the grain: one copy from double cloth gives two alike. */
  readonly symmetric: boolean;
}

/** The whole piece; what is drawn as half on a fold is opened out. Null where the outline encloses nothing. */
export function wholeShape(cut: CutPiece, gap: number): PieceShape | null {
  const fold = foldOf(cut);
  const turn = grainTurn(cut);
  const opened = fold === null ? cut.cuttingLine : openedOut(cut.cuttingLine, fold);
  return shapeOf(opened, { ...turn, e: 0, f: 0 }, gap, null);
}

/**
 * The half of a piece whose fold edge can lie on a fold of the cloth along (`y=0`) or across it (`x=0`); null where
 * the piece has no fold edge, or one that runs another way against the grain, or encloses nothing.
 */
export function halfShape(cut: CutPiece, gap: number, line: FoldLine): PieceShape | null {
  const fold = foldOf(cut);
  if (fold === null) return null;
  const turn = grainTurn(cut);
  const [from, to] = [pathMap(fold, { ...turn, e: 0, f: 0 })].flatMap((p) => [pathStart(p), pathEnd(p)]);
  if (from === undefined || to === undefined) return null;
  const off = line === 'y=0' ? Math.abs(from.y - to.y) : Math.abs(from.x - to.x);
  if (off > STRAIGHT) return null;
  const at = line === 'y=0' ? { x: 0, y: -from.y } : { x: -from.x, y: 0 };
  const box = pathBounds(pathMap(cut.cuttingLine, { ...turn, e: at.x, f: at.y }));
  const before = line === 'y=0' ? -box.minY > box.maxY : -box.minX > box.maxX;
  const mirror = line === 'y=0' ? MIRROR_ACROSS : MIRROR_ALONG;
  const full = before ? turnsJoined(turn, mirror) : turn;
  const shift = before ? { e: at.x * mirror.a || 0, f: at.y * mirror.d || 0 } : { e: at.x, f: at.y };
  return shapeOf(cut.cuttingLine, { ...full, ...shift }, gap, line);
}

/** A fold edge that strays less from a line along the grain lies along it, mm. */
const STRAIGHT = 0.2;

function shapeOf(path: Path, frame: Affine, gap: number, fold: FoldLine | null): PieceShape | null {
  const placed = onGrid(pathMap(path, frame));
  const grown = grownOutline(placed, gap, fold);
  if (grown === null) return null;
  return { path: placed, box: pathBounds(placed), grown, frame, symmetric: isSymmetric(placed) };
}

/** Fine enough for any sum and any eye, mm. */
const GRID = 2 ** -20;

/** Sines and powers differ in their last digit from machine to machine; on a grid equal pieces are equal everywhere. */
function onGrid({ segments }: Path): Path {
  const near = ({ x, y }: Point): Point => ({
    x: Math.round(x / GRID) * GRID,
    y: Math.round(y / GRID) * GRID,
  });
  const [first, ...rest] = segments.map((s): Segment => {
    const ends = { from: near(s.from), to: near(s.to) };
    return s.kind === 'line' ? { ...s, ...ends } : { ...s, ...ends, c1: near(s.c1), c2: near(s.c2) };
  });
  if (first === undefined) throw new Error('A path has segments.');
  return pathOf(first, ...rest);
}

function grainTurn(cut: CutPiece): Turn {
  const { from, to } = cut.piece.grain;
  return turnToGrain(subtract(to, from));
}

/** The fold edge of a piece that is drawn as half; null where it is not. */
export function foldOf(cut: CutPiece): Path | null {
  if (cut.piece.cutting.as !== 'fold') return null;
  return cut.piece.edges.find((edge) => edge.kind === 'fold')?.path ?? null;
}

/** The half with its mirror image, as one outline. */
function openedOut(half: Path, fold: Path): Path {
  const [a, b] = [pathStart(fold), pathEnd(fold)];
  const off = ({ x, y }: Point): number =>
    Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) /
    Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
  const onFold = (s: Segment): boolean => off(s.from) < 1e-6 && off(s.to) < 1e-6 && s.kind === 'line';
  const { segments } = half;
  const start = segments.findIndex((s, i) => !onFold(s) && onFold(segments.at(i - 1) ?? s));
  const turned = [...segments.slice(start), ...segments.slice(0, Math.max(0, start))];
  const outside = turned.filter((s) => !onFold(s));
  const [first, ...rest] = outside;
  const oneChain = start >= 0 && turned.slice(0, outside.length).every((s) => !onFold(s));
  if (oneChain && first !== undefined) {
    const chain = pathOf(first, ...rest);
    return pathJoin(chain, pathReverse(pathMirrorLine(chain, a, b)));
  }
  // A cutting line that comes back to its fold in several places is drawn with short chords instead.
  const mirrored = pathMirrorLine(half, a, b);
  const rings = polygonsUnion([pathFlatten(half, 0.01), pathFlatten(mirrored, 0.01)]);
  const [p, q, ...more] = largest(rings) ?? [];
  return p === undefined || q === undefined ? half : linePath(p, q, ...more, p);
}

/** Whether the outline covers its mirror image but for a strip of a tenth of a millimetre. */
function isSymmetric(path: Path): boolean {
  const points = pathFlatten(path, 0.05);
  const box = pathBounds(path);
  const middle = box.minY + box.maxY;
  const image = points.map(({ x, y }) => ({ x, y: middle - y }));
  const left = polygonsWithout(polygonsUnion([points]), polygonsUnion([image]));
  const uncovered = Math.abs(polygonsArea(left));
  return uncovered < 0.1 * (box.maxX - box.minX + box.maxY - box.minY);
}
