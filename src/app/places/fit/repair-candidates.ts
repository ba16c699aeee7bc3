import type { Check } from '../../../engine/check/index.ts';
import { findStep } from '../../../engine/design/index.ts';
import type { Saying } from '../../../engine/words/index.ts';
import { addStep, setParam } from '../dress/change-dress.ts';
import { keyOf } from '../dress/dress-list.ts';
import { type Candidate, type FaultyDress, leaveOut, nameOf, scopeFor } from './candidate.ts';
import { numberCandidates } from './number-candidates.ts';
import { problemCandidates, skippedCandidates } from './problem-candidates.ts';

/** What may mend a fault, in the order in which it is tried: numbers before leaving something out. */
export function repairCandidates(dress: FaultyDress): readonly Candidate[] {
  const { fault } = dress;
  if (fault.of === 'problem') return problemCandidates(dress, fault.problem);
  const { finding } = fault;
  const check = 'where' in finding ? (finding as Check) : null;
  if (check === null) return skippedCandidates(dress, finding);
  return [
    ...numberCandidates(dress, check),
    ...closingCandidates(dress, check),
    ...paperCandidates(dress, check),
    ...ownStepCandidates(dress, check),
    ...stepCandidates(dress, check),
  ];
}

/** A dress without opening, or with one that can strangle, is closed with a zip. */
function closingCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  const asks =
    check.code === 'closing-long-enough' ||
    check.code === 'head-passes' ||
    (check.code === 'ties-and-bows' && check.level === 'stop');
  const closing = dress.wish.steps.find(({ step }) => findStep(step)?.kind === 'closing');
  if (!asks || closing?.step === ZIP) return [];
  const key = closing === undefined ? 'page.fit.repair.add' : 'page.fit.repair.instead';
  return [
    {
      family: ZIP,
      label: { key, values: { step: { word: `${ZIP}.title` } } },
      forAll: false,
      change: (file) => addStep(file, scopeFor(dress), { step: ZIP, as: null }),
    },
  ];
}

const ZIP = 'back-zip';

/** Front and back of her paper that do not fit together: the back is made as the front, or both armholes alike. */
function paperCandidates({ file, child }: FaultyDress, check: Check): readonly Candidate[] {
  if (check.code !== 'seam-lengths' && check.code !== 'corners-run-smooth') return [];
  const ofChild = file.children[child]?.paperBlock !== undefined;
  if (!ofChild && file.paperBlock === undefined) return [];
  const alike = (
    family: string,
    fields: readonly ('armholeDepth' | 'sideWaistLevel' | 'shoulder')[],
    label: Saying,
  ): Candidate => ({
    family,
    label,
    forAll: !ofChild,
    change: (draft) => {
      const paper = ofChild ? draft.children[child]?.paperBlock : draft.paperBlock;
      if (paper !== undefined) for (const field of fields) paper.back[field] = paper.front[field];
    },
  });
  const asFront = (field: 'armholeDepth' | 'sideWaistLevel' | 'shoulder'): Candidate =>
    alike(`paper ${field}`, [field], {
      key: 'page.fit.repair.paper',
      values: { field: { word: `page.block.paper.${field}` } },
    });
  return [
    alike('paper armholeDepth', ['armholeDepth'], { key: 'page.fit.repair.paper-armhole', values: {} }),
    asFront('shoulder'),
    asFront('sideWaistLevel'),
  ];
}

/** Checks that a change of hers can spoil by changing one side of a seam only, or by going too far. */
const SPOILED: readonly Check['code'][] = [
  'seam-lengths',
  'notches-meet',
  'corners-run-smooth',
  'outline-simple',
  'outline-closed',
  'facing-matches',
  'lining-fits',
];

/** The other side of the seam changed alike, or else the change left out; the last change first. */
function ownStepCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  if (!SPOILED.includes(check.code)) return [];
  const own = dress.wish.steps.filter(({ step }) => findStep(step)?.stage === 'own').toReversed();
  const scope = scopeFor(dress);
  const alike = own.flatMap((chosen): readonly Candidate[] => {
    const key = keyOf(chosen);
    if (findStep(key.step)?.params[ALIKE] === undefined || chosen.given[ALIKE] === true) return [];
    return [
      {
        family: 'both sides',
        label: { key: 'page.fit.repair.both-sides', values: { step: nameOf(key) } },
        forAll: false,
        change: (file) => setParam(file, scope, key, ALIKE, true),
      },
    ];
  });
  return [...alike, ...own.map((chosen) => leaveOut(dress, keyOf(chosen)))];
}

const ALIKE = 'alsoOnSeam';

/** Steps that another makes needless. */
function stepCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  if (check.code !== 'facing-matches' || check.level !== 'note') return [];
  return dress.wish.steps
    .filter(({ step }) => step.endsWith('-facing'))
    .map((chosen) => leaveOut(dress, keyOf(chosen)));
}
