import { pathEnd, pathStart } from '../geometry/index.ts';
import { closingOverlap } from '../piece/index.ts';
import { bodyGirthAt } from './body-level.ts';
import { type Check, type CheckPlace, type Level, tell } from './check.ts';
import { widthAtLevel } from './level-width.ts';
import {
  bodiceOf,
  copiesOf,
  edgesOfKind,
  girthOf,
  type Look,
  type PieceEdge,
  placeOf,
  type Rule,
  runsOverArm,
  withYokes,
} from './look.ts';
import { SLACK } from './tolerance.ts';
import { type Underarm, underarms } from './underarm.ts';

/** Flower-girl shops advise never to leave less than 2 cm round the body. */
const LEAST_EASE = 20;

/** Just below the underarm, where the halves reach their full width, mm. */
const BELOW_UNDERARM = 0.01;

/**
 * Finished girth at the underarm less the chest, within the maker's bounds. Where the shoulder runs on over the arm
 * the side seam begins lower down, and the girth is compared with the body there.
 */
export const chestEase: Rule = (look) => {
  const found = underarms(look);
  const [first] = found;
  if (first === undefined) return [];
  const girth = found.reduce((sum, underarm) => sum + girthAt(look, underarm), 0);
  const body = runsOverArm(look) ? bodyGirthAt(look.body, first.at.y) : look.body.values.chestGirth.mm;
  const where = {
    pieces: found.map(({ piece }) => piece.id),
    edges: found.map(({ piece, edge }) => ({ piece: piece.id, edge })),
  };
  return [easeCheck('chest-ease', girth, body, look.bounds.chestEase, where)];
};

/** From centre to side at the underarm, over all copies; a cap that hangs lower stays out of it. */
const girthAt = (look: Look, { piece, at }: Underarm): number =>
  withYokes(look, piece)
    .filter((part) => part.layer === 'shell')
    .reduce((sum, part) => sum + copiesOf(part) * widthAtLevel(part, at.y + BELOW_UNDERARM, at.x), 0);

/** Finished waist seam less the body at its level, within the maker's bounds; the seam may lie above the waist. */
export const waistEase: Rule = (look) => {
  const bodice = bodiceOf(look);
  const edges = edgesOfKind(bodice, 'waist');
  if (edges.length === 0) return [];
  const ends = (all: readonly PieceEdge[]): readonly number[] =>
    all.flatMap(({ edge }) => [pathStart(edge.path).y, pathEnd(edge.path).y]);
  const sides = ends(edgesOfKind(bodice, 'side'));
  // Cut without side seams, the waist still lies highest where they would be.
  const foot = sides.length === 0 ? Math.min(...ends(edges)) : Math.max(...sides);
  const body = bodyGirthAt(look.body, foot);
  const girth = girthOf(look, edges) - closingOverlap(look.garment.closing);
  return [easeCheck('waist-ease', girth, body, look.bounds.waistEase, placeOf(edges))];
};

function easeCheck(
  code: 'chest-ease' | 'waist-ease',
  girth: number,
  body: number,
  [least, most]: readonly [number, number],
  where: CheckPlace,
): Check {
  const ease = girth - body;
  const variant =
    ease < LEAST_EASE - SLACK ? 'stop' : ease < least - SLACK ? 'tight' : ease > most + SLACK ? 'wide' : 'ok';
  const level: Level = variant === 'tight' || variant === 'wide' ? 'warn' : variant;
  const values = {
    girth: { mm: girth },
    body: { mm: body },
    ease: { mm: ease },
    least: { mm: Math.max(least, LEAST_EASE) },
    most: { mm: most },
    short: { mm: Math.max(least, LEAST_EASE) - ease },
    over: { mm: ease - most },
  };
  return {
    code,
    level,
    measured: { mm: ease },
    allowed: { from: { mm: Math.max(least, LEAST_EASE) }, to: { mm: most } },
    where,
    say: tell(`check.${code}.${variant}`, values),
    todo:
      variant === 'ok'
        ? null
        : tell(variant === 'wide' ? 'check.ease.take-in' : 'check.ease.let-out', values),
  };
}
