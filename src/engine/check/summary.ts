import type { Check, Level } from './check.ts';

/** How many findings there are of each level. */
export function summarise(checks: readonly Check[]): Readonly<Record<Level, number>> {
  const counts = { ok: 0, note: 0, warn: 0, stop: 0 };
  for (const { level } of checks) counts[level]++;
  return counts;
}
