import type { TimedStep } from '../../sew/index.ts';
import type { SewingFile } from './sewing-form.ts';

/** The steps of an order file that she has timed. */
export const timedSteps = (file: SewingFile | undefined): readonly TimedStep[] =>
  (file?.done ?? []).flatMap(({ kind, minutes, estimate }) =>
    kind === undefined || minutes === undefined || estimate === undefined
      ? []
      : [{ kind, minutes, estimate }],
  );
