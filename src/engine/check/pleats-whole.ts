import type { PleatedJoin, Seam } from '../piece/index.ts';
import { type Check, type Level, tell } from './check.ts';
import { placeOfSeam, type Rule, seamWords } from './look.ts';
import { SLACK } from './tolerance.ts';

/** A ring needs at least two pleats, or there is nothing to set even. */
const FEWEST = 2;

/**
 * Full pleats are as deep as they show, which takes 3 times the finished width (pleat tutorial, 17 Sep 2014). Deeper
 * ones lie over each other; more than twice over makes the waist too thick (common practice, no source).
 */
const DEEPEST_PER_SPACING = 2;

/** A fold shallower than this does not hold its press, mm: 1/4 in (common practice, no source). */
const SHALLOWEST = 6;

/** Pleats are whole, and neither too deep nor too shallow for what shows of them. */
export const pleatsWhole: Rule = (look) =>
  look.garment.seams.flatMap((seam) => (seam.join.kind === 'pleated' ? [checkPleats(seam, seam.join)] : []));

function checkPleats(seam: Seam, join: PleatedJoin): Check {
  const variant = variantOf(join);
  const depth = join.takeUp / 2;
  const values = {
    seam: seamWords(seam),
    pleats: join.pleats,
    spacing: { mm: join.spacing },
    depth: { mm: depth },
    deepest: { mm: DEEPEST_PER_SPACING * join.spacing },
  };
  const found = (level: Level) => ({
    code: 'pleats-whole' as const,
    level,
    where: placeOfSeam(seam),
    say: tell(`check.pleats-whole.${variant}`, values),
  });
  switch (variant) {
    case 'ok':
      return {
        ...found('ok'),
        measured: { count: join.pleats },
        allowed: { from: { count: FEWEST } },
        todo: null,
      };
    case 'broken':
      return {
        ...found('stop'),
        measured: { count: join.pleats },
        allowed: { from: { count: FEWEST } },
        todo: tell('check.pleats-whole.broken.todo', values),
      };
    case 'flat':
      return {
        ...found('stop'),
        measured: { mm: Math.min(join.spacing, join.takeUp) },
        allowed: { from: { mm: 0 } },
        todo: tell('check.pleats-whole.flat.todo', values),
      };
    case 'deep':
      return {
        ...found('warn'),
        measured: { mm: depth },
        allowed: { to: { mm: DEEPEST_PER_SPACING * join.spacing } },
        todo: tell('check.pleats-whole.deep.todo', values),
      };
    case 'shallow':
      return {
        ...found('warn'),
        measured: { mm: depth },
        allowed: { from: { mm: SHALLOWEST } },
        todo: tell('check.pleats-whole.shallow.todo', values),
      };
  }
}

function variantOf({ pleats, spacing, takeUp }: PleatedJoin): 'ok' | 'broken' | 'flat' | 'deep' | 'shallow' {
  if (!Number.isInteger(pleats) || pleats < FEWEST) return 'broken';
  if (spacing <= 0 || takeUp <= 0) return 'flat';
  if (takeUp / 2 > DEEPEST_PER_SPACING * spacing + SLACK) return 'deep';
  return takeUp / 2 < SHALLOWEST - SLACK ? 'shallow' : 'ok';
}
