import type { WordKey } from '../words/index.ts';
import type { MeasureId } from './measures.ts';

export type Sex = 'girl' | 'boy';

/** Why a value was filled in as it was: the key of a sentence in the catalogue. */
export type BodyRule = Extract<WordKey, `body.rule.${string}`>;

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
  /** kg; girths are filled in by it. */
  readonly weight?: number | null;
}
