/**
 * The measurements of a child, once: forms, help, the schema of an order and the checks are made from this list,
 * in this order. Names and instructions stand in the catalogue under `measure.<id>` and `measure.<id>.how`.
 *
 * `isoTerm`: the term of ISO 8559:1989 (natural waist girth: ISO 8559-1:2017; front chest width: GB/T 22044-2017).
 * `least` to `most` (mm) holds every child of 6 months to 14 years with room to spare: below and above, the number
 * is a slip. The girths and lengths of `size-tables.ts` less or plus five or more standard deviations; where there
 * is no data, common practice, no source.
 */
export const MEASURES = {
  height: { isoTerm: 'height', kind: 'length', least: 550, most: 1900 },
  chestGirth: { isoTerm: 'chest girth', kind: 'girth', least: 340, most: 1100 },
  waistGirth: { isoTerm: 'natural waist girth', kind: 'girth', least: 320, most: 1080 },
  hipGirth: { isoTerm: 'hip girth', kind: 'girth', least: 310, most: 1250 },
  neckBaseGirth: { isoTerm: 'neck-base girth', kind: 'girth', least: 180, most: 440 },
  headGirth: { isoTerm: 'head girth', kind: 'girth', least: 370, most: 630 },
  shoulderLength: { isoTerm: 'shoulder length', kind: 'width', least: 28, most: 180 },
  shoulderWidth: { isoTerm: 'shoulder width', kind: 'width', least: 130, most: 520 },
  backWidth: { isoTerm: 'back width', kind: 'width', least: 140, most: 450 },
  frontChestWidth: { isoTerm: 'front chest width', kind: 'width', least: 120, most: 430 },
  backNeckToWaist: { isoTerm: 'cervical to waist (back)', kind: 'length', least: 120, most: 460 },
  scyeDepth: { isoTerm: 'scye depth', kind: 'length', least: 45, most: 260 },
  upperArmGirth: { isoTerm: 'upper arm girth', kind: 'girth', least: 95, most: 420 },
  wristGirth: { isoTerm: 'wrist girth', kind: 'girth', least: 70, most: 220 },
  armLength: { isoTerm: 'arm length', kind: 'length', least: 160, most: 680 },
  waistHeight: { isoTerm: 'waist height', kind: 'length', least: 250, most: 1280 },
  kneeHeight: { isoTerm: 'knee height', kind: 'length', least: 100, most: 580 },
} as const satisfies Readonly<Record<string, Measure>>;

interface Measure {
  readonly isoTerm: string;
  readonly kind: 'length' | 'girth' | 'width';
  readonly least: number;
  readonly most: number;
}

export type MeasureId = keyof typeof MEASURES;

/** The ids in the order in which a maker is asked for them. */
export const MEASURE_IDS = Object.keys(MEASURES) as readonly MeasureId[];

/** Lengths and the head go by the bones: they neither shrink nor move with the weight. */
export const isBone = (id: MeasureId): boolean => MEASURES[id].kind === 'length' || id === 'headGirth';

/** Months from which and up to which ages are taken, and up to which the drafting rules are meant. */
export const AGE_MONTHS = { least: 6, blocksUpTo: 144, most: 168 } as const;
