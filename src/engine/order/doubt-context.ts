import type { DoubtContext } from '../body/index.ts';
import type { Order, OrderChild } from './order.ts';

/** What a child's measures are held against beside each other: the other children's, and her own of earlier days. */
export function doubtContext({ children }: Order, child: OrderChild): DoubtContext {
  const { growth } = child;
  // Grown measures are no longer the numbers that were written.
  const others =
    growth?.drafted == null
      ? children
          .filter(({ path }) => path !== child.path)
          .map(({ name, body }) => ({ name, measured: body.measured }))
      : [];
  if (growth === null || growth.earlier.length === 0) return { others };
  const { sex, born, charts = 'who', measured } = growth.input;
  return { others, again: { sex, born, charts, now: measured, before: growth.earlier } };
}
