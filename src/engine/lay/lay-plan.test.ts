import { describe, expect, test } from 'vitest';
import {
  bodiceBack,
  bodiceFront,
  bowKnot,
  skirtPanel,
  yokeFront,
} from '../../../tests/fixtures/cut-pieces.ts';
import { dressToLay, laidOut, layFaults, PLAIN, planned, toLay } from '../../../tests/fixtures/laid.ts';
import { linePath, point } from '../geometry/index.ts';
import { say } from '../words/index.ts';
import type { LayCloth, LayPiece, LayPin } from './index.ts';
import { planLay } from './index.ts';

const FOLDED: LayCloth = { ...PLAIN, folding: 'lengthwise' };

function refused(pieces: readonly LayPiece[], cloth: LayCloth, pins?: readonly LayPin[]) {
  const result = planLay(pieces, cloth, pins);
  if (result.ok) throw new Error('It is refused.');
  for (const { key, values, advice } of result.refusals) {
    expect(say(key, values, 'in')).not.toContain('{');
    for (const a of advice) expect(say(a.key as typeof key, a.values, 'in')).not.toContain('{');
  }
  return result.refusals;
}

const keys = (pieces: readonly LayPiece[], cloth: LayCloth, pins?: readonly LayPin[]) =>
  refused(pieces, cloth, pins).map(({ key }) => key);

describe('a lay', () => {
  const cloths: readonly (readonly [string, LayCloth])[] = [
    ['single, both ways', PLAIN],
    ['single, one way', { ...PLAIN, way: 'one-way', gap: 0 }],
    ['folded lengthwise', FOLDED],
    ['folded lengthwise, one way', { ...FOLDED, way: 'one-way' }],
    ['selvedges to the middle', { ...FOLDED, selvedgesToMiddle: true }],
    ['folded crosswise', { ...PLAIN, folding: 'crosswise' }],
  ];
  test.each(cloths)('%s: every copy once, on the cloth, apart by the gap', (_, cloth) => {
    const pieces = dressToLay();
    const lay = laidOut(planned(pieces, cloth), 600);
    expect(layFaults(lay)).toEqual([]);
    for (const [index, { cut }] of pieces.entries()) {
      const copies = lay.stretches
        .flatMap((s) => s.pieces)
        .filter(({ piece }) => piece === index)
        .flatMap((laid) => laid.copies);
      expect(copies.toSorted()).toEqual(Array.from({ length: cut.piece.cutting.copies }, (_, i) => i));
    }
    expect(lay.length).toBeGreaterThanOrEqual(lay.leastLength);
    expect(lay.density).toBeGreaterThan(0.2);
    expect(lay.density).toBeLessThanOrEqual(1);
    if (cloth.way === 'one-way') {
      expect(lay.stretches.flatMap((s) => s.pieces).every(({ turn }) => turn === 0)).toBe(true);
    }
  });

  test('folded lengthwise, fronts lie with half of them on the fold, a pair is one placing', () => {
    const pieces = [toLay(bodiceFront()), toLay(bodiceBack()), toLay(bowKnot())];
    const lay = laidOut(planned(pieces, FOLDED), 300);
    const [onFold, after] = lay.stretches;
    expect(onFold?.pieces.map(({ layer }) => layer)).toEqual(['on-fold', 'double']);
    expect(onFold?.pieces[0]?.at.y).toBeCloseTo(0, 9);
    expect(onFold?.pieces[1]?.copies).toEqual([0, 1]);
    // The one knot lies on single cloth behind, and that is said.
    expect(after?.folding).toBe('single');
    expect(after?.from).toBeCloseTo((onFold?.length ?? 0) + FOLDED.gap, 6);
    expect(lay.notes.map(({ key }) => key)).toContain('lay.note.opened');
  });

  test('garments may lie each its own way, but every one keeps it', () => {
    const pieces = [...dressToLay(1, 'Adaeze'), ...dressToLay(0.8, 'Ngozi')];
    const lay = laidOut(planned(pieces, { ...PLAIN, garmentOneWay: true }), 300);
    const turnsOf = (name: string) =>
      new Set(lay.stretches.flatMap((s) => s.pieces.filter((p) => p.child === name).map((p) => p.turn)));
    expect([...turnsOf('Adaeze')]).toEqual([0]);
    expect([...turnsOf('Ngozi')]).toEqual([180]);
  });

  test('pins are measured from the near edge to both ends of the grain line, which lies straight', () => {
    const lay = laidOut(planned(dressToLay(), PLAIN), 300);
    for (const { pins, outline } of lay.stretches.flatMap((s) => s.pieces)) {
      const [head, foot] = pins;
      expect(head?.across).toBeCloseTo(foot?.across ?? Number.NaN, 6);
      expect(head?.across).toBeLessThanOrEqual(PLAIN.usableWidth / 2 + 1e-6);
      expect(outline.segments.length).toBeGreaterThan(2);
    }
  });

  test('nothing to lay needs no cloth, and what is wanted 0 times is left out', () => {
    const none = laidOutOrEmpty([]);
    expect(none.length).toBe(0);
    expect(none.toBuy.bought).toBe(0);
    expect(planned([toLay(bowKnot(), { copies: 0 })], PLAIN).stretches).toEqual([]);
    expect(planned([toLay(bowKnot(), { copies: 7 })], PLAIN).stretches[0]?.items).toHaveLength(7);
  });

  test('a thousand pieces are planned at once', () => {
    const plan = planned([toLay(bowKnot(), { copies: 500 }), toLay(bodiceBack(), { copies: 500 })], PLAIN);
    expect(plan.stretches[0]?.items).toHaveLength(1000);
    const arrays = new Set(plan.stretches[0]?.items.flatMap((i) => i.variants.map((v) => v.posed.corners)));
    expect(arrays.size).toBeLessThanOrEqual(6);
  });

  test('length to buy: slippery cloth, shrinkage, repeat, then the unit of the shop', () => {
    const cloth: LayCloth = {
      ...PLAIN,
      extra: 0.05,
      shrinkage: 0.03,
      repeat: { along: { every: 80, first: 0 } },
    };
    const lay = laidOut(planned([toLay(skirtPanel(330, 420))], cloth), 50);
    const needed = (lay.length * 1.05 + 80) / 0.97;
    expect(lay.toBuy.bought).toBeGreaterThanOrEqual(needed - 1e-6);
    expect(lay.toBuy.bought - needed).toBeLessThan(100);
  });
});

const laidOutOrEmpty = (pieces: readonly LayPiece[]) => laidOut(planned(pieces, PLAIN), 10);

describe('what is refused', () => {
  test('cloth and rules that cannot be', () => {
    const knot = [toLay(bowKnot())];
    expect(keys(knot, { ...PLAIN, usableWidth: 0 })).toEqual(['lay.no-width']);
    expect(keys(knot, { ...PLAIN, usableWidth: Number.NaN, gap: -1 })).toEqual([
      'lay.no-width',
      'lay.bad-gap',
    ]);
    expect(keys(knot, { ...PLAIN, shrinkage: 1 })).toEqual(['lay.bad-share']);
    expect(keys(knot, { ...PLAIN, folding: 'crosswise', way: 'one-way' })).toEqual(['lay.crosswise-one-way']);
    const checks = { across: { every: 40, first: 0 } };
    expect(keys(knot, { ...FOLDED, repeat: checks })).toEqual(['lay.checks-folded']);
    expect(keys([toLay(bowKnot(), { copies: 1.5 })], PLAIN)).toEqual(['lay.bad-copies']);
    expect(keys([toLay(bowKnot(), { copies: -1 })], PLAIN)).toEqual(['lay.bad-copies']);
  });

  test('a piece wider than the cloth: both sizes, and what would do', () => {
    const narrow: LayCloth = { ...PLAIN, usableWidth: 600 };
    const [first] = refused([toLay(skirtPanel(330, 420)), toLay(yokeFront())], narrow);
    expect(first?.key).toBe('lay.too-wide');
    expect(first?.pieces).toEqual([0]);
    // Twice 330 and 15 seam allowance, as the front lies opened out; 420 long with 12 and 75.
    expect(first?.values.size).toEqual({ mm: expect.closeTo(690, 0) });
    expect(first?.advice.map(({ key }) => key)).toEqual([
      'lay.advice.wider',
      'lay.advice.cross',
      'lay.advice.join',
    ]);
    expect(first?.advice[2]?.values.widths).toBe(2);
    const allowed = planLay([toLay(skirtPanel(330, 420), { grain: 'cross-allowed' })], narrow);
    expect(allowed.ok).toBe(true);
  });

  test('a piece longer than the length at hand', () => {
    const [first] = refused([toLay(skirtPanel(330, 420))], { ...PLAIN, longest: 400 });
    expect(first?.key).toBe('lay.too-long');
    expect(first?.advice[0]?.values.length).toEqual({ mm: expect.closeTo(507, 0) });
  });

  test('an outline that crosses itself is cut as far as it goes round, and told', () => {
    const corners = [point(100, 0), point(0, 100), point(100, 100), point(0, 0)] as const;
    const crossed = { ...bowKnot(), cuttingLine: linePath(point(0, 0), ...corners) };
    const lay = laidOut(planned([toLay(crossed)], PLAIN), 20);
    expect(lay.notes.map(({ key }) => key)).toEqual(['lay.note.cleaned']);
  });
});

describe('pinned pieces', () => {
  const pieces = dressToLay();
  const before = laidOut(planned(pieces, PLAIN), 300);
  const front = before.stretches[0]?.pieces.find(({ piece }) => piece === 0);
  const pin: LayPin = { piece: 0, copy: 0, turn: 0, mirrored: false, x: 200, y: 333 };

  test('stay where they were put while the rest moves', () => {
    const lay = laidOut(planned(pieces, PLAIN, [pin]), 600);
    const held = lay.stretches[0]?.pieces.find(({ piece }) => piece === 0);
    expect(held?.at.x).toBeCloseTo(200, 6);
    expect(held?.at.y).toBeCloseTo(333, 6);
    expect(held?.turn).toBe(0);
    expect(layFaults(lay)).toEqual([]);
  });

  test('what a lay says of a piece pins it there', () => {
    if (front === undefined) throw new Error('The front is laid.');
    const { turn, mirrored, at } = front;
    const again = laidOut(planned(pieces, PLAIN, [{ piece: 0, copy: 0, turn, mirrored, ...at }]), 300);
    const held = again.stretches[0]?.pieces.find(({ piece }) => piece === 0);
    expect(held?.at.x).toBeCloseTo(at.x, 6);
    expect(held?.at.y).toBeCloseTo(at.y, 6);
  });

  test('not off the cloth, not against the grain, not over each other', () => {
    expect(keys(pieces, PLAIN, [{ ...pin, y: 1300 }])).toEqual(['lay.pin-off']);
    expect(keys(pieces, PLAIN, [{ ...pin, turn: 90 }])).toEqual(['lay.pin-turned']);
    expect(keys(pieces, PLAIN, [{ ...pin, piece: 99 }])).toEqual(['lay.pin-unknown']);
    const other: LayPin = { ...pin, piece: 1, y: 340 };
    expect(keys(pieces, PLAIN, [pin, other])).toEqual(['lay.pins-overlap']);
  });
});
