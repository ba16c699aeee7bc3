import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, type Wish } from '../../../tests/dress-of.ts';
import { checksOf } from '../../../tests/faults-of.ts';
import { edgeLength, type Garment, pieceOf, type Seam, type SeamEdge, skirtDepth } from '../piece/index.ts';

const sideOf = (garment: Garment, side: readonly SeamEdge[]): number =>
  side.reduce((sum, { piece, edge, times }) => sum + times * edgeLength(pieceOf(garment, piece), edge), 0);

function seamsThatDisagree(garment: Garment, seams: readonly Seam[]): readonly string[] {
  const ratio = ({ join }: Seam): number => (join.kind === 'gathered' ? join.ratio : 1);
  return seams
    .filter((seam) => Math.abs(sideOf(garment, seam.a) * ratio(seam) - sideOf(garment, seam.b)) > 1e-6)
    .map(({ id }) => id);
}

/** Length of finished sash: every piece as often as it is cut, along the edge without the slants. */
const sashLength = (garment: Garment, prefix: string): number =>
  garment.pieces
    .filter(({ id }) => id === prefix || id === `${prefix}-middle`)
    .reduce((sum, piece) => sum + piece.cutting.copies * edgeLength(piece, 'lower'), 0);

const GIVEN = { sashLoop: '80 mm', sashKnot: '50 mm', sashTail: '150 mm', sashWidth: '60 mm' };
const HANG = 2 * 80 + 50 + 150;

describe('sash', () => {
  it('all round: waist and twice what hangs, in as few equal lengths as the cloth gives', () => {
    const waist =
      2 * ['front', 'back'].reduce((s, id) => s + edgeLength(pieceNamed(dressOf({}), id), 'waist'), 0);
    for (const [clothWidth, pieces] of [
      [2400, 1],
      [1300, 2],
      [600, 3],
      [420, 4],
      [300, 6],
    ] as const) {
      for (const ends of ['straight', 'slanted']) {
        const dress = dressOf({ clothWidth, steps: [['sash', { ...GIVEN, sewn: 'all-round', ends }]] });
        expect(sashLength(dress, 'sash')).toBeCloseTo(waist + 2 * HANG, 6);
        const cut = dress.pieces.filter(({ id }) => id.startsWith('sash'));
        const count = cut.reduce((sum, piece) => sum + piece.cutting.copies, 0);
        expect(count, `${clothWidth} ${ends}`).toBeGreaterThanOrEqual(pieces);
        expect(count).toBeLessThanOrEqual(pieces + 1);
        for (const piece of cut) expect(edgeLength(piece, 'upper')).toBeLessThanOrEqual(clothWidth - 50);
        // Every length is joined to the next.
        const joined = dress.seams.filter(({ name }) => name === 'trim');
        expect(joined.reduce((sum, seam) => sum + sideOf(dress, seam.a), 0)).toBeCloseTo(
          (count - 1) * 120,
          6,
        );
        expect(seamsThatDisagree(dress, joined)).toEqual([]);
      }
    }
  });

  it('in the side seams: two halves, each from the side to the middle of the back and what hangs', () => {
    const dress = dressOf({ steps: ['back-zip', 'gathered-skirt', ['sash', GIVEN]] });
    const back = edgeLength(pieceNamed(dress, 'back'), 'waist');
    expect(pieceNamed(dress, 'sash').cutting).toEqual({ as: 'fold', copies: 2 });
    expect(edgeLength(pieceNamed(dress, 'sash'), 'lower')).toBeCloseTo(back + HANG, 6);
    // The slant adds the finished width once.
    expect(edgeLength(pieceNamed(dress, 'sash'), 'upper')).toBeCloseTo(back + HANG + 60, 6);
    for (const id of ['front', 'back']) {
      const notch = pieceNamed(dress, id).notches.find(({ match }) => match === 'sash');
      expect(notch?.at).toBeCloseTo(edgeLength(pieceNamed(dress, id), 'side') - 60, 6);
    }
    expect(dress.trims).toEqual([{ kind: 'sash', place: 'waist-back', tail: HANG + 60, pieces: ['sash'] }]);
  });

  it('a buttoned back laps over, and the sash does not go round the overlap twice', () => {
    const length = (step: NonNullable<Wish['steps']>[number]) =>
      edgeLength(pieceNamed(dressOf({ steps: [step, ['sash', GIVEN]] }), 'sash'), 'lower');
    expect(length('back-buttons')).toBeCloseTo(length('back-zip'), 6);
  });

  it('by its rules hangs neither 36 cm nor below the hem, at any age', () => {
    for (const ageMonths of [6, 12, 24, 48, 84, 120, 144]) {
      const dress = dressOf({ ageMonths, steps: ['gathered-skirt', 'sash'] });
      const [trim] = dress.trims;
      if (trim?.kind !== 'sash') throw new Error('There must be a sash.');
      expect(trim.tail).toBeLessThanOrEqual(360);
      expect(trim.tail).toBeLessThanOrEqual(skirtDepth(dress) ?? 0);
    }
  });

  it('refuses to be wider than the side seam', () => {
    const steps: NonNullable<Wish['steps']> = [['sash', { sashWidth: '150 mm' }]];
    expect(refusalOf({ ageMonths: 6, steps })).toBe('sash.too-wide');
  });
});

describe('bows', () => {
  it('may stand several times, each with pieces of its own', () => {
    const dress = dressOf({
      steps: [
        'tied-bow',
        ['tied-bow', { place: 'shoulder' }, 'other'],
        'sewn-bow',
        ['sewn-bow', {}, 'other'],
      ],
    });
    const ids = dress.pieces.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(dress.trims.map(({ kind, place }) => [kind, place])).toEqual([
      ['tied-bow', 'waist-back'],
      ['tied-bow', 'shoulder'],
      ['sewn-bow', 'waist-back'],
      ['sewn-bow', 'waist-back'],
    ]);
  });

  it('a sewn bow: tube of twice the span and its overlap, band round it, tails only where wished', () => {
    const given = { bowSpan: '100 mm', bandRound: '15 mm', bowTail: '0 mm' };
    const dress = dressOf({ steps: [['sewn-bow', given]] });
    expect(edgeLength(pieceNamed(dress, 'sewn-bow'), 'upper')).toBeCloseTo(225, 6);
    expect(edgeLength(pieceNamed(dress, 'sewn-bow-band'), 'upper')).toBeCloseTo(50, 6);
    expect(dress.pieces.map(({ id }) => id)).not.toContain('sewn-bow-tail');
    expect(dress.trims).toMatchObject([{ kind: 'sewn-bow', tail: 0 }]);
  });
});

describe('ruffle', () => {
  it('gathers its ratio to the edge that is named, on every piece that has it', () => {
    for (const [edge, piece, along] of [
      ['neckline', 'all', ['front', 'back']],
      ['hem', 'skirt-front', ['skirt-front']],
      ['hem', 'all', ['skirt-front', 'skirt-back']],
    ] as const) {
      const given = { edge, piece, ruffleRatio: 1.8, ruffleDepth: '30 mm' };
      const dress = dressOf({ clothWidth: 1000, steps: ['back-zip', 'gathered-skirt', ['ruffle', given]] });
      const strip = pieceNamed(dress, 'ruffle');
      const length = along.reduce((sum, id) => sum + 2 * edgeLength(pieceNamed(dress, id), edge), 0);
      expect(strip.cutting.copies * edgeLength(strip, 'upper')).toBeCloseTo(1.8 * length, 6);
      expect(edgeLength(strip, 'upper')).toBeLessThanOrEqual(950);
      const own = dress.seams.filter(({ id }) => id.startsWith('ruffle'));
      expect(seamsThatDisagree(dress, own)).toEqual([]);
    }
  });

  it('names the edges that there are when there is none of that name', () => {
    expect(refusalOf({ steps: [['ruffle', { edge: 'hemline' }]] })).toBe('ruffle.no-edge');
  });
});

describe('belt, straps, covers and rosettes', () => {
  it('a belt is the finished waist and its overlap', () => {
    const dress = dressOf({ steps: ['back-buttons', ['belt', { beltOverlap: '50 mm' }]] });
    const { closing } = dress;
    if (closing?.kind !== 'buttons') throw new Error('The back must be buttoned.');
    const halves =
      edgeLength(pieceNamed(dress, 'front'), 'waist') + edgeLength(pieceNamed(dress, 'back'), 'waist');
    const waist = 2 * (halves - closing.stand);
    expect(edgeLength(pieceNamed(dress, 'belt'), 'lower')).toBeCloseTo(waist + 50, 6);
  });

  it('a cover for every button of the back', () => {
    const dress = dressOf({ steps: [['back-buttons', { diameter: '14 mm' }], 'covered-buttons'] });
    const { closing } = dress;
    if (closing?.kind !== 'buttons') throw new Error('The back must be buttoned.');
    expect(pieceNamed(dress, 'button-cover').cutting.copies).toBe(closing.count);
  });

  it('straps and rosettes come on their fold', () => {
    const dress = dressOf({
      steps: ['shoulder-straps', ['rosette', { rosetteDiameter: '60 mm', turns: 2, rosetteRatio: 1.5 }]],
    });
    expect(pieceNamed(dress, 'strap').cutting).toEqual({ as: 'fold', copies: 2 });
    expect(edgeLength(pieceNamed(dress, 'rosette'), 'upper')).toBeCloseTo(Math.PI * 30 * 3, 6);
    expect(edgeLength(pieceNamed(dress, 'rosette'), 'left')).toBeCloseTo(30, 6);
  });

  it('all trims together leave every check of seams, notches and outlines well', () => {
    const steps: NonNullable<Wish['steps']> = [
      'yoke',
      'back-buttons',
      'gathered-skirt',
      'lining',
      'sash',
      'belt',
      'tied-bow',
      'sewn-bow',
      ['ruffle', { edge: 'hem' }, 'hem'],
      'ruffle',
      'shoulder-straps',
      'covered-buttons',
      'rosette',
    ];
    for (const clothWidth of [1400, 500]) {
      const codes = ['outline-closed', 'outline-simple', 'seam-lengths', 'notches-meet'];
      const wrong = checksOf({ clothWidth, steps }).filter(
        ({ code, level }) => codes.includes(code) && level !== 'ok',
      );
      expect(wrong.map(({ say }) => say)).toEqual([]);
    }
  });
});
