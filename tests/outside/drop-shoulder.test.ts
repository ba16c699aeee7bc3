import { describe, expect, it } from 'vitest';
import type { OwnBlock, OwnHalf } from '../../src/engine/block/index.ts';
import { pathNearest } from '../../src/engine/geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart } from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf, pieceNamed } from '../dress-of.ts';

/** A paper block for age one as makers measure it: straight armhole 3 1/2 in, hollowed 1/2 in at its middle. */
const half = (neckDepth: number, shoulderFall: number): OwnHalf => ({
  neckWidth: inches(1.75),
  neckDepth: inches(neckDepth),
  shoulder: inches(2.25),
  shoulderFall: inches(shoulderFall),
  armholeDepth: inches(3.5),
  armholeHollow: inches(0.5),
  chestWidth: inches(5),
  waistWidth: inches(4.75),
  sideWaistLevel: inches(7.75),
  centreLength: inches(7.75 - neckDepth),
});
const own: OwnBlock = { front: half(2, 0.75), back: half(0.5, 0.75), seamIncluded: 0, closingIncluded: 0 };
const block = { kind: 'own', own, fits: null } as const;

/** The arm for which the cap's published 2 in holds, mm. */
const measured = { upperArmGirth: 142 };

describe('drop shoulder at age one (check values: common practice, no source)', () => {
  const plain = pieceNamed(dressOf({ ageMonths: 12, measured, block }), 'front');
  const tip = edgeEnd(plain, 'shoulder');
  const inch = (mm: number): number => mm / 25.4;
  const capOf = (finish: string) =>
    pieceNamed(dressOf({ ageMonths: 12, measured, block, steps: [['drop-shoulder', { finish }]] }), 'front');

  it('the plain armhole is hollowed 1/2 in at the middle of its 3 1/2 in', () => {
    const middle = { x: tip.x - inches(0.5), y: tip.y + inches(1.75) };
    expect(pathNearest(edgeOf(plain, 'armhole').path, middle).distance).toBeLessThan(0.01);
    expect(inch(edgeEnd(plain, 'armhole').y - tip.y)).toBeCloseTo(3.5, 6);
  });

  for (const finish of ['cap-pointed', 'cap-rounded', 'short', 'straight']) {
    it(`${finish}: the outer edge begins 1 1/2 in down and 2 in out from the shoulder tip`, () => {
      const top = edgeEnd(capOf(finish), 'overarm');
      expect(inch(top.y - tip.y)).toBeCloseTo(1.5, 6);
      expect(inch(top.x - tip.x)).toBeCloseTo(2, 6);
    });
  }

  it('pointed cap: the outer edge runs down as far as the cap height, 2 in, to the armhole line', () => {
    const corner = { x: tip.x + inches(2), y: tip.y + inches(3.5) };
    expect(pathNearest(edgeOf(capOf('cap-pointed'), 'sleeve-edge').path, corner).distance).toBeLessThan(1e-6);
  });

  it('short sleeve: in 1/2 and down 1/2 in, then 3 1/2 in again, hollowed 3/4 in at its middle', () => {
    const piece = capOf('short');
    const edge = edgeOf(piece, 'sleeve-edge').path;
    const turn = { x: tip.x + inches(1.5), y: tip.y + inches(2) };
    expect(pathNearest(edge, turn).distance).toBeLessThan(1e-6);
    const hollow = { x: turn.x - inches(0.75), y: turn.y + inches(1.75) };
    expect(pathNearest(edge, hollow).distance).toBeLessThan(0.01);
    expect(inch(edgeStart(piece, 'side').y - turn.y)).toBeCloseTo(3.5, 2);
  });

  it('yoke: the front line rises 1 in to the centre, the back runs straight across', () => {
    const dress = dressOf({ ageMonths: 12, measured, block, steps: [['yoke', { below: '15 mm' }]] });
    const front = edgeOf(pieceNamed(dress, 'front-yoke'), 'yoke-line').path;
    const back = edgeOf(pieceNamed(dress, 'back-yoke'), 'yoke-line').path;
    const rise = (path: typeof front) => path.segments[0].from.y - (path.segments.at(-1)?.to.y ?? 0);
    expect(inch(rise(front))).toBeCloseTo(1, 6);
    expect(rise(back)).toBeCloseTo(0, 6);
  });
});

describe('back zip', () => {
  it('a concealed zip is bought 1 1/2 in longer than the opening at least (8 in gave 6 1/2: sewing notes)', () => {
    const dress = dressOf({ steps: ['back-zip', 'gathered-skirt'] });
    const closing = dress.closing;
    if (closing === null || !('zipLength' in closing)) throw new Error('The dress must have a zip.');
    expect(closing.zipLength - closing.openingLength).toBeGreaterThanOrEqual(inches(1.5));
    expect(closing.zipLength % 50).toBe(0);
  });
});
