import type { Body, BodyInput } from './body.ts';
import { type DoubtContext, doubtMeasures } from './doubt-measures.ts';
import { estimateBody } from './estimate-body.ts';
import type { BodyProblem } from './problem.ts';

export type CompletedBody =
  | { readonly ok: true; readonly body: Body; readonly warnings: readonly BodyProblem[] }
  | { readonly ok: false; readonly problems: readonly BodyProblem[] };

/**
 * A body for drafting from what was measured (mm) and the age (months). Every missing measure is estimated, see
 * `estimateBody`; measured values are never changed. Refuses values that no child can have, ages outside
 * 6 months to 14 years, and a child of whom neither height, age nor chest is known. A weight that is doubted fills in
 * nothing.
 */
export function completeBody(input: BodyInput, context: DoubtContext = {}): CompletedBody {
  const problems = doubtMeasures(input, context);
  if (problems.some((problem) => problem.level === 'stop')) return { ok: false, problems };
  const isWeightDoubted = problems.some(({ measure }) => measure === 'weight');
  const body = estimateBody(isWeightDoubted ? { ...input, weight: null } : input);
  if (body !== null) return { ok: true, body, warnings: problems };
  const tooLittle: BodyProblem = { code: 'body.too-little', level: 'stop', measure: null, values: {} };
  return { ok: false, problems: [...problems, tooLittle] };
}
