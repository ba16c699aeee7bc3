import { type Path, pathBounds, walkPath } from '../engine/geometry/index.ts';
import {
  FILL_GREYS,
  hatchLines,
  LINE_STYLES,
  type LineName,
  type Mark,
  type Page,
  type TextMark,
} from '../engine/sheet/index.ts';
import type { PaperFonts } from './fonts.ts';
import { type Kit, kitBytes, openKit } from './kit.ts';
import { printable, shapingOf } from './letters.ts';

const POINTS_PER_MM = 72 / 25.4;

/** Longest side of a page in its own units: PDF 1.7 (ISO 32000-1), annex C, table C.1. */
const LONGEST_SIDE = 14_400;

export interface PdfSettings {
  readonly title: string;
  /** The only date in the file; the same pages, title and date give the same bytes. */
  readonly creationDate: Date;
  readonly fonts: PaperFonts;
  /** Told after each page how many are drawn. */
  readonly onPage?: (done: number) => void;
}

/**
 * Writes pages at true size, one to one in mm, fonts embedded. A page side over 5.08 m is written with a larger
 * user unit; many printers ignore it, so cut longer sheets beforehand where that can be done.
 */
export function writePdf(pages: readonly Page[], settings: PdfSettings): Promise<Uint8Array> {
  const kit = openKit(settings.fonts, settings);
  for (const [i, page] of pages.entries()) {
    drawPage(kit, page);
    settings.onPage?.(i + 1);
  }
  return kitBytes(kit);
}

function drawPage(kit: Kit, page: Page): void {
  const width = page.width * POINTS_PER_MM;
  const height = page.height * POINTS_PER_MM;
  const userUnit = Math.ceil(Math.max(width, height) / LONGEST_SIDE);
  const options = { size: [width / userUnit, height / userUnit], margin: 0, userUnit };
  kit.addPage(options);
  kit.scale(POINTS_PER_MM / userUnit).lineJoin('round');
  drawMarks(kit, page.marks);
}

function drawMarks(kit: Kit, marks: readonly Mark[]): void {
  for (const mark of marks) drawMark(kit, mark);
}

function drawMark(kit: Kit, mark: Mark): void {
  switch (mark.kind) {
    case 'stroke':
      setLine(kit, mark.line);
      trace(kit, mark.path);
      kit.stroke();
      return;
    case 'fill':
      trace(kit, mark.outline);
      kit.fill(greyColour(FILL_GREYS[mark.fill]));
      return;
    case 'hatch':
      kit.save();
      trace(kit, mark.outline);
      kit.clip();
      setLine(kit, 'hatch');
      for (const line of hatchLines(mark.hatch, mark.scale, pathBounds(mark.outline))) trace(kit, line);
      kit.stroke();
      kit.restore();
      return;
    case 'text':
      drawText(kit, mark);
      return;
    case 'group': {
      const { a, b, c, d, e, f } = mark.frame;
      kit.save();
      kit.transform(a, b, c, d, e, f);
      if (mark.clip !== null) {
        const { minX, minY, maxX, maxY } = mark.clip;
        kit.rect(minX, minY, maxX - minX, maxY - minY).clip();
      }
      drawMarks(kit, mark.marks);
      kit.restore();
      return;
    }
  }
}

function drawText(kit: Kit, mark: TextMark): void {
  kit.font(mark.weight).fontSize(mark.size);
  const text = printable(kit, mark.text);
  const width = mark.align === 'left' ? 0 : kit.widthOfString(text, shapingOf(text));
  const x = mark.align === 'centre' ? -width / 2 : -width;
  kit.save();
  kit.translate(mark.at.x, mark.at.y);
  if (mark.turn !== 0) kit.rotate(mark.turn);
  kit.fillColor('black').text(text, x, 0, { lineBreak: false, baseline: 'alphabetic', ...shapingOf(text) });
  kit.restore();
}

function setLine(kit: Kit, name: LineName): void {
  const { width, dash, grey } = LINE_STYLES[name];
  kit.lineWidth(width).strokeColor(greyColour(grey));
  if (dash.length === 0) kit.undash();
  else kit.addContent(`[${dash.join(' ')}] 0 d`);
}

/** As hex, which pdfkit keeps in its RGB space; 0 is black. */
function greyColour(grey: number): string {
  const level = Math.round(grey * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
}

function trace(kit: Kit, path: Path): void {
  walkPath(path, {
    moveTo: (x, y) => kit.moveTo(x, y),
    lineTo: (x, y) => kit.lineTo(x, y),
    curveTo: (c1x, c1y, c2x, c2y, x, y) => kit.bezierCurveTo(c1x, c1y, c2x, c2y, x, y),
    close: () => kit.closePath(),
  });
}
