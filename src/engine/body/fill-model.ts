import type { BodyInput } from './body.ts';
import { type Curve, readCurve, readCurveBackwards, readCurveWithin } from './curve.ts';
import {
  choleskyOf,
  conditioned,
  deviationOf,
  type Joint,
  jointOf,
  type Link,
  meanOf,
} from './fill-normal.ts';
import { BUILD_CORRELATIONS, BUILD_IDS, WEIGHT_BY_STATURE, WEIGHT_SPREAD_BY_STATURE } from './fill-tables.ts';
import { MEASURE_IDS, type MeasureId } from './measures.ts';
import { AVERAGE_BY_STATURE, SPREAD_BY_STATURE, STATURE_BY_AGE } from './size-tables.ts';
import { shareOfOlder } from './survey.ts';

/**
 * All that hangs together on a body. In logarithms: what scatters by shares of itself (`IN_LOGS`); the rest in mm.
 * `neckGirth` is the middle of the neck, which nobody is asked for; the neck base goes by it.
 */
export type FillId = MeasureId | 'weight' | 'neckGirth' | `part ${number}`;
type BuildId = (typeof BUILD_IDS)[number];
type BuildLink = Link<FillId> & { readonly id: BuildId };

const IN_LOGS: ReadonlySet<string> = new Set<FillId>([
  ...BUILD_IDS,
  'neckBaseGirth',
  'backWidth',
  'frontChestWidth',
]);

/**
 * Height of one child around the middle height of its age, as a share: the S of the WHO standards runs from 0.034
 * at 6 months to 0.046 at 10 years (WHO Child Growth Standards 2006, WHO Reference 2007).
 */
const STATURE_SPREAD_SHARE = 0.045;

/**
 * Shares of the chest. A published draft (teaching blog on children's bodices, 2017) has chest 60, back 25, front
 * 23 cm; no open data. 10 mm of spread beside that of the chest: a guess.
 */
const BACK_WIDTH_SHARE = 0.415;
const FRONT_WIDTH_SHARE = 0.385;
const WIDTH_SPREAD = 10;

/** Neck base over the middle of the neck: the same draft has neck 28 at chest 60, Snyder 1977 26.1 mid-neck. */
export const NECK_BASE_SHARE = 1.07;
const NECK_BASE_SPREAD = 8;

/**
 * Half the back length less this: the same draft sets the underarm line half the back length + 20 mm below the neck
 * point; 15 mm of that are above the nape, and 12.5 mm are clearance under the arm. From 6 to 12 years this comes
 * within 2 mm of the armhole depths of the Craft Yarn Council's child sizes; at 2 years it is 12 mm less.
 */
const SCYE_LESS_THAN_HALF_BACK = 7.5;
const SCYE_SPREAD = 10;

/** The natural waist lies above the navel, where the survey measured: a guess, common practice, no source. */
const WAIST_ABOVE_NAVEL = 30;

/**
 * Girls of one cell of the survey differ in stature by up to 3 cm either way: that much of the spread of a cell is not
 * left when the stature is known. It matters for the navel, which rises most with the stature.
 */
const CELL_SPREAD = 60 / Math.sqrt(12);

/** (Shoulder to shoulder - neck breadth) / 2: uncertain by about 1 cm. */
const SHOULDER_SPREAD = 10;

/**
 * Across the back from tip to tip: both shoulders, laid level from their slope of about 15 degrees (hand-sewing
 * lessons, 1901), and the neck between them, whose half is a sixth of its girth + 5 mm (children's bodice draft,
 * teaching blog, 2017). What the slope and the width of the neck add when both are taken as level is a guess.
 */
const SHOULDERS_LEVEL = 2 * Math.cos(Math.PI / 12);
const NECK_BETWEEN = { share: 1 / 3, more: 10 } as const;
const SHOULDER_WIDTH_SPREAD = 10;

/** The line through remembered back lengths leaves up to 11 mm; single children lie further apart. A guess. */
const BACK_LENGTH_SPREAD = 15;

/** What stature rests on before anything else is looked at; null where neither height, age nor chest is known. */
export interface StaturePrior {
  readonly mm: number;
  readonly spread: number;
  readonly from: 'measured' | 'age' | 'chest';
}

export function staturePrior({ ageMonths, measured }: BodyInput): StaturePrior | null {
  if (measured.height !== undefined) return { mm: measured.height, spread: 0, from: 'measured' };
  if (ageMonths !== undefined && ageMonths !== null) {
    return { ...statureByAge(ageMonths), from: 'age' };
  }
  if (measured.chestGirth === undefined) return null;
  const { x: mm, slope } = readCurveBackwards(AVERAGE_BY_STATURE.chestGirth, measured.chestGirth);
  return { mm, spread: slope * readCurveWithin(SPREAD_BY_STATURE.chestGirth, mm), from: 'chest' };
}

/** How far the build of children is thought to scatter. */
export interface Scatter {
  /**
   * How many times as far apart in fatness as the girls of the survey. 1 for filling in. The girls of NHANES 2015-18
   * scatter about twice as far (see `doubtMeasures`).
   */
  readonly fatness: number;
}

/**
 * What is known of a body before its girths and lengths are looked at, around a point: means, spreads and
 * correlations of girls of a stature (Snyder 1977, WHO, Dutch study; see data/SOURCES.md), and the rules of the trade
 * where nobody has measured. Straight lines stand for the curves at the point.
 */
function modelAt(prior: StaturePrior, point: FillPoint, scatter: Scatter): Joint<FillId> {
  const { stature } = point;
  const shift = prior.mm - stature;
  const along = (curve: (typeof AVERAGE_BY_STATURE)[keyof typeof AVERAGE_BY_STATURE]) => {
    const { y, slope } = readCurve(curve, stature);
    return { mean: y + slope * shift, from: [['height', slope]] as const };
  };
  const bone = (id: 'armLength' | 'kneeHeight', spread = readCurveWithin(SPREAD_BY_STATURE[id], stature)) =>
    ({ id, ...along(AVERAGE_BY_STATURE[id]), own: spread }) as const;
  const build = buildLinks(prior, stature);
  const meanAt = (id: BuildId): number => build.find((link) => link.id === id)?.mean ?? Number.NaN;
  const logOf = (share: number, of: BuildId) => ({
    mean: Math.log(share) + meanAt(of),
    from: [[of, 1]] as const,
  });
  const neck = logOf(NECK_BASE_SHARE, 'neckGirth');
  const shoulder = along(AVERAGE_BY_STATURE.shoulderLength);
  const back = along(AVERAGE_BY_STATURE.backNeckToWaist);
  const navel = along(AVERAGE_BY_STATURE.navelHeight);
  const chestMm = point.chest;
  const cell = navel.from[0][1] * CELL_SPREAD;
  const navelSpread = Math.sqrt(readCurveWithin(SPREAD_BY_STATURE.navelHeight, stature) ** 2 - cell ** 2);
  return jointOf<FillId>([
    { id: 'height', mean: prior.mm, from: [], own: prior.spread },
    ...partLinks(scatter),
    ...build,
    { id: 'neckBaseGirth', ...neck, own: NECK_BASE_SPREAD / point.neckBase },
    { id: 'shoulderLength', ...shoulder, own: SHOULDER_SPREAD },
    {
      id: 'shoulderWidth',
      mean:
        SHOULDERS_LEVEL * shoulder.mean +
        NECK_BETWEEN.share * point.neckBase * (1 + neck.mean - Math.log(point.neckBase)) +
        NECK_BETWEEN.more,
      from: [
        ['shoulderLength', SHOULDERS_LEVEL],
        ['neckBaseGirth', NECK_BETWEEN.share * point.neckBase],
      ],
      own: SHOULDER_WIDTH_SPREAD,
    },
    {
      id: 'backWidth',
      ...logOf(BACK_WIDTH_SHARE, 'chestGirth'),
      own: WIDTH_SPREAD / BACK_WIDTH_SHARE / chestMm,
    },
    {
      id: 'frontChestWidth',
      ...logOf(FRONT_WIDTH_SHARE, 'chestGirth'),
      own: WIDTH_SPREAD / FRONT_WIDTH_SHARE / chestMm,
    },
    { id: 'backNeckToWaist', ...back, own: BACK_LENGTH_SPREAD },
    {
      id: 'scyeDepth',
      mean: back.mean / 2 - SCYE_LESS_THAN_HALF_BACK,
      from: [['backNeckToWaist', 0.5]],
      own: SCYE_SPREAD,
    },
    bone('armLength'),
    {
      id: 'waistHeight',
      mean: navel.mean + WAIST_ABOVE_NAVEL,
      from: navel.from,
      own: navelSpread,
    },
    bone('kneeHeight'),
  ]);
}

/**
 * Weight and girths: the average of a stature, and what is left goes together as among girls of one stature. It is
 * made of independent parts, the first of which is the weight's own: fatness.
 */
function buildLinks(prior: StaturePrior, stature: number): readonly BuildLink[] {
  const share = shareOfOlder(stature);
  const [young, old] = BUILD_CORRELATIONS;
  const correlations = young.map((line, i) =>
    line.map((from, j) => from + share * ((old[i]?.[j] ?? from) - from)),
  );
  const parts = choleskyOf(correlations);
  return BUILD_IDS.map((id, i) => {
    const { y, slope } = readCurve(id === 'weight' ? WEIGHT_BY_STATURE : AVERAGE_BY_STATURE[id], stature);
    const spread =
      id === 'weight'
        ? readCurveWithin(WEIGHT_SPREAD_BY_STATURE, stature)
        : Math.max(readCurveWithin(SPREAD_BY_STATURE[id], stature) / y, LEAST_SHARE[id] ?? 0);
    // A stature that was found by the chest itself says nothing more about it.
    const byHeight = prior.from === 'chest' && id === 'chestGirth' ? 0 : slope / y;
    const own = (parts[i] ?? []).map((times, k) => [partId(k), spread * times] as const);
    return {
      id,
      mean: Math.log(y) + byHeight * (prior.mm - stature),
      from: [['height', byHeight], ...own],
      own: 0,
    };
  });
}

/**
 * Single cells of the survey are chance where they are narrower than all girls together: upper arms of girls of 98 and
 * 104 cm scatter by 6.6 % (74 and 100 girls), those of all 497 girls of 24 to 84 months by 8.75 % at one age and, with
 * a correlation of 0.46 to the stature, by 7.8 % at one stature (Snyder 1977, data/snyder1977_correlations_girls.csv).
 */
const LEAST_SHARE: Readonly<Partial<Record<BuildId, number>>> = {
  upperArmGirth: 0.0875 * Math.sqrt(1 - 0.46 ** 2),
};

const partId = (k: number): FillId => `part ${k}`;

const partLinks = ({ fatness }: Scatter): readonly Link<FillId>[] =>
  BUILD_IDS.map((_, k) => ({ id: partId(k), mean: 0, from: [], own: k === 0 ? fatness : 1 }));

/** Where the curves are replaced by straight lines, mm. */
interface FillPoint {
  readonly stature: number;
  readonly chest: number;
  readonly neckBase: number;
}

/** No child for whom a dress is drafted is shorter or taller. */
const STATURES = [500, 1950] as const;

/** Straight lines are laid anew where the last ones led to; a known height needs one time less. */
const PASSES = 3;

/**
 * The body as far as it is known: all measures and the weight, conditioned on what was measured. Null when neither
 * height, age nor chest is known. Read it by `filledValue`.
 */
export function filledBody(input: BodyInput, scatter: Scatter = AS_SURVEYED): Joint<FillId> | null {
  const prior = staturePrior(input);
  if (prior === null) return null;
  const at = (id: 'chestGirth' | 'neckGirth'): number => readCurve(AVERAGE_BY_STATURE[id], prior.mm).y;
  let point: FillPoint = {
    stature: prior.mm,
    chest: input.measured.chestGirth ?? at('chestGirth'),
    neckBase: input.measured.neckBaseGirth ?? NECK_BASE_SHARE * at('neckGirth'),
  };
  const known = knownOf(input).map(([id, value]) => [id, toModel(id, value)] as const);
  let joint = modelAt(prior, point, scatter);
  for (let pass = 0; pass < (prior.spread === 0 ? 2 : PASSES); pass++) {
    joint = conditioned(modelAt(prior, point, scatter), known);
    point = {
      stature: Math.min(Math.max(meanOf(joint, 'height'), STATURES[0]), STATURES[1]),
      chest: Math.exp(meanOf(joint, 'chestGirth')),
      neckBase: Math.exp(meanOf(joint, 'neckBaseGirth')),
    };
  }
  return joint;
}

const AS_SURVEYED: Scatter = { fatness: 1 };

/** What was measured and weighed (mm, kg), as far as it is a size at all. */
export function knownOf({
  measured,
  weight,
}: BodyInput): readonly (readonly [MeasureId | 'weight', number])[] {
  const lengths = MEASURE_IDS.flatMap((id) => {
    const mm = measured[id];
    return mm === undefined || !(mm > 0) ? [] : [[id, mm] as const];
  });
  return weight === undefined || weight === null || !(weight > 0)
    ? lengths
    : [...lengths, ['weight', weight]];
}

/** A value (mm, kg) as the distribution holds it. */
export const toModel = (id: FillId, value: number): number => (IN_LOGS.has(id) ? Math.log(value) : value);

/** The likeliest value (mm, kg) and one standard deviation of it. */
export function filledValue(
  joint: Joint<FillId>,
  id: FillId,
): { readonly mm: number; readonly spread: number } {
  const [mean, spread] = [meanOf(joint, id), deviationOf(joint, id)];
  if (!IN_LOGS.has(id)) return { mm: mean, spread };
  const mm = Math.exp(mean);
  return { mm, spread: mm * spread };
}

/**
 * Weight, girths and lengths as they scatter about a stature that is hardly known (`spread`, mm), before any is looked
 * at. For judging them against each other.
 */
export function unfilledBody(stature: number, spread: number, scatter: Scatter): Joint<FillId> {
  const chest = readCurve(AVERAGE_BY_STATURE.chestGirth, stature).y;
  const neckBase = NECK_BASE_SHARE * readCurve(AVERAGE_BY_STATURE.neckGirth, stature).y;
  return modelAt({ mm: stature, spread, from: 'age' }, { stature, chest, neckBase }, scatter);
}

/** The stature (mm) to which a value points by itself, and how surely; null where it points to none. */
export function statureBy(
  id: MeasureId | 'weight',
  value: number,
): { readonly mm: number; readonly spread: number } | null {
  const read = (curve: Curve, spread: Curve, at: number, share: boolean) => {
    const { x: mm, slope } = readCurveBackwards(curve, at);
    return { mm, spread: slope * readCurveWithin(spread, mm) * (share ? at : 1) };
  };
  switch (id) {
    case 'weight':
      return read(WEIGHT_BY_STATURE, WEIGHT_SPREAD_BY_STATURE, value, true);
    case 'chestGirth':
    case 'hipGirth':
    case 'armLength':
    case 'kneeHeight':
      return read(AVERAGE_BY_STATURE[id], SPREAD_BY_STATURE[id], value, false);
    case 'waistHeight':
      return read(
        AVERAGE_BY_STATURE.navelHeight,
        SPREAD_BY_STATURE.navelHeight,
        value - WAIST_ABOVE_NAVEL,
        false,
      );
    case 'height':
      return { mm: value, spread: 30 };
    default:
      return null;
  }
}

/** The middle height of an age (months), and how far single children lie from it, mm. */
export function statureByAge(ageMonths: number): { readonly mm: number; readonly spread: number } {
  const mm = readCurve(STATURE_BY_AGE, ageMonths).y;
  return { mm, spread: mm * STATURE_SPREAD_SHARE };
}

/** The age (months) whose middle child is so tall; the least or most that the averages know beyond them. */
export const ageByStature = (mm: number): number => readCurveBackwards(STATURE_BY_AGE, mm).x;
