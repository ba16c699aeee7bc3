import { expect, it } from 'vitest';
import type { Page } from '../../../engine/sheet/index.ts';
import { joinedLayout, singlePages } from './sheet-map.ts';

const plain = (name: string): Page => ({ name, width: 210, height: 297, marks: [] });
const tile = (name: string, minX: number, minY: number): Page => ({
  ...plain(name),
  place: { minX, minY, maxX: minX + 190, maxY: minY + 277 },
});

it('joined pages lie where they are taped, their margins cut away', () => {
  const pages = [plain('Front page'), tile('A1', 0, 0), tile('A2', 180, 0), tile('B2', 180, 267)];
  const joined = joinedLayout(pages);
  expect(joined?.width).toBe(370);
  expect(joined?.height).toBe(544);
  expect(joined?.pages.map(({ index }) => index)).toEqual([1, 2, 3]);
  // The page of A2 begins 10 mm before its window.
  expect(joined?.pages[1]?.shift).toEqual({ x: 170, y: -10 });
  expect(singlePages(pages, joined).map(({ page }) => page.name)).toEqual(['Front page']);
});

it('a sheet that is joined to nothing stands alone', () => {
  const pages = [tile('A1', 0, 0), plain('Straight pieces 1')];
  expect(joinedLayout(pages)).toBeNull();
  expect(singlePages(pages, null)).toHaveLength(2);
});
