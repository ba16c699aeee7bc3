import type { Bounds, Point } from '../geometry/index.ts';
import { runMeetsBox } from './runs.ts';
import type { Ink, Mark } from './scene.ts';
import { arrowHead, boxAt, rectanglePath } from './shapes.ts';
import { clippedText, textMark } from './text.ts';

/** Words of the page itself lie on white ground, where that hides no cutting line if there is such a place. */

const NEIGHBOUR = 4;
const PLACE_NAME = 8;
const FOOT_TEXT = 3.2;
/** Where the name of a page stands along its foot if nothing is in the way, mm from the left. */
const FOOT_FROM = 44;
/** The names of the pages above and below stand before it. */
const NEIGHBOUR_FROM = 32;
/** Corners of the window are kept for the crosses, mm. */
const CORNER = 25;
/** Steps of the search along an edge, mm. */
const STEP = 8;
/** Height of the caption at the foot; words of pieces keep off it, mm. */
export const FOOT_HEIGHT = 9;

export interface FootFacts {
  readonly name: string;
  /** 'page 3 of 18 - Adaeze' */
  readonly about: string;
  readonly pieces: readonly string[];
}

/** What the white ground of a caption is not to hide, in the window. */
export interface Shown {
  readonly lines: readonly (readonly Point[])[];
  readonly words: readonly Bounds[];
}

/** Name and number of the page and what lies on it, at the foot of a window. */
export function footCaption(
  { name, about, pieces }: FootFacts,
  window: Bounds,
  shown: Shown,
  { measure }: Ink,
): readonly Mark[] {
  const indent = measure.width(name, PLACE_NAME, 'bold') + 3;
  const room = window.maxX - CORNER - FOOT_FROM - indent;
  const texts = [about, pieces.join(', ')].map((text) =>
    clippedText(measure, text, FOOT_TEXT, 'regular', room),
  );
  const width = indent + Math.max(...texts.map((text) => measure.width(text, FOOT_TEXT, 'regular')));
  const y = window.maxY - FOOT_HEIGHT;
  const places: Bounds[] = [];
  for (let x = FOOT_FROM; x + width <= window.maxX - CORNER + 1; x += STEP) {
    places.push(boxAt(x - 1, y, width + 2, FOOT_HEIGHT - 0.4));
  }
  const box = leastHiding(places, shown) ?? boxAt(FOOT_FROM - 1, y, width + 2, FOOT_HEIGHT - 0.4);
  const [left, foot] = [box.minX + 1, window.maxY];
  return [
    ground(box),
    textMark(name, { x: left, y: foot - 2 }, { size: PLACE_NAME, weight: 'bold' }),
    ...texts.map((text, i) =>
      textMark(text, { x: left + indent, y: foot - 5.6 + 4 * i }, { size: FOOT_TEXT }),
    ),
  ];
}

export type Side = 'left' | 'right' | 'above' | 'below';

/** The name of a page to be joined, with an arrow at the edge behind which it lies. */
export function neighbourCaption(
  name: string,
  side: Side,
  window: Bounds,
  shown: Shown,
  { measure }: Ink,
): readonly Mark[] {
  const width = measure.width(name, NEIGHBOUR, 'bold');
  const places = sidePlaces(side, width, window);
  const box = leastHiding(places, shown);
  if (box === null) return [];
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const look = { size: NEIGHBOUR, weight: 'bold', align: 'centre' } as const;
  const half = NEIGHBOUR * 0.36;
  switch (side) {
    case 'left':
      return [
        ground(box),
        arrowHead({ x: box.minX + 0.4, y }, { x: -1, y: 0 }, HEAD),
        textMark(name, { x: x + HEAD / 2, y: y + half }, look),
      ];
    case 'right':
      return [
        ground(box),
        arrowHead({ x: box.maxX - 0.4, y }, { x: 1, y: 0 }, HEAD),
        textMark(name, { x: x - HEAD / 2, y: y + half }, look),
      ];
    case 'above':
      return [
        ground(box),
        arrowHead({ x, y: box.minY + 0.4 }, { x: 0, y: -1 }, HEAD),
        textMark(name, { x, y: box.maxY - 0.8 }, look),
      ];
    case 'below':
      return [
        ground(box),
        arrowHead({ x, y: box.maxY - 0.4 }, { x: 0, y: 1 }, HEAD),
        textMark(name, { x, y: box.minY + NEIGHBOUR * 0.72 + 0.6 }, look),
      ];
  }
}

const HEAD = 2.2;

/** Boxes for a neighbour's name along one side, the best first. */
function sidePlaces(side: Side, width: number, window: Bounds): readonly Bounds[] {
  if (side === 'left' || side === 'right') {
    const [wide, high] = [width + HEAD + 1.6, NEIGHBOUR + 1.2];
    const x = side === 'left' ? window.minX + 0.4 : window.maxX - wide - 0.4;
    const middle = (window.minY + window.maxY - high) / 2;
    return stepsFrom(middle, window.minY + CORNER, window.maxY - CORNER - high).map((y) =>
      boxAt(x, y, wide, high),
    );
  }
  const [wide, high] = [width + 1.2, NEIGHBOUR + HEAD + 1.2];
  if (side === 'below') return [boxAt(NEIGHBOUR_FROM - wide / 2, window.maxY - high - 0.4, wide, high)];
  return stepsFrom(NEIGHBOUR_FROM - wide / 2, window.minX + CORNER, window.maxX - CORNER - wide).map((x) =>
    boxAt(x, window.minY + 0.4, wide, high),
  );
}

/** Places from `start` outwards both ways, within bounds; `start` first, whatever the bounds say. */
function stepsFrom(start: number, least: number, most: number): readonly number[] {
  const places = [start];
  for (let d = STEP; start - d >= least || start + d <= most; d += STEP) {
    for (const at of [start - d, start + d]) if (at >= least && at <= most) places.push(at);
  }
  return places;
}

/** A hidden bit of a cutting line is worse than some hidden words. */
const LINE_COST = 100;

/** The first box that hides nothing, or the one that hides least. */
function leastHiding(places: readonly Bounds[], { lines, words }: Shown): Bounds | null {
  let best: { readonly box: Bounds; readonly cost: number } | null = null;
  for (const box of places) {
    const cost =
      LINE_COST * lines.filter((line) => runMeetsBox(line, box)).length +
      words.filter((word) => boxesMeet(word, box)).length;
    if (cost === 0) return box;
    if (best === null || cost < best.cost) best = { box, cost };
  }
  return best?.box ?? null;
}

function boxesMeet(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

const ground = (box: Bounds): Mark => ({ kind: 'fill', outline: rectanglePath(box), fill: 'paper' });
