import { parseLength, type UnitSystem } from '../units/index.ts';
import { aboutField, fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';

/** Reads the lengths of an order, in its units, and gathers what can't be read. */
export interface LengthReader {
  readonly units: UnitSystem;
  readonly problems: OrderProblem[];
  /** The length in mm; 0 after a problem, which keeps the order from being used. */
  length(at: OrderPlace, given: string | number, range: readonly [number, number]): number;
  /** A length whose range is judged elsewhere. */
  anyLength(at: OrderPlace, given: string | number): number | null;
}

export function createLengthReader(units: UnitSystem): LengthReader {
  const problems: OrderProblem[] = [];
  const anyLength = (at: OrderPlace, given: string | number): number | null => {
    const read = parseLength(given, units);
    if (read.ok) return read.mm;
    problems.push(aboutField(at, { key: read.problem.code, values: read.problem.values }));
    return null;
  };
  return {
    units,
    problems,
    anyLength,
    length: (at, given, [least, most]) => {
      const mm = anyLength(at, given);
      if (mm === null) return 0;
      if (mm >= least && mm <= most) return mm;
      const values = { value: { mm }, least: { mm: least }, most: { mm: most } };
      problems.push(fieldProblem(at, 'order.length-out-of-range', values));
      return 0;
    },
  };
}
