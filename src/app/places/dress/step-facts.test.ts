import { describe, expect, it } from 'vitest';
import { tryDress, withNeeds } from '../../../../tests/dress-of.ts';
import { completeBody } from '../../../engine/body/index.ts';
import { DESIGN_STEPS, type DressWish, hasWords } from '../../../engine/design/index.ts';
import { refusalOf } from './add-step.tsx';
import { listSteps } from './dress-list.ts';
import { contextOf, rangeSentence, ruleValue, valueText } from './step-facts.ts';
import { addableSteps, GROUPS, groupOf, isMeant } from './step-groups.ts';

const completed = completeBody({ ageMonths: 60, measured: {} });
if (!completed.ok) throw new Error('The body is plausible.');

const wishOf = (steps: ReturnType<typeof withNeeds>): DressWish => ({
  body: completed.body,
  block: { kind: 'drafted', given: {} },
  steps: steps.map((step) =>
    typeof step === 'string' ? { step, given: {} } : { step: step[0], given: step[1] },
  ),
  clothWidth: { main: 1400, yoke: 1400, skirt: 1400, lining: 1400, net: 1400, trim: 1400 },
  units: 'in',
  ruler: null,
});

describe('the fields of every step that there is', () => {
  for (const { id, params, words, stage } of DESIGN_STEPS) {
    it(`${id} tells its numbers, their rules and their ranges`, () => {
      const context = contextOf(wishOf(withNeeds(id)), { step: id, as: null });
      if (context === null) throw new Error('What comes before can be drawn.');
      expect(words.title?.length).toBeGreaterThan(2);
      expect(words.about?.length).toBeGreaterThan(10);
      expect(GROUPS).toContain(groupOf({ stage } as (typeof DESIGN_STEPS)[number]));
      for (const [name, param] of Object.entries(params)) {
        expect(hasWords(`${id}.${name}`), name).toBe(true);
        const rule = ruleValue(param, context);
        for (const units of ['in', 'cm'] as const) {
          const text = valueText(id, name, param, rule, units);
          expect(text, name).toMatch(/\S/);
          expect(text, name).not.toMatch(/NaN|undefined|Infinity/);
          const range = rangeSentence(param, context, units);
          const isNumber = param.kind === 'length' || param.kind === 'ratio' || param.kind === 'count';
          expect(range === null, name).toBe(!isNumber);
          expect(range ?? '').not.toMatch(/NaN|undefined|Infinity/);
        }
      }
    });
  }

  it('are found by the words of their names', () => {
    for (const step of DESIGN_STEPS) expect(isMeant(step, step.words.title ?? '?'), step.id).toBe(true);
    const found = (typed: string): readonly string[] =>
      DESIGN_STEPS.filter((step) => isMeant(step, typed)).map(({ id }) => id);
    expect(found('bow')).toEqual(expect.arrayContaining(['tied-bow', 'sewn-bow', 'sleeve-bow']));
    expect(found('Circle')).toContain('circle-skirt');
    expect(found('no such thing')).toEqual([]);
  });
});

describe('what can be added', () => {
  const file = (steps: readonly string[]) =>
    ({ dress: steps.map((step) => ({ step })), children: [] }) as unknown as Parameters<typeof listSteps>[0];

  it('is every step but those that stand there once, each said to take the place of its rival', () => {
    const listed = listSteps(file(['neckline', 'gathered-skirt', 'add-notch']), 'party');
    const addable = addableSteps(listed);
    expect(addable.length).toBe(DESIGN_STEPS.length - 2);
    expect(addable.find(({ known }) => known.id === 'circle-skirt')?.instead?.step).toBe('gathered-skirt');
    expect(addable.some(({ known }) => known.id === 'add-notch')).toBe(true);
  });

  it('is refused with a reason exactly where the dress could not be drawn', () => {
    const steps = ['neckline', 'back-zip', 'gathered-skirt'];
    const addable = addableSteps(listSteps(file(steps), 'party'));
    const refused = addable
      .filter((one) => refusalOf(wishOf(steps), one) !== null)
      .map(({ known }) => known.id);
    expect(refused).toEqual(expect.arrayContaining(['sleeve-band', 'sleeve-extension']));
    for (const { known, instead } of addable) {
      if (known.stage === 'own') continue;
      const drawn = tryDress({ steps: [...steps.filter((step) => step !== instead?.step), known.id] });
      expect(refused.includes(known.id), known.id).toBe(!drawn.ok);
    }
  });
});
