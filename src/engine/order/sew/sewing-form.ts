import * as v from 'valibot';
import { STEP_KINDS } from '../../sew/index.ts';
import { name, number, rows, table } from '../form-parts.ts';

/** A dress has far fewer steps than this. */
const MOST_STEPS = 200;

/** A step that is done, and how long it took her where she has timed it; `estimate` is what had been reckoned. */
const done = table({
  step: name,
  kind: v.optional(v.picklist(STEP_KINDS, 'choice')),
  minutes: v.optional(number),
  estimate: v.optional(number),
});

/** How far a child's dress is sewn, and what the maker has changed in the order of work. */
export const SEWING_FORM = table({
  done: v.optional(rows(done, MOST_STEPS)),
  /** Steps in her own order. */
  order: v.optional(rows(name, MOST_STEPS)),
  /** Steps that she leaves out. */
  leftOut: v.optional(rows(name, MOST_STEPS)),
});

export type SewingFile = v.InferOutput<typeof SEWING_FORM>;
