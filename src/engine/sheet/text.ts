import type { Point } from '../geometry/index.ts';
import type { Align, Mark, TextMark, TextMeasure, Weight } from './scene.ts';

/** Line to line, as a multiple of the size; leaves room for marks above and below letters (Ọ̀, ɗ, ẹ́). */
export const LINE_SPACING = 1.35;

/** From the top of a line to its baseline, as a multiple of the size. */
export const ASCENT = 1.0;

/** Below this em size (mm) text on paper is hard to read at arm's length; 2.5 mm is about 7 point. */
export const SMALLEST_TEXT = 2.5;

/** A real fraction is set in figures about six tenths of the size; below this plain figures read better. */
const SMALLEST_FRACTION = 4.8;

interface TextLook {
  readonly size: number;
  readonly weight?: Weight;
  readonly align?: Align;
  readonly turn?: number;
}

export function textMark(text: string, at: Point, look: TextLook): TextMark {
  return {
    kind: 'text',
    text: look.size >= SMALLEST_FRACTION ? withRealFractions(text) : text,
    at,
    size: look.size,
    weight: look.weight ?? 'regular',
    align: look.align ?? 'left',
    turn: look.turn ?? 0,
  };
}

/**
 * `20 1/2 in` with the fraction slash (U+2044): fonts and browsers then set a real fraction. Only before a unit,
 * so that dates and names with a slash stay as they are.
 */
function withRealFractions(text: string): string {
  return text.replace(/(?<![\d/])(\d{1,2})\/(\d{1,2})(?= (?:in|yd)\b)/g, '$1\u2044$2');
}

/** Lines of text under one another, the first baseline at `at`. */
export function textLines(lines: readonly string[], at: Point, look: TextLook): readonly Mark[] {
  return lines.map((line, i) => textMark(line, { x: at.x, y: at.y + i * look.size * LINE_SPACING }, look));
}

/**
 * Breaks text at spaces so that no line is wider than `width` mm. A single word that is wider is broken inside:
 * a name must never be lost or run off the page.
 */
export function wrapText(
  measure: TextMeasure,
  text: string,
  size: number,
  weight: Weight,
  width: number,
): readonly string[] {
  const fits = (line: string): boolean => measure.width(line, size, weight) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of lengthsKept(text)
    .split(/[ \t\n]+/)
    .filter((w) => w !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = fits(word) ? [word] : brokenWord(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines.map((text) => text.replaceAll(NO_BREAK, ' '));
}

/** `2 9/16 in` and `52 cm` stay on one line: their spaces are no-break spaces while the lines are broken. */
function lengthsKept(text: string): string {
  return text
    .replace(/(?<=\d) (?=\d+\/\d+\b)/g, NO_BREAK)
    .replace(/(?<=\d) (?=(?:in|cm|mm|yd|m)\b)/g, NO_BREAK);
}

const NO_BREAK = '\u00a0';

function brokenWord(word: string, fits: (text: string) => boolean): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of lettersOf(word)) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}

/** Letters with the marks that sit on them kept together. */
function lettersOf(text: string): readonly string[] {
  return text.normalize('NFC').match(/\P{M}\p{M}*|\p{M}+/gu) ?? [];
}

/** Cuts text to one line of at most `width` mm, ending in an ellipsis where something was left out. */
export function clippedText(
  measure: TextMeasure,
  text: string,
  size: number,
  weight: Weight,
  width: number,
): string {
  if (measure.width(text, size, weight) <= width) return text;
  const letters = [...lettersOf(text)];
  while (letters.length > 0) {
    letters.pop();
    const cut = `${letters.join('').trimEnd()}…`;
    if (measure.width(cut, size, weight) <= width) return cut;
  }
  return '';
}

/** The largest size from `wished` down to `least` at which the text fits into `width`; `least` if none does. */
export function sizeToFit(
  measure: TextMeasure,
  text: string,
  weight: Weight,
  width: number,
  wished: number,
  least: number,
): number {
  const atOne = measure.width(text, 1, weight);
  return atOne === 0 ? wished : Math.max(least, Math.min(wished, width / atOne));
}

/** With a large first letter: names of points and cloths are written small. */
export function capitalised(text: string): string {
  const [first = ''] = text;
  return first.toUpperCase() + text.slice(first.length);
}
