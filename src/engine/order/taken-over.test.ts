import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { type ChildDrawing, drawChild } from './check-order.ts';
import type { Order } from './order.ts';

const DAY = '2027-03-01';

function drawn(order: Order, before: ChildDrawing | null = null): ChildDrawing {
  const [child] = order.children;
  if (child === undefined) throw new Error('The example has children.');
  const result = drawChild(order, child, DAY, before);
  if (!result.ok) throw new Error('The example can be drawn.');
  return result.drawing;
}

const stepOf = (order: RawOrder, step: string): RawOrder => {
  const found = order.dress.find((one: RawOrder) => one.step === step);
  if (found !== undefined) return found;
  const added = { step };
  order.dress.push(added);
  return added;
};

/** One change of a number, of what it is cut from, or of who wears it. */
const changes: fc.Arbitrary<(order: RawOrder) => void> = fc.oneof(
  fc.integer({ min: 8, max: 10 }).map((inches) => (order: RawOrder) => {
    stepOf(order, 'pleated-skirt').length = inches;
  }),
  fc.integer({ min: 5, max: 9 }).map((eighths) => (order: RawOrder) => {
    stepOf(order, 'yoke').rise = eighths / 8;
  }),
  fc.integer({ min: 0, max: 8 }).map((sixteenths) => (order: RawOrder) => {
    order.children[0].measures.chestGirth = 18 + sixteenths / 16;
  }),
  fc.integer({ min: 2, max: 8 }).map((eighths) => (order: RawOrder) => {
    order.allowances = { all: { side: eighths / 8, hem: eighths / 4 } };
  }),
  fc.constantFrom('Amina', 'Ama').map((name) => (order: RawOrder) => {
    order.children[0].name = name;
  }),
);

describe('a drawing that takes over what is the same in the one before', () => {
  it('is the drawing that is made without it', () => {
    fc.assert(
      fc.property(fc.array(changes, { minLength: 1, maxLength: 5 }), (list) => {
        let before: ChildDrawing | null = null;
        for (const change of list) {
          const order = exampleOrder(change);
          const now: ChildDrawing = drawn(order, before);
          const { known: _, ...alone } = drawn(order).drawn;
          expect(now.drawn).toMatchObject(alone);
          expect(now.pieces).toEqual(drawn(exampleOrder(change)).pieces);
          before = now;
        }
      }),
      { numRuns: 40, seed: 20261201 },
    );
  });

  it('holds the very pieces that did not change, and their cutting lines', () => {
    const before = drawn(exampleOrder());
    const now = drawn(
      exampleOrder((order) => {
        stepOf(order, 'pleated-skirt').length = 10;
      }),
      before,
    );
    const stayed = now.pieces.filter((cut) => before.pieces.includes(cut)).map(({ piece }) => piece.id);
    expect(stayed).toContain('front-yoke');
    expect(stayed).toContain('back');
    const changed = now.pieces.filter((cut) => !before.pieces.includes(cut)).map(({ piece }) => piece.id);
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.every((id) => id.includes('skirt'))).toBe(true);
    expect(now.drawn.body).toBe(before.drawn.body);
  });

  it('cuts the same piece anew for other allowances', () => {
    const before = drawn(exampleOrder());
    const now = drawn(
      exampleOrder((order) => {
        order.allowances = { all: { side: 0.5 } };
      }),
      before,
    );
    const sides = ({ pieces }: ChildDrawing): readonly (number | undefined)[] =>
      pieces.filter(({ piece }) => piece.id === 'front').map(({ allowances }) => allowances.side);
    expect(sides(now)).toEqual([12.7]);
    expect(sides(before)).not.toEqual([12.7]);
  });
});
