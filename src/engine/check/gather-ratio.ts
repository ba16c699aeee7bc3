import { type Piece, pieceOf, type Seam } from '../piece/index.ts';
import type { WordKey } from '../words/index.ts';
import { type Check, type ClothKind, type Level, tell } from './check.ts';
import { ANY, FULLNESS, type Fullness, LEAST, type Ratios } from './gather-fullness.ts';
import { type Look, placeOfSeam, type Rule, seamWords } from './look.ts';
import { SLACK } from './tolerance.ts';

/** Whether gathers suit the cloth that is gathered, as far as the order says what it is. */
export const gatherRatio: Rule = (look) =>
  look.garment.seams.flatMap((seam) =>
    seam.join.kind === 'gathered' ? [checkRatio(look, seam, seam.join.ratio)] : [],
  );

function checkRatio(look: Look, seam: Seam, ratio: number): Check {
  const pieces = seam.b.map((use) => pieceOf(look.garment, use.piece));
  const kind = kindOf(look, pieces);
  const fullness = kind === null ? null : FULLNESS[kind];
  const usual = fullness === null ? ANY : usualRatios(look, seam, pieces, fullness);
  const finding = judge(ratio, usual, fullness?.limit ?? ANY[1]);
  const [least, most] = usual;
  const values = {
    seam: seamWords(seam),
    ratio: Math.round(ratio * 100) / 100,
    least,
    most,
    ...(kind === null ? {} : { cloth: { word: `check.cloth.${kind}` satisfies WordKey } }),
  };
  const key = wordsOf(finding, kind !== null);
  return {
    code: 'gather-ratio',
    level: LEVELS[finding],
    measured: { ratio },
    allowed: { from: { ratio: least }, to: { ratio: most } },
    where: placeOfSeam(seam),
    say: tell(key, values),
    todo:
      key === 'check.gather-ratio.ok' || key === 'check.gather-ratio.ok-in'
        ? null
        : tell(`${key}.todo`, values),
  };
}

type Verdict = 'none' | 'flat' | 'sparse' | 'ok' | 'full' | 'thick';

const LEVELS: Readonly<Record<Verdict, Level>> = {
  none: 'stop',
  flat: 'note',
  sparse: 'note',
  ok: 'ok',
  full: 'note',
  thick: 'warn',
};

function judge(ratio: number, [least, most]: Ratios, limit: number): Verdict {
  if (ratio < 1 - SLACK) return 'none';
  if (ratio < LEAST - SLACK) return 'flat';
  if (ratio < least - SLACK) return 'sparse';
  if (ratio > limit + SLACK) return 'thick';
  return ratio > most + SLACK ? 'full' : 'ok';
}

/** The sentence of a finding; it names the cloth where that is known and matters. */
function wordsOf(finding: Verdict, named: boolean) {
  switch (finding) {
    case 'none':
    case 'flat':
    case 'sparse':
    case 'full':
      return `check.gather-ratio.${finding}` as const;
    case 'ok':
      return named ? 'check.gather-ratio.ok-in' : 'check.gather-ratio.ok';
    case 'thick':
      return named ? 'check.gather-ratio.thick-in' : 'check.gather-ratio.thick';
  }
}

/** What the gathered pieces are made of; null where the order does not say, or where they are not of one kind. */
function kindOf({ clothKinds = {} }: Look, pieces: readonly Piece[]): ClothKind | null {
  const [kind, ...others] = new Set(pieces.map((piece) => clothKinds[piece.cloth] ?? null));
  return others.length > 0 ? null : (kind ?? null);
}

/**
 * Which of a cloth's ranges a seam is held against. Sleeves and linings are gathered as little as one likes, so only
 * too much is told of them.
 */
function usualRatios(look: Look, seam: Seam, pieces: readonly Piece[], fullness: Fullness): Ratios {
  if (pieces.every((piece) => piece.layer === 'lining')) return [LEAST, fullness.skirt[1]];
  switch (seam.name) {
    case 'tier':
      return fullness.tier;
    case 'waist':
    case 'skirt-waist':
    case 'overskirt-waist':
      return carriesTier(look, pieces) ? fullness.tier : fullness.skirt;
    case 'frill':
    case 'trim':
      return fullness.ruffle;
    default:
      return [LEAST, fullness.skirt[1]];
  }
}

/** The uppermost tier of a skirt, which those below it make wide. */
const carriesTier = (look: Look, pieces: readonly Piece[]): boolean =>
  look.garment.seams.some(
    ({ name, a }) => name === 'tier' && a.some((use) => pieces.some(({ id }) => id === use.piece)),
  );
