import { completeBody } from '../src/engine/body/index.ts';
import { checkGarment } from '../src/engine/check/index.ts';
import { tell } from '../src/engine/design/index.ts';
import type { Garment } from '../src/engine/piece/index.ts';

/** What the checks find wrong with the drawing and the seams of a dress. */
export function faultsOf(garment: Garment, ageMonths = 60): readonly string[] {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('No such child.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 160] } as const;
  return checkGarment({ garment, body: completed.body, bounds })
    .filter((check) => DRAWN.has(check.code) && check.level !== 'ok' && check.level !== 'note')
    .map((check) => tell(check.say, 'cm'));
}

const DRAWN: ReadonlySet<string> = new Set([
  'seam-lengths',
  'notches-meet',
  'corners-run-smooth',
  'outline-closed',
  'outline-simple',
]);
