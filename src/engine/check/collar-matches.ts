import { type EdgeKind, partsNeckAtBack, pieceAt, type Seam, seamsNamed } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, sewnTimes, sideLength, titleOf } from './look.ts';
import { SEAM_AGREES, SLACK } from './tolerance.ts';

/**
 * The neck edge of a collar is as long as the neck or a little shorter, so that the collar rolls over its seam; 12 mm
 * over the whole neck is the most that can be eased in (common practice, no source). Never longer: it would stand off.
 */
const MOST_SHORTER = 12;

/** A collar fits its neck and parts where the dress does. */
export const collarMatches: Rule = (look) =>
  seamsNamed(look, 'collar')
    .filter((seam) => seam.a.some((at) => !seam.b.some((other) => other.piece === at.piece)))
    .flatMap((seam) => [fits(look, seam), ...partsWithBack(look, seam)]);

function fits(look: Look, seam: Seam): Check {
  const times = sewnTimes(look, seam);
  const neck = sideLength(look, seam.a) / times - (seam.bareEnd ?? 0);
  const collar = sideLength(look, seam.b) / times;
  const most = MOST_SHORTER / times;
  const shorter = neck - collar;
  const variant =
    shorter < -SEAM_AGREES - SLACK ? 'long' : shorter > most + SEAM_AGREES + SLACK ? 'short' : 'ok';
  const values = {
    neck: { mm: neck },
    collar: { mm: collar },
    off: { mm: Math.abs(shorter) },
    most: { mm: most },
  };
  return {
    code: 'collar-matches',
    level: ({ ok: 'ok', short: 'warn', long: 'stop' } as const)[variant],
    measured: { mm: collar },
    allowed: { from: { mm: neck - most }, to: { mm: neck } },
    where: placeOfSeam(seam),
    say: tell(`check.collar-matches.${variant}`, values),
    todo: variant === 'ok' ? null : tell(`check.collar-matches.${variant}.todo`, values),
  };
}

/** What the back end of a collar is when the collar runs on over the centre back. */
const ACROSS: readonly EdgeKind[] = ['fold', 'join'];

/** A dress that opens at the back of the neck can't be put on when its collar runs across the opening. */
function partsWithBack(look: Look, seam: Seam): readonly Check[] {
  if (!partsNeckAtBack(look.garment.closing)) return [];
  const [collar] = seam.b.map((at) => pieceAt(look, at));
  const back = collar?.edges.find((edge) => edge.name === 'back' && ACROSS.includes(edge.kind));
  if (collar === undefined || back === undefined) return [];
  return [
    {
      code: 'collar-matches',
      level: 'stop',
      measured: null,
      allowed: null,
      where: { pieces: [collar.id], edges: [{ piece: collar.id, edge: back.name }] },
      say: tell('check.collar-matches.closed', { collar: titleOf(collar) }),
      todo: tell('check.collar-matches.closed.todo', { collar: titleOf(collar) }),
    },
  ];
}
