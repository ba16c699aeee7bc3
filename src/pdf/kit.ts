import PDFDocument from 'pdfkit';
import type { PaperFonts } from './fonts.ts';

/** The one place that knows pdfkit: what we use of it and its published types leave out stands here. */

export type Kit = PDFKit.PDFDocument;

/** A font that pdfkit has parsed; it takes such a one again in place of bytes. */
interface OpenFont {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

/** pdfkit keeps the font that is set in this field; no public call hands it out. */
interface CurrentFont {
  readonly _font: { readonly font: OpenFont };
}

const FACES = ['regular', 'bold'] as const;

/** Parsing the two fonts takes most of the time of a short document, so it is done once for a pack. */
const parsed = new WeakMap<PaperFonts, ReadonlyMap<string, OpenFont>>();

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
    kit.registerFont(face, (known?.get(face) as unknown as Uint8Array | undefined) ?? fonts[face]);
    open.set(face, currentFont(kit.font(face)));
  }
  if (known === undefined) parsed.set(fonts, open);
  return kit;
}

function currentFont(kit: Kit): OpenFont {
  return (kit as unknown as CurrentFont)._font.font;
}

export function kitHasLetter(kit: Kit, codePoint: number): boolean {
  return currentFont(kit).hasGlyphForCodePoint(codePoint);
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
