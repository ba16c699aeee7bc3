import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { type Mark, type Page, paperOf } from '../sheet/index.ts';
import { measuringPages } from './measuring-pages.ts';

const INK = {
  units: 'cm',
  measure: { width: (text: string, size: number) => text.length * size * 0.5 },
} as const;

function sheetOf(change: (order: RawOrder) => void, paper: 'a4' | 'letter' = 'a4'): readonly Page[] {
  const order = exampleOrder((o) => {
    o.children = o.children.slice(0, 1);
    change(o);
  });
  const [child] = order.children;
  if (child === undefined) throw new Error('No child');
  return measuringPages(order, child, paperOf(paper), INK, '2027-01-20');
}

const textsOf = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap((mark) =>
    mark.kind === 'text' ? [mark.text] : mark.kind === 'group' ? textsOf(mark.marks) : [],
  );
const allText = (pages: readonly Page[]): string => pages.flatMap(({ marks }) => textsOf(marks)).join(' ');

describe('the measuring sheet', () => {
  it('tells what was measured in both units, with the day, and what is likely of the rest', () => {
    const text = allText(
      sheetOf((order) => {
        order.children[0].measured = '2027-01-20';
        order.children[0].weight = '11 kg';
      }),
    );
    expect(text).toContain('Measuring sheet: Amina');
    expect(text).toContain('Measured on 2027-01-20: 47 cm or 18 1/2 in');
    expect(text).toContain('Measured on 2027-01-20: 11 kg or 24.3 lb');
    expect(text).toMatch(/Likely [\d.]+ cm or [\d /]+ in, give or take/);
    expect(text).toContain('A child that wriggles');
  });

  it('shows the measures as they were taken where the dress is drafted to the day', () => {
    const text = allText(
      sheetOf((order) => {
        order.children[0].measured = '2027-01-20';
        order.growth = 'to-the-day';
      }),
    );
    expect(text).toContain('Measured on 2027-01-20: 47 cm or 18 1/2 in');
  });

  it('is there before anything was measured, with every measure to be taken', () => {
    const text = allText(
      sheetOf((order) => {
        order.children[0].measures = {};
        order.children[0].born = '2022-02-04';
      }),
    );
    for (const name of ['Height', 'Chest girth', 'Knee height', 'Weight']) expect(text).toContain(name);
    expect(text).not.toMatch(/Measured:|Measured on 2/);
  });

  it('fits on the pages of both formats', () => {
    for (const format of ['a4', 'letter'] as const) {
      const pages = sheetOf(() => {}, format);
      expect(pages.length).toBeLessThanOrEqual(5);
      expect(allText(pages)).toContain(`1 of ${pages.length}`);
    }
  });
});
