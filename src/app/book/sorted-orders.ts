import type { OrderSummary } from '../../store/index.ts';

export const SHELVES = ['open', 'archived', 'deleted'] as const;
export type Shelf = (typeof SHELVES)[number];

export const shelfOf = ({ archived, deletedAt }: OrderSummary): Shelf =>
  deletedAt !== null ? 'deleted' : archived ? 'archived' : 'open';

/** The next event first, then those without a day, then what is past, the latest first. */
export function byDueDay(orders: readonly OrderSummary[], today: string): readonly OrderSummary[] {
  const rank = ({ dueDay }: OrderSummary): number => (!isDay(dueDay) ? 1 : dueDay >= today ? 0 : 2);
  return orders.toSorted((a, b) => {
    const ranks = rank(a) - rank(b);
    if (ranks !== 0) return ranks;
    const days =
      rank(a) === 0 ? compare(a.dueDay, b.dueDay) : rank(a) === 2 ? compare(b.dueDay, a.dueDay) : 0;
    return days !== 0 ? days : compare(b.changedAt, a.changedAt);
  });
}

export const isDay = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text);

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The orders that have every word of what is looked for in title, customer or children, whatever the accents. */
export function found(orders: readonly OrderSummary[], looked: string): readonly OrderSummary[] {
  const words = plain(looked)
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return orders;
  return orders.filter((order) => {
    const text = plain([order.title, order.customer ?? '', ...order.children].join(' '));
    return words.every((word) => text.includes(word));
  });
}

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
