import { describe, expect, it } from 'vitest';
import { dressOf } from '../../../tests/dress-of.ts';
import { completeBody } from '../body/index.ts';
import type { Garment } from '../piece/index.ts';
import { type Check, checkGarment } from './index.ts';

const findings = (garment: Garment, ageMonths: number): readonly Check[] => {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('The body must be complete.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  return checkGarment({ garment, body: completed.body, bounds }).filter((c) => c.code === 'cap-ease');
};

const levelOf = (capEase: string, ageMonths: number): string | undefined =>
  findings(dressOf({ ageMonths, steps: [['set-in-sleeve', { capEase }]] }), ageMonths)[0]?.level;

describe('cap ease (0-1.5 cm small sizes, up to 2 cm at 10-12: common practice; from 1 in on gathers)', () => {
  it('passes at both ends of the range of a small size', () => {
    expect(levelOf('0 mm', 48)).toBe('ok');
    expect(levelOf('15 mm', 48)).toBe('ok');
    expect(levelOf('16 mm', 48)).toBe('note');
  });

  it('allows 2 cm from ten years on', () => {
    expect(levelOf('20 mm', 119)).toBe('note');
    expect(levelOf('20 mm', 120)).toBe('ok');
    expect(levelOf('21 mm', 144)).toBe('note');
  });

  it('stops at a cap shorter than its armhole and asks for gathers from an inch on', () => {
    const dress = dressOf({ steps: ['set-in-sleeve'] });
    const spoiled = (ease: number): Garment => ({
      ...dress,
      seams: dress.seams.map((seam) =>
        seam.name === 'sleeve-cap' ? { ...seam, join: { kind: 'eased', ease } } : seam,
      ),
    });
    expect(findings(spoiled(-4), 60)[0]?.level).toBe('stop');
    expect(findings(spoiled(25.5), 60)[0]?.level).toBe('warn');
    expect(findings(spoiled(25.5), 60)[0]?.measured).toEqual({ mm: 25.5 });
  });

  it('says nothing of a dress without sleeves', () => {
    expect(findings(dressOf({}), 60)).toEqual([]);
  });
});
