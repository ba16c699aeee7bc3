import { edgeAt, pieceAt, seamsNamed } from '../piece/index.ts';
import { tell } from './check.ts';
import { placeOfSeam, type Rule } from './look.ts';
import { SLACK } from './tolerance.ts';

/**
 * A sleeveless bodice that is bagged with its lining is turned through the shoulders: the back must pass through the
 * tunnel, which takes about 4 cm finished (common practice; a maker's page of 15 Aug 2011 tells of narrow shoulders
 * that would not turn).
 */
const TURNS_THROUGH = 40;

export const shoulderNarrow: Rule = (look) => {
  const sleeves = look.garment.pieces.some((piece) => piece.edges.some((edge) => edge.kind === 'cap'));
  if (sleeves || seamsNamed(look, 'armhole-lining').length === 0) return [];
  return seamsNamed(look, 'shoulder').flatMap((seam) => {
    if (seam.a.some((at) => pieceAt(look, at).layer === 'lining')) return [];
    const width = seam.a.reduce((sum, at) => sum + look.lengthOf(edgeAt(look, at).path), 0);
    const narrow = width < TURNS_THROUGH - SLACK;
    const values = { width: { mm: width }, least: { mm: TURNS_THROUGH } };
    return [
      {
        code: 'shoulder-narrow',
        level: narrow ? 'note' : 'ok',
        measured: { mm: width },
        allowed: { from: { mm: TURNS_THROUGH } },
        where: placeOfSeam(seam),
        say: tell(narrow ? 'check.shoulder-narrow.note' : 'check.shoulder-narrow.ok', values),
        todo: narrow ? tell('check.shoulder-narrow.todo', values) : null,
      },
    ];
  });
};
