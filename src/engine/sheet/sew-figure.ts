import {
  type Affine,
  type Bounds,
  boundsUnion,
  midpoint,
  outward,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathJoin,
  pathLength,
  pathMap,
  pathMirrorLine,
  pathReverse,
  pathStart,
} from '../geometry/index.ts';
import { edgeOf, type Garment, outlineOf, type Piece, pieceOf } from '../piece/index.ts';
import type { EdgeRef, PlannedStep } from '../sew/index.ts';
import type { Ink, Mark } from './scene.ts';
import { arrowHead, stroke, strokeLine } from './shapes.ts';
import { clippedText, textMark } from './text.ts';

/** The drawing of a step: its marks from the top left corner, and the room that it takes, mm. */
export interface StepFigure {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
}

/** A piece as it lies on the table for one step, in its own mm. */
interface Laid {
  readonly outline: Path;
  /** The edges that the step works along. */
  readonly needle: readonly Path[];
  readonly title: string;
  readonly wrongSideUp: boolean;
}

const CAPTION = 2.6;
const CAPTION_ROOM = 4;
const AIR = 2.5;
/** Between two pieces that are brought together, page mm. */
const APART = 7;
/** A small piece is not drawn larger than so many times the scale of the largest. */
const LARGER = 3;

/**
 * What is handled in a step, made from the pieces of this very dress: grey lies wrong side up, white right side up,
 * and along the heavy broken line goes the needle. Two pieces face each other with the edges that meet; several stand
 * side by side, above what they are sewn to.
 */
export function stepFigure(
  garment: Garment,
  step: Pick<PlannedStep, 'sideA' | 'sideB'>,
  tell: (piece: Piece) => string,
  room: { readonly width: number; readonly height: number },
  ink: Ink,
): StepFigure {
  const [a, b] = [byPiece(step.sideA), byPiece(step.sideB)];
  const [one, other] = [a[0], b[0]];
  const pair = a.length === 1 && b.length === 1 && one !== undefined && other !== undefined;
  const facing = pair && one[0] !== other[0];
  if (facing) {
    const ours = laid(garment, one, tell, true, false);
    const theirs = laid(garment, other, tell, false, false);
    return { marks: faceToFace(ours, theirs, room, ink), ...room };
  }
  const seen = new Set(a.map(([piece]) => piece));
  const rows = [
    a.map((entry) => laid(garment, merged(entry, b), tell, b.length > 0, true)),
    b.filter(([piece]) => !seen.has(piece)).map((entry) => laid(garment, entry, tell, false, true)),
  ].filter((row) => row.length > 0);
  return { marks: inRows(rows, room, ink), ...room };
}

type Entry = readonly [piece: string, edges: readonly EdgeRef[]];

function byPiece(side: readonly EdgeRef[]): readonly Entry[] {
  const pieces = new Map<string, EdgeRef[]>();
  for (const at of side) pieces.set(at.piece, [...(pieces.get(at.piece) ?? []), at]);
  return [...pieces];
}

/** Both sides of a seam that joins a piece to itself. */
const merged = ([piece, edges]: Entry, others: readonly Entry[]): Entry => [
  piece,
  [...edges, ...others.filter(([id]) => id === piece).flatMap(([, more]) => more)],
];

function laid(
  garment: Garment,
  [id, edges]: Entry,
  tell: (piece: Piece) => string,
  wrongSideUp: boolean,
  opened: boolean,
): Laid {
  const piece = pieceOf(garment, id);
  const needle = edges.map(({ edge }) => edgeOf(piece, edge).path);
  const base = { outline: outlineOf(piece), needle, title: tell(piece), wrongSideUp };
  const folds = piece.edges.filter(({ kind }) => kind === 'fold');
  const [fold] = folds;
  if (!opened || fold === undefined || folds.length > 1 || piece.cutting.as !== 'fold') return base;
  const over = (path: Path): Path => pathMirrorLine(path, pathStart(fold.path), pathEnd(fold.path));
  const at = piece.edges.indexOf(fold);
  const [first, ...rest] = [...piece.edges.slice(at + 1), ...piece.edges.slice(0, at)].map(
    ({ path }) => path,
  );
  if (first === undefined) return base;
  const half = pathJoin(first, ...rest);
  return {
    ...base,
    outline: pathJoin(half, pathReverse(over(half))),
    needle: [...needle, ...needle.map(over)],
  };
}

/** Where the middle of an edge lies and which way it looks. */
function lookOf({ needle, outline }: Laid): { readonly at: Point; readonly way: Point } {
  const path = needle[0] ?? outline;
  const { point, tangent } = pathAt(path, pathLength(path) / 2);
  return { at: point, way: outward(tangent) };
}

/** The second piece lies beyond the edge of the first, turned over so that the two edges look at each other. */
function faceToFace(
  a: Laid,
  b: Laid,
  { width, height }: { readonly width: number; readonly height: number },
  ink: Ink,
): readonly Mark[] {
  const [ours, theirs] = [lookOf(a), lookOf(b)];
  const upright = Math.abs(ours.way.y) > Math.abs(ours.way.x);
  const flip: Affine = upright
    ? { a: 1, b: 0, c: 0, d: ours.way.y * theirs.way.y > 0 ? -1 : 1, e: 0, f: 0 }
    : { a: ours.way.x * theirs.way.x > 0 ? -1 : 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  const turned = mapped(b, flip);
  const [boxA, boxB] = [pathBounds(a.outline), pathBounds(turned.outline)];
  const sign = Math.sign(upright ? ours.way.y : ours.way.x) || 1;
  const inner = { width: width - 2 * AIR, height: height - 2 * AIR - CAPTION_ROOM };
  const across = upright
    ? Math.max(boxA.maxX - boxA.minX, boxB.maxX - boxB.minX)
    : boxA.maxX - boxA.minX + boxB.maxX - boxB.minX;
  const down = upright
    ? boxA.maxY - boxA.minY + boxB.maxY - boxB.minY
    : Math.max(boxA.maxY - boxA.minY, boxB.maxY - boxB.minY);
  const k = Math.min(
    (inner.width - (upright ? 0 : APART)) / across,
    (inner.height - (upright ? APART : 0)) / down,
  );
  const gap = APART / k;
  const place = lookOf(turned).at;
  const shift: Affine = upright
    ? {
        ...PLAIN,
        e: ours.at.x - place.x,
        f: sign < 0 ? boxA.minY - gap - boxB.maxY : boxA.maxY + gap - boxB.minY,
      }
    : {
        ...PLAIN,
        e: sign < 0 ? boxA.minX - gap - boxB.maxX : boxA.maxX + gap - boxB.minX,
        f: ours.at.y - place.y,
      };
  const moved = mapped(turned, shift);
  const box = [pathBounds(a.outline), pathBounds(moved.outline)].reduce(boundsUnion);
  const fit = Math.min(inner.width / (box.maxX - box.minX), inner.height / (box.maxY - box.minY));
  const frame = fitted(box, fit, { x: width / 2, y: AIR + inner.height / 2 });
  const [drawnA, drawnB] = [mapped(a, frame), mapped(moved, frame)];
  const [from, to] = [lookOf(drawnA).at, lookOf(drawnB).at];
  return [
    ...pieceMarks(drawnA),
    ...pieceMarks(drawnB),
    ...together(from, to),
    textMark(
      captionOf([a, b], width, ink),
      { x: width / 2, y: height - 1 },
      { size: CAPTION, align: 'centre' },
    ),
  ];
}

const PLAIN: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** An arrow from each edge to the middle between them, where there is room for it. */
function together(from: Point, to: Point): readonly Mark[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 5) return [];
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const middle = midpoint(from, to);
  const near = (p: Point, sign: number): Point => ({ x: p.x + way.x * sign, y: p.y + way.y * sign });
  return [
    strokeLine(near(from, 1), near(middle, -0.4), 'measure'),
    strokeLine(near(to, -1), near(middle, 0.4), 'measure'),
    arrowHead(near(middle, -0.3), way, 1.6),
    arrowHead(near(middle, 0.3), { x: -way.x, y: -way.y }, 1.6),
  ];
}

function inRows(
  rows: readonly (readonly Laid[])[],
  { width, height }: { readonly width: number; readonly height: number },
  ink: Ink,
): readonly Mark[] {
  const rowHeight = height / rows.length;
  const cells = rows.flatMap((row, r) =>
    row.map((piece, i) => {
      const cell = { width: width / row.length, height: rowHeight };
      const box = pathBounds(piece.outline);
      const fit = Math.min(
        (cell.width - 2 * AIR) / (box.maxX - box.minX),
        (cell.height - 2 * AIR - CAPTION_ROOM) / (box.maxY - box.minY),
      );
      return { piece, box, fit, cell, x: i * cell.width, y: r * rowHeight };
    }),
  );
  const least = Math.min(...cells.map(({ fit }) => fit));
  return cells.flatMap(({ piece, box, fit, cell, x, y }) => {
    const middle = { x: x + cell.width / 2, y: y + (cell.height - CAPTION_ROOM) / 2 };
    return [
      ...pieceMarks(mapped(piece, fitted(box, Math.min(fit, least * LARGER), middle))),
      textMark(
        captionOf([piece], cell.width, ink),
        { x: middle.x, y: y + cell.height - 1 },
        { size: CAPTION, align: 'centre' },
      ),
    ];
  });
}

const captionOf = (pieces: readonly Laid[], width: number, { measure }: Ink): string =>
  clippedText(
    measure,
    [...new Set(pieces.map(({ title }) => title))].join(' + '),
    CAPTION,
    'regular',
    width - 1,
  );

const fitted = (box: Bounds, k: number, middle: Point): Affine => ({
  a: k,
  b: 0,
  c: 0,
  d: k,
  e: middle.x - (k * (box.minX + box.maxX)) / 2,
  f: middle.y - (k * (box.minY + box.maxY)) / 2,
});

const mapped = (piece: Laid, frame: Affine): Laid => ({
  ...piece,
  outline: pathMap(piece.outline, frame),
  needle: piece.needle.map((path) => pathMap(path, frame)),
});

const pieceMarks = ({ outline, needle, wrongSideUp }: Laid): readonly Mark[] => [
  { kind: 'fill', outline, fill: wrongSideUp ? 'tint' : 'paper' },
  stroke(outline, 'measure'),
  ...needle.map((path) => stroke(path, 'needle')),
];
