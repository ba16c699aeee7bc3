import { describe, expect, it } from 'vitest';
import { dressToLay, laidOut, PLAIN, planned } from '../../../tests/fixtures/laid.ts';
import { type Affine, type Bounds, type Point, pathBounds, pathLength } from '../geometry/index.ts';
import type { Lay } from '../lay/index.ts';
import { clothLength, stretchRows } from './lay-drawing.ts';
import type { Ink, Mark } from './scene.ts';

/** A font of which every letter is 0.6 of its size wide. */
const ink = (units: Ink['units']): Ink => ({
  units,
  measure: { width: (text, size) => text.length * size * 0.6 },
});

const SHRINK = 8;
const single = laidOut(planned(dressToLay(), PLAIN), 400);
const folded = laidOut(planned(dressToLay(), { ...PLAIN, folding: 'lengthwise' }), 400);

/** A mark by itself, with its place on the page: no mark of a lay is turned. */
interface Found {
  readonly mark: Exclude<Mark, { kind: 'group' }>;
  readonly shift: Point;
}

function found(marks: readonly Mark[], { e, f }: Pick<Affine, 'e' | 'f'> = { e: 0, f: 0 }): readonly Found[] {
  return marks.flatMap((mark) => {
    if (mark.kind !== 'group') return [{ mark, shift: { x: e, y: f } }];
    const { a, b, c, d } = mark.frame;
    expect([a, b, c, d]).toEqual([1, 0, 0, 1]);
    return found(mark.marks, { e: e + mark.frame.e, f: f + mark.frame.f });
  });
}

const moved = ({ minX, minY, maxX, maxY }: Bounds, { x, y }: Point): Bounds => ({
  minX: minX + x,
  minY: minY + y,
  maxX: maxX + x,
  maxY: maxY + y,
});

function rowsOf(lay: Lay, width: number, units: Ink['units'] = 'cm') {
  const [stretch] = lay.stretches;
  if (stretch === undefined) throw new Error('Something is laid.');
  const rows = stretchRows({ lay, stretch, offcuts: [], shrink: SHRINK }, width, ink(units)).map(
    ({ marks }) => found(marks),
  );
  return { stretch, rows };
}

const boxes = (row: readonly Found[], kind: 'paper' | 'tint') =>
  row.flatMap(({ mark, shift }) =>
    mark.kind === 'fill' && mark.fill === kind ? [moved(pathBounds(mark.outline), shift)] : [],
  );
const texts = (row: readonly Found[]) =>
  row.flatMap(({ mark, shift }) =>
    mark.kind === 'text' ? [{ text: mark.text, x: mark.at.x + shift.x, y: mark.at.y + shift.y }] : [],
  );

describe.each([
  ['single', single],
  ['folded lengthwise', folded],
])('a drawn lay, %s', (_, lay) => {
  const { stretch, rows } = rowsOf(lay, 10_000);
  const [row = []] = rows;
  const [cloth] = boxes(row, 'tint');

  it('shows the cloth as long and as deep as it lies, at the scale', () => {
    expect(rows).toHaveLength(1);
    expect(((cloth?.maxX ?? 0) - (cloth?.minX ?? 0)) * SHRINK).toBeCloseTo(stretch.length, 6);
    expect(((cloth?.maxY ?? 0) - (cloth?.minY ?? 0)) * SHRINK).toBeCloseTo(stretch.depth, 6);
  });

  it('has every piece where the lay has it, measured from the cut end and the edge', () => {
    const drawn = boxes(row, 'paper');
    expect(stretch.pieces.length).toBeGreaterThan(5);
    for (const { outline } of stretch.pieces) {
      const box = pathBounds(outline);
      const there = drawn.filter(
        (one) =>
          Math.abs((one.minX - (cloth?.minX ?? 0)) * SHRINK - box.minX) < 1e-6 &&
          Math.abs((one.maxX - (cloth?.minX ?? 0)) * SHRINK - box.maxX) < 1e-6 &&
          Math.abs((one.minY - (cloth?.minY ?? 0)) * SHRINK - box.minY) < 1e-6 &&
          Math.abs((one.maxY - (cloth?.minY ?? 0)) * SHRINK - box.maxY) < 1e-6,
      );
      expect(there.length).toBeGreaterThan(0);
    }
  });

  it('puts the dots where the tape measures to: so far along, so far from the nearer edge', () => {
    const dots = row.flatMap(({ mark, shift }) => {
      if (mark.kind !== 'fill' || mark.fill !== 'ink') return [];
      const { minX, minY, maxX, maxY } = moved(pathBounds(mark.outline), shift);
      return [{ x: (minX + maxX) / 2 - (cloth?.minX ?? 0), y: (minY + maxY) / 2 - (cloth?.minY ?? 0) }];
    });
    for (const { pins } of stretch.pieces) {
      const foot = pins[1];
      if (foot === undefined) throw new Error('A grain line has two ends.');
      const isThere = dots.some(({ x, y }) => {
        const fromEdge = Math.min(
          Math.abs(y * SHRINK - foot.across),
          Math.abs(stretch.depth - y * SHRINK - foot.across),
        );
        return Math.abs(x * SHRINK - foot.along) < 1e-6 && fromEdge < 1e-6;
      });
      expect(isThere).toBe(true);
    }
  });

  it('draws a fold as a fold, and a selvedge with its word', () => {
    const folds = row.flatMap(({ mark }) => (mark.kind === 'stroke' && mark.line === 'fold' ? [mark] : []));
    expect(folds).toHaveLength(stretch.folding === 'lengthwise' ? 1 : 0);
    for (const { path } of folds) expect(pathLength(path) * SHRINK).toBeCloseTo(stretch.length, 6);
    const words = texts(row).map(({ text }) => text);
    expect(words.filter((word) => word === 'selvedge')).toHaveLength(
      stretch.folding === 'lengthwise' ? 1 : 2,
    );
  });
});

describe('the scale along a lay', () => {
  it.each([
    ['cm', 250, /^(\d+) cm$/, 10],
    ['in', 254, /^(\d+) in$/, 25.4],
  ] as const)('in %s stands where its numbers say', (units, step, form, unit) => {
    const { rows, stretch } = rowsOf(single, 10_000, units);
    const told = texts(rows[0] ?? []).flatMap(({ text, x }) => {
      const number = form.exec(text)?.[1];
      return number === undefined ? [] : [{ mm: Number(number) * unit, x }];
    });
    expect(told).toHaveLength(Math.floor(stretch.length / step));
    for (const { mm, x } of told) expect(x * SHRINK).toBeCloseTo(mm, 6);
  });

  it('goes on in the next row, which begins where the one before it ends', () => {
    const width = single.length / SHRINK / 2.5;
    const { rows, stretch } = rowsOf(single, width);
    expect(rows).toHaveLength(3);
    const onRow = stretch.length / 3;
    for (const [i, row] of rows.entries()) {
      const drawn = boxes(row, 'paper');
      for (const { outline } of stretch.pieces) {
        const { minX, maxX } = pathBounds(outline);
        if (maxX <= i * onRow || minX >= (i + 1) * onRow) continue;
        const isThere = drawn.some(
          (one) =>
            Math.abs(one.minX * SHRINK - (minX - i * onRow)) < 1e-6 &&
            Math.abs((one.maxX - one.minX) * SHRINK - (maxX - minX)) < 1e-6,
        );
        expect(isThere).toBe(true);
      }
    }
  });

  it('reads to an eighth of an inch or a millimetre', () => {
    expect(clothLength(25.4 * 3.12, { units: 'in' })).toBe('3 1/8 in');
    expect(clothLength(123.4, { units: 'cm' })).toBe('12.3 cm');
    expect(clothLength(-0.001, { units: 'cm' })).toBe('0 cm');
  });
});
