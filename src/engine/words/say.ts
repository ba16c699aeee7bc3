import { formatLength, type UnitSystem } from '../units/index.ts';
import { en } from './en/index.ts';

export type WordKey = keyof typeof en;

/** What fills a placeholder: text as it is, a number, or a length that is shown in the maker's units. */
export type WordValue = string | number | { readonly mm: number };
export type WordValues = Readonly<Record<string, WordValue>>;

/** A sentence not yet spoken: a key and the facts that fill it. */
export interface Saying {
  readonly key: WordKey;
  readonly values: WordValues;
}

/**
 * Speaks a sentence of the catalogue. Throws when a placeholder has no value: that is a bug in the caller,
 * not in what the maker entered.
 */
export function say(key: WordKey, values: WordValues, units: UnitSystem): string {
  return fill(en[key], values, units);
}

/** Fills the `{placeholders}` of a sentence that does not come from the catalogue (a design step's own words). */
export function fill(sentence: string, values: WordValues, units: UnitSystem): string {
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`No value for {${name}} in "${sentence}"`);
    return spoken(value, units);
  });
}

function spoken(value: WordValue, units: UnitSystem): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(Math.round(value * 1000) / 1000);
  return formatLength(value.mm, units);
}
