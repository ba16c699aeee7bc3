import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed } from '../../../tests/dress-of.ts';
import { checksOf } from '../../../tests/faults-of.ts';
import {
  angleBetween,
  outlineSelfCrossings,
  pathAt,
  pathLength,
  pathStartTangent,
} from '../geometry/index.ts';
import { edgeLength, edgeOf, edgeStart, outlineOf } from '../piece/index.ts';

const AGES = [6, 12, 24, 48, 84, 120, 144];
const degrees = (radians: number): number => (radians * 180) / Math.PI;

const neckOf = (shape: string, id = 'front', ageMonths = 60) =>
  pieceNamed(dressOf({ ageMonths, steps: [['neckline', { shape }]] }), id);

const cornerFindings = (shape: string, ageMonths: number) =>
  checksOf({ ageMonths, steps: [['neckline', { shape }]] }).filter(
    (check) => check.code === 'corners-run-smooth',
  );

describe('a sweetheart neck', () => {
  it('makes a deliberate point at the centre front and no other fault, at every age', () => {
    for (const ageMonths of AGES) {
      const leaving = pathStartTangent(edgeOf(neckOf('sweetheart', 'front', ageMonths), 'neckline').path);
      expect(degrees(angleBetween(leaving, { x: 1, y: 0 }))).toBeGreaterThan(30);
      const found = cornerFindings('sweetheart', ageMonths);
      expect(found.map((check) => check.level)).toEqual(['ok', 'ok']);
      expect(found[1]?.say.key).toBe('check.corners-run-smooth.point');
    }
  });

  it('bulges up into the neck before its corner, so that each half is rounded', () => {
    const heart = edgeOf(neckOf('sweetheart'), 'neckline').path;
    const [first] = heart.segments;
    const middle = pathAt({ segments: [first] }, pathLength({ segments: [first] }) / 2).point;
    const share = (middle.x - first.from.x) / (first.to.x - first.from.x);
    expect(first.from.y + share * (first.to.y - first.from.y) - middle.y).toBeGreaterThan(2);
  });

  it('leaves the back round', () => {
    expect(edgeLength(neckOf('sweetheart', 'back'), 'neckline')).toBeCloseTo(
      edgeLength(neckOf('round', 'back'), 'neckline'),
      9,
    );
  });
});

describe('a boat neck', () => {
  it('takes two fifths of each shoulder, front and back alike, and leaves a strap', () => {
    for (const ageMonths of AGES) {
      for (const id of ['front', 'back']) {
        const plain = edgeLength(pieceNamed(dressOf({ ageMonths }), id), 'shoulder');
        const piece = neckOf('boat', id, ageMonths);
        expect(edgeLength(piece, 'shoulder')).toBeCloseTo(plain * 0.6, 1);
        expect(edgeLength(piece, 'shoulder')).toBeGreaterThan(20);
        expect(outlineSelfCrossings(outlineOf(piece))).toEqual([]);
      }
      expect(cornerFindings('boat', ageMonths).map((check) => check.level)).toEqual(['ok']);
    }
  });

  it('is shallower for its width than a round neck, and its back still dips below the neck points', () => {
    const ratio = (shape: string): number =>
      edgeStart(neckOf(shape), 'neckline').y / edgeStart(neckOf(shape), 'shoulder').x;
    expect(ratio('boat')).toBeLessThan(ratio('round') * 0.8);
    const back = neckOf('boat', 'back');
    expect(edgeStart(back, 'neckline').y - edgeStart(back, 'shoulder').y).toBeGreaterThan(9.9);
  });

  it('is wider still when more is asked for', () => {
    const asked = dressOf({ steps: [['neckline', { shape: 'boat', widen: '50 mm' }]] });
    const plain = dressOf({});
    expect(edgeLength(pieceNamed(plain, 'front'), 'shoulder') - 50).toBeCloseTo(
      edgeLength(pieceNamed(asked, 'front'), 'shoulder'),
      6,
    );
  });
});
