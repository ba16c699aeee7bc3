import type { MeasureId } from './measures.ts';

export type Sex = 'girl' | 'boy';

/** Why a value was filled in as it was: the key of a sentence in the catalogue. */
export type BodyRule =
  | 'body.rule.height-by-age'
  | 'body.rule.height-by-chest'
  | 'body.rule.by-height'
  | 'body.rule.by-height-baby'
  | 'body.rule.beyond-data'
  | 'body.rule.by-chest'
  | 'body.rule.chest-by-waist'
  | 'body.rule.shoulder'
  | 'body.rule.back-width'
  | 'body.rule.front-width'
  | 'body.rule.neck-base'
  | 'body.rule.back-length'
  | 'body.rule.scye-depth'
  | 'body.rule.waist-height';

/** A value that was not measured. `spread` (mm): the standard deviation of one child around it. */
export interface EstimatedValue {
  readonly mm: number;
  readonly from: 'estimated';
  readonly rule: BodyRule;
  readonly spread: number;
}

export type BodyValue = { readonly mm: number; readonly from: 'measured' } | EstimatedValue;

/** Who wears it: every measure has a value, and says where it comes from. */
export interface Body {
  readonly ageMonths: number | null;
  readonly sex: Sex;
  readonly values: Readonly<Record<MeasureId, BodyValue>>;
}

/** Measured values in mm. */
export type Measured = Readonly<Partial<Record<MeasureId, number>>>;

/** What is known of a child; sex is a girl where it is not said. */
export interface BodyInput {
  readonly ageMonths?: number | null;
  readonly sex?: Sex;
  readonly measured: Measured;
}
