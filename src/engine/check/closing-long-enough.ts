import { type Closing, opensBack, type ZipClosing } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { type Check, type CheckPlace, type Level, tell } from './check.ts';
import {
  bodiceOf,
  edgesOfKind,
  girthOf,
  type Look,
  type PieceEdge,
  placeOf,
  type Rule,
  withYokes,
} from './look.ts';
import { SLACK, TRADE_FORGIVES } from './tolerance.ts';

/** A concealed zip loses about 1 1/2 in of its named length once sewn: 8 in gave 6 1/2 (page on zips). */
const CONCEALED_LOSES = inches(1.5);

/** With a fitted waist the zip ends 8 to 12 cm below the waist seam (common practice, no source). */
const BELOW_WAIST = [80, 120] as const;

/**
 * Whether the wearer gets in at the waist, and whether the zip to buy opens as far as the dress does. Rule (our
 * own, from common practice): the waist, opened by twice what the opening reaches below it, must let through the
 * chest (dress over the head) or the hips (stepped into), whichever is smaller. Shoulders that open do not help
 * the waist.
 */
export const closingLongEnough: Rule = (look) => {
  const waist = edgesOfKind(bodiceOf(look), 'waist');
  const { closing } = look.garment;
  const zip =
    closing !== null && 'zipLength' in closing ? [zipReaches(closing, placeOf(closingEdges(look)))] : [];
  return waist.length === 0 ? zip : [waistOpens(look, waist), ...zip];
};

const closingEdges = (look: Look): readonly PieceEdge[] => edgesOfKind(bodiceOf(look), 'closing');

/** From neck to waist seam along the opening, mm. */
function neckToWaist(look: Look): number {
  const halves = new Set(closingEdges(look).flatMap(({ piece }) => withYokes(look, piece)));
  const bodice = bodiceOf(look).filter((piece) => halves.has(piece));
  return edgesOfKind(bodice, 'closing', 'centre').reduce(
    (sum, { edge }) => sum + look.lengthOf(edge.path),
    0,
  );
}

function waistOpens(look: Look, edges: readonly PieceEdge[]): Check {
  const { body, garment } = look;
  const closing = opensBack(garment.closing) ? garment.closing : null;
  const below = closing === null ? 0 : closing.openingLength - neckToWaist(look);
  const through = Math.min(body.values.chestGirth.mm, body.values.hipGirth.mm);
  // An opening that reaches the lower edge parts the whole waist: the hem, or the waist itself without a skirt.
  const parts =
    closing !== null &&
    below >= -SLACK &&
    (closing.toHem === true || !garment.pieces.some((piece) => piece.cloth === 'skirt'));
  const ring = girthOf(look, edges) + 2 * Math.max(below, 0);
  const short = Math.max(through - ring, 0);
  const variant = waistVariant(closing, parts, short, below);
  const values = {
    ring: { mm: ring },
    through: { mm: through },
    below: { mm: Math.max(below, 0) },
    longer: {
      mm: Math.max(short / 2, BELOW_WAIST[0]) - below,
    },
    least: { mm: BELOW_WAIST[0] },
    most: { mm: BELOW_WAIST[1] },
  };
  const level = LEVELS[variant];
  return {
    code: 'closing-long-enough',
    level,
    measured: { mm: level === 'warn' ? below : ring },
    allowed: { from: { mm: level === 'warn' ? BELOW_WAIST[0] : through } },
    where: placeOf([...edges, ...closingEdges(look)]),
    say: tell(`check.closing-long-enough.${variant}`, values),
    todo:
      level === 'ok'
        ? null
        : tell(
            closing === null ? 'check.closing-long-enough.add' : 'check.closing-long-enough.lengthen',
            values,
          ),
  };
}

const LEVELS = {
  parts: 'ok',
  ok: 'ok',
  warn: 'warn',
  stop: 'stop',
  'none.ok': 'ok',
  'none.stop': 'stop',
} as const satisfies Readonly<Record<string, Level>>;

function waistVariant(
  closing: Closing | null,
  parts: boolean,
  short: number,
  below: number,
): keyof typeof LEVELS {
  if (closing === null) return short > SLACK ? 'none.stop' : 'none.ok';
  if (parts) return 'parts';
  if (short > SLACK) return 'stop';
  return below < BELOW_WAIST[0] - SLACK ? 'warn' : 'ok';
}

/** How far a zip of this named length opens once it is sewn in, mm. */
const usable = ({ kind, zipLength }: ZipClosing): number =>
  kind === 'concealed-zip' ? zipLength - CONCEALED_LOSES : zipLength;

function zipReaches(closing: ZipClosing, where: CheckPlace): Check {
  const opens = usable(closing);
  const short = closing.openingLength - opens;
  const ok = short <= TRADE_FORGIVES + SLACK;
  const values = {
    zip: { mm: closing.zipLength },
    opens: { mm: opens },
    opening: { mm: closing.openingLength },
    wanted: { mm: closing.zipLength + short },
  };
  return {
    code: 'closing-long-enough',
    level: ok ? 'ok' : 'warn',
    measured: { mm: opens },
    allowed: { from: { mm: closing.openingLength } },
    where,
    say: tell(ok ? 'check.closing-long-enough.zip.ok' : 'check.closing-long-enough.zip.short', values),
    todo: ok ? null : tell('check.closing-long-enough.zip.todo', values),
  };
}
