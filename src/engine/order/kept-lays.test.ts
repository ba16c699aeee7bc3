import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { layFaults } from '../../../tests/fixtures/laid.ts';
import type { CutPiece } from '../cut/index.ts';
import { keptPlaces, layMark, readLay } from '../lay/index.ts';
import { drawChild } from './check-order.ts';
import { LAY_ENGINE, layFile } from './kept-lays.ts';
import { type KeptUse, type LaidCloth, layChild, layInTurn } from './lay-cloths.ts';
import type { KeptLay, Order } from './order.ts';
import { ownerOf } from './read-lay-back.ts';

/** The first child only, so that it is soon done. */
const one = (change: (order: RawOrder) => void = () => {}): Order =>
  exampleOrder((order) => {
    order.children = order.children.slice(0, 1);
    change(order);
  });

function piecesOf(order: Order): readonly CutPiece[] {
  return order.children.flatMap((child) => {
    const drawn = drawChild(order, child, '2027-03-01');
    if (!drawn.ok) throw new Error('The example can be drawn.');
    return drawn.drawing.pieces;
  });
}

const kept = ({ cloth, pieces, lengths }: LaidCloth, pinned = false): KeptLay => ({
  cloth: cloth.name,
  child: ownerOf(pieces),
  engine: LAY_ENGINE,
  seed: 7,
  evaluations: 300,
  lengths: lengths.map(({ at, plan, placed }) => ({
    at,
    mark: layMark(plan),
    places: keptPlaces(plan, placed, () => pinned),
  })),
});

/** As the file that is saved and read again. */
const throughFile = (lay: KeptLay): unknown => JSON.parse(JSON.stringify(layFile(lay)));

function searched(order: Order, evaluations: number, seed: number, use: KeptUse = 'print') {
  const run = layInTurn(order, piecesOf(order), null, () => ({ seed, evaluations }), use);
  for (;;) {
    const { value, done } = run.next();
    if (done === true) return value;
  }
}

const clothNamed = (laid: { readonly lists: readonly LaidCloth[] }, name: string): LaidCloth => {
  const found = laid.lists.find(({ cloth }) => cloth.name === name);
  if (found === undefined) throw new Error(`Something is cut from ${name}.`);
  return found;
};

function movedAlong(laid: LaidCloth, by: number): LaidCloth {
  const lengths = laid.lengths.map((length) => {
    const placed = length.placed.map((stretch) => ({
      ...stretch,
      length: stretch.length + by,
      places: stretch.places.map((place) => ({ ...place, x: place.x + by })),
    }));
    return { ...length, placed, lay: readLay(length.plan, placed) };
  });
  return { ...laid, lengths };
}

const SATIN = 'ivory satin';
/** Moved along the cloth, so that it can be told from the one that the papers would find. */
const other = movedAlong(clothNamed(searched(one(), 300, 7), SATIN), 13);
const withLay = (lay: KeptLay, change: (order: RawOrder) => void = () => {}): Order =>
  one((order) => {
    order.lays = [throughFile(lay)];
    change(order);
  });
const satin = (order: Order): LaidCloth => clothNamed(layChild(order, piecesOf(order)), SATIN);

describe('a lay that the order keeps', () => {
  it('is laid again as it was, to the last digit, and not searched for', () => {
    const again = satin(withLay(kept(other)));
    expect(again.kept).toBe('same');
    expect(again.lengths.map(({ placed }) => placed)).toEqual(other.lengths.map(({ placed }) => placed));
    expect(satin(one()).lengths[0]?.placed).not.toEqual(other.lengths[0]?.placed);
    expect(satin(one()).kept).toBeNull();
  });

  it('is laid by its places also when an earlier search found it', () => {
    const again = satin(withLay({ ...kept(other), engine: LAY_ENGINE - 1 }));
    expect(again.kept).toBe('same');
    expect(again.lengths.map(({ placed }) => placed)).toEqual(other.lengths.map(({ placed }) => placed));
  });

  it('is known as changed when a piece or the cloth is another and all still lies well', () => {
    const wider = satin(
      withLay(kept(other), (order) => {
        order.cloths[0].width = '60';
      }),
    );
    expect(wider.kept).toBe('changed');
    for (const { lay } of wider.lengths) expect(layFaults(lay)).toEqual([]);
    const renamedOnly = satin(
      withLay(kept(other), (order) => {
        order.title = 'Another title';
        order.cloths[0].soldBy = '1/4 yd';
      }),
    );
    expect(renamedOnly.kept).toBe('same');
  });

  it('is not printed where a piece has grown over another: then the papers search for one of their own', () => {
    const grown = withLay(kept(other), (order) => {
      order.children[0].measures.chestGirth = '21';
    });
    const laid = satin(grown);
    expect(laid.kept).toBeNull();
    for (const { lay } of laid.lengths) expect(layFaults(lay)).toEqual([]);
    expect(clothNamed(layChild(grown, piecesOf(grown), 'show'), SATIN).kept).toBe('spoiled');
  });

  it('is not printed where somebody has written pieces over each other or off the cloth', () => {
    type Place = { x: number; y: number };
    for (const spoil of [
      (place: Place, next: Place) => Object.assign(place, { x: next.x, y: next.y }),
      (place: Place) => Object.assign(place, { y: -100 }),
      (place: Place) => Object.assign(place, { y: 5000 }),
    ]) {
      const lay = throughFile(kept(other)) as { lengths: { places: Place[] }[] };
      const [first, next] = lay.lengths[0]?.places ?? [];
      if (first === undefined || next === undefined) throw new Error('Several pieces lie on it.');
      spoil(first, next);
      const order = one((raw) => {
        raw.lays = [lay];
      });
      expect(clothNamed(layChild(order, piecesOf(order), 'show'), SATIN).kept).toBe('spoiled');
      for (const { lay: printed } of satin(order).lengths) expect(layFaults(printed)).toEqual([]);
    }
  });

  it('is where a longer search begins: nothing gets longer, and what is pinned stays', () => {
    const pinned = kept(other);
    const [length] = pinned.lengths;
    const [first] = length?.places ?? [];
    if (length === undefined || first === undefined) throw new Error('Something lies on it.');
    const places = length.places.map((place) => (place === first ? { ...place, pinned: true } : place));
    const order = withLay({ ...pinned, lengths: [{ ...length, places }] });
    const longer = clothNamed(searched(order, 3000, 3, 'go-on'), SATIN);
    expect(longer.lengths[0]?.lay.length).toBeLessThanOrEqual(other.lengths[0]?.lay.length ?? 0);
    const stayed = longer.lengths[0]?.placed[0]?.places[0];
    expect(stayed?.x).toBeCloseTo(first.x, 9);
    expect(stayed?.y).toBeCloseTo(first.y, 9);
    for (const { lay } of longer.lengths) expect(layFaults(lay)).toEqual([]);
  });

  it('keeps what lies on lengths at hand where it lies', () => {
    const atHand = (order: RawOrder): void => {
      order.cloths[2].atHand = [{ length: '60 cm' }];
    };
    const lawn = clothNamed(searched(one(atHand), 300, 7), 'cotton lawn');
    const order = withLay(kept(lawn), atHand);
    const again = clothNamed(layChild(order, piecesOf(order)), 'cotton lawn');
    expect(again.kept).toBe('same');
    expect(again.lengths.map(({ at, placed }) => ({ at, placed }))).toEqual(
      lawn.lengths.map(({ at, placed }) => ({ at, placed })),
    );
    // The length is used up: what lay on it goes onto cloth to be bought, and has no place there yet.
    const gone = withLay(kept(lawn));
    expect(clothNamed(layChild(gone, piecesOf(gone), 'show'), 'cotton lawn').kept).toBe('spoiled');
  });
});
