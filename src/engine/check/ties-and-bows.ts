import type { Body } from '../body/index.ts';
import { type HangingTrim, skirtDepth, type Trim, type TrimPlace } from '../piece/index.ts';
import type { WordKey } from '../words/index.ts';
import { type Check, type Level, tell } from './check.ts';
import type { Look, Rule } from './look.ts';
import { SLACK } from './tolerance.ts';

/**
 * Cords, ties, sashes and bows by age. EN 14682 itself is sold; the figures come from public summaries, most of its
 * 2007 edition, and are cautious. Young: under 7 years and up to 134 cm tall; older: under 14. Celebratory clothing
 * that is worn at ceremonies or festivals for a limited time and under supervision is outside the standard (2014
 * edition, scope, item h), so nearly every finding is a warning and the maker decides. No legal advice.
 */
const YOUNG_MONTHS = 7 * 12;
const YOUNG_HEIGHT = 1340;
const OLDER_MONTHS = 14 * 12;

/** Free ends on older children at neck, nape and shoulder, mm (consumer office of Finland; summaries of 2007). */
const NECK_END = 75;
/** Free ends at chest and waist, and tails of a bow that is sewn on, mm (summaries of 2007; of the 2014 changes). */
const LOOSE_END = 140;
/** A tied belt or sash, undone, from the place where it is tied, mm (trade summary of 2007; a retail rule alike). */
const SASH_END = 360;

const AT_NECK: readonly TrimPlace[] = ['neck', 'nape', 'shoulder'];

type Variant =
  | 'neck-tie'
  | 'neck-bow'
  | 'neck-long'
  | 'back-cord'
  | 'long'
  | 'sash-long'
  | 'below-hem'
  | 'ok';

const LEVELS = {
  'neck-tie': 'stop',
  'neck-bow': 'warn',
  'neck-long': 'warn',
  'back-cord': 'warn',
  long: 'warn',
  'sash-long': 'warn',
  'below-hem': 'warn',
  ok: 'ok',
} as const satisfies Readonly<Record<Variant, Level>>;

/** One finding for each limit that a trim goes beyond; one that all is well for a trim that keeps them. */
export const tiesAndBows: Rule = (look) => {
  const age = ageBand(look.body);
  if (age === 'grown') return [];
  return look.garment.trims.filter(hangs).flatMap((trim) => {
    const beyond = age === 'young' ? youngBeyond(look, trim) : olderBeyond(look, trim);
    return (beyond.length === 0 ? [['ok', 0] as const] : beyond).map(([variant, most]) =>
      finding(look, trim, variant, most),
    );
  });
};

const hangs = (trim: Trim): trim is HangingTrim => trim.kind !== 'buttons' && trim.kind !== 'studs';

/** Without an age the height tells; the larger of two doubts is the safer one. */
function ageBand({ ageMonths, values }: Body): 'young' | 'older' | 'grown' {
  if (ageMonths === null) return values.height.mm <= YOUNG_HEIGHT ? 'young' : 'older';
  if (ageMonths < YOUNG_MONTHS) return 'young';
  return ageMonths < OLDER_MONTHS ? 'older' : 'grown';
}

type Beyond = readonly (readonly [variant: Variant, most: number])[];

function youngBeyond(look: Look, trim: HangingTrim): Beyond {
  if (!AT_NECK.includes(trim.place)) return elsewhereBeyond(look, trim);
  if (trim.kind === 'tied-bow' || trim.kind === 'sewn-bow') return trim.tail > 0 ? [['neck-bow', 0]] : [];
  return [['neck-tie', 0]];
}

function olderBeyond(look: Look, trim: HangingTrim): Beyond {
  if (!AT_NECK.includes(trim.place)) return elsewhereBeyond(look, trim);
  return trim.tail > NECK_END + SLACK ? [['neck-long', NECK_END]] : [];
}

function elsewhereBeyond(look: Look, trim: HangingTrim): Beyond {
  switch (trim.kind) {
    case 'lacing':
      return [['back-cord', 0], ...(trim.tail > LOOSE_END + SLACK ? [['long', LOOSE_END] as const] : [])];
    case 'tied-bow':
    case 'sewn-bow':
      return trim.tail > LOOSE_END + SLACK ? [['long', LOOSE_END]] : [];
    case 'sash':
    case 'ties': {
      const hem = skirtDepth(look.garment);
      return [
        ...(trim.tail > SASH_END + SLACK ? [['sash-long', SASH_END] as const] : []),
        ...(hem !== null && trim.tail > hem + SLACK ? [['below-hem', hem] as const] : []),
      ];
    }
  }
}

function finding(look: Look, trim: HangingTrim, variant: Variant, most: number): Check {
  const values = {
    trim: { word: `check.trim.${trim.kind}` satisfies WordKey },
    place: { word: `check.trim-place.${trim.place}` satisfies WordKey },
    tail: { mm: trim.tail },
    most: { mm: most },
  };
  const there = new Set(look.garment.pieces.map((piece) => piece.id));
  return {
    code: 'ties-and-bows',
    level: LEVELS[variant],
    measured: { mm: trim.tail },
    allowed: variant === 'ok' ? null : { to: { mm: most } },
    where: { pieces: trim.pieces.filter((id) => there.has(id)), edges: [] },
    say: tell(`check.ties-and-bows.${variant}`, values),
    todo: variant === 'ok' ? null : tell(`check.ties-and-bows.${variant}.todo`, values),
  };
}
