import type { Bench } from '../construct/index.ts';
import { pathBounds } from '../geometry/index.ts';
import { type Marking, outlineOf, type Piece } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';

/** Tells how straight widths of skirt are ruled by hand. */
export function tellPanels(bench: Bench, title: Saying, panels: readonly Piece[]): void {
  for (const panel of panels) {
    const { maxX: width, maxY: length } = pathBounds(outlineOf(panel));
    bench.part(title);
    // A width of pleats is what the pleats add up to; the hand rules it to the nearest mark.
    const values = {
      piece: panel.title,
      width: { mm: bench.rounded(width) },
      length: { mm: bench.rounded(length) },
    };
    const onFold = panel.cutting.as === 'fold';
    bench.tell(
      onFold ? 'draft.panel-on-fold' : 'draft.panel',
      { ...values, copies: panel.cutting.copies },
      {
        lines: panel.edges.map((edge) => edge.path),
      },
    );
    const folds = panel.markings.filter(isPleatLine).map((marking) => marking.path);
    if (folds.length > 0) bench.tell('draft.panel-pleats', { count: folds.length }, { lines: folds });
  }
}

const isPleatLine = (marking: Marking): boolean =>
  marking.kind === 'pleat-fold' || marking.kind === 'pleat-meet';
