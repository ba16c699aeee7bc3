import { inches } from '../units/index.ts';
import { tell } from './check.ts';
import { type Rule, runsOverArm } from './look.ts';
import { SLACK } from './tolerance.ts';
import { underarms } from './underarm.ts';

/**
 * Underarm level below the neck points: the published drafts give 14 cm ("eighth of the chest": chest/8 + 2 1/2 in)
 * to 17.5 cm (Bunka-style, from memory; grows by 4/15 of the chest) for a chest of 60. For another chest both ends
 * are taken in proportion and by their own draft, and the wider range counts, since the sources disagree.
 */
const CHEST = 600;
const least = (chest: number): number => Math.min((140 * chest) / CHEST, chest / 8 + inches(2.5));
const most = (chest: number): number => Math.max((175 * chest) / CHEST, 175 + ((chest - CHEST) * 4) / 15);

/** A shoulder that runs on over the arm has its underarm 1.5 to 3 cm lower on a child (common practice, no source). */
const LOWERED_BY = 30;

export const armholeDepth: Rule = (look) => {
  const [front] = underarms(look);
  if (front === undefined) return [];
  const chest = look.body.values.chestGirth.mm;
  const onArm = runsOverArm(look);
  const [from, to] = [least(chest), most(chest) + (onArm ? LOWERED_BY : 0)];
  const depth = front.at.y;
  const variant = depth < from - SLACK ? 'high' : depth > to + SLACK ? 'low' : 'ok';
  const values = { depth: { mm: depth }, least: { mm: from }, most: { mm: to } };
  return [
    {
      code: 'armhole-depth',
      // Over the arm a low underarm is part of the look, and the trade only says what it costs.
      level: variant === 'ok' ? 'ok' : onArm && variant === 'low' ? 'note' : 'warn',
      measured: { mm: depth },
      allowed: { from: { mm: from }, to: { mm: to } },
      where: { pieces: [front.piece.id], edges: [{ piece: front.piece.id, edge: front.edge }], at: front.at },
      say: tell(`check.armhole-depth.${variant}`, values),
      todo: variant === 'ok' ? null : tell(`check.armhole-depth.${variant}.todo`, values),
    },
  ];
};
