import type { Point } from '../geometry/index.ts';
import type { BlockSize } from './label-place.ts';
import { type Lettering, readableTurn } from './lettering.ts';
import type { Ink, TextMark, Weight } from './scene.ts';
import { ASCENT, LINE_SPACING, textMark, wrapText } from './text.ts';

export interface BlockLine {
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
}

/** Lines of text set under one another, with the room they take. */
export interface Block extends BlockSize {
  readonly lines: readonly BlockLine[];
}

/** Breaks lines so that none is wider than `width` mm. */
export function blockOf(lines: readonly BlockLine[], width: number, { measure }: Ink): Block {
  const broken = lines.flatMap((line) =>
    wrapText(measure, line.text, line.size, line.weight, width).map((text) => ({ ...line, text })),
  );
  return {
    lines: broken,
    width: Math.max(...broken.map((line) => measure.width(line.text, line.size, line.weight))),
    height: broken.reduce((sum, line) => sum + line.size * LINE_SPACING, 0),
  };
}

/** Writes a block on a piece about a point: along x if `upright`, else up or down the piece, never upside down. */
export function writeBlock(
  lettering: Lettering,
  block: Block,
  at: Point,
  upright: boolean,
): readonly TextMark[] {
  const turn = readableTurn(upright ? 0 : -90, lettering.turns);
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  // In the block's own frame u runs along the lines and v down them.
  const onPiece = (u: number, v: number): Point => ({
    x: at.x + u * cos - v * sin,
    y: at.y + u * sin + v * cos,
  });
  let v = -block.height / 2;
  const lines = block.lines.map(({ text, size, weight }) => {
    const baseline = v + size * ASCENT;
    v += size * LINE_SPACING;
    return textMark(text, onPiece(0, baseline), { size, weight, align: 'centre', turn });
  });
  const [w, h] = [block.width / 2, block.height / 2];
  lettering.words.push(lines);
  lettering.obstacles.push([onPiece(-w, -h), onPiece(w, -h), onPiece(w, h), onPiece(-w, h), onPiece(-w, -h)]);
  return lines;
}
