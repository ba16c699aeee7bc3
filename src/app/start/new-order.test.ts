import { describe, expect, it } from 'vitest';
import { readOrderValue } from '../../engine/order/index.ts';
import { newOrder } from './new-order.ts';

const started = (dress: string) => {
  const measures = { height: '41', chestGirth: '21 1/2', waistGirth: '20 1/2', backNeckToWaist: '9 1/4' };
  const told = { name: 'Nara', years: 4, months: undefined, measures, dueDay: '2027-05-01', dress };
  const file = newOrder(told, 'in', '2027-03-01');
  const read = readOrderValue(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return file.cloths.map(({ kind, use }) => [kind, use]);
};

describe('a new order', () => {
  it('has a cloth of net where the dress has parts of net, and each part has one cloth', () => {
    expect(started('clover')).toContainEqual(['net', ['yoke']]);
    expect(started('snowdrop')).toContainEqual(['net', ['net']]);
    expect(started('minnow').map(([kind]) => kind)).not.toContain('net');
    for (const dress of ['clover', 'snowdrop', 'minnow']) {
      const uses = started(dress).flatMap(([, use]) => use);
      expect(new Set(uses).size).toBe(uses.length);
      expect(uses).toEqual(expect.arrayContaining(['main', 'yoke', 'skirt', 'lining', 'net', 'trim']));
    }
  });
});
