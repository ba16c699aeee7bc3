import { completeBody } from '../src/engine/body/index.ts';
import { type Check, checkGarment } from '../src/engine/check/index.ts';
import { outlineArea, outlineSelfCrossings } from '../src/engine/geometry/index.ts';
import { outlineOf } from '../src/engine/piece/index.ts';
import { dressOf, type Wish } from './dress-of.ts';

/** All that the checks find in the dress of a wish. */
export function checksOf(wish: Wish): readonly Check[] {
  const completed = completeBody({ ageMonths: wish.ageMonths ?? 60, measured: wish.measured ?? {} });
  if (!completed.ok) throw new Error(JSON.stringify(completed.problems));
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  return checkGarment({ garment: dressOf(wish), body: completed.body, bounds });
}

/** What keeps the pieces of a dress from fitting together: seams, notches, corners and outlines. */
export function faultsOf(wish: Wish): readonly string[] {
  const told = checksOf(wish)
    .filter((check) => FITTING.has(check.code) && (check.level === 'warn' || check.level === 'stop'))
    .map((check) => `${check.say.key} ${JSON.stringify(check.say.values)}`);
  const drawn = dressOf(wish).pieces.flatMap((piece) => {
    const outline = outlineOf(piece);
    if (outlineSelfCrossings(outline).length > 0) return [`${piece.id} crosses itself`];
    return outlineArea(outline) > 0 ? [] : [`${piece.id} lies inside out`];
  });
  return [...told, ...drawn];
}

const FITTING: ReadonlySet<string> = new Set([
  'outline-closed',
  'outline-simple',
  'seam-lengths',
  'corners-run-smooth',
  'notches-meet',
  'facing-matches',
  'collar-matches',
]);
