import type { Body, BodyInput, BodyRule, BodyValue, EstimatedValue } from './body.ts';
import { type Curve, isBeyond, readCurve, readCurveBackwards, readCurveWithin } from './curve.ts';
import type { MeasureId } from './measures.ts';
import {
  ALONG_CHEST,
  AVERAGE_BY_STATURE,
  CHEST_ALONG_WAIST,
  SPREAD_BY_STATURE,
  STATURE_BY_AGE,
} from './size-tables.ts';

/**
 * Height of one child around the middle height of its age, as a share: the S of the WHO standards runs from 0.034
 * at 6 months to 0.046 at 10 years (WHO Child Growth Standards 2006, WHO Reference 2007).
 */
const STATURE_SPREAD_SHARE = 0.045;

/** Below this stature the averages of chest, waist and hip come from babies of both sexes; see data/SOURCES.md. */
const BABY_STATURE = 860;

/** Where the two age bands of the survey have their middle: girls of 54 and of 126 months. */
const BAND_STATURES = [1060, 1420] as const;

/**
 * Shares of the chest. A published draft (teaching blog on children's bodices, 2017) has chest 60, back 25, front
 * 23 cm; no open data. 10 mm of spread beside that of the chest: a guess.
 */
const BACK_WIDTH_SHARE = 0.415;
const FRONT_WIDTH_SHARE = 0.385;
const WIDTH_SPREAD = 10;

/** Neck base over the middle of the neck: the same draft has neck 28 at chest 60, Snyder 1977 26.1 mid-neck. */
const NECK_BASE_SHARE = 1.07;
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

/** (Shoulder to shoulder - neck breadth) / 2: uncertain by about 1 cm. */
const SHOULDER_SPREAD = 10;

/** What the slope and the width of the neck add when both are taken as level: a guess. */
const SHOULDER_WIDTH_SPREAD = 10;

/** The line through remembered back lengths leaves up to 11 mm; single children lie further apart. A guess. */
const BACK_LENGTH_SPREAD = 15;

/** A length with its uncertainty, 0 where it was measured. */
interface Known {
  readonly mm: number;
  readonly spread: number;
}

/**
 * Fills in every measure that was not measured; null when neither height, age nor chest is known. Measured values
 * are kept as they are, whatever they are: `checkMeasures` judges them.
 *
 * All averages are those of girls; boys are filled in alike. A missing girth follows the measured chest (or, through
 * it, the measured waist) by its regression on the chest among girls of one stature. `spread` takes up the
 * uncertainty of what the estimate rests on.
 */
export function estimateBody(input: BodyInput): Body | null {
  const { measured } = input;
  const take = (id: MeasureId, estimate: () => EstimatedValue): BodyValue => {
    const mm = measured[id];
    return mm === undefined ? estimate() : { mm, from: 'measured' };
  };

  const height = statureOf(input);
  if (height === null) return null;
  const stature = known(height);
  const chestGirth = take('chestGirth', () => chestEstimate(stature, measured.waistGirth));
  const chest = {
    ...known(chestGirth),
    isAverage: measured.chestGirth === undefined && measured.waistGirth === undefined,
  };

  const girth = (id: keyof typeof ALONG_CHEST & MeasureId) =>
    take(id, () => girthEstimate(id, stature, chest));
  const backNeckToWaist = take('backNeckToWaist', () =>
    fromCurve(AVERAGE_BY_STATURE.backNeckToWaist, BACK_LENGTH_SPREAD, stature, 'body.rule.back-length'),
  );
  const neckBaseGirth = take('neckBaseGirth', () => {
    const neck = girthEstimate('neckGirth', stature, chest);
    return proportion(neck, NECK_BASE_SHARE, 0, NECK_BASE_SPREAD, 'body.rule.neck-base');
  });
  const shoulderLength = take('shoulderLength', () =>
    fromCurve(AVERAGE_BY_STATURE.shoulderLength, SHOULDER_SPREAD, stature, 'body.rule.shoulder'),
  );
  return {
    ageMonths: input.ageMonths ?? null,
    sex: input.sex ?? 'girl',
    values: {
      height,
      chestGirth,
      waistGirth: girth('waistGirth'),
      hipGirth: girth('hipGirth'),
      neckBaseGirth,
      headGirth: girth('headGirth'),
      shoulderLength,
      shoulderWidth: take('shoulderWidth', () =>
        shoulderWidthOf(known(shoulderLength), known(neckBaseGirth)),
      ),
      backWidth: take('backWidth', () =>
        proportion(chest, BACK_WIDTH_SHARE, 0, WIDTH_SPREAD, 'body.rule.back-width'),
      ),
      frontChestWidth: take('frontChestWidth', () =>
        proportion(chest, FRONT_WIDTH_SHARE, 0, WIDTH_SPREAD, 'body.rule.front-width'),
      ),
      backNeckToWaist,
      scyeDepth: take('scyeDepth', () =>
        proportion(
          known(backNeckToWaist),
          0.5,
          -SCYE_LESS_THAN_HALF_BACK,
          SCYE_SPREAD,
          'body.rule.scye-depth',
        ),
      ),
      upperArmGirth: girth('upperArmGirth'),
      wristGirth: girth('wristGirth'),
      armLength: take('armLength', () => averageOf('armLength', stature)),
      waistHeight: take('waistHeight', () =>
        proportion(averageOf('navelHeight', stature), 1, WAIST_ABOVE_NAVEL, 0, 'body.rule.waist-height'),
      ),
      kneeHeight: take('kneeHeight', () => averageOf('kneeHeight', stature)),
    },
  };
}

/**
 * Across the back from tip to tip: both shoulders, laid level from their slope of about 15 degrees (hand-sewing
 * lessons, 1901), and the neck between them, whose half is a sixth of its girth + 5 mm (children's bodice draft,
 * teaching blog, 2017).
 */
function shoulderWidthOf(shoulder: Known, neckBase: Known): EstimatedValue {
  const level = 2 * Math.cos(Math.PI / 12);
  return {
    mm: shoulder.mm * level + neckBase.mm / 3 + 10,
    from: 'estimated',
    rule: 'body.rule.shoulder-width',
    spread: Math.hypot(SHOULDER_WIDTH_SPREAD, shoulder.spread * level, neckBase.spread / 3),
  };
}

function known(value: BodyValue): Known {
  return { mm: value.mm, spread: value.from === 'measured' ? 0 : value.spread };
}

function statureOf({ ageMonths, measured }: BodyInput): BodyValue | null {
  if (measured.height !== undefined) return { mm: measured.height, from: 'measured' };
  if (ageMonths !== undefined && ageMonths !== null) {
    const mm = readCurve(STATURE_BY_AGE, ageMonths).y;
    return { mm, from: 'estimated', rule: 'body.rule.height-by-age', spread: mm * STATURE_SPREAD_SHARE };
  }
  if (measured.chestGirth === undefined) return null;
  const { x: mm, slope } = readCurveBackwards(AVERAGE_BY_STATURE.chestGirth, measured.chestGirth);
  const spread = slope * readCurveWithin(SPREAD_BY_STATURE.chestGirth, mm);
  return { mm, from: 'estimated', rule: 'body.rule.height-by-chest', spread };
}

/** The average among girls of a stature. */
function averageOf(id: keyof typeof SPREAD_BY_STATURE, stature: Known): EstimatedValue {
  const spread = readCurveWithin(SPREAD_BY_STATURE[id], stature.mm);
  const rule = stature.mm < BABY_STATURE ? 'body.rule.by-height-baby' : 'body.rule.by-height';
  return fromCurve(AVERAGE_BY_STATURE[id], spread, stature, rule);
}

function fromCurve(curve: Curve, ownSpread: number, stature: Known, rule: BodyRule): EstimatedValue {
  const { y, slope } = readCurve(curve, stature.mm);
  return {
    mm: y,
    from: 'estimated',
    rule: isBeyond(curve, stature.mm) ? 'body.rule.beyond-data' : rule,
    spread: Math.hypot(ownSpread, slope * stature.spread),
  };
}

/** share x base + shift. */
function proportion(
  base: Known,
  share: number,
  shift: number,
  ownSpread: number,
  rule: BodyRule,
): EstimatedValue {
  const spread = Math.hypot(ownSpread, share * base.spread);
  return { mm: share * base.mm + shift, from: 'estimated', rule, spread };
}

/** The average chest, or the one that goes with a measured waist (regression of the logarithms). */
function chestEstimate(stature: Known, waistMm: number | undefined): EstimatedValue {
  const average = averageOf('chestGirth', stature);
  if (waistMm === undefined) return average;
  const averageWaist = readCurve(AVERAGE_BY_STATURE.waistGirth, stature.mm).y;
  const correlation = betweenBands(CHEST_ALONG_WAIST.correlation, stature.mm);
  const steepness =
    (correlation * betweenBands(CHEST_ALONG_WAIST.chestLogSpread, stature.mm)) /
    betweenBands(CHEST_ALONG_WAIST.waistLogSpread, stature.mm);
  return {
    mm: average.mm * (waistMm / averageWaist) ** steepness,
    from: 'estimated',
    rule: 'body.rule.chest-by-waist',
    spread: average.spread * Math.sqrt(1 - correlation ** 2),
  };
}

/** The average girth, moved along with a chest that is not the average one. */
function girthEstimate(
  id: keyof typeof ALONG_CHEST,
  stature: Known,
  chest: Known & { readonly isAverage: boolean },
): EstimatedValue {
  if (chest.isAverage) return averageOf(id, stature);
  const { y: average, slope } = readCurve(AVERAGE_BY_STATURE[id], stature.mm);
  const averageChest = readCurve(AVERAGE_BY_STATURE.chestGirth, stature.mm);
  const perMm = betweenBands(ALONG_CHEST[id].perMm, stature.mm);
  return {
    mm: average + perMm * (chest.mm - averageChest.y),
    from: 'estimated',
    rule: 'body.rule.by-chest',
    spread: Math.hypot(
      betweenBands(ALONG_CHEST[id].spread, stature.mm),
      perMm * chest.spread,
      (slope - perMm * averageChest.slope) * stature.spread,
    ),
  };
}

/** Between the two age bands of the survey, by stature; outside their middles the nearer band holds. */
function betweenBands([younger, older]: readonly [number, number], stature: number): number {
  const [from, to] = BAND_STATURES;
  return readCurveWithin(
    [
      [from, younger],
      [to, older],
    ],
    stature,
  );
}
