import { describe, expect, it } from 'vitest';
import { dressOf, type Wish } from '../../../tests/dress-of.ts';
import { makeCutPieces, type OwnAllowances } from '../cut/index.ts';
import { tell } from '../design/index.ts';
import type { Garment } from '../piece/index.ts';
import { batchSteps } from './batch.ts';
import { handPlan } from './hand-order.ts';
import { stepTimes } from './minutes.ts';
import { type SewPlan, type SewPlanResult, sewPlan } from './sew-plan.ts';

type Steps = NonNullable<Wish['steps']>;
const SLEEVELESS: Steps = ['back-zip', ['circle-skirt', { part: 'half' }], 'lining'];
const SLEEVED: Steps = ['set-in-sleeve', ...SLEEVELESS];

const label = () => ({ title: 'Piece', cutting: 'Cut 1', child: 'Ada', size: '', date: '' });

function planned(garment: Garment, own: OwnAllowances = {}): SewPlanResult {
  return sewPlan({ garment, cut: makeCutPieces(garment, { own, label }) });
}

function planOf(garment: Garment): SewPlan {
  const result = planned(garment);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.plan;
}

describe('what can’t be sewn', () => {
  it('says which edge has nothing to turn, and how much it takes', () => {
    const garment = dressOf({ steps: ['gathered-skirt'] });
    const result = planned(garment, { table: { hem: 0 } });
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.problems.map((problem) => tell(problem, 'cm'))).toEqual([
      expect.stringMatching(
        /^This can not be finished: nothing closes the hem line of Skirt front and Skirt back, .* at least 0\.6 cm/,
      ),
    ]);
  });

  it('says which seam has too little cloth outside it', () => {
    const garment = dressOf({ steps: ['gathered-skirt'] });
    const result = planned(garment, { table: { side: 1 } });
    expect(result.ok || tell(result.problems[0] ?? { key: '', values: {} }, 'cm')).toMatch(
      /^This can not be sewn: there is too little cloth outside the stitching line at the side of Front/,
    );
  });
});

describe('an order of her own', () => {
  const garment = dressOf({ steps: SLEEVELESS });
  const plan = planOf(garment);
  const ids = plan.steps.map(({ id }) => id);

  it('breaks nothing while it is the plan’s', () => {
    const { steps, broken } = handPlan({ garment }, plan, { order: ids, leftOut: [] });
    expect(steps).toEqual(plan.steps);
    expect(broken).toEqual([]);
  });

  it('tells what comes before what it needs, and keeps every step', () => {
    const order = ['zip', ...ids.filter((id) => id !== 'zip')];
    const { steps, broken } = handPlan({ garment }, plan, { order, leftOut: [] });
    expect(steps.map(({ id }) => id)).toEqual(order);
    expect(broken.map(({ step }) => step)).toContain('zip');
    expect(broken.every(({ say }) => say.key === 'sew.breaks.later')).toBe(true);
  });

  it('tells what stays open when a step is left out', () => {
    const { steps, leftOut, broken } = handPlan({ garment }, plan, {
      order: [],
      leftOut: ['hem-skirt', 'gone'],
    });
    expect(steps).toHaveLength(plan.steps.length);
    expect([...leftOut]).toEqual(['hem-skirt']);
    expect(broken.map(({ say }) => tell(say, 'in'))).toEqual([
      expect.stringMatching(/is left out\. It stays open: hem line of Skirt front and Skirt back\./),
    ]);
  });

  it('puts a step that is new behind the one before it in the plan', () => {
    const order = ids.filter((id) => id !== 'turn').toReversed();
    const { steps } = handPlan({ garment }, plan, { order, leftOut: [] });
    const here = steps.findIndex(({ id }) => id === 'turn');
    expect(steps[here - 1]?.id).toBe(ids[ids.indexOf('turn') - 1]);
  });
});

describe('the batches of a party', () => {
  it('hold every step of every child once, and no child’s needs are broken', () => {
    const lists = [SLEEVELESS, SLEEVED, SLEEVELESS].map((steps) => planOf(dressOf({ steps })).steps);
    const batches = batchSteps(lists);
    const done = lists.map(() => new Set<string>());
    for (const { items } of batches) {
      for (const { child, step } of items)
        for (const need of step.needs) expect(done[child]?.has(need), need).toBe(true);
      for (const { child, step } of items) {
        expect(done[child]?.has(step.id)).toBe(false);
        done[child]?.add(step.id);
      }
    }
    expect(done.map(({ size }) => size)).toEqual(lists.map(({ length }) => length));
    const shoulders = batches.find(({ id }) => id === 'shoulder shoulder');
    expect(shoulders?.items).toHaveLength(3);
    expect(batches.length).toBeLessThan(lists.flat().length / 2);
  });
});

describe('her own times', () => {
  const zip = (minutes: number) => ({ kind: 'zip' as const, minutes, estimate: 28 });

  it('take the place of the estimate', () => {
    const garment = dressOf({ steps: SLEEVELESS });
    const result = sewPlan({ garment }, stepTimes([zip(56), zip(56)]));
    if (!result.ok) throw new Error('This dress can be sewn.');
    const step = result.plan.steps.find(({ id }) => id === 'zip');
    expect(step).toMatchObject({ minutes: 56, estimate: 28, from: 'own-times' });
    expect(result.plan.steps.find(({ id }) => id === 'turn')?.from).toBe('estimate');
  });

  it('leave out the quickest and the slowest, so one interrupted afternoon changes little', () => {
    expect(stepTimes([zip(28), zip(28), zip(30), zip(400)]).zip?.factor).toBeCloseTo(29 / 28, 9);
  });

  it('pass over what is no time', () => {
    expect(stepTimes([zip(0), zip(Number.NaN), zip(-3)])).toEqual({});
  });
});
