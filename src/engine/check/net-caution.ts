import { tell } from './check.ts';
import type { Rule } from './look.ts';

/**
 * Light net burns fast, whatever the law says of it. In the United States no flammability test is asked of cloth made
 * wholly of nylon or polyester, nor of plain cloth from 2.6 oz/yd2 up; light silk, rayon or cotton net is not exempt
 * (16 CFR 1610.1(d), 2020). No legal advice: the caution defers to the rules of the place where she sells.
 */
export const netCaution: Rule = ({ garment, clothKinds = {} }) => {
  const pieces = garment.pieces.filter((piece) => clothKinds[piece.cloth] === 'net').map((piece) => piece.id);
  if (pieces.length === 0) return [];
  return [
    {
      code: 'net-caution',
      level: 'note',
      measured: null,
      allowed: null,
      where: { pieces, edges: [] },
      say: tell('check.net-caution.note'),
      todo: tell('check.net-caution.todo'),
    },
  ];
};
