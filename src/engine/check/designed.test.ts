import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changePiece, withEdgePath } from '../../../tests/fixtures/good-garment.ts';
import { completeBody } from '../body/index.ts';
import { designDress, tell } from '../design/index.ts';
import { pathExtend, pathLength } from '../geometry/index.ts';
import { edgeOf, type Garment, pieceOf } from '../piece/index.ts';
import { type CheckCode, type CheckInput, checkGarment, type Level } from './index.ts';

/** The checks on dresses as the design steps make them, spoiled afterwards. */

interface Wish {
  readonly ageMonths: number;
  readonly steps: readonly string[];
  readonly given?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

function designed({ ageMonths, steps, given = {} }: Wish): CheckInput {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('No such child.');
  const { body } = completed;
  const dress = designDress({
    body,
    block: { kind: 'drafted', given: {} },
    steps: steps.map((step) => ({ step, given: given[step] ?? {} })),
    clothWidth: { main: 1400, yoke: 1400, skirt: 1400, lining: 1400, net: 1400, trim: 1400 },
    units: 'cm',
    ruler: null,
  });
  if (!dress.ok) throw new Error(`Refused: ${JSON.stringify(dress.problems)}`);
  return { garment: dress.garment, body, bounds: { chestEase: [20, 60], waistEase: [20, 60] } };
}

const SKIRTS = ['gathered-skirt', 'pleated-skirt', 'circle-skirt'] as const;
const sleeveless = (skirt: string, ageMonths = 60): CheckInput =>
  designed({ ageMonths, steps: ['back-zip', skirt, 'lining'] });

const levels = (input: CheckInput, code: CheckCode): Level[] =>
  checkGarment(input).flatMap((check) => (check.code === code ? [check.level] : []));
const spoil = (input: CheckInput, change: (garment: Garment) => Garment): CheckInput => ({
  ...input,
  garment: change(input.garment),
});

const AGES = [12, 36, 72, 120] as const;

describe('checks of designed dresses', () => {
  test.each(SKIRTS)('a lined, zipped dress with a %s fits together at every age', (skirt) => {
    for (const age of AGES) {
      const wrong = checkGarment(sleeveless(skirt, age)).filter((check) => check.level === 'stop');
      expect(wrong.map((check) => tell(check.say, 'cm'))).toEqual([]);
    }
  });

  test.each(SKIRTS)('every finding on a %s can be said with the words of the design steps', (skirt) => {
    for (const check of checkGarment(sleeveless(skirt))) {
      expect(tell(check.say, 'in')).not.toMatch(/[{}]|undefined|NaN/);
      if (check.todo !== null) expect(tell(check.todo, 'in')).not.toMatch(/[{}]|undefined|NaN/);
    }
  });

  test.each(SKIRTS)('waist notches moved round the ring of a %s are caught', (skirt) => {
    const good = sleeveless(skirt);
    const [panel] = good.garment.pieces.filter(
      (p) => p.cloth === 'skirt' && p.notches.some((n) => n.edge === 'waist'),
    );
    if (panel === undefined) throw new Error('A skirt has a notched piece.');
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 18 }), (by) => {
        const moved = spoil(good, (garment) =>
          changePiece(garment, panel.id, (p) => ({
            ...p,
            notches: p.notches.map((n) => (n.edge === 'waist' ? { ...n, at: n.at + by } : n)),
          })),
        );
        expect(levels(good, 'notches-meet')).toEqual(['ok']);
        expect(levels(moved, 'notches-meet')).toContain('stop');
      }),
      { seed: 7, numRuns: 10 },
    );
  });

  test.each(SKIRTS)('a panel of a %s cut 20 mm too wide at the waist is caught', (skirt) => {
    const good = sleeveless(skirt);
    const panel = good.garment.pieces.find((p) => p.cloth === 'skirt');
    if (panel === undefined) throw new Error('A dress has a skirt.');
    const wide = spoil(good, (garment) =>
      withEdgePath(garment, panel.id, 'waist', (p) => pathExtend(p, { end: 20 })),
    );
    expect(levels(good, 'seam-lengths')).not.toContain('stop');
    expect(levels(wide, 'seam-lengths')).toContain('stop');
  });

  test('one of two shoulders is measured, and the whole waist', () => {
    const { garment, ...rest } = sleeveless('gathered-skirt');
    const found = checkGarment({ garment, ...rest }).filter((check) => check.code === 'seam-lengths');
    const told = (key: string): unknown =>
      found.find((check) => JSON.stringify(check.say.values.seam).includes(key))?.say.values.lengthA;
    const along = (piece: string, edge: string): number =>
      pathLength(edgeOf(pieceOf(garment, piece), edge).path);
    expect(told('seam.shoulder')).toEqual({ mm: along('front', 'shoulder') });
    expect(told('seam.skirt-waist')).toEqual({
      mm: expect.closeTo(2 * (along('front', 'waist') + along('back', 'waist')), 6),
    });
  });

  test('where the shoulder runs on over the arm, a low underarm and a wide opening are notes at most', () => {
    for (const ageMonths of AGES) {
      for (const finish of ['cap-rounded', 'short', 'straight']) {
        const input = designed({
          ageMonths,
          steps: ['drop-shoulder', 'back-zip', 'pleated-skirt'],
          given: { 'drop-shoulder': { finish } },
        });
        expect(levels(input, 'chest-ease')).toEqual(['ok']);
        for (const code of ['armhole-depth', 'armhole-ratio'] as const) {
          const found = checkGarment(input).filter((check) => check.code === code);
          for (const { say, level } of found) {
            if (/low|wide/.test(say.key)) expect(level).toBe('note');
          }
        }
      }
    }
  });

  test('a waist seam above the waist is compared with the body at its level', () => {
    const steps = ['waist-level', 'back-zip', 'gathered-skirt'];
    const raised = (raise: string): number => {
      const found = checkGarment(designed({ ageMonths: 96, steps, given: { 'waist-level': { raise } } }));
      const body = found.find((check) => check.code === 'waist-ease')?.say.values.body;
      return typeof body === 'object' && 'mm' in body ? body.mm : Number.NaN;
    };
    expect(raised('0')).toBeCloseTo(designed({ ageMonths: 96, steps }).body.values.waistGirth.mm, 6);
    expect(raised('40 mm')).toBeGreaterThan(raised('20 mm'));
    expect(raised('20 mm')).toBeGreaterThan(raised('0'));
  });
});
