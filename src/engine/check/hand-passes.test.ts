import { describe, expect, it } from 'vitest';
import { dressOf } from '../../../tests/dress-of.ts';
import { completeBody } from '../body/index.ts';
import type { Garment, Piece } from '../piece/index.ts';
import { type Check, checkGarment } from './index.ts';

const findings = (garment: Garment): readonly Check[] => {
  const completed = completeBody({ ageMonths: 60, measured: { wristGirth: 130 } });
  if (!completed.ok) throw new Error('The body must be complete.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  return checkGarment({ garment, body: completed.body, bounds }).filter((c) => c.code === 'hand-passes');
};

const bishop = (given: Record<string, string>): Garment =>
  dressOf({ measured: { wristGirth: 130 }, steps: [['bishop-sleeve', given]] });

const spoil = (garment: Garment, change: (sleeve: Piece) => Piece): Garment => ({
  ...garment,
  pieces: garment.pieces.map((piece) => (piece.id === 'sleeve' ? change(piece) : piece)),
});

describe('hand passes (hand taken as the wrist and 5 cm: common practice, no source)', () => {
  it('a cuff of 15.5 cm opens by both sides of its slit of 6 cm', () => {
    const [found, ...more] = findings(bishop({ end: 'cuff', cuffEase: '25 mm', slit: '60 mm' }));
    expect(more).toEqual([]);
    expect(found?.level).toBe('ok');
    expect(found?.measured).toEqual({ mm: 155 + 120 });
  });

  it('the same cuff without a slit stops the hand', () => {
    const closed = spoil(bishop({ end: 'cuff', cuffEase: '25 mm' }), (sleeve) => ({
      ...sleeve,
      markings: [],
    }));
    expect(findings(closed).map((c) => [c.level, c.measured])).toEqual([['stop', { mm: 155 }]]);
  });

  it('elastic lets the hand through as far as the cloth of the sleeve end goes', () => {
    const dress = bishop({ end: 'elastic' });
    expect(findings(dress).map((c) => c.level)).toEqual(['ok']);
    const narrow = spoil(dress, (sleeve) => ({
      ...sleeve,
      edges: sleeve.edges.map((edge) =>
        edge.name === 'sleeve-edge'
          ? {
              ...edge,
              path: { segments: [{ kind: 'line', from: { x: 85, y: 300 }, to: { x: -85, y: 300 } }] },
            }
          : edge,
      ),
    }));
    expect(findings(narrow).map((c) => [c.level, c.measured])).toEqual([['stop', { mm: 170 }]]);
  });

  it('says nothing of short sleeves', () => {
    expect(
      findings(dressOf({ measured: { wristGirth: 130 }, steps: [['puff-sleeve', { end: 'elastic' }]] })),
    ).toEqual([]);
  });
});

describe('arm passes a sleeve that something is sewn to', () => {
  const armOf = (garment: Garment): readonly Check['measured'][] => {
    const completed = completeBody({ ageMonths: 60, measured: { upperArmGirth: 180 } });
    if (!completed.ok) throw new Error('The body must be complete.');
    const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
    return checkGarment({ garment, body: completed.body, bounds })
      .filter((c) => c.code === 'arm-passes')
      .map((c) => c.measured);
  };
  const measured = { upperArmGirth: 180 };

  it('asks the band, not the gathered end above it', () => {
    const dress = dressOf({ measured, steps: [['puff-sleeve', { bandEase: '30 mm' }]] });
    expect(armOf(dress)).toHaveLength(2);
    expect(armOf(dress)[1]).toEqual({ mm: 210 });
  });

  it('does not ask the arm to pass at the wrist', () => {
    expect(armOf(dressOf({ measured, steps: [['bishop-sleeve', { end: 'elastic' }]] }))).toHaveLength(1);
  });
});
