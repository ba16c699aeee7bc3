import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { layFaults } from '../../../tests/fixtures/laid.ts';
import type { CutPiece } from '../cut/index.ts';
import { checkOrder } from './check-order.ts';
import { type LaidCloths, layChild, layParty, refusedByCloths } from './lay-cloths.ts';
import type { Order } from './order.ts';

function piecesOf(order: Order): readonly (readonly CutPiece[])[] {
  const report = checkOrder(order, '2027-03-01');
  if (!report.ok) throw new Error('The example can be drawn.');
  return report.children.map(({ pieces }) => pieces);
}

/** The first two children only, so that it is soon done. */
const two = (change: (order: RawOrder) => void = () => {}): Order =>
  exampleOrder((order) => {
    order.children = order.children.slice(0, 2);
    change(order);
  });

function expectGood({ lists }: LaidCloths): void {
  for (const { cloth, pieces, lengths } of lists) {
    const laid = lengths.flatMap(({ lay }) => lay.stretches.flatMap((stretch) => stretch.pieces));
    for (const [i, { piece }] of pieces.entries()) {
      const copies = laid.filter((one) => one.piece === i).flatMap((one) => one.copies);
      const wanted = Array.from({ length: piece.cutting.copies }, (_, copy) => copy);
      expect(copies.toSorted((a, b) => a - b)).toEqual(wanted);
    }
    for (const { lay } of lengths) expect(layFaults(lay)).toEqual([]);
    if (cloth.way === 'one-way') for (const { turn } of laid) expect(turn).toBe(0);
  }
}

describe('the cloths of an order', () => {
  const order = two();
  const each = piecesOf(order);
  const alone = each.map((pieces) => layChild(order, pieces));
  const party = layParty(order, each.flat(), alone);

  it('have every copy of every piece once, a gap apart, on the cloth, heads alike on satin', () => {
    for (const laid of [...alone, party]) {
      expect(laid.problems).toEqual([]);
      expectGood(laid);
    }
    expect(order.cloths.map(({ way }) => way)).toEqual(['one-way', 'both-ways', 'both-ways']);
  });

  it('are bought no shorter than the lay, its shrinkage added', () => {
    for (const { cloth, lengths, toBuy, saved } of party.lists) {
      const used = lengths.reduce((sum, { lay }) => sum + lay.length, 0);
      expect(toBuy * (1 - cloth.shrinkage)).toBeGreaterThanOrEqual(used - 1e-6);
      expect(saved?.saved).toBeGreaterThanOrEqual(0);
    }
  });

  it('come out the same again', () => {
    const [first = []] = each;
    expect(layChild(order, first)).toEqual(alone[0]);
  });

  it('are laid child by child where the order says so', () => {
    const apart = layParty({ ...order, layTogether: false }, each.flat(), alone);
    expect(apart.lists).toHaveLength(alone.flatMap(({ lists }) => lists).length);
  });
});

describe('rules of a cloth', () => {
  it('folded lengthwise, with a flaw and extra for slipping', () => {
    const order = two((raw) => {
      Object.assign(raw.cloths[2], {
        folding: 'lengthwise',
        extra: 10,
        gap: '10 mm',
        flaws: [{ fromEnd: '20 cm', fromSelvedge: '10 cm', along: '3 cm', across: '3 cm' }],
      });
    });
    const [pieces = []] = piecesOf(order);
    const laid = layChild(order, pieces);
    expectGood(laid);
    const lawn = laid.lists.find(({ cloth }) => cloth.name === 'cotton lawn');
    const [length] = lawn?.lengths ?? [];
    expect(length?.lay.stretches[0]?.folding).toBe('lengthwise');
    expect(length?.lay.toBuy.bought).toBeGreaterThan((length?.lay.length ?? 0) * 1.1);
  });

  it('lengths at hand are used first; only the rest is bought', () => {
    const order = two((raw) => {
      raw.cloths[2].atHand = [{ length: '60 cm' }];
    });
    const [pieces = []] = piecesOf(order);
    const plain = layChild(two(), pieces);
    const laid = layChild(order, pieces);
    expectGood(laid);
    const lawn = laid.lists.find(({ cloth }) => cloth.name === 'cotton lawn');
    expect(lawn?.lengths[0]?.at).toBe(0);
    expect(lawn?.lengths[0]?.lay.length).toBeLessThanOrEqual(600 + 1e-6);
    const bought = plain.lists.find(({ cloth }) => cloth.name === 'cotton lawn')?.toBuy ?? 0;
    expect(lawn?.toBuy).toBeLessThan(bought);
  });

  it('either face up, one way for each child, and a piece that may lie across', () => {
    const order = two((raw) => {
      Object.assign(raw.cloths[0], {
        way: 'child-one-way',
        facesAlike: true,
        grain: [{ piece: 'front', lies: 'bias' }],
      });
    });
    const each = piecesOf(order);
    const party = layParty(
      order,
      each.flat(),
      each.map((pieces) => layChild(order, pieces)),
    );
    expectGood(party);
    const satin = party.lists.find(({ cloth }) => cloth.name === 'ivory satin');
    const laid =
      satin?.lengths.flatMap(({ lay }) => lay.stretches.flatMap((stretch) => stretch.pieces)) ?? [];
    const idOf = (piece: number) => satin?.pieces[piece]?.piece.id;
    const fronts = laid.filter(({ piece }) => idOf(piece) === 'front');
    expect(fronts.length).toBeGreaterThan(0);
    for (const { turn } of fronts) expect([45, 135, 225, 315]).toContain(turn);
    const [first, second] = order.children.map(({ name }) => name);
    for (const [child, way] of [
      [first, 0],
      [second, 180],
    ] as const) {
      const turns = laid
        .filter((one) => one.child === child && idOf(one.piece) !== 'front')
        .map(({ turn }) => turn);
      expect(new Set(turns)).toEqual(new Set([way]));
    }
  });

  it('a child whose pieces must be of one shade lies on one length, or is bought whole', () => {
    const order = two((raw) => {
      Object.assign(raw.cloths[2], { oneLength: true, atHand: [{ length: '30 cm' }, { length: '70 cm' }] });
    });
    const laid = layChild(order, piecesOf(order)[0] ?? []);
    expectGood(laid);
    const lawn = laid.lists.find(({ cloth }) => cloth.name === 'cotton lawn');
    expect(lawn?.lengths.map(({ at }) => at)).toEqual([1]);
    expect(lawn?.toBuy).toBe(0);
  });

  it('what excludes a piece is found without laying it, and laying says the same', () => {
    const order = exampleOrder((raw) => {
      raw.cloths[0].width = '20';
    });
    const each = piecesOf(order);
    const pieces = each.find((own) => refusedByCloths(order, own).length > 0);
    if (pieces === undefined) throw new Error('Some piece is wider than 20 in.');
    expect(layChild(order, pieces).problems).toEqual(refusedByCloths(order, pieces));
    expect(piecesOf(exampleOrder()).flatMap((own) => refusedByCloths(exampleOrder(), own))).toEqual([]);
  });
});
