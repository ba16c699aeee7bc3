import { type Bounds, boundsUnion, pathBounds, pathMap } from '../geometry/index.ts';
import type { Sketch, SketchStroke } from '../sketch/index.ts';
import { type Paper, printableSize } from './paper-format.ts';
import type { Mark } from './scene.ts';
import { stroke } from './shapes.ts';
import type { LineName } from './styles.ts';
import { textMark } from './text.ts';
import type { FlowBlock } from './text-pages.ts';

const LINES: Readonly<Record<SketchStroke, LineName>> = {
  outline: 'live',
  seam: 'box',
  pleat: 'measure',
  gather: 'measure',
  opening: 'pleat-meet',
  light: 'faint',
};

const CAPTION = 4.2;
const CAPTION_ROOM = 9;
/** Share of the width between the sketches of front and back. */
const BETWEEN = 0.08;

/**
 * Front and back of a dress side by side, at the same scale, each with its caption below; as large as the paper is
 * wide, and no taller than `tallest` mm.
 */
export function sketchFigure(
  sketches: readonly { readonly sketch: Sketch; readonly caption: string }[],
  paper: Paper,
  tallest: number,
): FlowBlock {
  const all = sketches.map(({ sketch }) => boundsOf(sketch));
  const top = Math.min(...all.map((b) => b.minY));
  const deepest = Math.max(...all.map((b) => b.maxY)) - top;
  const widest = Math.max(...all.map((b) => b.maxX - b.minX));
  const cellOf = (width: number): number => (width * (1 - BETWEEN * (sketches.length - 1))) / sketches.length;
  const scale = Math.min(cellOf(printableSize(paper).width) / widest, (tallest - CAPTION_ROOM) / deepest);
  const height = deepest * scale + CAPTION_ROOM;
  return {
    kind: 'figure',
    height,
    draw: (width) =>
      sketches.flatMap(({ sketch, caption }, i): readonly Mark[] => {
        const middle = i * (cellOf(width) + width * BETWEEN) + cellOf(width) / 2;
        const frame = { a: scale, b: 0, c: 0, d: scale, e: middle, f: -top * scale };
        return [
          ...sketch.lines.map((line) => stroke(pathMap(line.path, frame), LINES[line.stroke])),
          textMark(caption, { x: middle, y: height - 2 }, { size: CAPTION, align: 'centre' }),
        ];
      }),
  };
}

/** Sketches are symmetric about x = 0; the box is made so even where an opening lies beside it. */
function boundsOf(sketch: Sketch): Bounds {
  const box = sketch.lines.map((line) => pathBounds(line.path)).reduce(boundsUnion);
  const reach = Math.max(Math.abs(box.minX), Math.abs(box.maxX));
  return { ...box, minX: -reach, maxX: reach };
}
