import type { Body, BodyInput, BodyRule, BodyValue } from './body.ts';
import { type Curve, isBeyond } from './curve.ts';
import { filledBody, filledValue, type StaturePrior, staturePrior } from './fill-model.ts';
import { MEASURE_IDS, type MeasureId } from './measures.ts';
import { AVERAGE_BY_STATURE } from './size-tables.ts';

/** Below this stature the averages of chest, waist and hip come from babies of both sexes; see data/SOURCES.md. */
const BABY_STATURE = 860;

/**
 * Fills in every measure that was not measured; null when neither height, age nor chest is known. Measured values
 * are kept as they are, whatever they are: `doubtMeasures` judges them.
 *
 * What is filled in is the likeliest beside all that is known, and `spread` what is still open (see `filledBody`). All
 * averages are those of girls; boys are filled in alike.
 */
export function estimateBody(input: BodyInput): Body | null {
  const prior = staturePrior(input);
  const joint = filledBody(input);
  if (prior === null || joint === null) return null;
  const stature = filledValue(joint, 'height').mm;
  const entries = MEASURE_IDS.map((id): [MeasureId, BodyValue] => {
    const mm = input.measured[id];
    if (mm !== undefined) return [id, { mm, from: 'measured' }];
    const rule = id === 'height' ? heightRule(prior, stature) : ruleOf(id, input, stature);
    return [id, { ...filledValue(joint, id), from: 'estimated', rule }];
  });
  return {
    ageMonths: input.ageMonths ?? null,
    sex: input.sex ?? 'girl',
    values: Object.fromEntries(entries) as Body['values'],
  };
}

/** The girths that the survey took together, by which one another are filled in. */
const SURVEYED_GIRTHS = [
  'chestGirth',
  'waistGirth',
  'hipGirth',
  'headGirth',
  'upperArmGirth',
  'wristGirth',
] as const satisfies readonly MeasureId[];

/** What moves a surveyed girth beside the height. */
const BUILD: readonly MeasureId[] = [...SURVEYED_GIRTHS, 'neckBaseGirth', 'backWidth', 'frontChestWidth'];

const RULES: Readonly<Record<Exclude<MeasureId, 'height'>, { rule: BodyRule; curve: Curve | null }>> = {
  ...girthRules(),
  neckBaseGirth: { rule: 'body.rule.neck-base', curve: null },
  shoulderLength: { rule: 'body.rule.shoulder', curve: AVERAGE_BY_STATURE.shoulderLength },
  shoulderWidth: { rule: 'body.rule.shoulder-width', curve: null },
  backWidth: { rule: 'body.rule.back-width', curve: null },
  frontChestWidth: { rule: 'body.rule.front-width', curve: null },
  backNeckToWaist: { rule: 'body.rule.back-length', curve: AVERAGE_BY_STATURE.backNeckToWaist },
  scyeDepth: { rule: 'body.rule.scye-depth', curve: null },
  armLength: { rule: 'body.rule.by-height', curve: AVERAGE_BY_STATURE.armLength },
  waistHeight: { rule: 'body.rule.waist-height', curve: null },
  kneeHeight: { rule: 'body.rule.by-height', curve: AVERAGE_BY_STATURE.kneeHeight },
};

function girthRules() {
  const rules = SURVEYED_GIRTHS.map((id) => [
    id,
    { rule: 'body.rule.by-height', curve: AVERAGE_BY_STATURE[id] },
  ]);
  return Object.fromEntries(rules) as Record<
    (typeof SURVEYED_GIRTHS)[number],
    { rule: BodyRule; curve: Curve }
  >;
}

/** Lengths that a guess is made for, and the measured one beside them that moves the guess. */
const MOVED_BY: Readonly<Partial<Record<MeasureId, MeasureId>>> = {
  shoulderLength: 'shoulderWidth',
  backNeckToWaist: 'scyeDepth',
};

function ruleOf(
  id: Exclude<MeasureId, 'height'>,
  { measured, weight = null }: BodyInput,
  stature: number,
): BodyRule {
  const { rule, curve } = RULES[id];
  if ((SURVEYED_GIRTHS as readonly MeasureId[]).includes(id)) {
    if (weight !== null) return 'body.rule.by-weight';
    if (BUILD.some((other) => measured[other] !== undefined)) return 'body.rule.by-girths';
  }
  const mover = MOVED_BY[id];
  if (mover !== undefined && measured[mover] !== undefined) return 'body.rule.moved';
  if (curve !== null && isBeyond(curve, stature)) return 'body.rule.beyond-data';
  return rule === 'body.rule.by-height' && stature < BABY_STATURE ? 'body.rule.by-height-baby' : rule;
}

function heightRule(prior: StaturePrior, stature: number): BodyRule {
  if (Math.abs(prior.mm - stature) > 0.5) return 'body.rule.height-by-others';
  return prior.from === 'chest' ? 'body.rule.height-by-chest' : 'body.rule.height-by-age';
}
