import { type Bounds, boundsUnion, type Path, type Point, pathBounds, pathMap } from '../geometry/index.ts';
import { say } from '../words/index.ts';
import { placeNames } from './diagram-names.ts';
import type { Drawn } from './drawn.ts';
import { shifted } from './drawn.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Ink, Mark, Page } from './scene.ts';
import { boxAt, dot, rectanglePath, stroke } from './shapes.ts';
import { ASCENT, LINE_SPACING, textLines, textMark, wrapText } from './text.ts';
import { type FlowBlock, flowPages } from './text-pages.ts';

/** One part of a draft as it is drawn by hand, ready to be told: figures rounded to the maker's ruler. */
export interface HandPart {
  readonly title: string;
  readonly steps: readonly HandStep[];
}

export interface HandStep {
  readonly sentence: string;
  readonly diagram: Diagram;
}

/** What the paper shows after a step: what stood there before, what the step adds, and points worth naming. */
export interface Diagram {
  readonly faint: readonly Path[];
  readonly live: readonly Path[];
  readonly points: readonly { readonly name: string; readonly at: Point }[];
}

export interface HandSheetJob {
  readonly parts: readonly HandPart[];
  readonly child: string;
  readonly size: string;
  readonly date: string;
  readonly paper: Paper;
  readonly ink: Ink;
}

const GUTTER = 8;
const NUMBER = 7;
const NUMBER_WIDTH = 11;
const SENTENCE = 4.8;
const POINT_NAME = 3;
const DIAGRAM_HEIGHT = 48;
/** Room round the drawing for the names of its points, mm: above and below, left and right. */
const AIR = 4;
const SIDE_AIR = 16;
const CARD_FOOT = 5;

/**
 * The hand-drafting sheet: steps in two columns, each a number, a sentence and a small diagram in which what the
 * step makes is heavy and the rest faint. A step is never parted by a page break. All diagrams of a part have the
 * same scale, so that the drawing grows under the eye.
 */
export function handSheetPages(job: HandSheetJob): readonly Page[] {
  const { ink, child, size, date } = job;
  const about = say('paper.front.about', { size, date }, ink.units);
  const blocks: FlowBlock[] = [
    { kind: 'title', text: say('paper.hand.title', { child }, ink.units) },
    { kind: 'paragraph', text: about },
    { kind: 'paragraph', text: say('paper.hand.order', {}, ink.units) },
    { kind: 'paragraph', text: say('paper.hand.allowances', {}, ink.units), weight: 'bold' },
    ...job.parts.flatMap((part) => partBlocks(part, job)),
  ];
  const name = say('paper.hand.name', {}, ink.units);
  return flowPages(blocks, { paper: job.paper, ink, name, footer: `${name} - ${child} - ${date}` });
}

function partBlocks(part: HandPart, { paper, ink }: HandSheetJob): readonly FlowBlock[] {
  const width = (printableSize(paper).width - GUTTER) / 2;
  const scene = sceneOf(part, width);
  const cards = part.steps.map((step, i) => card(step, i + 1, width, scene, ink));
  const rows: FlowBlock[] = [];
  for (let i = 0; i < cards.length; i += 2) {
    const pair = cards.slice(i, i + 2);
    rows.push({
      kind: 'figure',
      height: Math.max(...pair.map((drawn) => drawn.height)),
      draw: () => pair.map((drawn, side) => shifted(drawn.marks, side * (width + GUTTER), 0)),
    });
  }
  return [{ kind: 'heading', text: part.title }, ...rows];
}

/** Where and how large a part is drawn: the same in all its diagrams. */
interface DiagramScene {
  readonly scale: number;
  readonly box: Bounds;
  readonly height: number;
}

const EMPTY: Bounds = { minX: 0, minY: 0, maxX: 1, maxY: 1 };

function sceneOf(part: HandPart, width: number): DiagramScene {
  const boxes = part.steps.flatMap(({ diagram }) => [
    ...[...diagram.faint, ...diagram.live].map(pathBounds),
    ...diagram.points.map(({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })),
  ]);
  const [first, ...rest] = boxes;
  const box = first === undefined ? EMPTY : rest.reduce(boundsUnion, first);
  const [across, down] = [Math.max(1, box.maxX - box.minX), Math.max(1, box.maxY - box.minY)];
  const scale = Math.min((width - 2 * SIDE_AIR) / across, (DIAGRAM_HEIGHT - 2 * AIR) / down);
  return { scale, box, height: down * scale + 2 * AIR };
}

function card(step: HandStep, number: number, width: number, scene: DiagramScene, ink: Ink): Drawn {
  const lines = wrapText(ink.measure, step.sentence, SENTENCE, 'regular', width - NUMBER_WIDTH);
  const top = Math.max(NUMBER * 1.3, lines.length * SENTENCE * LINE_SPACING + 2);
  const marks: Mark[] = [
    textMark(`${number}`, { x: 0, y: NUMBER * 0.9 }, { size: NUMBER, weight: 'bold' }),
    ...textLines(lines, { x: NUMBER_WIDTH, y: SENTENCE * ASCENT + 0.6 }, { size: SENTENCE }),
    shifted(diagramMarks(step.diagram, width, scene, ink), 0, top),
    stroke(rectanglePath(boxAt(0, top, width, scene.height)), 'frame'),
  ];
  return { marks, height: top + scene.height + CARD_FOOT };
}

function diagramMarks(
  diagram: Diagram,
  width: number,
  { scale, box, height }: DiagramScene,
  { measure, units }: Ink,
): readonly Mark[] {
  const left = (width - (box.maxX - box.minX) * scale) / 2;
  const frame = { a: scale, b: 0, c: 0, d: scale, e: left - box.minX * scale, f: AIR - box.minY * scale };
  const small = (path: Path): Path => pathMap(path, frame);
  const article = `${say('paper.hand.article', {}, units)} `;
  const points = diagram.points.map(({ name, at }) => ({
    // 'the neck point' is for sentences; beside the point stands 'neck point'.
    name: name.startsWith(article) ? name.slice(article.length) : name,
    at: { x: at.x * frame.a + frame.e, y: at.y * frame.d + frame.f },
  }));
  const live = diagram.live.map(small);
  return [
    ...diagram.faint.map((path) => stroke(small(path), 'faint')),
    ...live.map((path) => stroke(path, 'live')),
    ...points.map(({ at }) => dot(at, 0.8)),
    ...placeNames(points, live, boxAt(0, 0, width, height), POINT_NAME, measure),
  ];
}
