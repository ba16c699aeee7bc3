import { describe, expect, it } from 'vitest';
import { type PlannedStep, type SewPlan, sewPlan } from '../../src/engine/sew/index.ts';
import { dressOf, type Wish } from '../dress-of.ts';

function planOf(wish: Wish): SewPlan {
  const planned = sewPlan({ garment: dressOf(wish) });
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return planned.plan;
}

/** The places of these steps in the list, by id or, for a whole group, by kind; each must be there. */
function placesOf({ steps }: SewPlan, names: readonly string[]): readonly number[] {
  return names.map((name) => {
    const at = steps.findIndex(({ id, kind }) => id === name || kind === name);
    if (at < 0) throw new Error(`No step ${name} among ${steps.map(({ id }) => id).join(', ')}`);
    return at;
  });
}

function comesInOrder(plan: SewPlan, ...names: readonly string[]): void {
  const places = placesOf(plan, names);
  expect(places, names.join(' < ')).toEqual(places.toSorted((a, b) => a - b));
}

const step = ({ steps }: SewPlan, name: string): PlannedStep | undefined =>
  steps.find(({ id, kind }) => id === name || kind === name);

const SLEEVELESS: NonNullable<Wish['steps']> = ['back-zip', ['circle-skirt', { part: 'half' }], 'lining'];

describe('published orders of assembly', () => {
  it('lined sleeveless bodice: shoulders, neck, armholes, turned, then the sides (a maker’s page, January 2013)', () => {
    comesInOrder(
      planOf({ steps: SLEEVELESS }),
      'shoulder',
      'neck-lining',
      'armhole-lining',
      'turn',
      'sides',
      'skirt-waist',
      'zip',
      'fell-opening',
    );
  });

  it('a shoulder too narrow to turn through: neck and armholes first, shoulders last (a maker’s page, 15 August 2011)', () => {
    const plan = planOf({
      measured: { shoulderLength: 55 },
      steps: [['neckline', { widen: '30 mm' }], ...SLEEVELESS],
    });
    comesInOrder(plan, 'neck-lining', 'armhole-lining', 'turn', 'shoulder');
    expect(step(plan, 'shoulder')?.reasons.map(({ key }) => key)).toEqual(['sew.why.shoulders-last']);
    expect(step(plan, 'neck-lining')?.inParts).toBe(true);
  });

  it('neck and understitching come before the zip (a maker’s page, 26 July 2017)', () => {
    comesInOrder(planOf({ steps: SLEEVELESS }), 'neck-lining', 'understitch-neck-lining', 'zip');
    comesInOrder(
      planOf({ steps: ['back-zip', 'gathered-skirt', 'neck-facing'] }),
      'facing-neck',
      'understitch-facing-neck',
      'zip',
    );
  });

  it('a concealed zip goes in before its seam is closed (a maker’s page on concealed zips)', () => {
    comesInOrder(
      planOf({ steps: [['back-zip', { way: 'concealed' }], 'gathered-skirt'] }),
      'zip',
      'close-below',
    );
    comesInOrder(
      planOf({ steps: [['back-zip', { way: 'centred' }], 'gathered-skirt'] }),
      'close-below',
      'zip',
    );
  });

  it('a circle hangs from its waist before it is levelled and hemmed (Texas extension bulletin L-359)', () => {
    const plan = planOf({ steps: SLEEVELESS });
    comesInOrder(plan, 'skirt-waist', 'hem-skirt');
    expect(step(plan, 'hem-skirt')?.reasons.map(({ key }) => key)).toContain('sew.why.curved-hem');
  });

  it('net skirt and lining skirt are gathered and sewn in passes of their own (a maker’s diary, part 8)', () => {
    const plan = planOf({ steps: ['back-zip', 'gathered-skirt', 'net-overskirt', 'lining'] });
    const waists = plan.steps.filter(({ sews }) =>
      sews.some((seam) => /^(skirt|overskirt|lining-skirt).*-waist$/.test(seam)),
    );
    expect(waists.length).toBeGreaterThanOrEqual(3);
    for (const { id, sews } of waists) {
      expect(sews).toHaveLength(1);
      comesInOrder(plan, `gather-${id}`, id);
    }
  });

  it('curves are staystitched, straight grain is not (Oregon State University circular)', () => {
    const { sideA = [] } = step(planOf({ steps: ['neckline', 'gathered-skirt'] }), 'staystitch') ?? {};
    expect(sideA.map(({ edge }) => edge)).toContain('neckline');
    expect(sideA.map(({ piece }) => piece)).not.toContain('skirt-front');
  });

  it('pleats that are pressed to the edge are hemmed first (common practice, no source)', () => {
    comesInOrder(
      planOf({ steps: ['back-zip', 'pleated-skirt'] }),
      'widths',
      'hem-skirt',
      'pleats',
      'skirt-waist',
    );
  });
});

describe('how long makers say it takes', () => {
  it('a lined dress with a net skirt took about 11 hours with pattern and cutting (a maker’s page, 15 August 2011)', () => {
    const plan = planOf({ steps: ['back-zip', 'gathered-skirt', 'net-overskirt', 'lining', 'sash'] });
    expect(plan.minutes).toBeGreaterThan(5 * 60);
    expect(plan.minutes).toBeLessThan(11 * 60);
  });
});
