import { describe, expect, it } from 'vitest';
import { type SewPlan, sewPlan } from '../../src/engine/sew/index.ts';
import { dressOf } from '../dress-of.ts';
import { faultsOfPlan } from './judge-plan.ts';

const garment = dressOf({
  steps: [
    'neckline',
    ['waist-darts', { count: 'one', width: '15 mm' }],
    'back-zip',
    ['pleated-skirt', { style: 'knife' }],
    'lining',
    'sewn-bow',
  ],
});
const planned = sewPlan({ garment });
if (!planned.ok) throw new Error('This dress can be sewn.');
const { plan } = planned;

type Steps = SewPlan['steps'];
const judged = (steps: Steps): string => faultsOfPlan(garment, { ...plan, steps }).join('\n');
const without = (...ids: readonly string[]): Steps => plan.steps.filter(({ id }) => !ids.includes(id));
const named = (id: string): Steps => plan.steps.filter((step) => step.id === id);
/** The plan with one step at another place, and nobody asking for what it needs: the judge must see it by itself. */
const moved = (id: string, before: string): Steps =>
  without(id)
    .flatMap((step) => (step.id === before ? [...named(id), step] : [step]))
    .map((step) => ({ ...step, needs: [] }));

describe('the judge of sewing plans', () => {
  it('finds nothing wrong with a plan as it comes', () => {
    expect(judged(plan.steps)).toBe('');
  });

  it.each([
    ['every step in turn backwards', plan.steps.toReversed(), /which it needs/],
    ['a seam left out', without('side', 'sides'), /seam side is sewn 0 times/],
    ['a seam sewn twice', [...named('zip'), ...plan.steps], /seam centre-back is sewn 2 times/],
    ['a hem left out', without('hem-skirt'), /skirt-1\.hem \(hem\) is finished 0 times/],
    ['the neck before the shoulders', moved('neck-lining', 'shoulder'), /neck-lining runs over shoulder/],
    ['the waist before the sides', moved('skirt-waist', 'sides'), /skirt-waist runs over side/],
    ['the waist before its pleats', moved('skirt-waist', 'pleats-skirt-waist'), /before its pleats/],
    ['a dart after the waist', moved('skirt-waist', 'darts-front'), /is sewn before dart-front/],
    ['the sides before the turning', moved('sides', 'turn'), /side is closed before the bodice is turned/],
    [
      'the lining closed before the zip',
      moved('waist-lining', 'zip'),
      /waist-lining is closed before the opening/,
    ],
    ['the zip before the waist', moved('zip', 'skirt-waist'), /skirt-waist comes after the opening/],
    ['the hem before the widths', moved('hem-skirt', 'widths-skirt'), /hem-skirt comes before/],
    [
      'a bow sewn on before it is made',
      moved('sew-on-sewn-bow', 'make-sewn-bow'),
      /comes before make-sewn-bow/,
    ],
  ])('finds %s', (_, steps, said) => {
    expect(judged(steps)).toMatch(said);
  });
});
