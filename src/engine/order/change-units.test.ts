import { describe, expect, it } from 'vitest';
import example from '../../../examples/wedding-party.json?raw';
import { changeUnits, readOrderFile, readOrderValue } from './index.ts';
import type { OrderFile } from './schema.ts';

function fileOf(text: string): OrderFile {
  const read = readOrderFile(JSON.parse(text));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.order;
}

function resolved(file: OrderFile) {
  const read = readOrderValue(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.order;
}

describe('an order told in other units', () => {
  it('keeps every length of the example order, there and back', () => {
    const file = fileOf(example);
    const metric = changeUnits(file, 'cm');
    expect(metric.units).toBe('cm');
    expect(metric.children[0]?.measures?.height).toBe('31 3/4 in');
    for (const other of [metric, changeUnits(metric, 'in')]) {
      const [before, after] = [resolved(file), resolved(other)];
      expect(after.children.map(({ body }) => body)).toEqual(before.children.map(({ body }) => body));
      expect(after.allowances).toEqual(before.allowances);
      expect(after.cloths.map(({ usableWidth }) => usableWidth)).toEqual(
        before.cloths.map(({ usableWidth }) => usableWidth),
      );
    }
  });

  it('leaves what is written with its unit, plain numbers of steps, and what cannot be read', () => {
    const file = fileOf(example);
    const child = { name: 'Ada', measures: { height: '104 cm', chestGirth: '21 x' } };
    const changed = changeUnits({ ...file, children: [child] }, 'cm');
    expect(changed.children[0]?.measures).toEqual({ height: '104 cm', chestGirth: '21 x' });
    const party = changeUnits(file, 'cm');
    expect(party.children[1]?.dress?.[2]).toEqual({ step: 'gathered-skirt', ratio: 2.5 });
    expect(party.dress?.[2]).toEqual({ step: 'yoke', line: 'curved', rise: '1 in' });
  });
});

describe('cloths told in other units', () => {
  it('keep every length of their rules, and what is no length', () => {
    const file = fileOf(example);
    const [first, ...others] = file.cloths;
    if (first === undefined) throw new Error('The example order has cloths.');
    const cloth: typeof first = {
      ...first,
      gap: '1/2',
      extra: 7,
      way: 'child-one-way',
      facesAlike: true,
      oneLength: true,
      grain: [{ piece: 'sash', lies: 'cross-allowed' }],
      repeat: { along: 4, across: '2 1/2' },
      flaws: [{ fromEnd: '12', fromSelvedge: 3, along: '1', across: '30 mm' }],
      atHand: [
        { length: '40' },
        {
          corners: [
            { along: 0, across: 0 },
            { along: '30', across: 0 },
            { along: '10 cm', across: 20 },
          ],
        },
      ],
    };
    const own = { ...file, cloths: [cloth, ...others] };
    const before = resolved(own).cloths[0];
    const there = changeUnits(own, 'cm');
    const back = changeUnits(there, 'in');
    for (const other of [there, back]) {
      const after = resolved(other).cloths[0];
      const { repeat, flaws, atHand, gap, extra, way, garmentOneWay, facesAlike, oneLength, grain } =
        after ?? before ?? fail();
      expect({ ...before, repeat, flaws, atHand, gap }).toEqual(before);
      expect([extra, way, garmentOneWay, facesAlike, oneLength]).toEqual([
        0.07,
        'both-ways',
        true,
        true,
        true,
      ]);
      expect([...grain]).toEqual([['sash', 'cross-allowed']]);
    }
    expect(before?.gap).toBeCloseTo(12.7, 9);
    expect(before?.flaws?.[0]?.outline[0]).toEqual({ x: 12 * 25.4, y: 3 * 25.4 });
    expect(there.cloths[0]?.flaws?.[0]?.across).toBe('30 mm');
  });
});

const fail = (): never => {
  throw new Error('The first cloth is there.');
};

describe('measurings and their days', () => {
  const file = fileOf(example);
  const [first] = file.children;
  if (first === undefined) throw new Error('The example order has children.');

  it('an order without days of measuring reads as it always did', () => {
    expect(example).not.toContain('"measured"');
    expect(resolved(file).children).toHaveLength(5);
  });

  it('a measuring and the earlier ones are kept; only the newest draws', () => {
    const earlier = [{ measured: '2026-05-01', measures: { height: '30', chestGirth: '18' } }];
    const dated = { ...file, children: [{ ...first, measured: '2027-03-02', earlier }] };
    const read = readOrderFile(JSON.parse(JSON.stringify(dated)));
    expect(read).toEqual({ ok: true, order: dated });
    expect(resolved(dated).children[0]?.body).toEqual(resolved(file).children[0]?.body);
    expect(changeUnits(dated, 'cm').children[0]?.earlier?.[0]?.measures.height).toBe('30 in');
  });

  it('a day that is none is refused at its field', () => {
    const read = readOrderValue({ ...file, children: [{ ...first, measured: 'last week' }] });
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: 'order.not-a-day', path: 'children[0].measured' }],
    });
  });
});
