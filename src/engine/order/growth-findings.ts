import {
  daysBetween,
  dayText,
  grownFromSaying,
  growthBand,
  growthProblemSaying,
  type MeasureId,
} from '../body/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { say, type WordKey } from '../words/index.ts';
import type { Finding } from './finding.ts';
import type { OrderChild } from './order.ts';

/** That a child's dress is drafted for the due day, and what was doubtful about growing it; nothing where it is not. */
export function growthFindings({ name, growth }: OrderChild): readonly Finding[] {
  if (growth === null || growth.drafted === null) return [];
  const { event, measured } = growth.input;
  const key: WordKey = growth.sizeMore ? 'order.grown-size-more' : 'order.grown';
  const values = {
    child: name,
    event: dayText(event),
    measured: dayText(measured.day),
    days: daysBetween(measured.day, event),
  };
  return [
    { code: key, level: 'note', say: { key, values }, todo: null },
    ...growth.drafted.warnings.map(
      (problem): Finding => ({
        code: problem.code,
        level: JUST_TOLD.includes(problem.code) ? 'note' : 'warn',
        say: growthProblemSaying(problem, name),
        todo: null,
      }),
    ),
  ];
}

/** What asks for nothing. */
const JUST_TOLD: readonly string[] = [
  'growth.problem.corrected',
  'growth.problem.stands-up',
  'growth.problem.size-more',
] satisfies readonly WordKey[];

/** How a measure was grown to the due day; null where it was not. */
export function grownWords({ growth }: OrderChild, id: MeasureId, units: UnitSystem): string | null {
  const grown = growth?.drafted?.grown;
  const value = grown?.values[id];
  if (grown === undefined || value === undefined || value.from.kind === 'measured') return null;
  const values = {
    measured: { mm: value.measured },
    band: { mm: growthBand(grown, id) ?? 0 },
    how: grownFromSaying(value.from),
  };
  return say('order.grown.value', values, units);
}
