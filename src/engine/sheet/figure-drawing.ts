import type { Bounds } from '../geometry/index.ts';
import { say } from '../words/index.ts';
import { type RuledPiece, SIDES } from './ruled-piece.ts';
import type { MarkKind, RuledMark, Side } from './running-measures.ts';
import type { Ink, Mark } from './scene.ts';
import { arrowHead, boxAt, doubleArrow, measureLine, rectanglePath, stroke, strokeLine } from './shapes.ts';
import { SMALLEST_TEXT, textMark } from './text.ts';

/** The numbers that tie a line of the drawing to its row in the table. */
export interface NumberedMark extends RuledMark {
  readonly name: string;
}

export interface FigureMarks {
  /** Numbered from the left, and lettered from the top; the far edges have no name. */
  readonly across: readonly NumberedMark[];
  readonly down: readonly NumberedMark[];
}

/** Room round the rectangle for measures, names and numbers, mm. */
export const FIGURE_AIR = { top: 15, right: 19, bottom: 6, left: 7 };

const NUMBER = 2.6;
const EDGE_NAME = 3;
const FIGURE = 4;
const NOTCH = 2.6;
const HEAD = 1.7;
/** Share of the height at which the pleat arrows stand. */
const ARROW_LEVELS = [0.28, 0.8];

/** The drawing with its top left corner, measures and all, at the origin; `scale` is page mm to one mm of the piece. */
export function figureDrawing(
  piece: RuledPiece,
  { across, down }: FigureMarks,
  scale: { readonly x: number; readonly y: number },
  words: { readonly width: string; readonly length: string },
  ink: Ink,
): readonly Mark[] {
  const { box, stitched, edges } = piece;
  const x = (exact: number): number => FIGURE_AIR.left + (exact - box.minX) * scale.x;
  const y = (exact: number): number => FIGURE_AIR.top + (exact - box.minY) * scale.y;
  const cut = onFigure(box, x, y);
  const seam = onFigure(stitched, x, y);
  const marks: Mark[] = [];
  for (const side of SIDES) {
    const isFold = edges[side].kind === 'fold';
    marks.push(stroke(sideLine(side, cut), isFold ? 'fold' : 'cutting'));
    if (!isFold && gapAt(side, cut, seam) > 0.4) marks.push(stroke(sideLine(side, seam), 'stitching'));
  }
  for (const mark of across) marks.push(...acrossMark(mark, x(mark.exact), cut, seam, scale.x));
  for (const mark of down) marks.push(...downMark(mark, y(mark.exact), cut, seam));
  return [
    ...marks,
    ...grainArrow(piece, across, x, seam),
    ...SIDES.flatMap((side) =>
      edgeName(side, say(`check.edge.${edges[side].kind}`, {}, ink.units), cut, seam, ink),
    ),
    ...numbers(across, x, cut, ink),
    ...letters(down, y, cut),
    ...measures(cut, words),
  ];
}

function onFigure(box: Bounds, x: (v: number) => number, y: (v: number) => number): Bounds {
  return { minX: x(box.minX), maxX: x(box.maxX), minY: y(box.minY), maxY: y(box.maxY) };
}

function sideLine(side: Side, { minX, minY, maxX, maxY }: Bounds) {
  const [from, to] = {
    top: [
      { x: minX, y: minY },
      { x: maxX, y: minY },
    ] as const,
    right: [
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
    ] as const,
    bottom: [
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ] as const,
    left: [
      { x: minX, y: maxY },
      { x: minX, y: minY },
    ] as const,
  }[side];
  return strokeLine(from, to, 'cutting').path;
}

function gapAt(side: Side, cut: Bounds, seam: Bounds): number {
  return {
    top: seam.minY - cut.minY,
    right: cut.maxX - seam.maxX,
    bottom: cut.maxY - seam.maxY,
    left: seam.minX - cut.minX,
  }[side];
}

/** What the edge is, beside it; that of the top edge stands inside on white ground, as the numbers are outside. */
function edgeName(side: Side, words: string, cut: Bounds, seam: Bounds, { measure }: Ink): readonly Mark[] {
  const [midX, midY] = [(cut.minX + cut.maxX) / 2, (cut.minY + cut.maxY) / 2];
  const look = { size: EDGE_NAME, align: 'centre' } as const;
  switch (side) {
    case 'top': {
      const width = measure.width(words, EDGE_NAME, 'regular') + 2;
      const box = boxAt(midX - width / 2, seam.minY + 0.6, width, EDGE_NAME + 1);
      return [
        { kind: 'fill', outline: rectanglePath(box), fill: 'paper' },
        textMark(words, { x: midX, y: seam.minY + EDGE_NAME + 0.6 }, look),
      ];
    }
    case 'bottom':
      return [textMark(words, { x: midX, y: cut.maxY + EDGE_NAME + 1 }, look)];
    case 'left':
      return [textMark(words, { x: cut.minX - 1.5, y: midY }, { ...look, turn: -90 })];
    case 'right':
      return [textMark(words, { x: cut.maxX + EDGE_NAME + 4, y: midY }, { ...look, turn: -90 })];
  }
}

function acrossMark(mark: NumberedMark, x: number, cut: Bounds, seam: Bounds, k: number): readonly Mark[] {
  switch (mark.kind) {
    case 'stitch':
    case 'edge':
      return [];
    case 'notch':
    case 'double-notch':
      return mark.sides.flatMap((side) => {
        const [from, to] = side === 'top' ? [cut.minY, cut.minY + NOTCH] : [cut.maxY, cut.maxY - NOTCH];
        return strokesOf(mark.kind).map((d) =>
          strokeLine({ x: x + d, y: from }, { x: x + d, y: to }, 'notch'),
        );
      });
    default: {
      const line = strokeLine({ x, y: seam.minY }, { x, y: seam.maxY }, mark.kind);
      if (mark.brought === 0) return [line];
      const way = Math.sign(mark.brought);
      // An arrow to a line on the next width runs out of the piece a little.
      const tip = Math.min(cut.maxX + 3, Math.max(cut.minX - 3, x + mark.brought * k));
      const arrows = ARROW_LEVELS.flatMap((share) => {
        const y = seam.minY + (seam.maxY - seam.minY) * share;
        const head = Math.min(HEAD, Math.abs(tip - x) / 2);
        return [
          strokeLine({ x, y }, { x: tip - way * head * 0.8, y }, 'measure'),
          arrowHead({ x: tip, y }, { x: way, y: 0 }, head),
        ];
      });
      return [line, ...arrows];
    }
  }
}

function downMark(mark: NumberedMark, y: number, cut: Bounds, seam: Bounds): readonly Mark[] {
  switch (mark.kind) {
    case 'stitch':
    case 'edge':
      return [];
    case 'notch':
    case 'double-notch':
      return mark.sides.flatMap((side) => {
        const [from, to] = side === 'left' ? [cut.minX, cut.minX + NOTCH] : [cut.maxX, cut.maxX - NOTCH];
        return strokesOf(mark.kind).map((d) =>
          strokeLine({ x: from, y: y + d }, { x: to, y: y + d }, 'notch'),
        );
      });
    case 'closing-end':
      return mark.sides.map((side) => {
        const x = side === 'left' ? seam.minX : seam.maxX;
        return strokeLine({ x: x - 2, y }, { x: x + 2, y }, 'closing-end');
      });
    default:
      return [strokeLine({ x: seam.minX, y }, { x: seam.maxX, y }, mark.kind)];
  }
}

const strokesOf = (kind: MarkKind): readonly number[] => (kind === 'double-notch' ? [-0.8, 0.8] : [0]);

/** The grain in the widest stretch between two lines. */
function grainArrow(
  { cut }: RuledPiece,
  across: readonly NumberedMark[],
  x: (exact: number) => number,
  seam: Bounds,
): readonly Mark[] {
  const { from, to } = cut.piece.grain;
  const isUpright = Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
  const [low, high] = [0.36, 0.66].map((share) => seam.minY + (seam.maxY - seam.minY) * share);
  if (low === undefined || high === undefined) return [];
  if (!isUpright) {
    const middle = (seam.minX + seam.maxX) / 2;
    const reach = (seam.maxX - seam.minX) * 0.15;
    return doubleArrow({ x: middle - reach, y: high }, { x: middle + reach, y: high }, 'grain', 3);
  }
  const inside = across.map(({ exact }) => x(exact)).filter((at) => at > seam.minX && at < seam.maxX);
  const lines = [seam.minX, ...inside, seam.maxX].sort((a, b) => a - b);
  const gaps = lines.map((line, i) => ({ line, gap: (lines[i + 1] ?? line) - line }));
  const widest = gaps.reduce((a, b) => (b.gap > a.gap + 1e-6 ? b : a));
  const middle = widest.line + widest.gap / 2;
  return doubleArrow({ x: middle, y: low }, { x: middle, y: high }, 'grain', 3);
}

/** Numbers above the top edge, each at its line; where they would touch, in rows one above the other. */
function numbers(
  across: readonly NumberedMark[],
  x: (exact: number) => number,
  cut: Bounds,
  { measure }: Ink,
): readonly Mark[] {
  const filledTo: number[] = [];
  return across.flatMap(({ name, exact }) => {
    if (name === '') return [];
    const [at, half] = [x(exact), measure.width(name, NUMBER, 'regular') / 2 + 0.4];
    const free = filledTo.findIndex((right) => right <= at - half);
    const row = free >= 0 ? free : Math.min(filledTo.length, MOST_ROWS - 1);
    filledTo[row] = at + half;
    const y = cut.minY - 1.2 - row * (NUMBER + 0.3);
    return [textMark(name, { x: at, y }, { size: NUMBER, align: 'centre' })];
  });
}

const MOST_ROWS = 3;

function letters(down: readonly NumberedMark[], y: (exact: number) => number, cut: Bounds): readonly Mark[] {
  let last = Number.NEGATIVE_INFINITY;
  return down.flatMap(({ name, exact }) => {
    if (name === '') return [];
    const at = Math.max(y(exact) + NUMBER * 0.36, last + NUMBER);
    last = at;
    return [textMark(name, { x: cut.maxX + 1, y: at }, { size: SMALLEST_TEXT })];
  });
}

function measures(cut: Bounds, words: { readonly width: string; readonly length: string }): readonly Mark[] {
  const top = cut.minY - 10.4;
  const right = cut.maxX + 11;
  const [midX, midY] = [(cut.minX + cut.maxX) / 2, (cut.minY + cut.maxY) / 2];
  const look = { size: FIGURE, weight: 'bold', align: 'centre' } as const;
  return [
    ...measureLine({ x: cut.minX, y: top }, { x: cut.maxX, y: top }),
    textMark(words.width, { x: midX, y: top - 1 }, look),
    ...measureLine({ x: right, y: cut.minY }, { x: right, y: cut.maxY }),
    textMark(words.length, { x: right + FIGURE + 0.6, y: midY }, { ...look, turn: -90 }),
  ];
}
