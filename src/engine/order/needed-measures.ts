import {
  type Body,
  type BodyValue,
  completeBody,
  MEASURE_IDS,
  type MeasureId,
  measureNext,
  type NextMeasure,
  problemSaying,
} from '../body/index.ts';
import { checkGarment } from '../check/index.ts';
import type { Saying } from '../words/index.ts';
import { doubtContext } from './doubt-context.ts';
import { bodyProblem, dressProblem } from './dress-problems.ts';
import type { Order, OrderChild } from './order.ts';
import type { OrderProblem } from './problem.ts';
import { checkInput, drawDress } from './work-child.ts';

/** `drawing`: a line of the dress rests on it. `checks`: only a check does. `estimates`: others are filled in by it. */
export type MeasureUse = 'drawing' | 'checks' | 'estimates';

export interface NeededMeasure {
  readonly id: MeasureId;
  readonly use: MeasureUse;
  readonly value: BodyValue;
}

export type NeededMeasures =
  | {
      readonly ok: true;
      readonly needed: readonly NeededMeasure[];
      /** What to measure next so that the lines of the dress become surest; null where nothing is open. */
      readonly next: NextMeasure | null;
      /** What is worth a second look among what was measured. */
      readonly doubts: readonly Saying[];
    }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/**
 * The measures that a child's dress rests on, found by drawing and checking it and seeing which are asked for: so the
 * list is right for every block and design there is. In the order in which a maker is asked for them.
 */
export function neededMeasures(order: Order, child: OrderChild): NeededMeasures {
  const completed = completeBody(child.body, doubtContext(order, child));
  if (!completed.ok)
    return { ok: false, problems: completed.problems.map((problem) => bodyProblem(child, problem)) };
  const uses = new Map<MeasureId, MeasureUse>();
  const body = watched(completed.body, (id, use) => {
    if (!uses.has(id)) uses.set(id, use);
  });
  const drawn = drawDress(order, child, body.as('drawing'), null);
  if (!drawn.ok)
    return {
      ok: false,
      problems: drawn.problems.map((problem) => dressProblem(child, problem, order.units)),
    };
  checkGarment(checkInput(order, body.as('checks'), drawn.garment));
  const values = completed.body.values;
  if ([...uses.keys()].some((id) => values[id].from === 'estimated') && !uses.has('height')) {
    uses.set('height', 'estimates');
  }
  const drawing = MEASURE_IDS.filter((id) => uses.get(id) === 'drawing');
  return {
    ok: true,
    next: measureNext(child.body, drawing),
    doubts: completed.warnings.map((problem) => problemSaying(problem, child.name)),
    needed: MEASURE_IDS.flatMap((id) => {
      const use = uses.get(id);
      return use === undefined ? [] : [{ id, use, value: values[id] }];
    }),
  };
}

/** The same body, telling whenever one of its measures is looked at. */
function watched(body: Body, seen: (id: MeasureId, use: MeasureUse) => void): { as(use: MeasureUse): Body } {
  return {
    as: (use) => {
      const properties = MEASURE_IDS.map((id): [string, PropertyDescriptor] => [
        id,
        {
          enumerable: true,
          get: () => {
            seen(id, use);
            return body.values[id];
          },
        },
      ]);
      const values: Body['values'] = Object.defineProperties(
        { ...body.values },
        Object.fromEntries(properties),
      );
      return { ...body, values };
    },
  };
}
