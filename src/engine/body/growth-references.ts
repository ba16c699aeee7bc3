import type { Sex } from './body.ts';
import { GROWTH_TABLES, type GrowthTableId } from './growth-tables.ts';
import { type Lms, type LmsTable, type LmsTails, lmsAges, lmsAt, lmsValue, lmsZ } from './lms.ts';

/** What growth references know of: lengths and girths in mm, weight in kg, BMI in kg/m². `neckGirth`: its middle. */
export type GrowthMeasure =
  | 'height'
  | 'weight'
  | 'bmi'
  | 'headGirth'
  | 'upperArmGirth'
  | 'waistGirth'
  | 'hipGirth'
  | 'neckGirth';

/** Which charts go first: those of the WHO, or those of the United States. */
export type GrowthCharts = 'who' | 'us';

/** Sources: `data/SOURCES.md`; names for reading stand in the catalogue under `growth.reference.<id>`. */
export type GrowthReferenceId = keyof typeof REFERENCES;

interface Reference {
  readonly measure: GrowthMeasure;
  /** From the youngest; each holds until the next begins. */
  readonly tables: readonly [GrowthTableId, ...GrowthTableId[]];
  readonly tails: LmsTails;
}

/**
 * In the order in which they are asked. Under 24 months height is the length of the lying child, from 24 months the
 * height of the standing one, 7 mm less (WHO 2006). Below 24.5 months, where our copy of CDC's tables begins, `cdc-*`
 * goes by the WHO, as CDC advises under two years (from memory).
 */
const REFERENCES = {
  'who-height': { measure: 'height', tables: ['whoLength', 'whoHeight'], tails: 'formula' },
  'cdc-height': { measure: 'height', tables: ['whoLength', 'whoHeight', 'cdcHeight'], tails: 'formula' },
  'who-weight': { measure: 'weight', tables: ['whoWeight'], tails: 'straight' },
  'cdc-weight': { measure: 'weight', tables: ['whoWeight', 'cdcWeight'], tails: 'formula' },
  'who-bmi': { measure: 'bmi', tables: ['whoBmi'], tails: 'straight' },
  'who-head': { measure: 'headGirth', tables: ['whoHead'], tails: 'formula' },
  'german-head': { measure: 'headGirth', tables: ['germanHead'], tails: 'formula' },
  'who-arm': { measure: 'upperArmGirth', tables: ['whoArm'], tails: 'straight' },
  'german-waist': { measure: 'waistGirth', tables: ['germanWaist'], tails: 'formula' },
  'dutch-waist': { measure: 'waistGirth', tables: ['dutchWaist'], tails: 'formula' },
  'us-waist': { measure: 'waistGirth', tables: ['usWaist'], tails: 'formula' },
  'german-hip': { measure: 'hipGirth', tables: ['germanHip'], tails: 'formula' },
  'dutch-hip': { measure: 'hipGirth', tables: ['dutchHip'], tails: 'formula' },
  'mexican-neck': { measure: 'neckGirth', tables: ['mexicanNeck'], tails: 'formula' },
} as const satisfies Readonly<Record<string, Reference>>;

/** Asked before all others when the charts of the United States go first. */
const US_FIRST: ReadonlySet<string> = new Set<GrowthReferenceId>(['cdc-height', 'cdc-weight', 'us-waist']);

const IDS = Object.keys(REFERENCES) as readonly GrowthReferenceId[];
const tablesOf = (id: GrowthReferenceId): Reference['tables'] => REFERENCES[id].tables;

/** The first reference of a measure that knows all of these ages (months); null where none does. */
export function growthReference(
  measure: GrowthMeasure,
  ages: readonly number[],
  charts: GrowthCharts,
): GrowthReferenceId | null {
  const known = IDS.filter((id) => REFERENCES[id].measure === measure && ages.every((age) => knows(id, age)));
  const first = charts === 'us' ? known.find((id) => US_FIRST.has(id)) : undefined;
  return first ?? known[0] ?? null;
}

/** Youngest and oldest age of a reference, months. */
export function referenceAges(id: GrowthReferenceId): readonly [number, number] {
  const ages = tablesOf(id).map((table) => lmsAges(GROWTH_TABLES[table].girl));
  return [Math.min(...ages.map(([from]) => from)), Math.max(...ages.map(([, to]) => to))];
}

const knows = (id: GrowthReferenceId, age: number): boolean => {
  const [least, most] = referenceAges(id);
  return age >= least && age <= most;
};

/** The value (mm, kg, kg/m²) that lies `z` standard deviations from the median of an age. Throws outside the ages. */
export function referenceValue(id: GrowthReferenceId, sex: Sex, ageMonths: number, z: number): number {
  return lmsValue(lmsOf(id, sex, ageMonths), z, REFERENCES[id].tails);
}

/** How many standard deviations a value lies from the median of an age. Throws outside the ages. */
export function referenceZ(id: GrowthReferenceId, sex: Sex, ageMonths: number, value: number): number {
  return lmsZ(lmsOf(id, sex, ageMonths), value, REFERENCES[id].tails);
}

function lmsOf(id: GrowthReferenceId, sex: Sex, ageMonths: number): Lms {
  const tables = tablesOf(id).map((table): LmsTable => GROWTH_TABLES[table][sex]);
  const table = tables.findLast(({ from }) => from <= ageMonths) ?? tables[0];
  if (table === undefined) throw new Error(`No table in ${id}`);
  return lmsAt(table, ageMonths);
}

/** The age from which height is measured standing, months. */
export const STANDING_FROM = 24;

/** A child is so much longer lying than standing: 0.7 cm (WHO Child Growth Standards 2006, methods). */
export const LYING_LONGER = 7;
