import { finestRuler, marksOnRuler, type Ruler, roundToRuler } from './ruler.ts';
import { MM_PER_INCH, type UnitSystem } from './system.ts';

/**
 * A length ready to be set in type. Inches come as a whole number and a reduced fraction (numerator 0: none),
 * so that a sheet can set a real fraction; centimetres as decimal text without trailing zero.
 */
export type LengthParts =
  | {
      readonly unit: 'in';
      readonly negative: boolean;
      readonly whole: number;
      readonly numerator: number;
      readonly denominator: number;
    }
  | { readonly unit: 'cm'; readonly negative: boolean; readonly decimal: string };

/**
 * Takes a length (mm) apart as the maker reads it. It is snapped to the ruler first and the fraction reduced
 * after, so 25.39 mm is 1 in and never 16/16. A ruler of the other system still decides the length (the mark the
 * maker will use); the parts are then told on the finest ruler of the wanted system.
 */
export function lengthParts(mm: number, system: UnitSystem, ruler: Ruler = finestRuler(system)): LengthParts {
  const shown = ruler.system === system ? ruler : finestRuler(system);
  const marks = marksOnRuler(roundToRuler(mm, ruler), shown);
  const negative = marks < 0;
  const count = Math.abs(marks);
  if (system === 'cm') {
    const decimal = ((count * shown.step) / 10).toFixed(1).replace(/\.0$/, '');
    return { unit: 'cm', negative, decimal };
  }
  const marksPerInch = Math.round(MM_PER_INCH / shown.step);
  const over = count % marksPerInch;
  const shared = commonDivisor(over, marksPerInch);
  return {
    unit: 'in',
    negative,
    whole: (count - over) / marksPerInch,
    numerator: over / shared,
    denominator: marksPerInch / shared,
  };
}

/** `20 1/2 in`, `3/4 in`, `52 cm`, `10.5 cm`; a negative length (a difference) has a leading minus. */
export function formatLength(mm: number, system: UnitSystem, ruler?: Ruler): string {
  const parts = lengthParts(mm, system, ruler);
  const sign = parts.negative ? '-' : '';
  if (parts.unit === 'cm') return `${sign}${parts.decimal} cm`;
  const fraction = parts.numerator === 0 ? '' : `${parts.numerator}/${parts.denominator}`;
  if (fraction === '') return `${sign}${parts.whole} in`;
  return parts.whole === 0 ? `${sign}${fraction} in` : `${sign}${parts.whole} ${fraction} in`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
