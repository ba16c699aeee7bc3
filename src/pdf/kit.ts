import PDFDocument from 'pdfkit';
import type { PaperFonts } from './fonts.ts';

/** The one place that knows pdfkit: what we use of it and its published types leave out stands here. */

export type Kit = PDFKit.PDFDocument;

/** A font that pdfkit has parsed; it takes such a one again in place of bytes. */
interface ParsedFont {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

/** Shapes a text with a font; what comes back is only read. */
type LayoutRun = (text: string, features?: PDFKit.Mixins.OpenTypeFeatures[]) => object;

/** pdfkit keeps the font that is set in this field; no public call hands it out. */
interface CurrentFont {
  readonly _font: { readonly font: ParsedFont; layoutRun: LayoutRun };
}

/** What all documents share of a font. */
interface OpenFont {
  readonly font: ParsedFont;
  /** Shaped texts, under the text and its features. */
  readonly runs: Map<string, object>;
}

const FACES = ['regular', 'bold'] as const;

/**
 * Parsing the two fonts takes most of the time of a short document, and shaping the same words again and again most
 * of a long one, so both are done once for a pack.
 */
const parsed = new WeakMap<PaperFonts, ReadonlyMap<string, OpenFont>>();

/** So many shaped texts are kept of a font: a pack for six has five thousand, and a page may stay open for days. */
const MOST_RUNS = 20_000;

export interface KitInfo {
  readonly title: string;
  readonly creationDate: Date;
}

/** An empty document with both fonts at hand. An empty `font` keeps pdfkit from loading Helvetica. */
export function openKit(fonts: PaperFonts, info: KitInfo): Kit {
  const kit = new PDFDocument({
    font: '',
    autoFirstPage: false,
    margin: 0,
    // UserUnit, for pages over 5.08 m, came with PDF 1.6.
    pdfVersion: '1.7',
    info: {
      Title: info.title.normalize('NFC'),
      CreationDate: info.creationDate,
      Creator: 'Frockwright',
      Producer: 'Frockwright',
    },
  });
  const known = parsed.get(fonts);
  const open = new Map<string, OpenFont>();
  // Both are set once in the same order, so that a face has the same number in every file.
  for (const face of FACES) {
    // The published types leave out that an open font is taken.
    kit.registerFont(face, (known?.get(face)?.font as unknown as Uint8Array | undefined) ?? fonts[face]);
    const current = currentFont(kit.font(face));
    const shared = known?.get(face) ?? { font: current.font, runs: new Map() };
    current.layoutRun = shapedOnce(current.layoutRun.bind(current), shared.runs);
    open.set(face, shared);
  }
  if (known === undefined) parsed.set(fonts, open);
  return kit;
}

/** The key is taken before the text is shaped, as the font writes into the features that it is given. */
function shapedOnce(shape: LayoutRun, runs: Map<string, object>): LayoutRun {
  return (text, features) => {
    const key = features === undefined ? text : `${JSON.stringify(features)} ${text}`;
    const known = runs.get(key);
    if (known !== undefined) return known;
    const run = features === undefined ? shape(text) : shape(text, features);
    if (runs.size >= MOST_RUNS) runs.clear();
    runs.set(key, run);
    return run;
  };
}

function currentFont(kit: Kit): CurrentFont['_font'] {
  return (kit as unknown as CurrentFont)._font;
}

export function kitHasLetter(kit: Kit, codePoint: number): boolean {
  return currentFont(kit).font.hasGlyphForCodePoint(codePoint);
}

/** Ends the document and gathers its bytes. */
export function kitBytes(kit: Kit): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    kit.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    kit.on('error', reject);
    kit.on('end', () => resolve(joined(chunks)));
    kit.end();
  });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
