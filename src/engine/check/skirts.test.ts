import { describe, expect, it } from 'vitest';
import { dressOf, type Wish } from '../../../tests/dress-of.ts';
import { changePiece } from '../../../tests/fixtures/good-garment.ts';
import { completeBody } from '../body/index.ts';
import { linePath, pathEnd, pathMap, pathStart } from '../geometry/index.ts';
import { edgeOf, type Garment, reshape } from '../piece/index.ts';
import { type Check, type CheckCode, checkGarment } from './index.ts';

/** Checks of skirts on dresses as they are designed, and spoiled on purpose. */

function found(code: CheckCode, garment: Garment, ageMonths = 60): readonly Check[] {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('No such child.');
  const bounds = { chestEase: [20, 60], waistEase: [20, 60] } as const;
  return checkGarment({ garment, body: completed.body, bounds }).filter((check) => check.code === code);
}

const levels = (code: CheckCode, garment: Garment, ageMonths?: number): readonly string[] =>
  found(code, garment, ageMonths).map((check) => check.level);

const skirt = (...steps: NonNullable<Wish['steps']>): Garment => dressOf({ steps, clothWidth: 700 });

/** A piece stretched across, seams and all. */
const stretched = (garment: Garment, id: string, by: number): Garment =>
  changePiece(garment, id, (piece) =>
    reshape(
      piece,
      Object.fromEntries(
        piece.edges.map((edge) => [edge.name, pathMap(edge.path, { a: by, b: 0, c: 0, d: 1, e: 0, f: 0 })]),
      ),
    ),
  );

describe('joins of a pleated skirt', () => {
  it('lie under pleats of every style', () => {
    for (const style of ['knife', 'box', 'inverted'])
      expect(levels('pleat-joins', skirt(['pleated-skirt', { style }]))).toEqual(['ok']);
  });

  it('are seen when a width is cut 20 mm too narrow, but not when it is 2 mm', () => {
    const dress = skirt('pleated-skirt');
    const narrower = (by: number) =>
      changePiece(dress, 'skirt-1', (piece) => {
        const waist = edgeOf(piece, 'waist').path;
        const end = { x: pathEnd(waist).x - by, y: 0 };
        const foot = { x: end.x, y: pathStart(edgeOf(piece, 'hem').path).y };
        return reshape(piece, {
          waist: linePath(pathStart(waist), end),
          right: linePath(end, foot),
          hem: linePath(foot, pathEnd(edgeOf(piece, 'hem').path)),
        });
      });
    expect(levels('pleat-joins', narrower(2))).toEqual(['ok']);
    expect(levels('pleat-joins', narrower(20))).toEqual(['warn']);
  });

  it('are not asked for where there is only one width', () => {
    expect(levels('pleat-joins', dressOf({ clothWidth: 4000, steps: ['pleated-skirt'] }))).toEqual([]);
  });
});

describe('tiers', () => {
  it('match, one finding for each seam between two of them', () => {
    expect(levels('tiers-match', skirt(['tiered-skirt', { tiers: 4 }]))).toEqual(['ok', 'ok', 'ok']);
  });

  it('do not match when only the front of one is cut wider', () => {
    const dress = stretched(skirt('tiered-skirt'), 'skirt-tier-2-front', 1.1);
    expect(levels('tiers-match', dress)).toEqual(['warn', 'warn']);
  });
});

describe('walking room', () => {
  const straight = (ratio: number, length: string) =>
    dressOf({ steps: ['back-zip', ['gathered-skirt', { ratio, length }]] });

  it('a gathered skirt to the knee is wide enough at every age', () => {
    for (const age of [12, 48, 96, 144])
      expect(levels('hem-walks', dressOf({ ageMonths: age, steps: ['gathered-skirt'] }), age)).toEqual([
        'ok',
      ]);
  });

  it('a hem that does at the knee is too narrow at the floor', () => {
    expect(levels('hem-walks', straight(1.5, '30 cm'))).toEqual(['ok']);
    expect(levels('hem-walks', straight(1.5, '58 cm'))).toEqual(['warn']);
    expect(levels('hem-walks', straight(2.6, '58 cm'))).toEqual(['ok']);
  });

  it('a hem narrower than the hips stops', () => {
    const dress = straight(1.2, '30 cm');
    const narrow = stretched(stretched(dress, 'skirt-front', 0.6), 'skirt-back', 0.6);
    expect(levels('hem-walks', narrow)).toEqual(['stop']);
  });

  it('says nothing of a bodice without a skirt', () => {
    expect(levels('hem-walks', dressOf({}))).toEqual([]);
  });
});
