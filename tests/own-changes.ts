import { completeBody } from '../src/engine/body/index.ts';
import { type Check, checkGarment } from '../src/engine/check/index.ts';
import { makeCutPieces } from '../src/engine/cut/index.ts';
import { tell } from '../src/engine/design/index.ts';
import type { Garment } from '../src/engine/piece/index.ts';
import { tryDress, type Wish } from './dress-of.ts';

/** The ages at which every change of the maker's is tried, months. */
export const AGES = [6, 12, 24, 48, 84, 120, 144];
export type Steps = NonNullable<Wish['steps']>;

const FITS = new Set(['outline-closed', 'outline-simple', 'seam-lengths', 'notches-meet']);

/** What the checks of the drawing and the seams have against a garment. */
export const faults = (garment: Garment, ageMonths = 60): readonly string[] =>
  found(garment, ageMonths)
    .filter(({ code }) => FITS.has(code))
    .map(({ say }) => tell(say, 'cm'));

/** All that the checks have against a garment, each sentence once. */
export const findings = (garment: Garment, ageMonths: number): readonly string[] =>
  [...new Set(found(garment, ageMonths).map(({ say }) => tell(say, 'cm')))].sort();

function found(garment: Garment, ageMonths: number): readonly Check[] {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('The body is plausible.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 160] } as const;
  return checkGarment({ garment, body: completed.body, bounds }).filter(
    ({ level }) => level === 'stop' || level === 'warn',
  );
}

/** What is added at each edge of a piece when it is cut, mm. */
export function allowancesOf(garment: Garment, id: string): Readonly<Record<string, number>> {
  const label = () => ({ title: '', cutting: '', child: '', size: '', date: '' });
  return makeCutPieces(garment, { label }).find(({ piece }) => piece.id === id)?.allowances ?? {};
}

/** The sentences with which changes are left out. */
export function leftOut(steps: Steps): string {
  const dress = tryDress({ steps });
  if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
  return dress.skipped.map(({ problem }) => tell(problem, 'cm')).join('\n');
}
