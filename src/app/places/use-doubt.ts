import type { MeasureId } from '../../engine/body/index.ts';
import type { Finding } from '../../engine/order/index.ts';
import { fieldSentence, useSessionState, useTell } from '../session/use-session.ts';

/** What a doubt may be about. */
type DoubtedField = MeasureId | 'weight' | 'age';

/** What is worth a second look at one field of a child, as a sentence; null while the field is being mended. */
export function useDoubt(index: number, field: DoubtedField): string | null {
  const tell = useTell();
  const isOld = useSessionState(({ work }) => work.children[index]?.old === true);
  const report = useSessionState(({ work }) => work.children[index]?.report);
  const doubt = isOld ? undefined : report?.dress.doubts.find((finding) => isAbout(finding, field));
  return doubt === undefined ? null : tell(doubt.say);
}

function isAbout({ code, say: { values } }: Finding, field: DoubtedField): boolean {
  if (field === 'weight' || field === 'age') {
    return code.startsWith(`body.${field}-`) || code.startsWith(`growth.problem.${field}-`);
  }
  const { measure } = values;
  return typeof measure === 'object' && 'word' in measure && measure.word === `measure.${field}`;
}

/** What is wrong with the age, whether it is written as a birthday or in months. */
export function useAgeProblem(index: number): string | null {
  const tell = useTell();
  const problem = useSessionState(({ work }) =>
    work.children[index]?.problems.find(
      ({ path, code }) => path === `children[${index}]` && code.startsWith('body.age-'),
    ),
  );
  return problem === undefined ? null : fieldSentence(problem, tell);
}
