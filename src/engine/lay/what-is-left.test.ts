import { Clipper, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bodiceBack, bodiceFront, bowKnot, yokeFront } from '../../../tests/fixtures/cut-pieces.ts';
import { dressToLay, flat, laidOut, layFaults, PLAIN, planned, toLay } from '../../../tests/fixtures/laid.ts';
import { MM_PER_INCH } from '../units/index.ts';
import { freeRectangles } from './free-rectangles.ts';
import {
  type LengthsProgress,
  layOffcuts,
  layOnLengths,
  readLay,
  savedAgainstTable,
  savedCloth,
} from './index.ts';
import { biasStrips } from './offcuts.ts';
import { rectangle } from './polygons.ts';
import { lengthByTable, WIDTH_TABLE } from './width-table.ts';

describe('offcuts', () => {
  test('lie free on the cloth, the largest first, each with its uses', () => {
    const lay = laidOut(planned(dressToLay(), PLAIN), 300);
    const cuts = layOffcuts(lay);
    expect(cuts.length).toBeGreaterThan(0);
    for (const [i, { x, y, along, across, stretch }] of cuts.entries()) {
      const free = [...rectangle(x, y, x + along, y + across)];
      expect(x + along).toBeLessThanOrEqual((lay.stretches[stretch]?.length ?? 0) + 1e-6);
      expect(y + across).toBeLessThanOrEqual(PLAIN.usableWidth);
      for (const { outline } of lay.stretches[stretch]?.pieces ?? []) {
        const shared = Clipper.areaPathsD(Clipper.intersectD([free], [flat(outline)], FillRule.NonZero, 4));
        expect(Math.abs(shared)).toBeLessThan(1e-6);
      }
      const next = cuts[i + 1];
      if (next !== undefined) expect(next.along * next.across).toBeLessThanOrEqual(along * across);
    }
  });

  test('round one obstacle the largest rectangle is found, by trying them all', () => {
    const cell = fc.integer({ min: 0, max: 11 });
    fc.assert(
      fc.property(cell, cell, cell, cell, (ax, ay, bx, by) => {
        const [x0, x1] = [Math.min(ax, bx) * 10, Math.max(ax, bx) * 10 + 9];
        const [y0, y1] = [Math.min(ay, by) * 10, Math.max(ay, by) * 10 + 9];
        const best = freeRectangles([rectangle(x0 + 1, y0 + 1, x1, y1)], 120, 120, 1, 10)[0];
        const beside = [x0, 120 - x1 - 1].map((room) => room * 120);
        const above = [y0, 120 - y1 - 1].map((room) => room * 120);
        const most = Math.max(...beside, ...above);
        expect((best?.along ?? 0) * (best?.across ?? 0)).toBe(most);
      }),
      { seed: 20260401, numRuns: 100, endOnFailure: true },
    );
  });

  test('bias strips: no more cloth than there is, none longer than the diagonal of the square', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 1500 }), fc.integer({ min: 60, max: 1500 }), (a, b) => {
        const { strips, length } = biasStrips(a, b, 35);
        expect(length * 35).toBeLessThanOrEqual(a * b);
        expect(length).toBeLessThanOrEqual(strips * Math.min(a, b) * Math.SQRT2);
      }),
      { seed: 20260401 },
    );
    // A square of half a metre: 500 x sqrt 2 = 707 across; the strip beside the diagonal is the longest.
    expect(biasStrips(500, 500, 35).strips).toBeGreaterThan(12);
  });
});

describe('the width table', () => {
  test('the rows of the printed table: 2 1/4 yd of 36 in are 1 3/4 yd of 45 in and 1 3/8 yd of 60 in', () => {
    const yard = 36 * MM_PER_INCH;
    expect(lengthByTable(2.25 * yard, 36 * MM_PER_INCH, 45 * MM_PER_INCH)).toBeCloseTo(1.75 * yard, 6);
    expect(lengthByTable(2.25 * yard, 36 * MM_PER_INCH, 60 * MM_PER_INCH)).toBeCloseTo(1.375 * yard, 6);
    // Between two rows the longer one.
    expect(lengthByTable(2.3 * yard, 36 * MM_PER_INCH, 45 * MM_PER_INCH)).toBeCloseTo(2.125 * yard, 6);
    expect(lengthByTable(6 * yard, 36 * MM_PER_INCH, 45 * MM_PER_INCH)).toBeNull();
    expect(lengthByTable(2 * yard, 36 * MM_PER_INCH, 118 * MM_PER_INCH)).toBeNull();
    // The first row is 1 3/4 yd, a step is 1/4 yd: a yard is not in the table, 1 1/2 yd is bought as its first row.
    expect(lengthByTable(yard, 36 * MM_PER_INCH, 45 * MM_PER_INCH)).toBeNull();
    expect(lengthByTable(1.5 * yard, 36 * MM_PER_INCH, 45 * MM_PER_INCH)).toBeCloseTo(1.375 * yard, 6);
  });

  test('wider cloth never asks for more, longer lengths never for less; areas run from 0.89 to 1.10', () => {
    const shares: number[] = [];
    for (const [r, row] of WIDTH_TABLE.yards.entries()) {
      for (const [c, yards] of row.entries()) {
        const before = row[c - 1];
        const above = WIDTH_TABLE.yards[r - 1]?.[c];
        if (before !== undefined) expect(yards).toBeLessThanOrEqual(before);
        if (above !== undefined) expect(yards).toBeGreaterThanOrEqual(above);
        const [, most] = WIDTH_TABLE.widths[c] ?? [0, 0];
        shares.push((yards * most) / (row[0] * 36));
      }
    }
    expect(Math.min(...shares)).toBeCloseTo(0.89, 1);
    expect(Math.max(...shares)).toBeCloseTo(1.1, 1);
  });
});

describe('a party', () => {
  const [a, b] = [dressToLay(1, 'Adaeze'), dressToLay(0.85, 'Ngozi')];

  test('one lay for all against one each, and against the table', () => {
    const alone = [a, b].map((pieces) => laidOut(planned(pieces, PLAIN), 1500));
    const party = laidOut(planned([...a, ...b], PLAIN), 3000);
    const { together, saved } = savedCloth(party, alone);
    expect(together).toBe(party.toBuy.bought);
    expect(saved).toBeCloseTo(alone.reduce((sum, lay) => sum + lay.toBuy.bought, 0) - party.toBuy.bought, 6);
    const narrow = laidOut(planned(a, { ...PLAIN, usableWidth: 1110 }), 5000);
    const [first] = alone;
    if (first === undefined) throw new Error('The first child is laid.');
    const table = savedAgainstTable(first, 1500, narrow, 1143);
    const byTable = lengthByTable(narrow.toBuy.bought, 1143, 1500);
    expect(byTable).toBeGreaterThan(0);
    expect(table).toEqual({ byTable, saved: (byTable ?? 0) - first.toBuy.bought });
  });

  test('lengths at hand are used first, and what belongs together comes from one of them', () => {
    const pieces = [
      toLay(bodiceFront(), { together: 'bodice' }),
      toLay(bodiceBack(), { together: 'bodice' }),
      toLay(yokeFront()),
      toLay(bowKnot(), { copies: 3 }),
    ];
    const atHand = [{ length: 340 }, { length: 330 }];
    const settings = { seed: 1, evaluations: 3000, mayBuy: true };
    let last: LengthsProgress | null = null;
    for (const step of layOnLengths(pieces, { ...PLAIN, usableWidth: 700 }, atHand, settings)) last = step;
    if (last?.lengths == null) throw new Error('It can be laid.');
    const where = new Map<number, number | null>();
    for (const { at, plan, placed } of last.lengths) {
      const lay = readLay(plan, placed);
      expect(layFaults(lay)).toEqual([]);
      for (const { piece } of lay.stretches.flatMap((s) => s.pieces)) {
        expect(where.get(piece) ?? at).toBe(at);
        where.set(piece, at);
      }
    }
    expect(where.get(0)).toBe(where.get(1));
    expect([...where.keys()].toSorted()).toEqual([0, 1, 2, 3]);
    expect(last.lengths.some(({ at }) => at !== null)).toBe(true);
  });

  test('where nothing may be bought, the pieces without a place are named', () => {
    const settings = { seed: 1, evaluations: 500, mayBuy: false };
    const run = layOnLengths([toLay(bodiceFront())], PLAIN, [{ length: 100 }], settings);
    let step = run.next();
    while (step.done !== true) step = run.next();
    expect(step.value.refusals?.map(({ key }) => key)).toEqual(['lay.not-enough']);
  });
});
