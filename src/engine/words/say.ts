import { formatLength, type UnitSystem } from '../units/index.ts';
import { en } from './en/index.ts';

/** A key of the core catalogue. Design steps bring words of their own, see `Catalogue`. */
export type WordKey = keyof typeof en;

/**
 * What fills a placeholder: text, a number, a length shown in the maker's units, another word of the catalogue,
 * or a whole saying with its own values.
 */
export type WordValue = string | number | { readonly mm: number } | { readonly word: string } | Saying;
export type WordValues = Readonly<Record<string, WordValue>>;

/** A sentence not yet spoken: a key and the facts that fill it. */
export interface Saying {
  readonly key: string;
  readonly values: WordValues;
}

/** Sentences by key: the core's, with those of the design steps laid over it. */
export type Catalogue = Readonly<Record<string, string>>;

/** Speaks a sentence of the core catalogue. */
export function say(key: WordKey, values: WordValues, units: UnitSystem): string {
  return speak({ key, values }, units, en);
}

/**
 * Speaks any saying. Throws when the catalogue has no such key or a placeholder has no value: both are bugs in
 * the caller, never something that the maker entered.
 */
export function speak(saying: Saying, units: UnitSystem, catalogue: Catalogue = en): string {
  const sentence = catalogue[saying.key];
  if (sentence === undefined) throw new Error(`No words for "${saying.key}"`);
  return sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = saying.values[name];
    if (value === undefined) throw new Error(`No value for {${name}} in "${sentence}"`);
    return spoken(value, units, catalogue);
  });
}

function spoken(value: WordValue, units: UnitSystem, catalogue: Catalogue): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(Math.round(value * 1000) / 1000);
  if ('word' in value) return speak({ key: value.word, values: {} }, units, catalogue);
  if ('key' in value) return speak(value, units, catalogue);
  return formatLength(value.mm, units);
}
