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

/** Reads the steps of one list: each is known, stands once, and shares its kind with no other that is worn. */
export function readSteps({ steps, at }: StepList, units: UnitSystem): ReadSteps {
  const problems: OrderProblem[] = [];
  const read: SwitchedStep[] = [];
  for (const [i, { step: id, off = false, ...rest }] of steps.entries()) {
    const path = [...at.path, 'dress', i];
    const step = findStep(id);
    const here: OrderPlace = { ...at, path, step: id };
    if (step === undefined) {
      problems.push(unknownStep({ ...at, path: [...path, 'step'] }, id));
      continue;
    }
    const rival = read.find(
      (other) => other.step === id || (!off && !other.off && sameKind(other.step, step)),
    );
    if (rival !== undefined) problems.push(twoOfAKind(here, rival.step, step));
    const given: GivenParams = rest;
    problems.push(...givenProblems(step.params, given, here, units, ['off']));
    const paths = Object.fromEntries(Object.keys(given).map((name) => [name, [...path, name]]));
    read.push({ step: id, given, off, path, paths });
  }
  return { steps: read, problems };
}

/**
 * The dress of one child: the order's, with her own list over it. Her numbers replace the order's one by one, `off`
 * leaves a step out, a step that the order has not is added, and one of the same kind takes the place of the order's
 * (her own skirt instead of the party's). A step that her list names is worn unless it says off.
 */
export function mergeSteps(
  party: readonly SwitchedStep[],
  own: readonly SwitchedStep[],
  at: OrderPlace,
): { readonly steps: readonly PlacedStep[]; readonly problems: readonly OrderProblem[] } {
  const problems: OrderProblem[] = [];
  const merged = new Map(party.map((step) => [step.step, step]));
  for (const step of own) {
    const before = merged.get(step.step);
    if (step.off && before === undefined) {
      problems.push(
        fieldProblem({ ...at, path: step.path, step: step.step }, 'order.step.off-absent', {
          step: titleOf(step.step),
        }),
      );
    }
    const known = findStep(step.step);
    if (!step.off && known !== undefined) {
      for (const id of merged.keys()) if (id !== step.step && sameKind(id, known)) merged.delete(id);
    }
    merged.set(step.step, {
      ...step,
      given: { ...before?.given, ...step.given },
      paths: { ...before?.paths, ...step.paths },
    });
  }
  const steps = [...merged.values()].filter(({ off }) => !off).map(({ off: _, ...step }) => step);
  return { steps, problems };
}

const titleOf = (step: string): { readonly word: string } => ({ word: `${step}.title` });

const sameKind = (id: string, step: DesignStep): boolean => findStep(id)?.kind === step.kind;

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
