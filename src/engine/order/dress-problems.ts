import type { BlockProblem, OwnBlockProblem } from '../block/index.ts';
import type { BodyProblem } from '../body/index.ts';
import { problemSaying } from '../body/index.ts';
import type { ParamProblem } from '../construct/index.ts';
import type { DesignProblem } from '../design/index.ts';
import type { WordKey, WordValue } from '../words/index.ts';
import { notAChoice, unknownField } from './form-problems.ts';
import type { OrderChild } from './order.ts';
import type { OrderPath } from './path.ts';
import { aboutField, aboutPlace, fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { shown } from './shown.ts';

/** Why a child's measurements can't be drafted from, at the field to look at. */
export function bodyProblem(child: OrderChild, problem: BodyProblem): OrderProblem {
  const path: OrderPath =
    problem.measure === null || problem.measure === 'age'
      ? child.path
      : [...child.path, 'measures', problem.measure];
  return aboutPlace({ child: child.name, path }, problemSaying(problem, child.name));
}

/** Why a child's dress can't be drawn, at the line of the order that asks for it. */
export function dressProblem(child: OrderChild, problem: DesignProblem): OrderProblem {
  switch (problem.of) {
    case 'block':
      return blockProblem(child, problem.problem);
    case 'param': {
      const placed = child.steps.find(({ step }) => step === problem.step);
      const { param } = problem.problem;
      const path = placed?.paths[param] ?? placed?.path ?? child.path;
      return paramProblem({ child: child.name, path, step: problem.step }, problem.problem);
    }
    case 'body': {
      const path = child.steps.find(({ step }) => step === problem.step)?.path ?? child.path;
      return aboutField({ child: child.name, path, step: problem.step }, problem.problem);
    }
    case 'unknown-step':
    case 'two-of-a-kind':
      throw new Error('The steps of an order are checked when it is read.');
  }
}

function blockProblem(child: OrderChild, problem: BlockProblem): OrderProblem {
  const { path, paths } = child.block;
  switch (problem.of) {
    case 'param': {
      const at = paths[problem.problem.param] ?? [...path, problem.problem.param];
      return paramProblem({ child: child.name, path: at }, problem.problem);
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
  const side = half(problem.half);
  switch (problem.code) {
    case 'shoulder-too-short':
      return [
        'order.block.shoulder-too-short',
        { half: side, shoulder: { mm: problem.shoulder }, fall: { mm: problem.fall } },
      ];
    case 'tip-outside-chest':
      return [
        'order.block.own-tip-outside-chest',
        { half: side, tip: { mm: problem.tip }, chest: { mm: problem.chest } },
      ];
    case 'no-side-left':
      return [
        'order.block.no-side-left',
        { half: side, underarm: { mm: problem.underarm }, waist: { mm: problem.waist } },
      ];
    case 'neck-too-deep':
      return [
        'order.block.neck-too-deep',
        { half: side, depth: { mm: problem.depth }, underarm: { mm: problem.underarm } },
      ];
    case 'allowance-too-wide':
      return ['order.block.allowance-too-wide', { half: side, allowance: { mm: problem.allowance } }];
  }
}

function paramProblem(at: OrderPlace, problem: ParamProblem): OrderProblem {
  switch (problem.code) {
    case 'unknown-param':
      return unknownField(at, problem.param, problem.known);
    case 'unreadable':
      return fieldProblem(at, `order.param.${problem.wants}`, { found: shown(problem.given), choices: '' });
    case 'not-a-choice':
      return notAChoice(at, problem.given, problem.choices);
    case 'out-of-range': {
      const [least, most] = problem.range;
      const told = (n: number): WordValue => (problem.isLength ? { mm: n } : n);
      const values = { value: told(problem.value), least: told(least), most: told(most) };
      return fieldProblem(at, least <= most ? 'order.param.out-of-range' : 'order.param.no-room', values);
    }
  }
}
