import { seamsNamed } from '../piece/index.ts';
import { type Check, type Level, tell } from './check.ts';
import { placeOfSeam, type Rule } from './look.ts';
import { SLACK } from './tolerance.ts';

/** Ease of a woven cap in a child's armhole, mm: up to 1.5 cm in small sizes, 2 cm at 10 to 12 (common practice). */
const MOST_EASE = { small: 15, fromAge: 120, large: 20 } as const;

/** One inch or more of extra length: plan gathers, not ease (a maker's page on setting sleeves). */
const GATHERS_FROM = 25.4;

/**
 * How much longer the cap of a smooth sleeve is than its armhole. Never shorter: the bodice would have to be eased
 * into the sleeve (a patternmaker's page on cap ease).
 */
export const capEase: Rule = (look) => {
  const caps = seamsNamed(look, 'sleeve-cap').filter((seam) => seam.join.kind === 'eased');
  const [first] = caps;
  if (first === undefined) return [];
  const sleeves = 2;
  const ease = caps.reduce((sum, { join }) => sum + (join.kind === 'eased' ? join.ease : 0), 0) / sleeves;
  const large = (look.body.ageMonths ?? 0) >= MOST_EASE.fromAge;
  const most = large ? MOST_EASE.large : MOST_EASE.small;
  const variant =
    ease < -SLACK ? 'short' : ease >= GATHERS_FROM ? 'gathers' : ease > most + SLACK ? 'much' : 'ok';
  const level: Level = ({ short: 'stop', gathers: 'warn', much: 'note', ok: 'ok' } as const)[variant];
  const values = { ease: { mm: Math.abs(ease) }, most: { mm: most } };
  const finding: Check = {
    code: 'cap-ease',
    level,
    measured: { mm: ease },
    allowed: { from: { mm: 0 }, to: { mm: most } },
    where: placeOfSeam(first),
    say: tell(`check.cap-ease.${variant}`, values),
    todo: variant === 'ok' ? null : tell(`check.cap-ease.${variant}.todo`, values),
  };
  return [finding];
};
