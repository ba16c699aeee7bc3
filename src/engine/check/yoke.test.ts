import { describe, expect, test } from 'vitest';
import { goodGarment, goodInput, withEdgePath } from '../../../tests/fixtures/good-garment.ts';
import { curveBetween, linePath, type Path, pathAt, pathEnd, pathStart, rotate } from '../geometry/index.ts';
import {
  edgeOf,
  type Garment,
  type OutlinePlace,
  pieceOf,
  type Seam,
  splitPiece,
  withSplit,
} from '../piece/index.ts';
import { type CheckCode, type CheckInput, checkGarment, type Level } from './index.ts';

/** Level enough that a line from the underarm corner stays below the foot of the armhole. */
const CENTRE = { x: 0, y: 150 };

/** The good dress with its front cut across, from a place of the outline to the fold. */
function withYoke(start: OutlinePlace, draw: (from: Path) => Path, garment = goodGarment()): Garment {
  const front = pieceOf(garment, 'front');
  const from = pathAt(edgeOf(front, start.edge).path, start.at).point;
  const line = draw(linePath(from, CENTRE));
  const to = { edge: 'centre', at: 285 - CENTRE.y };
  const split = splitPiece(front, start, to, line, 'yoke-line', {
    id: 'front-yoke',
    title: { key: 'piece.front-yoke', values: {} },
    cloth: 'yoke',
  });
  const cut = withSplit(garment, front, split);
  const seam: Seam = {
    id: 'yoke-front',
    name: 'yoke',
    a: [{ piece: 'front-yoke', edge: 'yoke-line', times: 2 }],
    b: [{ piece: 'front', edge: 'yoke-line', times: 2, reversed: true }],
    join: { kind: 'flat' },
    // From the underarm corner the line runs between armhole and side, which meet there anyway.
    smoothStart: start.edge !== 'side' || start.at > 0,
    smoothEnd: true,
  };
  return { ...cut, seams: [...cut.seams, seam] };
}

const AT_UNDERARM: OutlinePlace = { edge: 'side', at: 0 };
const ON_ARMHOLE: OutlinePlace = { edge: 'armhole', at: 90 };
const ON_SIDE: OutlinePlace = { edge: 'side', at: 20 };

const straight = (line: Path): Path => line;
const levelAtCentre = (line: Path): Path => {
  const [from, to] = [pathStart(line), pathEnd(line)];
  return curveBetween(from, { x: to.x - from.x, y: to.y - from.y }, to, { x: -1, y: 0 });
};

const input = (garment: Garment): CheckInput => ({ ...goodInput(), garment });
const levels = (garment: Garment, code: CheckCode): Level[] =>
  checkGarment(input(garment)).flatMap((check) => (check.code === code ? [check.level] : []));

const STARTS = [
  ['the underarm corner', AT_UNDERARM],
  ['the armhole', ON_ARMHOLE],
  ['the side seam', ON_SIDE],
] as const;

describe('a dress with a yoke', () => {
  test.each(STARTS)('cut from %s it stays good, straight or curved', (_, start) => {
    for (const draw of [straight, levelAtCentre]) {
      const found = checkGarment(input(withYoke(start, draw)));
      expect(found.filter((check) => check.level !== 'ok')).toEqual([]);
    }
  });

  test.each(STARTS)('cut from %s it has the girths of the dress before', (_, start) => {
    const measures = (garment: Garment) =>
      checkGarment(input(garment))
        .filter((check) => ['chest-ease', 'waist-ease', 'arm-passes', 'head-passes'].includes(check.code))
        .map((check) => (check.measured && 'mm' in check.measured ? check.measured.mm : Number.NaN));
    const before = measures(goodGarment());
    for (const [i, mm] of measures(withYoke(start, straight)).entries())
      expect(mm).toBeCloseTo(before[i] ?? 0, 3);
  });

  test('a straight line makes a point at the centre, which is told and not blamed', () => {
    const found = checkGarment(input(withYoke(ON_ARMHOLE, straight)));
    const points = found.filter((check) => check.say.key === 'check.corners-run-smooth.point');
    expect(points.map((check) => check.where.pieces)).toEqual([['front-yoke'], ['front']]);
    expect(points.map((check) => check.level)).toEqual(['ok', 'ok']);
  });

  test('a curved line that does not arrive level is blamed', () => {
    const garment = withYoke(ON_ARMHOLE, (line) => {
      const [from, to] = [pathStart(line), pathEnd(line)];
      return curveBetween(from, { x: -1, y: 0 }, to, rotate({ x: -1, y: 0 }, 0.15));
    });
    expect(levels(garment, 'corners-run-smooth')).toContain('warn');
  });

  test('a kink of the armhole at the underarm is found across the yoke line that ends there', () => {
    const spoiled = withEdgePath(goodGarment(), 'front', 'armhole', (armhole) =>
      curveBetween(pathStart(armhole), { x: -0.3, y: 1 }, pathEnd(armhole), { x: 1, y: 0.4 }),
    );
    const kinkOf = (garment: Garment) =>
      checkGarment(input(garment))
        .filter((check) => check.code === 'corners-run-smooth' && check.say.values.seam !== undefined)
        .map((check) => check.measured && 'degrees' in check.measured && check.measured.degrees.toFixed(6));
    expect(kinkOf(spoiled).length).toBeGreaterThan(0);
    expect(kinkOf(withYoke(AT_UNDERARM, straight, spoiled))).toEqual(kinkOf(spoiled));
  });

  test('a yoke edge redrawn on one side only no longer agrees', () => {
    const garment = withYoke(ON_ARMHOLE, straight);
    const bent = withEdgePath(garment, 'front-yoke', 'yoke-line', (line) =>
      curveBetween(pathStart(line), { x: -1, y: 0.8 }, pathEnd(line), { x: -1, y: -0.8 }),
    );
    expect(levels(garment, 'seam-lengths')).not.toContain('stop');
    expect(levels(bent, 'seam-lengths')).toContain('stop');
  });
});
