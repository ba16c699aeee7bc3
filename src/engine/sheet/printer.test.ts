import { describe, expect, test } from 'vitest';
import type { Affine, Point } from '../geometry/index.ts';
import { drawnForPrinter, printerProblem } from './printer.ts';

/** Where a mark of the page comes to lie in the frame of its correction. */
const framePoint = ({ a, b, c, d, e, f }: Affine, p: Point): Point => ({
  x: a * p.x + c * p.y + e,
  y: b * p.x + d * p.y + f,
});

describe('a printer that is a little off', () => {
  test('is drawn for, both ways apart, about the middle of the page', () => {
    const page = { name: 'p', width: 200, height: 300, marks: [] };
    const [group] = drawnForPrinter(page, { across: 98, down: 101 }).marks;
    if (group?.kind !== 'group') throw new Error('The page is drawn in a frame.');
    expect(framePoint(group.frame, { x: 100, y: 150 })).toEqual({ x: 100, y: 150 });
    const shrunk = framePoint(group.frame, { x: 200, y: 300 });
    expect((shrunk.x - 100) * 0.98 + 100).toBeCloseTo(200, 9);
    expect((shrunk.y - 150) * 1.01 + 150).toBeCloseTo(300, 9);
  });

  test('without a measured square the page stays as it is', () => {
    const page = { name: 'p', width: 200, height: 300, marks: [] };
    expect(drawnForPrinter(page, null)).toBe(page);
  });

  test('a 2 in bar that came out at 1 7/8 in (a published case of "fit to page") is refused', () => {
    const side = (100 * 1.875) / 2;
    expect(side).toBe(93.75);
    expect(printerProblem({ across: side, down: 100 })?.code).toBe('printer.too-far-off');
    expect(printerProblem({ across: 100, down: side })?.code).toBe('printer.too-far-off');
  });

  test('3 mm on the square is the limit, either way', () => {
    expect(printerProblem({ across: 97, down: 103 })).toBeNull();
    expect(printerProblem({ across: 96.9, down: 100 })).not.toBeNull();
    expect(printerProblem({ across: Number.NaN, down: 100 })).not.toBeNull();
  });
});
