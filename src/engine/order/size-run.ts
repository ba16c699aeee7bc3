import { completeBody } from '../body/index.ts';
import { type Ink, nestedSizePages, type Page, paperOf, type SizeSet } from '../sheet/index.ts';
import { cutDress } from './cut-dress.ts';
import { bodyProblem, dressProblem } from './dress-problems.ts';
import type { Order } from './order.ts';
import type { OrderProblem } from './problem.ts';
import { drawDress } from './work-child.ts';

export type SizeRun =
  | { readonly ok: true; readonly pages: readonly Page[] }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/**
 * The order's dress in its run of sizes, for average children of those heights or ages, nested on large sheets: on
 * the first large format of the order, or on a roll where it has none.
 */
export function drawSizeRun(order: Order, ink: Ink, day: string): SizeRun {
  const sizes: SizeSet[] = [];
  for (const size of order.sizes) {
    const completed = completeBody(size.body);
    if (!completed.ok)
      return { ok: false, problems: completed.problems.map((problem) => bodyProblem(size, problem)) };
    const { body } = completed;
    const dress = drawDress(order, size, body, null);
    if (!dress.ok) {
      return {
        ok: false,
        problems: dress.problems.map((problem) => dressProblem(size, problem, order.units)),
      };
    }
    sizes.push({
      name: size.name,
      pieces: cutDress(order, { child: size, body, garment: dress.garment }, day),
    });
  }
  const paper = order.papers.find(({ format }) => !format.joined) ?? paperOf('roll-36');
  return { ok: true, pages: nestedSizePages({ title: order.title, date: day, sizes, paper, ink }) };
}
