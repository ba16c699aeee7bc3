import { setSleeve } from './sleeve-seams.ts';
import { defineStep, done, lengthParam } from './step.ts';
import { STRAIGHT_SLEEVE_WORDS, sleeveWidthParams, straightSleeve } from './straight-sleeve.ts';

/** A straight sleeve set into the armhole, its cap a little longer than the armhole. */
export const setInSleeve = defineStep({
  id: 'set-in-sleeve',
  stage: 'set-in',
  kind: 'sleeve',
  params: {
    length: lengthParam(
      ({ body }) => Math.max(body.values.armLength.mm * 0.35, 100),
      ({ body }) => [50, body.values.armLength.mm + 20],
      'short sleeve, about a third of the arm, and 10 cm at least so that it clears its cap (common practice, no source)',
    ),
    ...sleeveWidthParams,
  },
  words: {
    title: 'Set-in sleeve',
    about: 'A straight sleeve with a cap that fits the armhole.',
    length: 'Length from the shoulder tip',
    capEase: 'Cap ease',
    armEase: 'Ease at the upper arm',
    ...STRAIGHT_SLEEVE_WORDS,
  },
  apply: (work, values) => {
    const length = work.bench.rounded(values.length);
    const capEase = work.bench.rounded(values.capEase);
    const drafted = straightSleeve(work, 'set-in-sleeve', { armEase: values.armEase, capEase, length });
    if (!drafted.ok) return drafted.refusal;
    return done(setSleeve(work.garment, drafted.piece, () => ({ kind: 'eased', ease: capEase })));
  },
});
