import { type Path, pathBounds, pathMap } from '../geometry/index.ts';
import type { LaidOnCloth, LaidStretch, Lay, Offcut } from '../lay/index.ts';
import { formatLength, RULERS, roundToRuler } from '../units/index.ts';
import { say } from '../words/index.ts';
import type { Drawn } from './drawn.ts';
import { shifted } from './drawn.ts';
import { placingName } from './lay-names.ts';
import type { Ink, Mark } from './scene.ts';
import { arrowHead, boxAt, dot, rectanglePath, stroke, strokeLine } from './shapes.ts';
import { textMark } from './text.ts';

/** A stretch of a lay to be drawn at 1 : `shrink`. */
export interface StretchDrawing {
  readonly lay: Lay;
  readonly stretch: LaidStretch;
  readonly offcuts: readonly LetteredOffcut[];
  readonly shrink: number;
}

export interface LetteredOffcut extends Offcut {
  readonly letter: string;
}

const EDGE_WORD = 3;
const SCALE_WORD = 2.8;
/** Above the cloth and below it, mm: the words at its edges and the scale from the cut end. */
const HEAD = 4.5;
const FOOT = 10;
const NAME = 3.4;

/**
 * Rows of a stretch, all alike and no wider than the page: the length of the cloth runs to the right, heads lie to the left. A
 * piece over the end of a row is drawn in both.
 */
export function stretchRows(drawing: StretchDrawing, width: number, ink: Ink): readonly Drawn[] {
  const { stretch, shrink } = drawing;
  const rows = Math.max(1, Math.ceil(stretch.length / (width * shrink) - 1e-6));
  const onRow = stretch.length / rows;
  return Array.from({ length: rows }, (_, i) => {
    const from = i * onRow;
    return rowOf(drawing, from, Math.min(stretch.length, from + onRow), ink);
  });
}

function rowOf({ lay, stretch, offcuts, shrink }: StretchDrawing, from: number, to: number, ink: Ink): Drawn {
  const k = 1 / shrink;
  const [length, depth] = [(to - from) * k, stretch.depth * k];
  const frame = { a: k, b: 0, c: 0, d: k, e: -from * k, f: 0 };
  const here = stretch.pieces.filter(({ outline }) => {
    const box = pathBounds(outline);
    return box.maxX > from && box.minX < to;
  });
  const left = offcuts.filter(({ x, along }) => x + along > from && x < to);
  const clipped: Mark = {
    kind: 'group',
    frame: { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 },
    clip: boxAt(-0.2, -0.2, length + 0.4, depth + 0.4),
    marks: [
      ...here.flatMap((piece) => pieceMarks(piece, pathMap(piece.outline, frame), frame)),
      ...left.flatMap((offcut) => offcutMarks(offcut, frame)),
    ],
  };
  const names = here.flatMap((piece) => nameMarks(piece, lay, frame, length, ink));
  const marks = [
    { kind: 'fill', outline: rectanglePath(boxAt(0, 0, length, depth)), fill: 'tint' } as const,
    clipped,
    ...names,
    ...edgeMarks(lay, stretch, length, depth, ink),
    ...(from === 0 ? [strokeLine({ x: 0, y: 0 }, { x: 0, y: depth }, 'cutting')] : []),
    ...scaleMarks(from, to, k, depth, ink),
  ];
  return { marks: [shifted(marks, 0, HEAD)], height: HEAD + depth + FOOT };
}

type Frame = { readonly a: number; readonly d: number; readonly e: number; readonly f: number };
const on = ({ a, d, e, f }: Frame, x: number, y: number) => ({ x: a * x + e, y: d * y + f });

/** The cutting line with the grain line, its point at the head, and the two points to measure to. */
function pieceMarks({ pins }: LaidOnCloth, outline: Path, frame: Frame): readonly Mark[] {
  const [head, foot] = pins.map(({ at }) => on(frame, at.x, at.y));
  const marks: Mark[] = [{ kind: 'fill', outline, fill: 'paper' }, stroke(outline, 'box')];
  if (head === undefined || foot === undefined) return marks;
  const [dx, dy] = [head.x - foot.x, head.y - foot.y];
  const long = Math.hypot(dx, dy);
  marks.push(strokeLine(foot, head, 'measure'), dot(foot, 0.5));
  if (long > 0) marks.push(arrowHead(head, { x: dx / long, y: dy / long }, Math.min(2, long)));
  return marks;
}

/** In the middle of the grain line, which lies within the piece. */
function nameMarks(
  piece: LaidOnCloth,
  lay: Lay,
  frame: Frame,
  length: number,
  { measure }: Ink,
): readonly Mark[] {
  const [head, foot] = piece.pins.map(({ at }) => on(frame, at.x, at.y));
  if (head === undefined || foot === undefined) return [];
  const name = placingName(piece, lay);
  const middle = { x: (head.x + foot.x) / 2, y: (head.y + foot.y) / 2 };
  const wide = measure.width(name, NAME, 'bold');
  if (middle.x < 0 || middle.x > length) return [];
  const x = Math.min(Math.max(middle.x, wide / 2 + 0.5), Math.max(wide / 2, length - wide / 2 - 0.5));
  const box = boxAt(x - wide / 2 - 0.4, middle.y - NAME / 2, wide + 0.8, NAME);
  return [
    { kind: 'fill', outline: rectanglePath(box), fill: 'paper' },
    textMark(name, { x, y: middle.y + NAME * 0.36 }, { size: NAME, weight: 'bold', align: 'centre' }),
  ];
}

function offcutMarks(offcut: LetteredOffcut, frame: Frame): readonly Mark[] {
  const corner = on(frame, offcut.x, offcut.y);
  const [w, h] = [offcut.along * frame.a, offcut.across * frame.d];
  const at = { x: corner.x + w / 2, y: corner.y + h / 2 + EDGE_WORD * 0.35 };
  return [
    stroke(rectanglePath(boxAt(corner.x, corner.y, w, h)), 'strip-line'),
    textMark(offcut.letter, at, { size: EDGE_WORD, align: 'centre' }),
  ];
}

/** Selvedges drawn as two lines, folds as fold lines, each with its word. */
function edgeMarks(
  { cloth }: Lay,
  { folding }: LaidStretch,
  length: number,
  depth: number,
  ink: Ink,
): readonly Mark[] {
  const word = (isFold: boolean): string =>
    say(isFold ? 'paper.lay.fold' : 'paper.lay.selvedge', {}, ink.units);
  const edge = (y: number, outside: number, isFold: boolean): readonly Mark[] => {
    const line = strokeLine({ x: 0, y }, { x: length, y }, isFold ? 'fold' : 'box');
    if (isFold) return [line];
    return [line, strokeLine({ x: 0, y: y + outside }, { x: length, y: y + outside }, 'measure')];
  };
  const isNearFold = folding === 'lengthwise';
  const isFarFold = folding === 'lengthwise' && cloth.selvedgesToMiddle === true;
  const said = (text: string, y: number): Mark => textMark(text, { x: 0, y }, { size: EDGE_WORD });
  return [
    ...edge(0, -0.8, isNearFold),
    ...edge(depth, 0.8, isFarFold),
    said(word(isNearFold), -1.4),
    said(word(isFarFold), depth + 4),
  ];
}

/** Marks from the cut end, every quarter of a metre or ten inches. */
function scaleMarks(from: number, to: number, k: number, depth: number, ink: Ink): readonly Mark[] {
  const step = ink.units === 'in' ? 254 : 250;
  const marks: Mark[] = [];
  for (let n = Math.ceil(from / step - 1e-9); n * step <= to; n++) {
    const x = (n * step - from) * k;
    const far = (to - from) * k;
    const align = x < 8 ? 'left' : x > far - 8 ? 'right' : 'centre';
    const text = formatLength(n * step, ink.units);
    marks.push(strokeLine({ x, y: depth + 4.8 }, { x, y: depth + 6.2 }, 'measure'));
    if (n > 0 || from > 0) marks.push(textMark(text, { x, y: depth + 9 }, { size: SCALE_WORD, align }));
  }
  marks.push(strokeLine({ x: 0, y: depth + 4.8 }, { x: (to - from) * k, y: depth + 4.8 }, 'measure'));
  return marks;
}

/** A length on cloth: to an eighth of an inch or a millimetre. */
export function clothLength(mm: number, { units }: Pick<Ink, 'units'>): string {
  const ruler = units === 'in' ? RULERS.eighth : RULERS.millimetre;
  return formatLength(roundToRuler(Math.max(0, mm), ruler), units);
}
