import type { Mark, Page, TextMeasure, Weight } from '../engine/sheet/index.ts';
import type { PaperFonts } from './fonts.ts';
import { type Kit, kitHasLetter, openKit } from './kit.ts';

/** What is printed where the font lacks a letter; `missingLetters` says which ones and where. */
const STAND_IN = '?';

/** Letters of one text that neither font can print. */
export interface MissingLetters {
  readonly text: string;
  readonly letters: readonly string[];
}

/** Text as it goes onto paper: composed (NFC), without control characters, unknown letters stood in for. */
export function printable(kit: Kit, text: string): string {
  let shown = '';
  for (const letter of composed(text)) shown += hasLetter(kit, letter) ? letter : STAND_IN;
  return shown;
}

/** How a text is shaped, as pdfkit's text options. */
interface Shaping {
  readonly features?: PDFKit.Mixins.OpenTypeFeatures[];
}

const PLAIN: Shaping = {};

/**
 * The fonts' `ccmp` feature takes letters like o-with-dot-below apart into two shapes; it looks the same, but readers
 * then find two letters, or the wrong one, when they search for the name. The whole letters are in the fonts. Only
 * an i with a further mark needs the feature, to lose its dot. The published types leave out that a feature can be
 * switched off by name. The font writes into the object that it is given, so every text has its own.
 */
const wholeLetters = (): Shaping => ({
  features: { ccmp: false } as unknown as PDFKit.Mixins.OpenTypeFeatures[],
});

export function shapingOf(text: string): Shaping {
  if (/^[ -\u00ff]*$/.test(text)) return PLAIN;
  return /[ij\u012f\u0268\u1e2d\u1ecb]\p{M}/u.test(text) ? PLAIN : wholeLetters();
}

/** Measures in the very fonts that will be embedded. Keep one for a whole pack: it remembers words. */
export function createTextMeasure(fonts: PaperFonts): TextMeasure {
  const kit = openKit(fonts, { title: '', creationDate: new Date(0) });
  const known = { regular: new Map<string, number>(), bold: new Map<string, number>() };
  return {
    width(text: string, size: number, weight: Weight): number {
      let atOne = known[weight].get(text);
      if (atOne === undefined) {
        kit.font(weight).fontSize(1);
        const shown = printable(kit, text);
        atOne = kit.widthOfString(shown, shapingOf(shown));
        known[weight].set(text, atOne);
      }
      return atOne * size;
    },
  };
}

/** Every text of the pages that holds letters without a shape in the fonts, so that the maker can be told. */
export function missingLetters(pages: readonly Page[], fonts: PaperFonts): readonly MissingLetters[] {
  const kit = openKit(fonts, { title: '', creationDate: new Date(0) }).font('regular');
  const found = new Map<string, MissingLetters>();
  for (const text of pages.flatMap((page) => textsOf(page.marks))) {
    const letters = [...new Set([...composed(text)].filter((letter) => !hasLetter(kit, letter)))];
    if (letters.length > 0) found.set(text, { text, letters });
  }
  return [...found.values()];
}

function textsOf(marks: readonly Mark[]): readonly string[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'text') return [mark.text];
    return mark.kind === 'group' ? textsOf(mark.marks) : [];
  });
}

function composed(text: string): string {
  return text.normalize('NFC').replace(/\p{Cc}+/gu, ' ');
}

function hasLetter(kit: Kit, letter: string): boolean {
  return kitHasLetter(kit, letter.codePointAt(0) ?? 0);
}
