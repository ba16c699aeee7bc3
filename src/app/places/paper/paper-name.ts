import type { UnitSystem } from '../../../engine/units/index.ts';
import { say, type WordKey } from '../../../engine/words/index.ts';

const NAMES: Readonly<Record<string, WordKey>> = {
  'the-dress.pdf': 'page.paper.what.dress',
  'draw-by-hand.pdf': 'page.paper.what.by-hand',
  'checks.pdf': 'page.paper.what.checks',
  'growth.pdf': 'page.paper.what.growth',
  'measuring-sheet.pdf': 'page.paper.what.measuring',
  'cut-list.pdf': 'page.paper.what.cut-list',
  'lay.pdf': 'page.paper.what.lay',
  'all-sizes.pdf': 'page.paper.what.sizes',
  'work-book.pdf': 'page.paper.what.book',
  'pieces/': 'page.paper.what.pieces',
};

/** What a paper of the pack is called here, by its path; one that is not known tells itself. */
export function paperName(
  { path, about }: { readonly path: string; readonly about: string },
  units: UnitSystem,
): string {
  const format = /^pattern-(.+)\.pdf$/.exec(path)?.[1];
  if (format !== undefined)
    return say('page.paper.what.pattern', { format: format.replaceAll('-', ' ') }, units);
  const key = NAMES[path];
  return key === undefined ? about : say(key, {}, units);
}

/** `8 pages`, `10 drawings`. */
export function paperCount(
  { path, count }: { readonly path: string; readonly count: number },
  units: UnitSystem,
): string {
  if (path.endsWith('/')) return say('page.paper.drawings', { count }, units);
  return count === 1 ? say('page.paper.page', {}, units) : say('page.paper.pages', { count }, units);
}
