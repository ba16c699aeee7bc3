import type { GivenParams } from '../construct/index.ts';
import { DESIGN_STEPS, type DesignStep, findStep } from '../design/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { givenProblems } from './given-params.ts';
import { nearest } from './nearest.ts';
import type { PlacedStep } from './order.ts';
import { fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import type { StepFile } from './schema.ts';

/** A list of steps as one place of the file gives it. */
interface StepList {
  readonly steps: readonly StepFile[];
  readonly at: OrderPlace;
}

export interface ReadSteps {
  readonly steps: readonly SwitchedStep[];
  readonly problems: readonly OrderProblem[];
}

interface SwitchedStep extends PlacedStep {
  readonly off: boolean;
}

/**
 * Reads the steps of one list: each is known, stands once, and shares its kind with no other that is worn. A step
 * without a kind may stand several times: from the second on each has a name of its own, by which it is found.
 */
export function readSteps({ steps, at }: StepList, units: UnitSystem): ReadSteps {
  const problems: OrderProblem[] = [];
  const read: SwitchedStep[] = [];
  for (const [i, { step: id, as: named, off = false, ...rest }] of steps.entries()) {
    const path = [...at.path, 'dress', i];
    const step = findStep(id);
    const as = named?.trim().normalize('NFC');
    const placed = as === undefined ? { step: id } : { step: id, as };
    const here: OrderPlace = { ...at, path, ...placed };
    if (step === undefined) {
      problems.push(unknownStep({ ...at, path: [...path, 'step'] }, id));
      continue;
    }
    const rival = read.find(
      (other) => keyOf(other) === keyOf(placed) || (!off && !other.off && sameKind(other.step, step)),
    );
    if (as !== undefined && step.kind !== null) problems.push(fieldProblem(here, 'order.step.as-once'));
    else if (rival !== undefined && step.kind === null) problems.push(sameName(here, as));
    else if (rival !== undefined) problems.push(twoOfAKind(here, rival.step, step));
    const given: GivenParams = rest;
    problems.push(...givenProblems(step.params, given, here, units, ['as', 'off']));
    const paths = Object.fromEntries(Object.keys(given).map((name) => [name, [...path, name]]));
    read.push({ ...placed, given, off, path, paths });
  }
  return { steps: read, problems };
}

/**
 * The dress of one child: the order's, with her own list over it. Her numbers replace the order's one by one, `off`
 * leaves a step out, a step that the order has not is added, and one of the same kind takes the place of the order's
 * (her own skirt instead of the party's). A step that may stand several times is found by its name too. A step that her list names is worn unless it says off.
 */
export function mergeSteps(
  party: readonly SwitchedStep[],
  own: readonly SwitchedStep[],
  at: OrderPlace,
): ReadSteps {
  const problems: OrderProblem[] = [];
  const merged = new Map(party.map((step) => [keyOf(step), step]));
  for (const step of own) {
    const before = merged.get(keyOf(step));
    // The order's own list may keep a step for later; in a child's list there is nothing to leave out.
    if (step.off && before === undefined && at.child !== null) {
      problems.push(
        fieldProblem({ ...at, ...namesOf(step), path: step.path }, 'order.step.off-absent', {
          step: titleOf(step.step),
        }),
      );
    }
    const known = findStep(step.step);
    if (!step.off && known !== undefined) {
      for (const [key, other] of merged)
        if (other.step !== step.step && sameKind(other.step, known)) merged.delete(key);
    }
    merged.set(keyOf(step), {
      ...step,
      given: { ...before?.given, ...step.given },
      paths: { ...before?.paths, ...step.paths },
    });
  }
  return { steps: [...merged.values()], problems };
}

/** The steps of a list that are not switched off. */
export const wornSteps = (steps: readonly SwitchedStep[]): readonly PlacedStep[] =>
  steps.filter(({ off }) => !off).map(({ off: _, ...step }) => step);

const titleOf = (step: string): { readonly word: string } => ({ word: `${step}.title` });

const sameKind = (id: string, step: DesignStep): boolean =>
  step.kind !== null && findStep(id)?.kind === step.kind;

/** By what one list finds the step that another means. */
const keyOf = ({ step, as = '' }: Pick<PlacedStep, 'step' | 'as'>): string =>
  findStep(step)?.kind === null ? `${step} ${as}` : step;

const namesOf = ({ step, as }: PlacedStep): Pick<OrderPlace, 'step' | 'as'> =>
  as === undefined ? { step } : { step, as };

const sameName = (at: OrderPlace, as: string | undefined): OrderProblem =>
  as === undefined
    ? fieldProblem(at, 'order.step.needs-as')
    : fieldProblem({ ...at, path: [...at.path, 'as'] }, 'order.step.as-twice', { as });

function unknownStep(at: OrderPlace, found: string): OrderProblem {
  const known = DESIGN_STEPS.map((step) => step.id);
  const near = nearest(found, known);
  return near === null
    ? fieldProblem(at, 'order.step.unknown', { found, known: known.join(', ') })
    : fieldProblem(at, 'order.step.unknown.near', { found, near });
}

function twoOfAKind(at: OrderPlace, first: string, second: DesignStep): OrderProblem {
  const values = { first: titleOf(first), second: titleOf(second.id) };
  return fieldProblem(at, first === second.id ? 'order.step.twice' : 'order.step.same-kind', values);
}
