import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curvyPiece } from '../../../tests/fixtures/curvy-pieces.ts';
import { laidOut, layFaults, PLAIN, planned, toLay } from '../../../tests/fixtures/laid.ts';
import { pathBounds, pathFlatten, pathStart } from '../geometry/index.ts';
import type { Lay, LayCloth, LayPiece, LayPin } from './index.ts';
import { planLay } from './index.ts';
import { obstaclesOn } from './obstacles.ts';
import { layoutFaults, type PackItem } from './pack/index.ts';
import { packPlaceOf, packProblem } from './pack-problem.ts';
import { type Polygon, polygonArea, polygonsShared } from './polygons.ts';
import { runLay } from './run-lay.ts';

/** Some girls' pieces with wavy outlines of 100 corners, as singles, pairs and halves on the fold. */
const pieces = fc
  .array(
    fc.record({
      seed: fc.integer({ min: 1, max: 1_000_000 }),
      size: fc.double({ min: 60, max: 210, noNaN: true }),
      as: fc.constantFrom('single', 'pair', 'fold'),
      copies: fc.integer({ min: 1, max: 2 }),
      child: fc.constantFrom('Adaeze', 'Ngozi', 'Efua'),
    }),
    { minLength: 2, maxLength: 6 },
  )
  .map((wanted): readonly LayPiece[] =>
    wanted.map(({ seed, size, as, copies, child }, i) =>
      toLay(curvyPiece(`p${i}`, seed, size, as), { child, copies: as === 'pair' ? 2 * copies : copies }),
    ),
  );

const GAPS = fc.constantFrom(0, 3, 6, 20);

/** Lays and judges twice: by the judge of the packer on packed outlines, by another library on the true lines. */
function judged(list: readonly LayPiece[], cloth: LayCloth, pins: readonly LayPin[] = []): Lay {
  const plan = planned(list, cloth, pins);
  let best = null;
  for (const step of runLay(plan, { seed: 5, evaluations: 1500 })) best = step.best;
  if (best === null) throw new Error('There is a lay.');
  for (const [i, stretch] of plan.stretches.entries()) {
    const placed = best[i];
    if (placed === undefined) throw new Error('Every stretch is laid.');
    const { problem } = packProblem(stretch, plan.cloth, placed.from, plan.held[i] ?? []);
    const whole = {
      ...problem,
      items: problem.items.map((item, k): PackItem => {
        // Of a problem, stripes may have left out ways to lie; the judge is given all.
        const variants = item.fixed === undefined ? stretch.items[k]?.variants : undefined;
        return variants === undefined
          ? item
          : { variants: variants.map((v) => ({ outline: v.posed.corners })) };
      }),
    };
    const places = whole.items.map((item, k) => {
      const [place, own] = [placed.places[k], stretch.items[k]];
      const variant = own?.variants[place?.variant ?? -1];
      if (place === undefined || variant === undefined || item.fixed !== undefined)
        return item.fixed ?? { variant: 0, x: 0, y: 0 };
      return { variant: place.variant, ...packPlaceOf(variant, place, plan.cloth) };
    });
    expect(layoutFaults(whole, places)).toEqual([]);
  }
  const lay = laidOut(plan, 1500, 5);
  expect(layFaults(lay)).toEqual([]);
  for (const [index, piece] of list.entries()) {
    const copies = laid(lay)
      .filter((one) => one.piece === index)
      .flatMap((one) => one.copies);
    expect(copies.toSorted((a, b) => a - b)).toEqual(Array.from({ length: piece.copies ?? 0 }, (_, k) => k));
  }
  return lay;
}

const laid = (lay: Lay) => lay.stretches.flatMap((stretch) => stretch.pieces);
const runs = (numRuns: number) => ({ seed: 20261125, numRuns });

describe('wavy pieces on cloth', () => {
  test('single, with a nap: heads alike, every second of a pair turned over', () => {
    fc.assert(
      fc.property(pieces, GAPS, (list, gap) => {
        const lay = judged(list, { ...PLAIN, way: 'one-way', gap });
        for (const { turn, mirrored, piece, copies } of laid(lay)) {
          expect(turn).toBe(0);
          const isPair = list[piece]?.cut.piece.cutting.as === 'pair';
          expect(mirrored).toBe(isPair && (copies[0] ?? 0) % 2 === 1);
        }
      }),
      runs(8),
    );
  });

  test('folded lengthwise: halves lie on the fold and end there, pairs are one placing', () => {
    fc.assert(
      fc.property(pieces, GAPS, fc.boolean(), (list, gap, selvedgesToMiddle) => {
        const lay = judged(list, { ...PLAIN, folding: 'lengthwise', selvedgesToMiddle, gap });
        for (const stretch of lay.stretches)
          for (const { layer, outline, copies, piece } of stretch.pieces) {
            const { minY, maxY } = pathBounds(outline);
            if (layer === 'on-fold') {
              const isOnFold = Math.abs(minY) < 1e-6 || Math.abs(maxY - stretch.depth) < 1e-6;
              expect(isOnFold && (selvedgesToMiddle || Math.abs(minY) < 1e-6)).toBe(true);
              expect(list[piece]?.cut.piece.cutting.as).toBe('fold');
            }
            if (layer === 'double') expect(copies).toHaveLength(2);
            expect(stretch.folding === 'single').toBe(layer === 'single');
          }
      }),
      runs(8),
    );
  });

  test('folded crosswise: nothing leaves the cloth, halves begin at the fold', () => {
    fc.assert(
      fc.property(pieces, GAPS, (list, gap) => {
        const lay = judged(list, { ...PLAIN, folding: 'crosswise', gap });
        for (const { layer, at } of laid(lay)) if (layer === 'on-fold') expect(at.x).toBeCloseTo(0, 6);
      }),
      runs(5),
    );
  });

  test('on the bias every grain line lies at 45 degrees', () => {
    fc.assert(
      fc.property(pieces, fc.constantFrom<'one-way' | 'both-ways'>('one-way', 'both-ways'), (list, way) => {
        const lay = judged(
          list.map((piece) => ({ ...piece, grain: 'bias' })),
          { ...PLAIN, way },
        );
        for (const { pins } of laid(lay)) {
          const [head, foot] = pins;
          if (head === undefined || foot === undefined) throw new Error('A piece has a grain line.');
          const [dx, dy] = [head.at.x - foot.at.x, head.at.y - foot.at.y];
          expect(Math.abs(dx)).toBeCloseTo(Math.abs(dy), 6);
          if (way === 'one-way') expect(dx).toBeLessThan(0);
        }
      }),
      runs(5),
    );
  });

  test('flaws and what a leftover lacks stay free', () => {
    const corner = fc.record({
      x: fc.double({ min: 0, max: 900, noNaN: true }),
      y: fc.double({ min: 0, max: 1300, noNaN: true }),
      size: fc.double({ min: 5, max: 90, noNaN: true }),
    });
    fc.assert(
      fc.property(pieces, fc.array(corner, { minLength: 1, maxLength: 3 }), (list, marks) => {
        const flaws = marks.map(({ x, y, size }) => ({
          outline: [
            { x, y },
            { x: x + size, y },
            { x: x + size / 2, y: y + size },
          ],
        }));
        const cloth: LayCloth = { ...PLAIN, flaws };
        const lay = judged(list, cloth);
        for (const stretch of lay.stretches) {
          const rings = obstaclesOn({ ...stretch, items: [] }, cloth, stretch.from);
          for (const { outline } of stretch.pieces)
            for (const ring of rings) expect(sharedArea(pathFlatten(outline, 0.02), ring)).toBeLessThan(0.01);
        }
      }),
      runs(6),
    );
  });

  test('what the maker has pinned stays, the rest keeps off it', () => {
    fc.assert(
      fc.property(pieces, fc.double({ min: 0, max: 900, noNaN: true }), (list, x) => {
        const pin: LayPin = { piece: 0, copy: 0, turn: 0, mirrored: false, x, y: 137 };
        const lay = judged(list, PLAIN, [pin]);
        const held = laid(lay).find(({ piece, copies }) => piece === 0 && copies.includes(0));
        expect(held?.at.x).toBeCloseTo(x, 6);
        expect(held?.at.y).toBeCloseTo(137, 6);
        expect([held?.turn, held?.mirrored]).toEqual([0, false]);
      }),
      runs(6),
    );
  });

  test('matched stripes: the points of a group lie on one line of the repeat', () => {
    const every = fc.double({ min: 12, max: 90, noNaN: true });
    fc.assert(
      fc.property(pieces, every, fc.double({ min: 0, max: 40, noNaN: true }), (list, step, first) => {
        const matched = list.map(
          (piece): LayPiece => ({ ...piece, matches: [{ group: 'side', edge: 'side', at: 'start' }] }),
        );
        const lay = judged(matched, { ...PLAIN, repeat: { along: { every: step, first } } });
        for (const { outline } of laid(lay)) {
          // The outlines begin where their sides do, and have no allowance there.
          const lines = (pathStart(outline).x - first) / step;
          expect(Math.abs(lines - Math.round(lines)) * step).toBeLessThan(1e-3);
        }
      }),
      runs(5),
    );
  });
});

describe('what nobody can lay', () => {
  test('is refused in a sentence, or laid; it never hangs and nothing is thrown', () => {
    const odd = fc.record({
      usableWidth: fc.constantFrom(0, -3, Number.NaN, 40, 300, 1400),
      gap: fc.constantFrom(0, -1, 6, Number.POSITIVE_INFINITY),
      copies: fc.constantFrom(0, 1, 2.5, -2),
      size: fc.constantFrom(1, 120, 4000),
      grain: fc.constantFrom<LayPiece['grain']>('lengthwise', 'bias', 'any'),
    });
    fc.assert(
      fc.property(odd, ({ usableWidth, gap, copies, size, grain }) => {
        const list = [toLay(curvyPiece('odd', 7, size, 'single'), { copies, grain })];
        const result = planLay(list, { ...PLAIN, usableWidth, gap });
        if (!result.ok) {
          expect(result.refusals.length).toBeGreaterThan(0);
          for (const { key } of result.refusals) expect(key).toMatch(/^lay\./);
          return;
        }
        const run = runLay(result.plan, { seed: 1, evaluations: 1e12, gone: () => 1 });
        let steps = 0;
        for (let step = run.next(); step.done !== true; step = run.next()) steps++;
        expect(steps).toBeLessThan(5000);
      }),
      runs(60),
    );
  });

  test('a thousand wavy pieces are laid at once, and stopping at once leaves a valid lay', () => {
    const list = [toLay(curvyPiece('many', 3, 40, 'single'), { copies: 1000 })];
    const plan = planned(list, PLAIN);
    let best = null;
    for (const step of runLay(plan, { seed: 1, evaluations: 1e12, gone: () => 1 })) best = step.best;
    expect(best?.[0]?.places).toHaveLength(1000);
  });
});

const sharedArea = (a: Polygon, b: Polygon): number =>
  polygonsShared([a], [b]).reduce((sum, ring) => sum + Math.abs(polygonArea(ring)), 0);
