import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { makePack } from './index.ts';

const measure = { width: (text: string, size: number) => text.length * size * 0.6 };

/** The index page of the example order with another closing in the place of its zip. */
function indexWith(step: string, given: Readonly<Record<string, string>> = {}): string {
  const order = exampleOrder((raw: RawOrder) => {
    raw.children = raw.children.slice(0, 1);
    raw.dress = raw.dress.map((wish: { step: string }) =>
      wish.step === 'back-zip' ? { step, ...given } : wish,
    );
  });
  const made = makePack(order, { today: '2027-03-01', measure, evenSo: true });
  if (!made.ok) throw new Error(made.code);
  const index = made.pack.documents.find(({ path }) => path === 'README.txt');
  if (index === undefined || index.kind !== 'text') throw new Error('The pack must have its index.');
  return index.text;
}

describe('what to buy for the opening', () => {
  it('is told in the index of the pack for closings that are no zip', () => {
    expect(indexWith('back-buttons', { diameter: '1/2 in' })).toMatch(
      /Buttons to buy: \d+, 1\/2 in across\./,
    );
    expect(indexWith('back-lacing')).toMatch(/Cord to buy for the lacing: \d+.* in\./);
    expect(indexWith('shoulder-studs')).toMatch(/Press studs to buy: \d+\./);
  });
});
