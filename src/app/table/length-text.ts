import { lengthParts, type Ruler, type UnitSystem } from '../../engine/units/index.ts';

const WHOLE_FRACTIONS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};
const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

const setIn = (digits: string, n: number): string =>
  [...String(n)].map((digit) => digits[Number(digit)] ?? digit).join('');

/** A length with real fractions, `20½ in`, `3³⁄₁₆ in`, `52.5 cm`; a difference may be negative. */
export function lengthText(mm: number, units: UnitSystem, ruler?: Ruler): string {
  const parts = lengthParts(mm, units, ruler);
  const sign = parts.negative ? '−' : '';
  if (parts.unit === 'cm') return `${sign}${parts.decimal} cm`;
  const { whole, numerator, denominator } = parts;
  const fraction =
    numerator === 0
      ? ''
      : (WHOLE_FRACTIONS[`${numerator}/${denominator}`] ??
        `${setIn(RAISED, numerator)}⁄${setIn(LOWERED, denominator)}`);
  return `${sign}${whole === 0 && fraction !== '' ? '' : whole}${fraction} in`;
}
