import type { Bounds } from '../../../engine/geometry/index.ts';
import type { Page } from '../../../engine/sheet/index.ts';

/** A page where it is shown, in mm: `window` is what of it is seen, `shift` brings the page to that place. */
export interface ShownPage {
  readonly index: number;
  readonly page: Page;
  readonly window: Bounds;
  readonly shift: { readonly x: number; readonly y: number };
}

/** Pages of one paper, laid out to be looked at. */
export interface PageLayout {
  readonly pages: readonly ShownPage[];
  readonly width: number;
  readonly height: number;
}

/**
 * The pages that are joined, lying as she tapes them: trimmed to their windows, overlaps over one another. What has no
 * pieces on it is not there. Null where no page is joined to another.
 */
export function joinedLayout(pages: readonly Page[]): PageLayout | null {
  const placed = pages.flatMap((page, index): ShownPage[] => {
    const window = page.place;
    if (window === undefined) return [];
    const marginX = (page.width - (window.maxX - window.minX)) / 2;
    const marginY = (page.height - (window.maxY - window.minY)) / 2;
    return [{ index, page, window, shift: { x: window.minX - marginX, y: window.minY - marginY } }];
  });
  if (placed.length < 2) return null;
  return {
    pages: placed,
    width: Math.max(...placed.map(({ window }) => window.maxX)),
    height: Math.max(...placed.map(({ window }) => window.maxY)),
  };
}

/** Whole sheets in reading order, each in its true proportion. */
export function singlePages(pages: readonly Page[], joined: PageLayout | null): readonly ShownPage[] {
  const taken = new Set(joined?.pages.map(({ index }) => index));
  return pages.flatMap((page, index): ShownPage[] => {
    if (taken.has(index)) return [];
    const window = { minX: 0, minY: 0, maxX: page.width, maxY: page.height };
    return [{ index, page, window, shift: { x: 0, y: 0 } }];
  });
}
