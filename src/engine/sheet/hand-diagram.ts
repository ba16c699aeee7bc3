import {
  type Bounds,
  boundsUnion,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathLength,
  pathMap,
} from '../geometry/index.ts';
import { say } from '../words/index.ts';
import { type DiagramWords, placeWords } from './diagram-words.ts';
import type { Ink, Mark } from './scene.ts';
import { boxAt, dot, rectanglePath, stroke } from './shapes.ts';

/** What the paper shows after a step: what stood there before, what the step adds, and points worth naming. */
export interface Diagram {
  readonly faint: readonly Path[];
  readonly live: readonly Path[];
  readonly points: readonly { readonly name: string; readonly at: Point }[];
  /** Lengths that the step lays off, each along one of its lines. */
  readonly lengths: readonly { readonly text: string; readonly along: Path }[];
}

/** Where and how large a part is drawn: the same in all its diagrams, so that the drawing grows under the eye. */
export interface DiagramScene {
  /** The diagram is drawn 1 : `shrink`. */
  readonly shrink: number;
  readonly box: Bounds;
  readonly width: number;
  readonly height: number;
}

/** Plain scales: 1 : 4 tells more than 1 : 4.37. */
const SHRINKS = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40, 50];
/** Room round the drawing for words, mm: above and below, left and right. */
const AIR = 4;
const SIDE_AIR = 8;
/** A diagram has room for the name of a point, mm. */
const LEAST_WIDTH = 44;
const EMPTY: Bounds = { minX: 0, minY: 0, maxX: 1, maxY: 1 };

/** The box round everything that the diagrams of a part show. */
export function diagramBox(diagrams: readonly Diagram[]): Bounds {
  const boxes = diagrams.flatMap(({ faint, live, points }) => [
    ...[...faint, ...live].map(pathBounds),
    ...points.map(({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })),
  ]);
  const [first, ...rest] = boxes;
  return first === undefined ? EMPTY : rest.reduce(boundsUnion, first);
}

/** The room that a diagram may take, mm; `snug` makes it no wider than its drawing and names need. */
export interface DiagramRoom {
  readonly width: number;
  readonly height: number;
  readonly snug: boolean;
}

/** The largest scale at which a part fits into its diagrams. */
export function diagramScene(box: Bounds, room: DiagramRoom): DiagramScene {
  const [across, down] = [Math.max(1, box.maxX - box.minX), Math.max(1, box.maxY - box.minY)];
  const least = Math.max(across / (room.width - 2 * SIDE_AIR), down / (room.height - 2 * AIR));
  const shrink = SHRINKS.find((n) => n >= least) ?? least;
  const snug = Math.max(LEAST_WIDTH, across / shrink + 2 * SIDE_AIR);
  return { shrink, box, width: room.snug ? snug : room.width, height: down / shrink + 2 * AIR };
}

/** One diagram in its frame, the top left corner at the origin. */
export function diagramMarks(diagram: Diagram, scene: DiagramScene, ink: Ink): readonly Mark[] {
  const { shrink, box, width, height } = scene;
  const left = (width - (box.maxX - box.minX) / shrink) / 2;
  const k = 1 / shrink;
  const frame = { a: k, b: 0, c: 0, d: k, e: left - box.minX * k, f: AIR - box.minY * k };
  const small = (path: Path): Path => pathMap(path, frame);
  const on = ({ x, y }: Point): Point => ({ x: x * k + frame.e, y: y * k + frame.f });
  const [faint, live] = [diagram.faint.map(small), diagram.live.map(small)];
  const points = diagram.points.map(({ at }) => on(at));
  const article = `${say('paper.hand.article', {}, ink.units)} `;
  const names = diagram.points.map(
    ({ name, at }): DiagramWords => ({
      // 'the neck point' is for sentences; beside the point stands 'neck point'.
      text: name.startsWith(article) ? name.slice(article.length) : name,
      weight: 'regular',
      anchors: [on(at)],
    }),
  );
  const lengths = diagram.lengths.map(
    ({ text, along }): DiagramWords => ({ text, weight: 'bold', anchors: placesOn(small(along)) }),
  );
  const { grounds, words } = placeWords(
    [...lengths, ...names],
    { faint, live, points, frame: boxAt(0.5, 0.5, width - 1, height - 1) },
    ink,
  );
  return [
    ...faint.map((path) => stroke(path, 'faint')),
    ...grounds,
    ...live.map((path) => stroke(path, 'live')),
    ...points.map((at) => dot(at, 0.8)),
    ...words,
    stroke(rectanglePath(boxAt(0, 0, width, height)), 'frame'),
  ];
}

/** Places along a line where its length may be written. */
function placesOn(path: Path): readonly Point[] {
  const length = pathLength(path);
  return [0.5, 0.35, 0.65, 0.2, 0.8, 1, 0].map((share) => pathAt(path, length * share).point);
}
