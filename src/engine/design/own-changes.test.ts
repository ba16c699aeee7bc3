import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, tryDress } from '../../../tests/dress-of.ts';
import { AGES, allowancesOf, faults, findings, leftOut, type Steps } from '../../../tests/own-changes.ts';
import {
  distance,
  midpoint,
  outlineArea,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
} from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, type Garment, outlineOf } from '../piece/index.ts';
import { DESIGN_STEPS, tell } from './index.ts';

describe('every change of her own', () => {
  for (const step of DESIGN_STEPS.filter(({ stage }) => stage === 'own')) {
    it(`${step.id} is made at every age, and told`, () => {
      for (const ageMonths of AGES) {
        const dress = tryDress({ ageMonths, steps: [step.id] });
        if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
        expect(dress.skipped, `${ageMonths} months`).toEqual([]);
        expect(dress.garment).not.toEqual(dressOf({ ageMonths }));
      }
    });
  }

  it('is left out where it cannot be made, and the dress goes on', () => {
    const dress = tryDress({
      steps: [
        ['add-notch', { piece: 'sleeve', edge: 'hem' }],
        ['rename-piece', { name: 'Bodice' }],
      ],
    });
    if (!dress.ok) throw new Error('A change of hers ended the dress.');
    expect(dress.skipped).toMatchObject([{ step: 'add-notch', as: null }]);
    expect(tell(pieceNamed(dress.garment, 'front').title, 'cm')).toBe('Bodice');
  });

  it('names the pieces and edges that there are', () => {
    expect(leftOut([['add-notch', { piece: 'frnt' }]])).toContain('front, back');
    expect(leftOut([['add-notch', { edge: 'sde' }]])).toContain('neckline, shoulder, armhole, side');
  });
});

describe('move a corner', () => {
  it('moves it as far as asked, and both edges follow', () => {
    const given = { edge: 'waist', end: 'start', down: '12 mm', out: '7 mm' };
    const [before, after] = [dressOf({}), dressOf({ steps: [['move-point', given]] })].map((dress) =>
      pieceNamed(dress, 'front'),
    );
    if (before === undefined || after === undefined) throw new Error('There are two fronts.');
    const [was, is] = [edgeEnd(before, 'side'), edgeEnd(after, 'side')];
    expect([is.x - was.x, is.y - was.y]).toEqual([expect.closeTo(7, 6), expect.closeTo(12, 6)]);
    expect(pathStart(edgeOf(after, 'waist').path)).toEqual(is);
    expect(pathEnd(edgeOf(after, 'waist').path)).toEqual(edgeEnd(before, 'waist'));
  });

  it('leaves a seam to be told that no longer fits, or changes the sewn edge alike', () => {
    const given = { edge: 'side', end: 'end', down: '12 mm', out: '7 mm' };
    for (const ageMonths of AGES) {
      const alone = dressOf({ ageMonths, steps: [['move-point', given]] });
      expect(faults(alone, ageMonths)).toEqual([expect.stringContaining('Side seam')]);
      const both = dressOf({ ageMonths, steps: [['move-point', { ...given, alsoOnSeam: true }]] });
      expect(faults(both, ageMonths)).toEqual([]);
    }
  });

  it('moves a line that cuts two pieces apart as one', () => {
    const given = { piece: 'front', edge: 'yoke-line', end: 'start', down: '9 mm', alsoOnSeam: true };
    const dress = dressOf({ steps: ['yoke', ['move-point', { ...given, up: '0' }]] });
    expect(faults(dress)).toEqual([]);
    expect(edgeLength(pieceNamed(dress, 'front'), 'yoke-line')).toBeCloseTo(
      edgeLength(pieceNamed(dress, 'front-yoke'), 'yoke-line'),
      6,
    );
  });

  it('moves by a share of the edge on every body', () => {
    const given = { edge: 'waist', end: 'end', down: '0', downShare: 0.1 };
    for (const ageMonths of AGES) {
      const [before, after] = [
        dressOf({ ageMonths }),
        dressOf({ ageMonths, steps: [['move-point', given]] }),
      ];
      const by =
        edgeEnd(pieceNamed(after, 'front'), 'waist').y - edgeEnd(pieceNamed(before, 'front'), 'waist').y;
      expect(by).toBeCloseTo(edgeLength(pieceNamed(before, 'front'), 'waist') / 10, 6);
    }
  });

  it('keeps the fold straight and the outline whole', () => {
    expect(leftOut([['move-point', { out: '5 mm' }]])).toContain('fold');
    expect(leftOut([['move-point', { edge: 'shoulder', down: '300 mm' }]])).toContain('cross itself');
    expect(leftOut([['move-point', { down: '0' }]])).toContain('stay where it is');
    expect(leftOut([['move-point', { edge: 'neckline', end: 'start', alsoOnSeam: true }]])).toContain(
      'sewn flat',
    );
  });
});

describe('bend a curve', () => {
  it('keeps both ends and bends a straight edge outward', () => {
    const [before, after] = [
      dressOf({}),
      dressOf({ steps: [['move-handle', { edge: 'shoulder', end: 'start', turn: 20 }]] }),
    ].map((dress) => edgeOf(pieceNamed(dress, 'front'), 'shoulder').path);
    if (before === undefined || after === undefined) throw new Error('There are two shoulders.');
    expect(pathEnd(after)).toEqual(pathEnd(before));
    // The neck end of a shoulder bent outward comes to lie higher.
    expect(pathAt(after, 20).point.y).toBeLessThan(pathAt(before, 20).point.y - 2);
  });
});

describe('allowance of one edge', () => {
  it('goes round the cut piece at that edge only', () => {
    const dress = dressOf({ steps: [['change-edge-allowance', { edge: 'side', allowance: '17 mm' }]] });
    expect(allowancesOf(dress, 'front')).toMatchObject({ side: 17, shoulder: 10 });
    expect(allowancesOf(dress, 'back')).toMatchObject({ side: 25 });
    expect(leftOut([['change-edge-allowance', { edge: 'centre' }]])).toContain('fold');
  });
});

describe('a notch more', () => {
  it('meets its mate on whatever is sewn there', () => {
    const cases: readonly [Record<string, string | number>, Steps][] = [
      [{ piece: 'front', edge: 'side', share: 0.3 }, ['yoke']],
      [{ piece: 'front', edge: 'waist', share: 0.7 }, ['gathered-skirt']],
      [{ piece: 'back', edge: 'waist', share: 0.2 }, ['circle-skirt', 'back-zip']],
      [{ piece: 'sleeve', edge: 'cap-front', share: 0.4 }, ['set-in-sleeve']],
      [{ piece: 'back', edge: 'shoulder', share: 0.5 }, ['drop-shoulder', 'lining']],
    ];
    for (const ageMonths of AGES)
      for (const [given, steps] of cases) {
        const dress = dressOf({ ageMonths, steps: [...steps, ['add-notch', given]] });
        expect(faults(dress, ageMonths), `${ageMonths} ${given.edge}`).toEqual([]);
        const marks = dress.pieces.flatMap(({ notches }) =>
          notches.filter(({ match }) => match === 'own-notch'),
        );
        expect(marks.length).toBeGreaterThanOrEqual(2);
      }
  });

  it('stands a distance from the start, and not at a corner', () => {
    const dress = dressOf({ steps: [['add-notch', { share: 0, further: '40 mm' }]] });
    expect(pieceNamed(dress, 'front').notches.map(({ at }) => at)).toContain(40);
    expect(leftOut([['add-notch', { share: 0 }]])).toContain('corner');
    expect(leftOut([['add-notch', { share: 1, further: '40 mm' }]])).toContain('only');
  });
});

describe('split a piece', () => {
  it('keeps both sides of the line equal, and every seam that was there', () => {
    const cases: readonly [Record<string, string | number>, Steps][] = [
      [{}, []],
      [{ from: 'yoke-line' }, ['gathered-skirt', 'yoke', 'lining']],
      [{ piece: 'front', from: 'side', fromShare: 0.5, to: 'centre', toShare: 0.4 }, ['circle-skirt']],
      [
        { piece: 'back', from: 'armhole', fromShare: 0.4, to: 'waist', bow: '8 mm', bows: 'right' },
        ['back-zip'],
      ],
      [{ piece: 'sleeve', from: 'cap-front', to: 'sleeve-edge', toShare: 0.4 }, ['set-in-sleeve']],
      [{ piece: 'skirt-front', from: 'waist', to: 'hem', toShare: 0.5 }, ['circle-skirt']],
    ];
    for (const ageMonths of AGES)
      for (const [given, steps] of cases) {
        const before = dressOf({ ageMonths, steps });
        const dress = tryDress({ ageMonths, steps: [...steps, ['split-along', given]] });
        if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
        expect(dress.skipped, `${ageMonths} ${given.piece}`).toEqual([]);
        expect(faults(dress.garment, ageMonths)).toEqual([]);
        expect(findings(dress.garment, ageMonths), `${ageMonths} ${given.piece}`).toEqual(
          findings(before, ageMonths),
        );
        expect(dress.garment.pieces.length).toBe(before.pieces.length + 1);
        const ids = dress.garment.seams.map(({ id }) => id);
        expect(ids).toEqual([...before.seams.map(({ id }) => id), 'own-seam']);
      }
  });

  it('cuts the part that leaves the fold as a pair, in a cloth and under a name of hers', () => {
    const dress = dressOf({ steps: [['split-along', { name: 'side panel', cloth: 'net' }]] });
    const part = pieceNamed(dress, 'front-part');
    expect(part.cutting).toEqual({ as: 'pair', copies: 2 });
    expect(part.cloth).toBe('net');
    expect(tell(part.title, 'cm')).toMatch(/, side panel$/);
    expect(part.edges.some(({ name }) => name === 'side')).toBe(true);
    expect(pieceNamed(dress, 'front').cutting.as).toBe('fold');
  });

  it('can cut a part of a part', () => {
    const steps: Steps = [
      ['split-along', {}],
      ['split-along', { piece: 'front-part', from: 'side', to: 'own-line' }, 'lower'],
    ];
    const dress = tryDress({ steps });
    if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
    expect(dress.skipped).toEqual([]);
    expect(faults(dress.garment)).toEqual([]);
  });

  it('refuses a line that leaves the piece', () => {
    expect(leftOut([['split-along', { from: 'neckline', fromShare: 0.1, to: 'neckline' }]])).toContain(
      'from one edge',
    );
    expect(
      leftOut([['split-along', { from: 'neckline', fromShare: 0.05, to: 'armhole', toShare: 0.05 }]]),
    ).toContain('all the way');
  });
});

describe('a dart more', () => {
  it('keeps every seam as long as it was', () => {
    const cases: readonly [Record<string, string | number>, Steps][] = [
      [{}, []],
      [{ share: 0.4, width: '20 mm' }, ['gathered-skirt']],
      [{ piece: 'back', share: 0.5, width: '12 mm' }, ['back-zip', 'circle-skirt', 'lining']],
      [{ piece: 'back', edge: 'shoulder', letOut: 'end', width: '6 mm', length: '40 mm' }, []],
    ];
    for (const ageMonths of AGES)
      for (const [given, steps] of cases) {
        const dress = tryDress({ ageMonths, steps: [...steps, ['add-dart', given]] });
        if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
        expect(dress.skipped, `${ageMonths} ${given.piece}`).toEqual([]);
        expect(faults(dress.garment, ageMonths)).toEqual([]);
      }
  });

  it('has legs of one length, as wide and as long as asked', () => {
    const front = pieceNamed(
      dressOf({ steps: [['add-dart', { width: '16 mm', length: '70 mm' }]] }),
      'front',
    );
    const [outer, inner] = [edgeOf(front, 'dart-1-outer').path, edgeOf(front, 'dart-1-inner').path];
    expect(pathLength(outer)).toBeCloseTo(pathLength(inner), 9);
    const [from, to] = [pathStart(outer), pathEnd(inner)];
    expect(distance(from, to)).toBeCloseTo(16, 1);
    expect(distance(midpoint(from, to), pathEnd(outer))).toBeCloseTo(70, 9);
  });

  it('without letting out makes the edge shorter, and the seam says so', () => {
    const dress = dressOf({ steps: ['circle-skirt', ['add-dart', { letOut: 'none' }]] });
    expect(faults(dress)[0]).toMatch(/Waist/);
  });

  it('refuses what has no room', () => {
    expect(leftOut([['add-dart', { share: 0.01, letOut: 'none' }]])).toContain('no room');
    expect(leftOut([['add-dart', { length: '500 mm' }]])).toContain('reach out');
    expect(leftOut([['add-dart', { letOut: 'end' }]])).toContain('other end');
  });
});

describe('join two pieces', () => {
  it('gives back the piece that was split, seams and all', () => {
    for (const ageMonths of AGES) {
      const steps: Steps = ['gathered-skirt', 'back-zip'];
      const whole = dressOf({ ageMonths, steps });
      const joined = dressOf({
        ageMonths,
        steps: [...steps, ['split-along', {}], ['join-pieces', { edge: 'own-line' }]],
      });
      const area = (dress: Garment) => outlineArea(outlineOf(pieceNamed(dress, 'front')));
      expect(area(joined)).toBeCloseTo(area(whole), 3);
      expect(joined.pieces.map(({ id }) => id)).toEqual(whole.pieces.map(({ id }) => id));
      expect(faults(joined, ageMonths)).toEqual([]);
    }
  });

  it('cuts front and back in one at the side', () => {
    for (const ageMonths of AGES) {
      const steps: Steps = ['back-zip', 'circle-skirt'];
      const dress = dressOf({ ageMonths, steps: [...steps, ['join-pieces', { piece: 'back' }]] });
      expect(dress.pieces.some(({ id }) => id === 'back')).toBe(false);
      expect(dress.seams.some(({ id }) => id === 'side')).toBe(false);
      expect(faults(dress, ageMonths)).toEqual([]);
    }
  });

  it('refuses shaped edges and edges that nothing is sewn to', () => {
    expect(leftOut([['join-pieces', { edge: 'neckline' }]])).toContain('not sewn flat');
  });
});

describe('open a piece out', () => {
  it('is twice the half, and every seam still fits', () => {
    const cases: readonly [string, Steps][] = [
      ['front', []],
      ['front', ['back-zip', 'gathered-skirt', 'lining']],
      ['front', ['circle-skirt', 'set-in-sleeve', ['add-dart', {}], ['add-notch', { share: 0.3 }]]],
      ['front-yoke', ['drop-shoulder', 'yoke', 'pleated-skirt']],
      ['skirt-front', ['circle-skirt', 'lining']],
    ];
    for (const ageMonths of AGES)
      for (const [piece, steps] of cases) {
        const half = dressOf({ ageMonths, steps });
        const whole = dressOf({ ageMonths, steps: [...steps, ['mirror-piece', { piece }]] });
        const area = (dress: Garment) => outlineArea(outlineOf(pieceNamed(dress, piece)));
        expect(area(whole)).toBeCloseTo(2 * area(half), 3);
        expect(pieceNamed(whole, piece).cutting).toEqual({ as: 'single', copies: 1 });
        expect(faults(whole, ageMonths), `${ageMonths} ${piece}`).toEqual([]);
        expect(findings(whole, ageMonths)).toEqual(findings(half, ageMonths));
      }
  });

  it('marks across the centre line what was notched on the fold, which is no edge any more', () => {
    const steps: Steps = [['add-notch', { edge: 'centre', share: 0.25 }]];
    const [half, whole] = [dressOf({ steps }), dressOf({ steps: [...steps, ['mirror-piece', {}]] })].map(
      (dress) => pieceNamed(dress, 'front'),
    );
    if (half === undefined || whole === undefined) throw new Error('There are two fronts.');
    const [notch] = half.notches.filter(({ edge }) => edge === 'centre');
    if (notch === undefined) throw new Error('The fold of the half has a notch.');
    expect(whole.notches.filter(({ edge }) => edge === 'centre')).toEqual([]);
    expect(whole.notches).toHaveLength(2 * (half.notches.length - 1));
    const mark = whole.markings.at(-1);
    if (mark === undefined) throw new Error('The centre line is marked.');
    const on = pathAt(edgeOf(half, 'centre').path, notch.at).point;
    expect(midpoint(pathStart(mark.path), pathEnd(mark.path))).toEqual({
      x: expect.closeTo(on.x, 6),
      y: expect.closeTo(on.y, 6),
    });
    expect(pathStart(mark.path).x).toBeCloseTo(-pathEnd(mark.path).x, 6);
    expect(faults(dressOf({ steps: [...steps, ['mirror-piece', {}]] }))).toEqual([]);
  });

  it('lets the two halves differ', () => {
    const steps: Steps = [
      ['mirror-piece', {}],
      ['move-point', { edge: 'other-neckline', end: 'start', down: '15 mm' }],
    ];
    const front = pieceNamed(dressOf({ steps }), 'front');
    expect(edgeLength(front, 'other-shoulder')).not.toBeCloseTo(edgeLength(front, 'shoulder'), 1);
    expect(leftOut([['mirror-piece', { piece: 'sleeve' }]])).toContain('no piece');
  });
});
