import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import type { Mark, Page } from '../sheet/index.ts';
import { makePack } from './index.ts';

const measure = { width: (text: string, size: number) => text.length * size * 0.6 };

function sizesOf(change: (order: RawOrder) => void): readonly Page[] | null {
  const order = exampleOrder((o) => {
    o.children = o.children.slice(0, 1);
    o.paper = { formats: ['A0'] };
    change(o);
  });
  const made = makePack(order, { today: '2027-03-01', measure, evenSo: false });
  if (!made.ok) throw new Error(made.code);
  const found = made.pack.documents.find(({ path }) => path === 'all-sizes.pdf');
  return found?.kind === 'pages' ? found.pages : null;
}

const flat = (marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));

const marksOf = (pages: readonly Page[] | null): readonly Mark[] =>
  (pages ?? []).flatMap((page) => flat(page.marks));

describe('a run of sizes', () => {
  it('is drawn only where the order asks for one', () => {
    expect(sizesOf(() => {})).toBeNull();
  });

  it('nests every shaped piece once in each size, by a line of its own', () => {
    const marks = marksOf(
      sizesOf((o) => {
        o.sizes = { ageMonths: [60, 24, 96] };
      }),
    );
    const strokes = (line: string) =>
      marks.filter((mark) => mark.kind === 'stroke' && mark.line === line).length;
    // Four pieces of the bodice, two of the lining, and one line in the key.
    expect([strokes('size-1'), strokes('size-2'), strokes('size-3')]).toEqual([7, 7, 7]);
    expect(strokes('size-4')).toBe(0);
  });

  it('gives straight pieces as numbers, larger from size to size', () => {
    const texts = marksOf(
      sizesOf((o) => {
        o.sizes = { heights: ['36', '42', '48'] };
      }),
    ).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    const rows = texts.filter((text) => /^height .*: cut .* wide, .* long$/.test(text));
    expect(rows.length % 3).toBe(0);
    expect(rows.length).toBeGreaterThanOrEqual(6);
  });

  it('names a size that cannot be drawn', () => {
    const order = exampleOrder((o) => {
      o.sizes = { ageMonths: [36, 400] };
    });
    const made = makePack(order, { today: '2027-03-01', measure, evenSo: false });
    expect(made.ok).toBe(false);
    if (!made.ok && made.code === 'problems') expect(made.problems[0]?.child).toBe('for 400 months');
  });
});
