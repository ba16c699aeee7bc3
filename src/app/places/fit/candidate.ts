import type { Draft } from 'immer';
import type { DressWish } from '../../../engine/design/index.ts';
import type { Finding, OrderFile, OrderProblem } from '../../../engine/order/index.ts';
import type { Saying, WordValue } from '../../../engine/words/index.ts';
import type { ParamRef } from '../../table/index.ts';
import { setBlockParam } from '../block/block-of.ts';
import { setParam, switchStep } from '../dress/change-dress.ts';
import type { StepKey } from '../dress/dress-list.ts';
import type { Scope } from '../scope.ts';

/** Something that is wrong with a child's dress: what a check found, or why it can't be drawn. */
export type Fault =
  | { readonly of: 'finding'; readonly finding: Finding }
  | { readonly of: 'problem'; readonly problem: OrderProblem };

/** A change that may mend a fault. Whether it does is found by trying it, see `mends.ts`. */
export interface Candidate {
  /** Of candidates of one family at most one is offered, the first that mends. */
  readonly family: string;
  readonly label: Saying;
  /** It touches what other children wear as well. */
  readonly forAll: boolean;
  readonly change: (file: Draft<OrderFile>) => void;
}

/** A dress with something wrong in it. */
export interface FaultyDress {
  readonly file: OrderFile;
  readonly child: number;
  readonly wish: DressWish;
  readonly fault: Fault;
}

/** Repairs of a number are for the child that needs them. */
export const scopeFor = ({ file, child }: FaultyDress): Scope => (file.children.length > 1 ? child : 'party');

export const childName = ({ file, child }: FaultyDress): string => file.children[child]?.name ?? '';

/** What the number is called where all numbers of the dress are meant. */
export const fieldWord = (ref: ParamRef): WordValue =>
  ref.of === 'block' ? { word: `page.block.${ref.param}` } : stepField(ref.step, ref.param);

const stepField = (step: string, param: string): Saying => ({
  key: 'page.fit.repair.field-of-step',
  values: { step: { word: `${step}.title` }, field: { word: `${step}.${param}` } },
});

/** Gives a number of the block or of a step, or takes it back (`undefined`). */
export function setNumber(
  file: Draft<OrderFile>,
  scope: Scope,
  ref: ParamRef,
  value: string | number | undefined,
): void {
  if (ref.of === 'step') setParam(file, scope, ref, ref.param, value);
  else setBlockParam(file, scope, ref.param, value);
}

export function leaveOut(dress: FaultyDress, key: StepKey): Candidate {
  const scope = scopeFor(dress);
  const step = nameOf(key);
  return {
    family: 'leave out',
    label:
      scope === 'party'
        ? { key: 'page.fit.repair.leave-out', values: { step } }
        : { key: 'page.fit.repair.leave-out-of', values: { step, child: childName(dress) } },
    forAll: false,
    change: (file) => switchStep(file, scope, key, false),
  };
}

/** A step as its sentence calls it. */
export const nameOf = ({ step, as }: StepKey): Saying =>
  as === null
    ? { key: `${step}.title`, values: {} }
    : { key: 'page.dress.step.named', values: { step: { word: `${step}.title` }, name: as } };
