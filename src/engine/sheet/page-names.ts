import type { CutPiece } from '../cut/index.ts';
import type { Bounds, Point } from '../geometry/index.ts';
import { freePlace, type Ground } from './label-place.ts';
import { homeOf, type Lettering } from './lettering.ts';
import { boxAround, clippedToBox } from './runs.ts';
import type { TextMark } from './scene.ts';
import { blockOf, writeBlock } from './text-block.ts';
import { wordsBox } from './words-box.ts';

/** From large to small, mm. */
const SIZES = [6, 4.5, 3.5];
/** How narrow the name is set, as shares of its length. */
const NARROWINGS = [1, 0.6];
/** A page with less of a piece than this, mm, shows a sliver that needs no name. */
const SLIVER = 20;

/**
 * Writes the name of the piece on every page that shows more than a sliver of it and not its label, so that no page is
 * anonymous. The name may stand in an allowance. Where lines leave no room the page goes without; its foot names the
 * pieces too.
 */
export function writePageNames(
  lettering: Lettering,
  cut: CutPiece,
  cuttingLine: readonly Point[],
  label: readonly TextMark[],
): void {
  const { windows, clear, ink } = lettering;
  const labelled = homeOf(windows, wordsBox(label, ink.measure));
  for (const [i, window] of windows.entries()) {
    if (window === labelled) continue;
    const part = boxAround(clippedToBox(cuttingLine, clear[i] ?? window));
    if (Math.min(part.maxX - part.minX, part.maxY - part.minY) < SLIVER) continue;
    const ground = { outline: cuttingLine, obstacles: [lettering.outline, ...lettering.obstacles] };
    writeName(
      { ...lettering, windows: [window] },
      cut.label.title,
      ground,
      part,
      (box) => homeOf(windows, box) === window,
    );
  }
}

function writeName(
  lettering: Lettering,
  title: string,
  ground: Ground,
  part: Bounds,
  isAllowed: (box: Bounds) => boolean,
): void {
  const middle = { x: (part.minX + part.maxX) / 2, y: (part.minY + part.maxY) / 2 };
  for (const size of SIZES) {
    const line = { text: title, size, weight: 'bold' } as const;
    const whole = lettering.ink.measure.width(title, size, 'bold');
    for (const narrowing of NARROWINGS) {
      const block = blockOf([line], whole * narrowing, lettering.ink);
      for (const upright of [true, false]) {
        const at = freePlace(ground, block, upright, middle, part, isAllowed);
        if (at === null) continue;
        writeBlock(lettering, block, at, upright);
        return;
      }
    }
  }
}
