import { tell } from './check.ts';
import { bodiceOf, edgesOfKind, type Rule } from './look.ts';
import { SLACK } from './tolerance.ts';
import { underarms } from './underarm.ts';

/**
 * Underarm level below the neck points. The published drafts give 14 to 17.5 cm for a chest of 60: least is the
 * "eighth of the chest" draft (chest/8 + 6.5 cm here), most the growth of the Bunka-style draft (chest x 4/15 + 1.5,
 * from memory). Only a warning: the sources disagree.
 */
const least = (chest: number): number => 140 + (chest - 600) / 8;
const most = (chest: number): number => 175 + ((chest - 600) * 4) / 15;

/** A shoulder that runs on over the arm has its underarm 1.5 to 3 cm lower on a child (common practice, no source). */
const LOWERED_BY = 30;

export const armholeDepth: Rule = (look) => {
  const [front] = underarms(look);
  if (front === undefined) return [];
  const chest = look.body.values.chestGirth.mm;
  const onArm = edgesOfKind(bodiceOf(look), 'sleeve-hem').length > 0;
  const [from, to] = [least(chest), most(chest) + (onArm ? LOWERED_BY : 0)];
  const depth = front.at.y;
  const variant = depth < from - SLACK ? 'high' : depth > to + SLACK ? 'low' : 'ok';
  const values = { depth: { mm: depth }, least: { mm: from }, most: { mm: to } };
  return [
    {
      code: 'armhole-depth',
      level: variant === 'ok' ? 'ok' : 'warn',
      measured: { mm: depth },
      allowed: { from: { mm: from }, to: { mm: to } },
      where: { pieces: [front.piece.id], edges: [{ piece: front.piece.id, edge: front.edge }], at: front.at },
      say: tell(`check.armhole-depth.${variant}`, values),
      todo: variant === 'ok' ? null : tell(`check.armhole-depth.${variant}.todo`, values),
    },
  ];
};
