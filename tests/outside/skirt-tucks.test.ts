import { describe, expect, it } from 'vitest';
import { makeCutPieces } from '../../src/engine/cut/index.ts';
import { pathStart } from '../../src/engine/geometry/index.ts';
import { edgeLength } from '../../src/engine/piece/index.ts';
import { dressOf, pieceNamed, type Wish } from '../dress-of.ts';

const skirt = (...more: NonNullable<Wish['steps']>) =>
  pieceNamed(
    dressOf({ ageMonths: 120, steps: [['gathered-skirt', { length: '20 in' }], ...more] }),
    'skirt-front',
  );

/** Levels of the lines of one kind above the cut-out hem line, in, from the lowest up. */
const levels = (piece: ReturnType<typeof skirt>, kind: string): readonly number[] =>
  piece.markings
    .filter((marking) => marking.kind === kind)
    .map((marking) => (edgeLength(piece, 'right') - pathStart(marking.path).y) / 25.4)
    .sort((a, b) => a - b);

describe('growth tucks against published sums', () => {
  it("one tuck 3/4 in deep takes up 1 1/2 in (a maker's page on growth tucks, 2 March 2014; geometry)", () => {
    const tucked = skirt(['growth-tuck', { tucks: 1, tuckDepth: '3/4 in' }]);
    expect((edgeLength(tucked, 'right') - edgeLength(skirt(), 'right')) / 25.4).toBeCloseTo(1.5, 9);
    const [low, high] = levels(tucked, 'pleat-meet');
    expect((high ?? 0) - (low ?? 0)).toBeCloseTo(1.5, 9);
  });

  it('1/2 in tucks above a 4 in hem, the second fold 1 in from the first stitching (the same page)', () => {
    const tucked = skirt(['growth-tuck', { tucks: 2, tuckDepth: '1/2 in', above: '4 in' }]);
    const [lowFold, highFold] = levels(tucked, 'pleat-fold');
    const stitching = levels(tucked, 'pleat-meet');
    // Sewn, the fold hangs down by its depth from its stitching: the lowest to the top of the hem.
    expect((stitching[0] ?? 0) - 0.5).toBeCloseTo(4, 9);
    expect(lowFold).toBeCloseTo(5, 9);
    // The second stitching, less what the first tuck has taken, and less its own depth: where its fold hangs.
    expect((stitching[2] ?? 0) - 1 - 0.5 - (stitching[0] ?? 0)).toBeCloseTo(1, 9);
    expect(highFold).toBeCloseTo(7.5, 9);
  });
});

describe('growth hems against published depths', () => {
  const LABEL = { title: '', cutting: '', child: '', size: '', date: '' };
  const hem = (...steps: NonNullable<Wish['steps']>): number | undefined =>
    makeCutPieces(dressOf({ ageMonths: 120, steps }), { label: () => LABEL }).find(
      (cut) => cut.piece.id === 'skirt-front',
    )?.allowances.hem;

  it('4 in on a straight gathered skirt, 5 in where it is asked for (3-5 in, the same page)', () => {
    expect((hem('gathered-skirt', 'growth-hem') ?? 0) / 25.4).toBeCloseTo(4, 9);
    expect((hem('gathered-skirt', ['growth-hem', { hemDepth: '5 in' }]) ?? 0) / 25.4).toBeCloseTo(5, 9);
  });

  it('1 1/2 in on a flared skirt (T. Johnson, It is Fun to Sew)', () => {
    expect((hem('a-line-skirt') ?? 0) / 25.4).toBeCloseTo(1.5, 9);
  });
});
