import PDFDocument from 'pdfkit';
import type { PaperFonts } from './fonts.ts';

/** The one place that knows pdfkit: what we use of it and its published types leave out stands here. */

export type Kit = PDFKit.PDFDocument;

interface OpenFont {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

/** pdfkit keeps the font that is set in this field; no public call tells which letters a font has. */
interface CurrentFont {
  readonly _font: { readonly font: OpenFont };
}

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
  kit.registerFont('regular', fonts.regular);
  kit.registerFont('bold', fonts.bold);
  return kit;
}

export function kitHasLetter(kit: Kit, codePoint: number): boolean {
  return (kit as unknown as CurrentFont)._font.font.hasGlyphForCodePoint(codePoint);
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
