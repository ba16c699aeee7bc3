import type { Check } from '../../../engine/check/index.ts';
import type { Finding } from '../../../engine/order/index.ts';
import { formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import { type Saying, say } from '../../../engine/words/index.ts';

type Quantity = NonNullable<Check['measured']>;

function quantityText(quantity: Quantity, units: UnitSystem): string {
  if ('mm' in quantity) return formatLength(quantity.mm, units);
  if ('degrees' in quantity)
    return say('page.fit.degrees', { degrees: Math.round(quantity.degrees * 10) / 10 }, units);
  return String(Math.round(('ratio' in quantity ? quantity.ratio : quantity.count) * 100) / 100);
}

/** What was measured and what is allowed, in one line; empty where a check measures nothing. */
export function measuredText(finding: Finding, units: UnitSystem): string {
  if (!('measured' in finding)) return '';
  const { measured, allowed } = finding as Check;
  const told = (quantity: Quantity): string => quantityText(quantity, units);
  const from = allowed?.from;
  const to = allowed?.to;
  const limits =
    from !== undefined && to !== undefined
      ? say('page.fit.allowed.between', { from: told(from), to: told(to) }, units)
      : from !== undefined
        ? say('page.fit.allowed.from', { from: told(from) }, units)
        : to !== undefined
          ? say('page.fit.allowed.to', { to: told(to) }, units)
          : '';
  const is = measured === null ? '' : say('page.fit.measured', { measured: told(measured) }, units);
  return [is, limits].filter((text) => text !== '').join(' ');
}

/** Codes of what is a caution about safety and law, not a matter of fit. */
const CAUTIONS: readonly string[] = [
  'net-caution',
  'ties-and-bows',
  'small-parts',
] satisfies readonly Check['code'][];

export const isCaution = ({ code, level }: Finding): boolean => level !== 'ok' && CAUTIONS.includes(code);

/** A sentence of the order room without the place in the file, which the page shows in its own way. */
export function withoutPath(saying: Saying): Saying {
  const { sentence } = saying.values;
  return typeof sentence === 'object' && 'key' in sentence ? sentence : saying;
}
