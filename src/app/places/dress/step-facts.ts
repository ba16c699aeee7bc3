import type { Param } from '../../../engine/construct/index.ts';
import {
  type DesignStep,
  type DressWish,
  designDress,
  type StepContext,
  stepsBefore,
  tell,
} from '../../../engine/design/index.ts';
import { finestRuler, type UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { inUnits } from '../../parts/shown-length.ts';
import { type Given, keyOf, type StepKey, sameStep } from './dress-list.ts';

export type StepParam = DesignStep['params'][string];

/**
 * What a step finds done when its turn comes: from this its rules and ranges follow. Null while the steps before it
 * can't be drawn. A step that the wish has not is taken as the last.
 */
export function contextOf(wish: DressWish, key: StepKey): StepContext | null {
  const chosen = wish.steps.find((step) => sameStep(keyOf(step), key));
  const before = chosen === undefined ? wish.steps : stepsBefore(wish.steps, chosen);
  const dress = designDress({ ...wish, steps: before });
  return dress.ok ? { body: wish.body, garment: dress.garment } : null;
}

/** What the rule gives, as a field shows it. */
export const ruleValue = (param: Param<StepContext>, context: StepContext): Given => param.rule(context);

/** A value of a parameter as a maker reads it. Lengths of a rule are mm; given ones are read by their field. */
export function valueText(
  step: string,
  name: string,
  param: StepParam,
  value: Given,
  units: UnitSystem,
): string {
  switch (param.kind) {
    case 'length':
      return typeof value === 'number' ? inUnits(value, units) : String(value);
    case 'ratio':
    case 'count':
      return String(Math.round(Number(value) * 100) / 100);
    case 'choice':
      return param.choices.includes(String(value))
        ? tell({ key: `${step}.${name}.${value}`, values: {} }, units)
        : String(value);
    case 'flag':
      return say(value === true ? 'page.dress.yes' : 'page.dress.no', {}, units);
    case 'text':
      return String(value);
  }
}

/** What a field takes, in a sentence; null where there is nothing to say. Ends of lengths lie on marks of the ruler. */
export function rangeSentence(param: StepParam, context: StepContext, units: UnitSystem): string | null {
  switch (param.kind) {
    case 'length': {
      const { step } = finestRuler(units);
      const [from, to] = param.range(context);
      const [least, most] = [Math.ceil(from / step - 1e-6) * step, Math.floor(to / step + 1e-6) * step];
      if (least > most) return say('page.dress.no-room', {}, units);
      return say('page.dress.range', { least: { mm: least }, most: { mm: most } }, units);
    }
    case 'ratio':
    case 'count': {
      const [least, most] = param.range(context);
      return say(
        param.kind === 'count' ? 'page.dress.range.whole' : 'page.dress.range',
        { least, most },
        units,
      );
    }
    case 'choice':
    case 'flag':
    case 'text':
      return null;
  }
}
