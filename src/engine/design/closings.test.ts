import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, type Wish } from '../../../tests/dress-of.ts';
import { checksOf } from '../../../tests/faults-of.ts';
import { pathBounds, pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import { edgeLength, edgeOf, edgeStart, outlineOf, type Piece } from '../piece/index.ts';

const CLOSINGS = [
  ['back-zip', { way: 'lapped' }],
  ['back-buttons', {}],
  ['back-lacing', {}],
  ['back-ties', { tied: 'both' }],
  ['shoulder-studs', {}],
] as const;

const marksOf = (piece: Piece, kind: string) => piece.markings.filter((mark) => mark.kind === kind);

const SURROUNDINGS: readonly NonNullable<Wish['steps']>[] = [
  ['neckline', 'yoke', 'gathered-skirt', 'lining'],
  ['drop-shoulder', 'yoke', 'pleated-skirt', ['lining', { cut: 'follow-yoke' }]],
  ['set-in-sleeve', 'circle-skirt', 'lining'],
];

describe('closings of every kind', () => {
  for (const [step, given] of CLOSINGS) {
    it(`${step}: seams, notches and outlines hold with yokes, sleeves, skirts and linings`, () => {
      for (const steps of SURROUNDINGS) {
        const checks = checksOf({ steps: [...steps, [step, given]] });
        const wrong = checks.filter(
          ({ code, level }) =>
            ['outline-closed', 'outline-simple', 'seam-lengths', 'notches-meet', 'lining-fits'].includes(
              code,
            ) && level !== 'ok',
        );
        expect(wrong.map(({ say }) => say)).toEqual([]);
      }
    });

    it(`${step}: excludes a second closing`, () => {
      expect(refusalOf({ steps: [[step, given], step === 'back-zip' ? 'back-ties' : 'back-zip'] })).toBe(
        'two-of-a-kind',
      );
    });

    it(`${step}: the head and the waist are judged with it`, () => {
      const codes = (steps: NonNullable<Wish['steps']>) =>
        checksOf({ steps })
          .filter(({ code }) => code === 'head-passes' || code === 'closing-long-enough')
          .map(({ say }) => say.key);
      const [open, closed] = [codes([[step, given], 'gathered-skirt']), codes(['gathered-skirt'])];
      expect(open[0]).toBe('check.head-passes.open.ok');
      expect(closed[0]).toBe('check.head-passes.closed.stop');
      expect(open[1]).toBe(step === 'shoulder-studs' ? closed[1] : 'check.closing-long-enough.ok');
    });
  }
});

describe('back buttons', () => {
  const given = { diameter: '12 mm', belowWaist: '100 mm', buttonSpacing: '50 mm' };
  const PLAIN: NonNullable<Wish['steps']> = ['yoke', 'back-ties'];
  const BUTTONED: NonNullable<Wish['steps']> = ['yoke', ['back-buttons', given]];
  const [plain, dress] = [dressOf({ steps: PLAIN }), dressOf({ steps: BUTTONED })];

  it('run past the centre line by the button, at neck and waist alike, through yoke and rest', () => {
    for (const id of ['back', 'back-yoke']) {
      const [before, after] = [plain, dress].map((d) => pathBounds(outlineOf(pieceNamed(d, id))));
      expect(after?.minX).toBeCloseTo((before?.minX ?? 0) - 12, 6);
      expect(after?.maxX).toBeCloseTo(before?.maxX ?? 0, 6);
      expect(edgeLength(pieceNamed(dress, id), 'centre')).toBeCloseTo(
        edgeLength(pieceNamed(plain, id), 'centre'),
        6,
      );
    }
    expect(edgeLength(pieceNamed(dress, 'back'), 'waist')).toBeCloseTo(
      edgeLength(pieceNamed(plain, 'back'), 'waist') + 12,
      6,
    );
  });

  it('the stand does not count as ease, nor as neckline', () => {
    for (const code of ['waist-ease', 'chest-ease', 'neck-clears']) {
      const [before, after] = [PLAIN, BUTTONED].map(
        (steps) => checksOf({ steps }).find((check) => check.code === code)?.measured,
      );
      const mm = (measured: typeof before) => (measured && 'mm' in measured ? measured.mm : Number.NaN);
      expect(mm(after), code).toBeCloseTo(mm(before), 4);
    }
  });

  it('are spaced evenly down both pieces, and every button has its hole', () => {
    const ys = (kind: string) =>
      ['back-yoke', 'back']
        .flatMap((id) => marksOf(pieceNamed(dress, id), kind))
        .map(({ path }) => pathBounds(path))
        .map(({ minY, maxY }) => (minY + maxY) / 2);
    const buttons = ys('button');
    const holes = ys('buttonhole');
    expect(holes).toHaveLength(buttons.length);
    for (const [i, y] of buttons.entries()) expect(y).toBeCloseTo(holes[i] ?? 0, 6);
    expect(dress.closing).toMatchObject({ kind: 'buttons', count: buttons.length });
    const neck = edgeStart(pieceNamed(dress, 'back-yoke'), 'neckline').y;
    expect((buttons[0] ?? 0) - neck).toBeCloseTo(18, 6);
    const gaps = buttons.slice(1).map((y, i) => y - (buttons[i] ?? 0));
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 6);
    expect(Math.abs((gaps[0] ?? 0) - 50)).toBeLessThan(12);
  });

  it('bring a strip twice as long as the slit in the skirt, and none where there is no slit', () => {
    expect(edgeLength(pieceNamed(dress, 'placket'), 'upper')).toBeCloseTo(210, 6);
    const flush = dressOf({ steps: [['back-buttons', { belowWaist: '0 mm' }]] });
    expect(flush.pieces.map(({ id }) => id)).not.toContain('placket');
  });

  it('refuse a back too short for two', () => {
    const steps: NonNullable<Wish['steps']> = [
      ['neckline', { backDrop: '70 mm' }],
      ['waist-level', { raise: '20 mm' }],
      ['back-buttons', { diameter: '30 mm' }],
    ];
    expect(refusalOf({ ageMonths: 6, steps })).toBe('back-buttons.too-short');
  });
});

describe('back lacing', () => {
  it('has loops from neck to waist, a panel sewn along the edge, and cord for the open back', () => {
    const steps: NonNullable<Wish['steps']> = [
      ['back-lacing', { loopSpacing: '25 mm', panelWidth: '100 mm', tieEnd: '140 mm' }],
    ];
    const dress = dressOf({ steps });
    const back = pieceNamed(dress, 'back');
    const { closing } = dress;
    if (closing?.kind !== 'lacing') throw new Error('The dress must be laced.');
    expect(marksOf(back, 'loop')).toHaveLength(closing.loops);
    expect(edgeLength(pieceNamed(dress, 'lacing-panel'), 'upper')).toBeCloseTo(edgeLength(back, 'centre'), 6);
    const gap = (edgeLength(back, 'centre') - 20) / (closing.loops - 1);
    // 60 mm across at the top, two slanting ways from pair to pair, both ends.
    const cord = 60 + 2 * (closing.loops - 1) * Math.hypot(60, gap) + 280;
    expect(closing.cordLength).toBeCloseTo(cord, 6);
    // Pulled together, the lacing needs only two gaps a pair; what is left hangs at the two ends.
    const [trim] = dress.trims;
    expect(trim).toMatchObject({ kind: 'lacing', place: 'back' });
    expect(trim && 'tail' in trim ? 2 * trim.tail : 0).toBeCloseTo(cord - 2 * (closing.loops - 1) * gap, 6);
  });
});

describe('back ties', () => {
  it('tell the cautions where they hang and how far', () => {
    const dress = dressOf({ steps: [['back-ties', { tied: 'both', tieLength: '250 mm' }]] });
    expect(dress.trims).toEqual([
      { kind: 'ties', place: 'nape', tail: 250, pieces: ['tie'] },
      { kind: 'ties', place: 'waist-back', tail: 250, pieces: ['tie'] },
    ]);
    expect(pieceNamed(dress, 'tie').cutting).toEqual({ as: 'fold', copies: 4 });
  });
});

describe('shoulder studs', () => {
  it('open both shoulders and leave the back and the skirt closed', () => {
    const wish: Wish = { ageMonths: 9, steps: ['gathered-skirt', 'shoulder-studs'] };
    const dress = dressOf(wish);
    expect(dress.seams.filter(({ name }) => name === 'shoulder')).toEqual([]);
    expect(pieceNamed(dress, 'back').cutting.as).toBe('fold');
    expect(edgeOf(pieceNamed(dress, 'skirt-back'), 'left').kind).not.toBe('closing');
    const shoulder = edgeLength(pieceNamed(dress, 'back'), 'shoulder');
    expect(edgeLength(pieceNamed(dress, 'shoulder-strip'), 'lower')).toBeCloseTo(shoulder, 6);
    const neckline =
      2 * ['front', 'back'].reduce((s, id) => s + edgeLength(pieceNamed(dress, id), 'neckline'), 0);
    const head = checksOf(wish).find(({ code }) => code === 'head-passes');
    expect(head?.measured).toEqual({ mm: expect.closeTo(neckline + 4 * shoulder, 4) });
  });

  it('leave the seam over the arm closed', () => {
    const dress = dressOf({ steps: ['drop-shoulder', 'shoulder-studs'] });
    const seams = dress.seams.filter(({ id }) => id.startsWith('shoulder'));
    expect(seams.map(({ name, a }) => [name, a.map(({ edge }) => edge)])).toEqual([
      ['closing', ['shoulder']],
      ['shoulder', ['overarm']],
      ['placket', ['shoulder']],
      ['facing', ['shoulder']],
    ]);
  });
});

describe('a lapped zip', () => {
  it('is a zip of its full length', () => {
    const dress = dressOf({ steps: [['back-zip', { way: 'lapped' }]] });
    const { closing } = dress;
    if (closing?.kind !== 'lapped-zip') throw new Error('The zip must be lapped.');
    expect(closing.zipLength).toBeGreaterThanOrEqual(closing.openingLength);
    expect(closing.zipLength - closing.openingLength).toBeLessThan(50);
    const back = edgeOf(pieceNamed(dress, 'back'), 'centre').path;
    expect(pathStart(back).x).toBeCloseTo(pathEnd(back).x, 9);
    expect(closing.openingLength).toBeCloseTo(pathLength(back) + 100, 6);
  });
});
