import { type Path, pathBounds, walkPath } from '../geometry/index.ts';
import { hatchLines } from './hatch.ts';
import type { PieceDrawing } from './piece-drawing.ts';
import type { Mark, Page, TextMark } from './scene.ts';
import { FILL_GREYS, LINE_STYLES } from './styles.ts';

/** A page as an SVG file at true size: width and height in mm, one unit of the drawing is 1 mm. */
export function pageSvg(page: Page): string {
  const clips: string[] = [];
  const body = page.marks.map((mark) => markSvg(mark, clips)).join('\n');
  const [width, height] = [num(page.width), num(page.height)];
  const defs = clips.length === 0 ? '' : `<defs>\n${clips.join('\n')}\n</defs>\n`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escaped(page.name)}</title>`,
    `${defs}${body}`,
    '</svg>',
    '',
  ].join('\n');
}

/** Blank border round a piece in a file of its own, mm. */
const BORDER = 5;

/** One piece by itself, in a page as large as it needs. */
export function piecePage(piece: PieceDrawing): Page {
  const box = pathBounds(piece.outline);
  const frame = { a: 1, b: 0, c: 0, d: 1, e: BORDER - box.minX, f: BORDER - box.minY };
  return {
    name: piece.title,
    width: box.maxX - box.minX + 2 * BORDER,
    height: box.maxY - box.minY + 2 * BORDER,
    marks: [{ kind: 'group', frame, clip: null, marks: piece.marks }],
  };
}

function markSvg(mark: Mark, clips: string[]): string {
  switch (mark.kind) {
    case 'stroke':
      return `<path d="${pathData(mark.path)}" ${strokeLook(mark.line)}/>`;
    case 'fill':
      return `<path d="${pathData(mark.outline)}" fill="${grey(FILL_GREYS[mark.fill])}"/>`;
    case 'hatch': {
      const lines = hatchLines(mark.hatch, mark.scale, pathBounds(mark.outline));
      if (lines.length === 0) return '';
      const clip = clipWith(`<path d="${pathData(mark.outline)}"/>`, clips);
      return `<path d="${lines.map(pathData).join('')}" ${strokeLook('hatch')} clip-path="${clip}"/>`;
    }
    case 'text':
      return textSvg(mark);
    case 'group': {
      const { a, b, c, d, e, f } = mark.frame;
      const frame = `transform="matrix(${[a, b, c, d, e, f].map(num).join(' ')})"`;
      const inside = mark.marks.map((m) => markSvg(m, clips)).join('\n');
      if (mark.clip === null) return `<g ${frame}>\n${inside}\n</g>`;
      const { minX, minY, maxX, maxY } = mark.clip;
      const box = `<rect x="${num(minX)}" y="${num(minY)}" width="${num(maxX - minX)}" height="${num(maxY - minY)}"/>`;
      return `<g ${frame} clip-path="${clipWith(box, clips)}">\n${inside}\n</g>`;
    }
  }
}

/** Writes a clip and gives the reference to it. It is read in the frame of the element that uses it. */
function clipWith(shape: string, clips: string[]): string {
  const id = `clip-${clips.length + 1}`;
  clips.push(`<clipPath id="${id}">${shape}</clipPath>`);
  return `url(#${id})`;
}

const ANCHORS = { left: 'start', centre: 'middle', right: 'end' } as const;

function textSvg({ text, at, size, weight, align, turn }: TextMark): string {
  const turned = turn === 0 ? '' : ` transform="rotate(${num(turn)} ${num(at.x)} ${num(at.y)})"`;
  const place = `x="${num(at.x)}" y="${num(at.y)}"`;
  const look = `font-family="Noto Sans, sans-serif" font-size="${num(size)}" font-weight="${weight === 'bold' ? 700 : 400}"`;
  return `<text ${place} ${look} text-anchor="${ANCHORS[align]}"${turned}>${escaped(text)}</text>`;
}

function strokeLook(name: keyof typeof LINE_STYLES): string {
  const { width, dash, grey: level } = LINE_STYLES[name];
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.join(' ')}"`;
  return `fill="none" stroke="${grey(level)}" stroke-width="${num(width)}" stroke-linejoin="round"${dashes}`;
}

function grey(level: number): string {
  const part = Math.round(level * 255);
  return `rgb(${part},${part},${part})`;
}

function pathData(path: Path): string {
  const parts: string[] = [];
  const pair = (x: number, y: number): string => `${num(x)} ${num(y)}`;
  walkPath(path, {
    moveTo: (x, y) => parts.push(`M${pair(x, y)}`),
    lineTo: (x, y) => parts.push(`L${pair(x, y)}`),
    curveTo: (c1x, c1y, c2x, c2y, x, y) => parts.push(`C${pair(c1x, c1y)} ${pair(c2x, c2y)} ${pair(x, y)}`),
    close: () => parts.push('Z'),
  });
  return parts.join('');
}

/** To a ten-thousandth of a mm, without trailing zeros. */
function num(value: number): string {
  const text = value.toFixed(4).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text for an XML element or attribute: names may hold any sign. What XML 1.0 forbids becomes a space. */
function escaped(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, ' ')
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);
}
