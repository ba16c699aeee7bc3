import { type Bounds, type Path, type Point, pathFlatten } from '../geometry/index.ts';
import { runMeetsBox } from './runs.ts';
import type { Ink, Mark, TextMark, Weight } from './scene.ts';
import { boxAt, rectanglePath } from './shapes.ts';
import { ASCENT, LINE_SPACING, textMark, wrapText } from './text.ts';

/** Words beside a point or a line of a diagram. */
export interface DiagramWords {
  readonly text: string;
  readonly weight: Weight;
  /** Where the words may be fastened, the best first. */
  readonly anchors: readonly Point[];
}

export interface DiagramGround {
  /** What the words should not lie on: lines that matter in this step, and those that stood there before. */
  readonly live: readonly Path[];
  readonly faint: readonly Path[];
  readonly points: readonly Point[];
  readonly frame: Bounds;
}

const SIZE = 3;
/** Names longer than this are set in two lines, mm. */
const LONGEST = 27;
/** From the point to the words, mm: close by, or farther away where that is freer. */
const DISTANCES = [1.4, 4, 8];
/** Directions in which words may stand from a point, the best first; x and y are -1, 0 or 1. */
const DIRECTIONS = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
  { x: 1, y: -1 },
  { x: -1, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: 1 },
];

/** What spoils a place, by how much: leaving the frame is worst, then other words, a heavy line, a faint one. */
const OUTSIDE = 100;
const ON_WORDS = 30;
const ON_POINT = 12;
const ON_LIVE = 10;
const ON_FAINT = 6;
const PER_RANK = 0.15;
const FARTHER = 0.8;

export interface PlacedWords {
  /** White ground that clears faint lines under the words. */
  readonly grounds: readonly Mark[];
  readonly words: readonly TextMark[];
}

/** Writes each of the words where it spoils least. */
export function placeWords(all: readonly DiagramWords[], ground: DiagramGround, ink: Ink): PlacedWords {
  const runs = {
    live: ground.live.map((path) => pathFlatten(path, 0.2)),
    faint: ground.faint.map((path) => pathFlatten(path, 0.2)),
  };
  const dots = ground.points.map(({ x, y }) => boxAt(x - 0.8, y - 0.8, 1.6, 1.6));
  const taken: Bounds[] = [];
  const costOf = (box: Bounds): number =>
    OUTSIDE * overhang(box, ground.frame) +
    ON_WORDS * taken.filter((other) => overlap(box, other)).length +
    ON_POINT * dots.filter((other) => overlap(box, other)).length +
    ON_LIVE * runs.live.filter((run) => runMeetsBox(run, box)).length +
    ON_FAINT * runs.faint.filter((run) => runMeetsBox(run, box)).length;
  const words: TextMark[] = [];
  const grounds: Mark[] = [];
  for (const wish of all) {
    const lines = wrapText(ink.measure, wish.text, SIZE, wish.weight, LONGEST);
    const width = Math.max(...lines.map((line) => ink.measure.width(line, SIZE, wish.weight)));
    const height = lines.length * SIZE * LINE_SPACING - SIZE * (LINE_SPACING - ASCENT);
    const places = placesFor(wish.anchors, width, height).map(({ box, rank }) => ({
      box,
      cost: costOf(box) + rank,
    }));
    const [first] = places;
    if (first === undefined) continue;
    const { box } = places.reduce((a, b) => (b.cost < a.cost ? b : a), first);
    taken.push(box);
    grounds.push({ kind: 'fill', outline: rectanglePath(box), fill: 'paper' });
    for (const [i, line] of lines.entries()) {
      const at = { x: (box.minX + box.maxX) / 2, y: box.minY + SIZE * (0.85 + i * LINE_SPACING) };
      words.push(textMark(line, at, { size: SIZE, weight: wish.weight, align: 'centre' }));
    }
  }
  return { grounds, words };
}

function placesFor(
  anchors: readonly Point[],
  width: number,
  height: number,
): readonly { readonly box: Bounds; readonly rank: number }[] {
  return anchors.flatMap((anchor, a) =>
    DISTANCES.flatMap((distance, d) =>
      DIRECTIONS.map((way, w) => {
        const reach = distance * (way.x !== 0 && way.y !== 0 ? 0.7 : 1);
        const middle = {
          x: anchor.x + way.x * (reach + width / 2),
          y: anchor.y + way.y * (reach + height / 2),
        };
        const box = boxAt(middle.x - width / 2, middle.y - height / 2, width, height);
        return { box, rank: w * PER_RANK + d * FARTHER + a * PER_RANK };
      }),
    ),
  );
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

function overhang(box: Bounds, frame: Bounds): number {
  const out = (by: number): number => Math.max(0, by);
  return (
    out(frame.minX - box.minX) +
    out(box.maxX - frame.maxX) +
    out(frame.minY - box.minY) +
    out(box.maxY - frame.maxY)
  );
}
