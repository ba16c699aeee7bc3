import { describe, expect, it } from 'vitest';
import { dressToLay, layFaults, PLAIN, planned } from '../../../../tests/fixtures/laid.ts';
import { type LayCloth, type LayPiece, runLay } from '../../../engine/lay/index.ts';
import { movedTo, nothingPinned, pinnedOrNot, placeOf, turnedOn, waysOf } from './by-hand.ts';
import { type ItemAt, isPinned, type SeenLay, seenLength } from './seen-lay.ts';

function seen(cloth: LayCloth, pieces: readonly LayPiece[] = dressToLay()): SeenLay {
  const plan = planned(pieces, cloth);
  let placed = null;
  for (const { best } of runLay(plan, { seed: 1, evaluations: 400 })) placed = best;
  if (placed === null) throw new Error('There is a lay.');
  return {
    cloth: cloth as SeenLay['cloth'],
    child: null,
    lengths: [seenLength(null, plan, placed, new Set())],
    kept: null,
    isOld: false,
    alone: null,
  };
}

const at = (item: number, stretch = 0): ItemAt => ({ length: 0, stretch, item });
const good = (move: ReturnType<typeof movedTo>): SeenLay => {
  if (!move.ok) throw new Error(move.why);
  return move.lay;
};
const there = (lay: SeenLay, item: number) => {
  const place = placeOf(lay, at(item));
  if (place === undefined) throw new Error('It lies there.');
  return place;
};
const faults = (lay: SeenLay) => lay.lengths.flatMap((length) => length.faults);

describe('a piece that is put elsewhere', () => {
  const lay = seen(PLAIN);

  it('lies there and is pinned; far away from all others nothing is wrong with it', () => {
    const after = good(movedTo(lay, at(0), { x: 9000, y: 300 }));
    expect(there(after, 0)).toMatchObject({ x: 9000, y: 300 });
    const [length] = after.lengths;
    if (length === undefined) throw new Error('It has a length.');
    expect(isPinned(length, 0, 0)).toBe(true);
    expect(faults(after)).toEqual([]);
    expect(layFaults(length.lay)).toEqual([]);
    expect(length.lay.length).toBeGreaterThan(9000);
    expect(there(lay, 0).x).toBeLessThan(9000);
  });

  it('that lies over another is told with both, by the judge of the tests too', () => {
    const other = there(lay, 1);
    const after = good(movedTo(lay, at(0), { x: other.x, y: other.y }));
    expect(faults(after)).toContainEqual(
      expect.objectContaining({ code: 'overlap', items: expect.arrayContaining([0, 1]) }),
    );
    expect(after.lengths.flatMap(({ lay: laid }) => layFaults(laid))).not.toEqual([]);
  });

  it('a little over the edge goes to the edge, further out it is refused', () => {
    const after = good(movedTo(lay, at(0), { x: -8, y: -12 }));
    expect(there(after, 0).y).toBeCloseTo(0, 6);
    expect(there(after, 0).x).toBeGreaterThanOrEqual(0);
    expect(movedTo(lay, at(0), { x: 100, y: -60 })).toEqual({ ok: false, why: 'off-cloth' });
    expect(movedTo(lay, at(0), { x: -400, y: 100 })).toEqual({ ok: false, why: 'off-cloth' });
  });

  it('turns about its middle where the cloth may lie both ways, and not on one-way cloth', () => {
    expect(waysOf(lay, at(0))).toBeGreaterThan(1);
    const after = good(turnedOn(lay, at(0)));
    expect(there(after, 0).variant).not.toBe(there(lay, 0).variant);
    let back = after;
    for (let i = 1; i < waysOf(lay, at(0)); i++) back = good(turnedOn(back, at(0)));
    expect(there(back, 0).variant).toBe(there(lay, 0).variant);
    const oneWay = seen({ ...PLAIN, way: 'one-way' });
    const single = [...dressToLay().keys()].find((item) => waysOf(oneWay, at(item)) === 1);
    expect(single).toBeDefined();
  });

  it('pins come out one by one or all at once', () => {
    const two = pinnedOrNot(pinnedOrNot(lay, at(0), true), at(1), true);
    expect(two.lengths[0]?.pinned.size).toBe(2);
    expect(pinnedOrNot(two, at(0), false).lengths[0]?.pinned.size).toBe(1);
    expect(nothingPinned(two).lengths[0]?.pinned.size).toBe(0);
  });
});

describe('rules of the cloth hold for her hand too', () => {
  it('a half piece stays on its fold and moves along it', () => {
    const lay = seen({ ...PLAIN, folding: 'lengthwise' });
    const items = lay.lengths[0]?.plan.stretches[0]?.items ?? [];
    const item = items.findIndex(({ layer }) => layer === 'on-fold');
    const after = good(movedTo(lay, at(item), { x: 7000, y: 260 }));
    expect(there(after, item)).toMatchObject({ x: 7000, y: 0 });
    expect(faults(after)).toEqual([]);
  });

  it('what comes after on single cloth follows up when the folded stretch gets longer', () => {
    const lay = seen({ ...PLAIN, folding: 'lengthwise', usableWidth: 900 });
    const [length] = lay.lengths;
    if (length?.placed.length !== 2) throw new Error('Some piece is too wide for the folded cloth.');
    const before = length.placed[1]?.from ?? 0;
    const free = length.plan.stretches[0]?.items.findIndex(({ layer }) => layer === 'double') ?? 0;
    const after = good(movedTo(lay, at(free), { x: 4000, y: there(lay, free).y }));
    expect(after.lengths[0]?.placed[1]?.from ?? 0).toBeGreaterThan(before);
  });
});
