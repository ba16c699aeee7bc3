import type { BlockProblem, OwnBlockProblem } from '../block/index.ts';
import type { BodyProblem } from '../body/index.ts';
import { problemSaying } from '../body/index.ts';
import type { ParamProblem } from '../construct/index.ts';
import type { DesignProblem, SkippedChange } from '../design/index.ts';
import { finestRuler, type UnitSystem } from '../units/index.ts';
import type { Saying, WordKey, WordValue } from '../words/index.ts';
import type { Finding } from './finding.ts';
import type { OrderChild, PlacedStep } from './order.ts';
import type { OrderPath } from './path.ts';
import { aboutField, aboutPlace, fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';

/** Why a child's measurements can't be drafted from, at the field to look at. */
export function bodyProblem(child: OrderChild, problem: BodyProblem): OrderProblem {
  const path: OrderPath =
    problem.measure === null || problem.measure === 'age'
      ? child.path
      : problem.measure === 'weight'
        ? [...child.path, 'weight']
        : [...child.path, 'measures', problem.measure];
  return aboutPlace({ child: child.name, path }, problemSaying(problem, child.name));
}

/** Why a child's dress can't be drawn, at the line of the order that asks for it. */
export function dressProblem(child: OrderChild, problem: DesignProblem, units: UnitSystem): OrderProblem {
  switch (problem.of) {
    case 'block':
      return blockProblem(child, problem.problem, units);
    case 'param': {
      const placed = placedStep(child, problem);
      const { param } = problem.problem;
      const path = placed?.paths[param] ?? placed?.path ?? child.path;
      return paramProblem({ child: child.name, path, ...namesOf(problem) }, problem.problem, units);
    }
    case 'body': {
      const path = placedStep(child, problem)?.path ?? child.path;
      return aboutField({ child: child.name, path, ...namesOf(problem) }, problem.problem);
    }
    case 'unknown-step':
    case 'two-of-a-kind':
      throw new Error('The steps of an order are checked when it is read.');
  }
}

/** The step that a problem is about, found as the maker tells it apart. */
type Named = Pick<SkippedChange, 'step' | 'as'>;

const placedStep = (child: OrderChild, { step, as }: Named): PlacedStep | undefined =>
  child.steps.find((placed) => placed.step === step && (placed.as ?? null) === as);

const namesOf = ({ step, as }: Named): Pick<OrderPlace, 'step' | 'as'> =>
  as === null ? { step } : { step, as };

/** A change of hers that this child's dress does without, as one of the things to look at. */
export function skippedFinding(child: OrderChild, change: SkippedChange): Finding {
  const path = placedStep(child, change)?.path ?? child.path;
  const { say } = aboutField({ child: child.name, path, ...namesOf(change) }, change.problem);
  const todo: Saying = { key: 'order.change-left-out' satisfies WordKey, values: {} };
  return { code: change.problem.key, level: 'warn', say, todo };
}

function blockProblem(child: OrderChild, problem: BlockProblem, units: UnitSystem): OrderProblem {
  const { path, paths } = child.block;
  switch (problem.of) {
    case 'param': {
      const at = paths[problem.problem.param] ?? [...path, problem.problem.param];
      return paramProblem({ child: child.name, path: at }, problem.problem, units);
    }
    case 'own':
      return fieldProblem(
        { child: child.name, path: [...path, problem.problem.half] },
        ...ownBlockWords(problem.problem),
      );
    case 'body':
      return fieldProblem({ child: child.name, path }, `order.block.${problem.code}`, {
        half: half(problem.half),
      });
  }
}

const half = (side: 'front' | 'back'): WordValue => ({ word: `order.half.${side}` satisfies WordKey });

function ownBlockWords(problem: OwnBlockProblem): [WordKey, Readonly<Record<string, WordValue>>] {
  switch (problem.code) {
    case 'shoulder-too-short':
      return [
        'order.block.shoulder-too-short',
        { shoulder: { mm: problem.shoulder }, fall: { mm: problem.fall } },
      ];
    case 'tip-outside-chest':
      return [
        'order.block.own-tip-outside-chest',
        { tip: { mm: problem.tip }, chest: { mm: problem.chest } },
      ];
    case 'no-side-left':
      return [
        'order.block.no-side-left',
        { underarm: { mm: problem.underarm }, waist: { mm: problem.waist } },
      ];
    case 'neck-too-deep':
      return [
        'order.block.neck-too-deep',
        { depth: { mm: problem.depth }, underarm: { mm: problem.underarm } },
      ];
    case 'allowance-too-wide':
      return ['order.block.allowance-too-wide', { allowance: { mm: problem.allowance } }];
  }
}

function paramProblem(at: OrderPlace, problem: ParamProblem, units: UnitSystem): OrderProblem {
  if (problem.code !== 'out-of-range') throw new Error('Given numbers are read when the order is.');
  const [least, most] = problem.isLength ? onRuler(problem.range, units) : problem.range;
  const told = (n: number): WordValue => (problem.isLength ? { mm: n } : n);
  const values = { value: told(problem.value), least: told(least), most: told(most) };
  return fieldProblem(at, least <= most ? 'order.param.out-of-range' : 'order.param.no-room', values);
}

/** The range as it can be told: on whole marks of the ruler, and no wider than it is, so that its ends are taken. */
function onRuler([least, most]: readonly [number, number], units: UnitSystem): readonly [number, number] {
  const { step } = finestRuler(units);
  const inner = [Math.ceil(least / step - 1e-6) * step, Math.floor(most / step + 1e-6) * step] as const;
  return inner[0] <= inner[1] ? inner : [least, most];
}
