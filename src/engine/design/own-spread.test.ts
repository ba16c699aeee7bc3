import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, tryDress } from '../../../tests/dress-of.ts';
import { AGES, faults, findings, leftOut, type Steps } from '../../../tests/own-changes.ts';
import {
  angleBetween,
  outlineArea,
  pathAt,
  pathEndTangent,
  pathLength,
  pathStartTangent,
} from '../geometry/index.ts';
import { edgeLength, edgeOf, outlineOf, type Piece } from '../piece/index.ts';

const made = (ageMonths: number, steps: Steps) => {
  const dress = tryDress({ ageMonths, steps });
  if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
  expect(dress.skipped, `${ageMonths} months`).toEqual([]);
  return dress.garment;
};

/** The sharpest turn inside an edge, degrees; flat curves turn a little between places 1 mm apart. */
function sharpestTurn(piece: Piece, name: string): number {
  const { path } = edgeOf(piece, name);
  let sharpest = 0;
  for (let at = 1; at < pathLength(path); at++) {
    const turn = angleBetween(pathAt(path, at - 1).tangent, pathAt(path, at).tangent);
    sharpest = Math.max(sharpest, (turn * 180) / Math.PI);
  }
  return sharpest;
}

describe('slash and spread', () => {
  it('hinged, opens one edge and keeps every other as long as it was', () => {
    for (const ageMonths of AGES) {
      const [before, after] = [
        made(ageMonths, []),
        made(ageMonths, [['slash-and-spread', { by: '30 mm' }]]),
      ].map((dress) => pieceNamed(dress, 'front'));
      if (before === undefined || after === undefined) throw new Error('There are two fronts.');
      for (const { name } of before.edges.filter((edge) => edge.name !== 'waist'))
        expect(edgeLength(after, name), name).toBeCloseTo(edgeLength(before, name), 5);
      const wider = edgeLength(after, 'waist') - edgeLength(before, 'waist');
      expect(wider).toBeGreaterThan(25);
      expect(wider).toBeLessThan(35);
      expect(sharpestTurn(after, 'waist')).toBeLessThan(8);
      expect(sharpestTurn(after, 'shoulder')).toBeLessThan(8);
      expect(outlineArea(outlineOf(after))).toBeGreaterThan(outlineArea(outlineOf(before)));
    }
  });

  it('parallel along the fold, adds length to side and centre alike', () => {
    const given = { piece: 'skirt-front', from: 'side', to: 'centre', by: '40 mm', way: 'parallel' };
    const dress = made(60, [
      'circle-skirt',
      ['slash-and-spread', { ...given, fromShare: 0.5, toShare: 0.5 }],
    ]);
    const before = made(60, ['circle-skirt']);
    const [is, was] = [pieceNamed(dress, 'skirt-front'), pieceNamed(before, 'skirt-front')];
    expect(edgeLength(is, 'centre') - edgeLength(was, 'centre')).toBeCloseTo(40, 6);
  });

  it('draws a curve out as a whole: it stays smooth and meets its corners as before', () => {
    for (const ageMonths of AGES) {
      const given = { to: 'neckline', way: 'parallel', by: '15 mm' };
      const [before, after] = [made(ageMonths, []), made(ageMonths, [['slash-and-spread', given]])].map(
        (dress) => pieceNamed(dress, 'front'),
      );
      if (before === undefined || after === undefined) throw new Error('There are two fronts.');
      expect(sharpestTurn(after, 'neckline')).toBeLessThan(5);
      for (const tangent of [pathStartTangent, pathEndTangent]) {
        const [was, is] = [before, after].map((piece) => tangent(edgeOf(piece, 'neckline').path));
        expect(is).toEqual({ x: expect.closeTo(was?.x ?? 0, 9), y: expect.closeTo(was?.y ?? 0, 9) });
      }
    }
  });

  it('leaves the seam to be told, or gathers the wider edge to it', () => {
    for (const ageMonths of AGES) {
      const steps = (seam: string): Steps => [
        'circle-skirt',
        [
          'slash-and-spread',
          { piece: 'skirt-front', from: 'waist', to: 'hem', by: '60 mm', way: 'parallel', seam },
        ],
      ];
      expect(faults(made(ageMonths, steps('as-it-is')), ageMonths).join()).toContain('Waist');
      const gathered = made(ageMonths, steps('gathered'));
      const join = gathered.seams.find(({ id }) => id === 'skirt-waist')?.join;
      expect(join).toMatchObject({ kind: 'gathered' });
      // Only the front has become wider, so the notches of the ring no longer meet, and that is told.
      expect(faults(gathered, ageMonths).filter((fault) => !fault.includes('notches'))).toEqual([]);
    }
  });

  it('gathers a shell to its lining, which is no longer held against the trim', () => {
    for (const from of ['neckline', 'armhole']) {
      const given = { piece: 'front', from, to: 'waist', seam: 'gathered' };
      const dress = dressOf({ ageMonths: 6, steps: ['lining', ['slash-and-spread', given]] });
      const ofLining = dress.seams.filter(({ a }) => a.some(({ piece }) => piece.endsWith('-lining')));
      expect(ofLining.map(({ join }) => join.kind)).toContain('gathered');
      expect(findings(dress, 6).join()).not.toContain('trim explains');
    }
  });

  it('refuses to start from a corner', () => {
    expect(leftOut([['slash-and-spread', { fromShare: 0, to: 'neckline' }]])).toContain('corner');
  });
});

describe('a tuck more', () => {
  it('keeps every seam as long as it was', () => {
    const cases: readonly [Record<string, string | number>, Steps][] = [
      [{}, []],
      [{}, ['gathered-skirt', 'lining']],
      [{ piece: 'back', depth: '4 mm' }, ['back-zip', 'circle-skirt']],
      [{ piece: 'front', from: 'side', to: 'centre' }, []],
    ];
    for (const ageMonths of AGES)
      for (const [given, steps] of cases) {
        const dress = made(ageMonths, [...steps, ['add-tuck', given]]);
        expect(faults(dress, ageMonths), `${ageMonths} ${given.from}`).toEqual([]);
      }
  });

  it('takes up twice its depth, and marks its fold in the middle', () => {
    const front = pieceNamed(dressOf({ steps: [['add-tuck', { depth: '8 mm' }]] }), 'front');
    for (const side of ['in', 'out']) expect(edgeLength(front, `waist-tuck-${side}`)).toBeCloseTo(8, 6);
    expect(front.markings.map(({ kind }) => kind)).toEqual(['pleat-meet', 'pleat-fold', 'pleat-meet']);
  });
});
