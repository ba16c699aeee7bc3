import { type Path, type Point, pathBounds, pathMap } from '../geometry/index.ts';
import type { Drawn } from './drawn.ts';
import type { Mark } from './scene.ts';
import { boxAt, circlePath, rectanglePath, stroke } from './shapes.ts';
import { textMark } from './text.ts';

/** The large sheet, in its own coordinates. */
export interface MapFacts {
  readonly pages: readonly { readonly name: string; readonly x: number; readonly y: number }[];
  readonly pageWidth: number;
  readonly pageHeight: number;
  /** Cutting lines, and where the number of each piece stands. */
  readonly pieces: readonly { readonly number: number; readonly outline: Path; readonly middle: Point }[];
}

const NUMBER = 3.6;

/** The large sheet drawn small to fit a box: the pages with their names, the pieces with their numbers. */
export function pageMap(facts: MapFacts, width: number, height: number): Drawn {
  const boxes = facts.pieces.map(({ outline }) => pathBounds(outline));
  const right = Math.max(
    ...facts.pages.map((page) => page.x + facts.pageWidth),
    ...boxes.map((box) => box.maxX),
  );
  const foot = Math.max(
    ...facts.pages.map((page) => page.y + facts.pageHeight),
    ...boxes.map((box) => box.maxY),
  );
  const k = Math.min(width / right, height / foot);
  const nameSize = Math.min(5, Math.max(2.6, facts.pageWidth * k * 0.22));
  const pages = facts.pages.map((page) =>
    rectanglePath(boxAt(page.x * k, page.y * k, facts.pageWidth * k, facts.pageHeight * k)),
  );
  const pieces = facts.pieces.map(({ outline }) => pathMap(outline, { a: k, b: 0, c: 0, d: k, e: 0, f: 0 }));
  const marks: Mark[] = [
    ...pages.map((outline): Mark => ({ kind: 'fill', outline, fill: 'tint' })),
    ...pieces.map((outline): Mark => ({ kind: 'fill', outline, fill: 'paper' })),
    ...pages.map((path) => stroke(path, 'frame')),
    ...pieces.map((path) => stroke(path, 'box')),
  ];
  for (const page of facts.pages) {
    const at = { x: page.x * k + 0.8, y: page.y * k + nameSize * 0.95 };
    marks.push(textMark(page.name, at, { size: nameSize, weight: 'bold' }));
  }
  for (const { number, middle } of facts.pieces) {
    const at = { x: middle.x * k, y: middle.y * k };
    marks.push(
      { kind: 'fill', outline: circlePath(at, NUMBER * 0.75), fill: 'paper' },
      stroke(circlePath(at, NUMBER * 0.75), 'measure'),
      textMark(`${number}`, { x: at.x, y: at.y + NUMBER * 0.35 }, { size: NUMBER, align: 'centre' }),
    );
  }
  return { marks, height: foot * k };
}
