import {
  type Affine,
  linePath,
  type Path,
  type Point,
  pathBounds,
  pathEnd,
  pathLength,
  pathMap,
  pathStart,
} from '../../engine/geometry/index.ts';
import {
  type Edge,
  edgeLength,
  findEdge,
  type Garment,
  layPleats,
  type Piece,
  type Seam,
  type SeamEdge,
} from '../../engine/piece/index.ts';
import { type DressLayer, type Half, halfPieces, layerOf } from './layers.ts';
import { after, STAY, shift } from './motion.ts';

/** A width of skirt as it hangs below the waist of one half of the bodice, in the coordinates of that half. */
export type FinishedSkirt =
  /** The piece as it was cut, or drawn in evenly to the width at which it is sewn. */
  { readonly kind: 'piece'; readonly piece: Piece; readonly frame: Affine } | FinishedWidth;

/** Part of a ring of cloth that runs round the whole waist: its finished shape below one half. */
export interface FinishedWidth {
  readonly kind: 'width';
  readonly name: string;
  readonly outline: Path;
  readonly folds: readonly Path[];
  readonly hem: Path;
  /** From the waist down; a seam, or a place at the side where the cloth runs on. */
  readonly side: Path;
  /** Edges that stay open or lie at the centre of the back. */
  readonly opening: Path | null;
}

/** Everything that hangs from the waist of one half of a layer, tier below tier. */
export function finishedSkirts(garment: Garment, half: Half, layer: DressLayer): readonly FinishedSkirt[] {
  const waist = waistOf(garment, half);
  if (waist === null) return [];
  return garment.seams
    .filter((seam) => hangsFromWaist(garment, seam, layer))
    .flatMap((seam): readonly FinishedSkirt[] => {
      const own = partOf(garment, seam.b, half);
      return own === null ? ringBelow(garment, seam, half, waist) : hang(garment, own, waist, half);
    });
}

interface Waist {
  /** Where the centre meets the seam. */
  readonly centre: Point;
  /** The highest place of the seam: what is straight along its top is tucked under the bodice up to there. */
  readonly top: number;
  /** Finished length from the centre to the side, mm. */
  readonly width: number;
}

function waistOf(garment: Garment, half: Half): Waist | null {
  const edges = halfPieces(garment, half).flatMap((piece) =>
    piece.edges.filter(({ kind }) => kind === 'waist'),
  );
  const inner = edges.map(({ path }) => pathEnd(path)).toSorted((a, b) => a.x - b.x)[0];
  const width = edges.reduce((sum, { path }) => sum + pathLength(path), 0);
  const top = Math.min(...edges.map(({ path }) => pathBounds(path).minY));
  return inner === undefined ? null : { centre: inner, top, width };
}

/** A seam that sews the waist edges of a layer of skirt to waist edges of a bodice. */
function hangsFromWaist(garment: Garment, seam: Seam, layer: DressLayer): boolean {
  const kinds = seam.a.map(({ piece, edge }) => find(garment, piece, edge)?.edge.kind);
  const hung = seam.b.map(({ piece, edge }) => find(garment, piece, edge));
  return (
    kinds.every((kind) => kind === 'waist') &&
    hung.every((found) => found !== null && layerOf(found.piece) === layer && isHung(found)) &&
    seam.b.length > 0
  );
}

interface Found {
  readonly piece: Piece;
  readonly edge: Edge;
}

const isHung = ({ piece, edge }: Found): boolean =>
  edge.name === 'waist' && findEdge(piece, 'hem') !== undefined;

function find(garment: Garment, id: string, name: string): Found | null {
  const piece = garment.pieces.find((p) => p.id === id);
  const edge = piece === undefined ? undefined : findEdge(piece, name);
  return piece === undefined || edge === undefined ? null : { piece, edge };
}

/** The piece of a side of a seam that is cut for this half. */
function partOf(garment: Garment, side: readonly SeamEdge[], half: Half): Found | null {
  const own = side.find(({ piece }) => piece.endsWith(`-${half}`));
  return own === undefined ? null : find(garment, own.piece, own.edge);
}

/** How near the cloth comes to the finished width and counts as flat. */
const FLAT = 0.02;

function hang(garment: Garment, { piece, edge }: Found, at: Waist, half: Half): readonly FinishedSkirt[] {
  const [start, end] = [pathStart(edge.path), pathEnd(edge.path)];
  const inner = centreEnd(piece, edge);
  const outer = inner === start ? end : start;
  const cloth = pathLength(edge.path);
  const turn = outer.x < inner.x ? -1 : 1;
  const drawnIn = Math.abs(cloth - at.width) < at.width * FLAT ? 1 : at.width / cloth;
  const narrowed: Affine = { ...STAY, a: turn * drawnIn };
  const y = drawnIn === 1 ? at.centre.y : at.top;
  const frame = after(shift(at.centre.x - inner.x * turn * drawnIn, y - inner.y), narrowed);
  const drawn: FinishedSkirt = { kind: 'piece', piece, frame };
  const below = garment.seams.find((s) =>
    s.a.some((e) => e.piece === piece.id && findEdge(piece, e.edge)?.name === 'hem'),
  );
  const next = below === undefined ? null : partOf(garment, below.b, half);
  if (next === null || next.piece.id === piece.id) return [drawn];
  const centre = piece.edges.find(({ kind }) => kind === 'fold' || kind === 'closing' || kind === 'centre');
  const depth = centre === undefined ? 0 : pathLength(centre.path);
  const finished = edgeLength(piece, 'hem') * drawnIn;
  return [
    drawn,
    ...hang(
      garment,
      next,
      { centre: { x: at.centre.x, y: y + depth }, top: y + depth, width: finished },
      half,
    ),
  ];
}

/** The line of a width that lies at the side of the dress, from the waist down, in the coordinates of its half. */
export function sideOf(skirt: FinishedSkirt): Path | null {
  if (skirt.kind === 'width') return skirt.side;
  const { piece, frame } = skirt;
  const edge = findEdge(piece, 'side') ?? findEdge(piece, 'right');
  return edge === undefined ? null : pathMap(edge.path, frame);
}

/** The end of a waist edge that lies at the fold, the opening or the middle seam. */
function centreEnd(piece: Piece, waist: Edge): Point {
  const index = piece.edges.indexOf(waist);
  const before = piece.edges.at(index - 1);
  const atStart = before !== undefined && ['fold', 'closing', 'centre'].includes(before.kind);
  return atStart ? pathStart(waist.path) : pathEnd(waist.path);
}

/** What of a ring of cloth hangs below one half: as wide as its waist, flared as the ring is, folds where they lie. */
function ringBelow(garment: Garment, seam: Seam, half: Half, waist: Waist): readonly FinishedSkirt[] {
  const parts = seam.b.flatMap(({ piece, edge }) => {
    const found = find(garment, piece, edge);
    return found === null ? [] : [found];
  });
  const [first] = parts;
  if (first === undefined) return [];
  const sum = (name: 'waist' | 'hem'): number =>
    parts.reduce((total, { piece }) => total + edgeLength(piece, name), 0);
  const side = first.piece.edges.find(({ name }) => name === 'right' || name === 'side');
  const depth = side === undefined ? 0 : pathLength(side.path);
  const flare = sum('hem') / sum('waist');
  const { width, centre } = waist;
  const top = (x: number): Point => ({ x: centre.x + x, y: waist.top });
  const foot = (x: number): Point => ({ x: centre.x + x * flare, y: waist.top + depth });
  return [
    {
      kind: 'width',
      name: `${seam.id} ${half}`,
      outline: linePath(top(0), top(width), foot(width), foot(0), top(0)),
      folds: foldsAlong(garment, seam, half, width).map((x) => linePath(top(x), foot(x))),
      hem: linePath(foot(0), foot(width)),
      side: linePath(top(width), foot(width)),
      opening: half === 'back' ? linePath(top(0), foot(0)) : null,
    },
  ];
}

/** Where the outer folds of the pleats lie below a half, mm from its centre. The ring is sewn from the centre back. */
function foldsAlong(garment: Garment, { join }: Seam, half: Half, width: number): readonly number[] {
  if (join.kind !== 'pleated') return [];
  const back = waistOf(garment, 'back')?.width ?? 0;
  const layout = layPleats(join);
  return layout.faces
    .flatMap(({ from, to, finishedFrom }) => [finishedFrom, finishedFrom + to - from])
    .map((at) => (half === 'back' ? at : back + width - at))
    .filter((x, i, all) => x > 1 && x < width - 1 && all.findIndex((y) => Math.abs(x - y) < 0.5) === i);
}
