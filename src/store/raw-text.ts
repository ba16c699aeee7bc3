/**
 * Any stored value as JSON text, for saving what can't be read: the store can hold what JSON can't (circles, dates,
 * big integers, bytes), and the rest must still come out.
 */
export function rawText(value: unknown): string {
  return JSON.stringify(plain(value, []), null, 2) ?? 'null';
}

function plain(value: unknown, above: readonly unknown[]): unknown {
  if (typeof value === 'bigint') return String(value);
  if (typeof value === 'number' && !Number.isFinite(value)) return String(value);
  if (typeof value !== 'object' || value === null) return value;
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? 'no date' : value.toISOString();
  if (above.includes(value)) return 'the same again';
  if (above.length > DEEPEST) return 'deeper than can be told';
  const inside = [...above, value];
  if (Array.isArray(value)) return value.map((item) => plain(item, inside));
  if (value instanceof Map || value instanceof Set) return plain([...value], inside);
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, plain(item, inside)]));
}

const DEEPEST = 100;
