import { describe, expect, it } from 'vitest';
import type { OrderSummary } from '../../store/index.ts';
import { byDueDay, found, shelfOf } from './sorted-orders.ts';

const order = (title: string, dueDay: string, more: Partial<OrderSummary> = {}): OrderSummary => ({
  kind: 'order',
  id: title,
  revision: 1,
  origin: { kind: 'new' },
  createdAt: '2027-01-01T00:00:00.000Z',
  changedAt: '2027-01-01T00:00:00.000Z',
  archived: false,
  deletedAt: null,
  title,
  customer: null,
  dueDay,
  children: [],
  kept: [],
  timed: [],
  ...more,
});

const titles = (orders: readonly OrderSummary[]): readonly string[] => orders.map(({ title }) => title);

describe('the order book', () => {
  it('shows the next event first, then orders without a day, then past ones', () => {
    const orders = [
      order('long past', '2026-01-05'),
      order('just past', '2027-03-01'),
      order('no day', ''),
      order('later', '2027-09-01'),
      order('today', '2027-03-02'),
    ];
    expect(titles(byDueDay(orders, '2027-03-02'))).toEqual([
      'today',
      'later',
      'no day',
      'just past',
      'long past',
    ]);
  });

  it('finds by title, customer and child, without minding accents or capitals', () => {
    const orders = [
      order('Garden party', '', { children: ['Tọ́lá', 'Efua'] }),
      order('Church', '', { customer: 'Mrs Owusu' }),
    ];
    expect(titles(found(orders, 'tola'))).toEqual(['Garden party']);
    expect(titles(found(orders, 'OWUSU church'))).toEqual(['Church']);
    expect(titles(found(orders, 'owusu garden'))).toEqual([]);
    expect(titles(found(orders, '  '))).toHaveLength(2);
  });

  it('keeps what is put away and what is deleted on shelves of their own', () => {
    expect(shelfOf(order('a', ''))).toBe('open');
    expect(shelfOf(order('a', '', { archived: true }))).toBe('archived');
    expect(shelfOf(order('a', '', { archived: true, deletedAt: '2027-01-01T00:00:00.000Z' }))).toBe(
      'deleted',
    );
  });
});
