import { type Closing, closingOverlap } from '../piece/index.ts';
import { tell } from './check.ts';
import { bodiceOf, edgesOfKind, girthOf, type Look, placeOf, type Rule } from './look.ts';
import { SLACK } from './tolerance.ts';

/**
 * Neckline and opening together must let the head through: slit >= (head - neckline) / 2, and for a head of 51 and
 * a neckline of 28 cm, where that is 11.5 cm, 13 to 15 cm are used (exam solution page on plackets). So the ring
 * that opens wants 2 x 1.5 cm more than the head. Without an opening the finished neckline must be longer than the
 * head (teaching blog, kids' bodice and pinafore).
 */
const HEAD_EASE = 30;

const neckEdges = (look: Look) => edgesOfKind(bodiceOf(look), 'neck');

/** How many slits run out from the neckline: one down the back, or one along each shoulder. */
const slitsOf = (closing: Closing | null): number =>
  closing === null ? 0 : closing.kind === 'shoulder-studs' ? 2 : 1;

export const headPasses: Rule = (look) => {
  const edges = neckEdges(look);
  if (edges.length === 0) return [];
  const neckline = girthOf(look, edges);
  const { closing } = look.garment;
  const slits = slitsOf(closing);
  const head = look.body.values.headGirth.mm;
  const ring = neckline + 2 * slits * (closing?.openingLength ?? 0);
  const wanted = closing === null ? head : head + HEAD_EASE;
  const way = closing === null ? 'closed' : 'open';
  const level = ring < head - SLACK ? 'stop' : closing !== null && ring < wanted - SLACK ? 'warn' : 'ok';
  const values = {
    neckline: { mm: neckline },
    ring: { mm: ring },
    head: { mm: head },
    longer: { mm: (wanted - ring) / (2 * Math.max(slits, 1)) },
    wider: { mm: wanted - ring },
  };
  return [
    {
      code: 'head-passes',
      level,
      measured: { mm: ring },
      allowed: { from: { mm: wanted } },
      where: placeOf(edges),
      say:
        level === 'warn'
          ? tell('check.head-passes.open.warn', values)
          : tell(`check.head-passes.${way}.${level}`, values),
      todo: level === 'ok' ? null : tell(`check.head-passes.${way}.todo`, values),
    },
  ];
};

/** A neckline that is shorter than the neck base cannot lie flat; drawn necklines come out slightly longer. */
export const neckClears: Rule = (look) => {
  const edges = neckEdges(look);
  if (edges.length === 0) return [];
  const neckline = girthOf(look, edges) - closingOverlap(look.garment.closing);
  const neck = look.body.values.neckBaseGirth.mm;
  const level = neckline < neck - SLACK ? 'warn' : 'ok';
  const values = { neckline: { mm: neckline }, neck: { mm: neck }, short: { mm: neck - neckline } };
  return [
    {
      code: 'neck-clears',
      level,
      measured: { mm: neckline },
      allowed: { from: { mm: neck } },
      where: placeOf(edges),
      say: tell(`check.neck-clears.${level}`, values),
      todo: level === 'ok' ? null : tell('check.neck-clears.todo', values),
    },
  ];
};
