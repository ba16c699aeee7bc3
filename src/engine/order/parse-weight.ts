import { KG_PER_POUND } from '../body/index.ts';

/** A weight with its unit (`18.5 kg`, `41 lb`), in kg; null where it can't be read. A number alone could be either. */
export function parseWeight(text: string): number | null {
  const found = /^\s*(\d{1,3}(?:[.,]\d{1,3})?)\s*(kg|lbs?)\s*$/i.exec(text);
  const [, number = '', unit = ''] = found ?? [];
  const value = Number(number.replace(',', '.'));
  if (found === null || value === 0) return null;
  return /kg/i.test(unit) ? value : value * KG_PER_POUND;
}
