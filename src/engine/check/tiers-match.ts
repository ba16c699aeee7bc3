import { edgeAt, type Seam, type SeamEdge, seamsNamed } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, seamWords, sideLength } from './look.ts';
import { SLACK, TRADE_FORGIVES } from './tolerance.ts';

/**
 * The side seams of a tier meet those of the tier above once it is gathered, so that front and back are equally full
 * (our own rule; how much is forgiven is what a sewn seam forgives).
 */
export const tiersMatch: Rule = (look) => seamsNamed(look, 'tier').map((seam) => checkTier(look, seam));

function checkTier(look: Look, seam: Seam): Check {
  const [above, below] = [sideLength(look, seam.a), sideLength(look, seam.b)];
  const [upper, lower] = [halfChanges(look, seam.a), halfChanges(look, seam.b)];
  const gathered = lower.map((at) => (at / below) * above);
  const off =
    upper.length === gathered.length
      ? Math.max(0, ...upper.map((at, i) => Math.abs(at - (gathered[i] ?? 0))))
      : above / 2;
  const ok = off <= TRADE_FORGIVES + SLACK;
  const values = {
    seam: seamWords(seam),
    above: { mm: above },
    below: { mm: below },
    ratio: Math.round((below / above) * 100) / 100,
    off: { mm: off },
  };
  return {
    code: 'tiers-match',
    level: ok ? 'ok' : 'warn',
    measured: { mm: off },
    allowed: { to: { mm: TRADE_FORGIVES } },
    where: placeOfSeam(seam),
    say: tell(ok ? 'check.tiers-match.ok' : 'check.tiers-match.apart', values),
    todo: ok ? null : tell('check.tiers-match.todo', values),
  };
}

/** Where front and back meet along one side of the seam, mm from its start. */
function halfChanges(look: Look, side: readonly SeamEdge[]): readonly number[] {
  let at = 0;
  return side.flatMap((edge, i) => {
    const here = at;
    at += edge.times * look.lengthOf(edgeAt(look, edge).path);
    return i > 0 && side[i - 1]?.piece !== edge.piece ? [here] : [];
  });
}
