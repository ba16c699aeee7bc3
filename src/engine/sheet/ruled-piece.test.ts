import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dressOf } from '../../../tests/dress-of.ts';
import { bodiceFront } from '../../../tests/fixtures/cut-pieces.ts';
import { type CutPiece, makeCutPieces } from '../cut/index.ts';
import { inches, RULERS, type RulerName } from '../units/index.ts';
import { type RuledPiece, ruledPiece } from './ruled-piece.ts';
import { ruledSteps, type Stretch } from './ruled-steps.ts';

const rulers = Object.keys(RULERS) as RulerName[];
const label = () => ({ title: 'Width', cutting: 'Cut 1', child: 'Ada', size: '5', date: '14 March 2026' });

type Given = Readonly<Record<string, number | string>>;

/** The widths of a skirt, and the length of the waist that they are sewn to. */
function skirt(step: string, given: Given, ageMonths: number) {
  const garment = dressOf({ ageMonths, steps: ['drop-shoulder', 'back-zip', [step, given]] });
  const widths = makeCutPieces(garment, { label, own: { table: { hem: 60 } } }).filter(({ piece }) =>
    piece.id.startsWith('skirt'),
  );
  const seam = garment.seams.find(({ id }) => id === 'skirt-waist');
  if (seam?.join.kind !== 'pleated') return { widths, waist: 0 };
  return { widths, waist: seam.join.pleats * seam.join.spacing };
}

const ruled = (cut: CutPiece, ruler: RulerName): RuledPiece => {
  const piece = ruledPiece(cut, RULERS[ruler]);
  if (piece === null) throw new Error(`${cut.piece.id} is a plain rectangle.`);
  return piece;
};

const pleated = fc.record({
  style: fc.constantFrom('knife', 'box', 'inverted'),
  spacing: fc.double({ min: 22, max: 90, noNaN: true }).map((mm) => `${mm.toFixed(2)} mm`),
  fullness: fc.double({ min: 2, max: 3.4, noNaN: true }),
});
const SEED = { seed: 20260314, numRuns: 60 };

describe('a pleated width by the ruler', () => {
  const cases = fc.tuple(pleated, fc.integer({ min: 8, max: 140 }), fc.constantFrom(...rulers));

  test('lists every fold and every meeting line, in the order in which they lie, and adds up to the cut width', () => {
    fc.assert(
      fc.property(cases, ([given, age, ruler]) => {
        const { step } = RULERS[ruler];
        for (const cut of skirt('pleated-skirt', given, age).widths) {
          const { across, width, exactWidth, length, exactLength, back } = ruled(cut, ruler);
          for (const kind of ['pleat-fold', 'pleat-meet'] as const) {
            const drawn = cut.piece.markings.filter((marking) => marking.kind === kind);
            expect(across.filter((mark) => mark.kind === kind)).toHaveLength(drawn.length);
          }
          const lines = across.filter(({ kind }) => !kind.endsWith('notch'));
          for (const [i, { at, exact }] of lines.entries()) {
            expect(at).toBeGreaterThan(lines[i - 1]?.at ?? 0);
            expect(exact).toBeGreaterThan(lines[i - 1]?.exact ?? Number.NEGATIVE_INFINITY);
          }
          for (const { at } of across) expect(Math.abs(at / step - Math.round(at / step))).toBeLessThan(1e-6);
          expect(across.at(-1)?.kind).toBe('edge');
          expect(across.at(-1)?.at).toBeCloseTo(width, 6);
          expect(Math.abs(width - exactWidth)).toBeLessThanOrEqual(step);
          expect(Math.abs(length - exactLength)).toBeLessThanOrEqual(step);
          // The remainder lies by the centre back, at the left of the first width and at the right of the last one.
          const centre = cut.piece.edges.filter(({ kind }) => kind === 'closing').map(({ name }) => name);
          if (centre.length === 1) expect([back]).toEqual(centre);
        }
      }),
      SEED,
    );
  });

  test('fits the waist with its faces laid, and notches still meet', () => {
    fc.assert(
      fc.property(cases, ([given, age, ruler]) => {
        const { step } = RULERS[ruler];
        const { widths, waist } = skirt('pleated-skirt', given, age);
        const all = widths.map((cut) => ruled(cut, ruler));
        const laid = all.reduce((sum, { faces }) => sum + (faces ?? 0), 0);
        // Half a step for each width, and for the half faces at both ends of inverted pleats.
        expect(Math.abs(laid - waist)).toBeLessThanOrEqual((all.length + 1) * step);
        for (const piece of all) {
          for (const notch of piece.across.filter(({ kind }) => kind.endsWith('notch'))) {
            const before = facesBefore(piece, notch.at, 'at');
            expect(Math.abs(before - facesBefore(piece, notch.exact, 'exact'))).toBeLessThanOrEqual(2 * step);
          }
        }
      }),
      SEED,
    );
  });

  test('keeps equal pleats equal but for the last, which take one step more', () => {
    // 13 faces of 1.59 in are 20.67 in, in eighths 165: the first four get 12 eighths, the nine by the back 13.
    const faces = Array.from({ length: 13 }, (): Stretch => ({ kind: 'face', length: inches(1.59) }));
    expect(ruledSteps(faces, RULERS.eighth, 'end')).toEqual([12, 12, 12, 12, ...Array(9).fill(13)]);
    expect(ruledSteps(faces, RULERS.eighth, 'start')).toEqual([...Array(9).fill(13), 12, 12, 12, 12]);
  });

  test('the published example comes out on the ruler as it was published', () => {
    // Pleat-drafting lesson of 23 June 2012: 20 pleats, 1 1/2 in showing, 1 1/4 in taken up, 55 in of cloth.
    const stretches = Array.from({ length: 20 }, (): Stretch[] => [
      { kind: 'under', length: inches(1.25) },
      { kind: 'face', length: inches(1.5) },
    ]).flat();
    const steps = ruledSteps(stretches, RULERS.eighth, 'end');
    expect(steps).toEqual(stretches.map(({ kind }) => (kind === 'under' ? 10 : 12)));
    expect(steps.reduce((sum, n) => sum + n, 0) / 8).toBe(55);
  });
});

/** How much of the faces lies before a place, by the ruled places or by the exact ones. */
function facesBefore({ across }: RuledPiece, place: number, by: 'at' | 'exact'): number {
  const lines = across.filter(({ kind }) => !kind.endsWith('notch'));
  return lines.reduce((sum, line, i) => {
    const before = lines[i - 1];
    if (before === undefined || !(line.brought > 0 || before.brought < 0)) return sum;
    return sum + Math.max(0, Math.min(line[by], place) - before[by]);
  }, 0);
}

describe('which pieces are told by measures', () => {
  test('gathered widths, with whole lengths on the ruler kept as they are', () => {
    const { widths } = skirt('gathered-skirt', { length: '400 mm' }, 60);
    expect(widths.length).toBeGreaterThan(0);
    for (const cut of widths) {
      const { length, exactLength, faces } = ruled(cut, 'millimetre');
      expect(faces).toBeNull();
      expect(length).toBeCloseTo(exactLength, 6);
    }
  });

  test('no shaped piece, and no circle skirt', () => {
    expect(ruledPiece(bodiceFront(), RULERS.eighth)).toBeNull();
    for (const cut of skirt('circle-skirt', {}, 60).widths) expect(ruledPiece(cut, RULERS.eighth)).toBeNull();
  });

  test('no rectangle with a mark that measures along its edges would not tell', () => {
    const [width] = skirt('gathered-skirt', {}, 60).widths;
    if (width === undefined) throw new Error('A skirt has widths.');
    const slanted = {
      segments: [{ kind: 'line', from: { x: 10, y: 10 }, to: { x: 60, y: 90 } }],
    } as const;
    const marked: CutPiece = {
      ...width,
      piece: {
        ...width.piece,
        markings: [...width.piece.markings, { kind: 'strip-line', path: slanted }],
      },
    };
    expect(ruledPiece(width, RULERS.eighth)).not.toBeNull();
    expect(ruledPiece(marked, RULERS.eighth)).toBeNull();
  });
});
