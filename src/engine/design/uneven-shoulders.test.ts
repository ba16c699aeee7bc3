import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish } from '../../../tests/dress-of.ts';
import {
  distance,
  dot,
  outlineContains,
  type Path,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathFlatten,
  pathLength,
  pathNearest,
  pathStart,
} from '../geometry/index.ts';
import {
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  type Garment,
  outlineOf,
  type Piece,
} from '../piece/index.ts';
import { tell } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

const BY = 8;
const uneven = (...steps: Steps): Wish => ({ steps: [...steps, ['uneven-shoulders', { by: `${BY} mm` }]] });

/** The lines for the lower side on a piece: along the shoulder and over the arm, and round the armhole. */
function linesOf(garment: Garment, id: string): readonly [seam: Path, armhole: Path | null] {
  const [seam, armhole] = pieceNamed(garment, id)
    .markings.filter(({ kind }) => kind === 'lower-side')
    .map(({ path }) => path);
  if (seam === undefined) throw new Error(`${id} has no line for the lower side.`);
  return [seam, armhole ?? null];
}

/** How much of the edge round the arm the lines leave out. */
function lossOf(garment: Garment, id: string): number {
  const [seam, armhole] = linesOf(garment, id);
  const piece = pieceNamed(garment, id);
  const old = edgeOf(piece, armhole === null ? 'sleeve-edge' : 'armhole').path;
  const met = pathNearest(old, pathEnd(armhole ?? seam));
  expect(met.distance, `${id} runs into the old edge`).toBeLessThan(0.01);
  if (armhole === null) return met.at;
  expect(dot(pathAt(old, met.at).tangent, pathEndTangent(armhole)), `${id} smoothly`).toBeGreaterThan(0.999);
  return met.at - pathLength(armhole);
}

/** How far outside the piece a line for the lower side runs at most, mm: little of the allowance may be lost there. */
function outside(garment: Garment, id: string): number {
  const piece = pieceNamed(garment, id);
  const outline = outlineOf(piece);
  const places = linesOf(garment, id).flatMap((path) => (path === null ? [] : pathFlatten(path, 0.1)));
  return Math.max(
    ...places.map((at) => (outlineContains(outline, at) ? 0 : pathNearest(outline, at).distance)),
  );
}

const shoulderLength = (piece: Piece): number => edgeLength(piece, 'shoulder');

const DRESSES: Record<string, { readonly steps: Steps; readonly pairs: readonly [string, string][] }> = {
  plain: { steps: [], pairs: [['front', 'back']] },
  'with a yoke': { steps: ['yoke', 'back-zip'], pairs: [['front-yoke', 'back-yoke']] },
  'with a drop shoulder': {
    steps: ['drop-shoulder', 'lining'],
    pairs: [
      ['front', 'back'],
      ['front-lining', 'back-lining'],
    ],
  },
  'short sleeves and a yoke': {
    steps: [['drop-shoulder', { finish: 'short' }], 'yoke', ['lining', { cut: 'follow-yoke' }]],
    pairs: [
      ['front-yoke', 'back-yoke'],
      ['front-yoke-lining', 'back-yoke-lining'],
    ],
  },
  lined: {
    steps: ['set-in-sleeve', 'back-buttons', 'gathered-skirt', 'lining'],
    pairs: [
      ['front', 'back'],
      ['front-lining', 'back-lining'],
    ],
  },
  'with a princess line': { steps: ['princess-line'], pairs: [['front', 'back']] },
};

describe('uneven shoulders', () => {
  for (const [name, { steps, pairs }] of Object.entries(DRESSES)) {
    it(`${name}: front and back still agree, at every age`, () => {
      for (const ageMonths of [6, 24, 60, 96, 144]) {
        const dress = dressOf({ ageMonths, ...uneven(...steps) });
        for (const [front, back] of pairs) {
          for (const id of [front, back])
            expect(outside(dress, id), `${ageMonths} ${id} outside`).toBeLessThan(1.5);
          const seams = [front, back].map((id) => pathLength(linesOf(dress, id)[0]));
          const drawn = [front, back].map((id) => shoulderLength(pieceNamed(dress, id)));
          const [sewn, before] = [seams, drawn].map(([f = 0, k = 0]) => Math.abs(f - k));
          expect(sewn, `${ageMonths} ${front} seam`).toBeLessThan((before ?? 0) + 0.01);
          const [a, b] = [lossOf(dress, front), lossOf(dress, back)];
          expect(a, `${ageMonths} ${front} loss`).toBeGreaterThan(BY / 2);
          expect(a, `${ageMonths} ${front} loss`).toBeLessThan(2 * BY);
          expect(Math.abs(a - b), `${ageMonths} ${front} ${back} lose alike`).toBeLessThan(0.05);
        }
      }
    });
  }

  it('starts at the neck point and ends so much below the tip', () => {
    const dress = dressOf(uneven());
    for (const id of ['front', 'back']) {
      const [seam, armhole] = linesOf(dress, id);
      const piece = pieceNamed(dress, id);
      expect(distance(pathStart(seam), edgeStart(piece, 'shoulder'))).toBeLessThan(1e-6);
      expect(pathEnd(seam).y - edgeEnd(piece, 'shoulder').y).toBeCloseTo(BY, 6);
      expect(pathLength(seam)).toBeCloseTo(shoulderLength(piece), 6);
      expect(armhole !== null && distance(pathStart(armhole), pathEnd(seam))).toBeLessThan(1e-6);
    }
  });

  it('lets an overarm go down with the tip, to the outer edge', () => {
    const dress = dressOf(uneven('drop-shoulder'));
    for (const id of ['front', 'back']) {
      const [seam, armhole] = linesOf(dress, id);
      const piece = pieceNamed(dress, id);
      expect(armhole).toBeNull();
      const tip = pathAt(seam, shoulderLength(piece)).point;
      expect(tip.y - edgeEnd(piece, 'shoulder').y).toBeCloseTo(BY, 6);
      expect(lossOf(dress, id)).toBeCloseTo(BY, 3);
    }
  });

  it('leaves the pattern of the higher shoulder as it is', () => {
    const steps: Steps = ['drop-shoulder', 'yoke', 'back-zip', 'gathered-skirt', 'lining'];
    const [plain, dress] = [dressOf({ steps }), dressOf(uneven(...steps))];
    const bare = dress.pieces.map((piece) => ({
      ...piece,
      markings: piece.markings.filter(({ kind }) => kind !== 'lower-side'),
    }));
    expect(bare).toEqual(plain.pieces);
    expect(dress.seams).toEqual(plain.seams);
  });

  it('marks facings with their part of the same lines', () => {
    const dress = dressOf(uneven('neck-facing', 'armhole-facing'));
    for (const half of ['front', 'back']) {
      const [seam, armhole] = linesOf(dress, half);
      const [neck] = pieceNamed(dress, `facing-${half}`).markings;
      const [shoulder, round] = pieceNamed(dress, `armhole-facing-${half}`).markings;
      if (neck === undefined || shoulder === undefined || round === undefined) throw new Error('Not marked.');
      expect(pathLength(neck.path)).toBeCloseTo(
        edgeLength(pieceNamed(dress, `facing-${half}`), 'shoulder'),
        6,
      );
      for (const { path } of [neck, shoulder])
        expect(pathNearest(seam, pathEnd(path)).distance).toBeLessThan(1e-6);
      expect(round.path).toEqual(armhole);
    }
  });

  it('over a shoulder dart the line is parted as the shoulder is', () => {
    const dress = tryDress(uneven('shoulder-darts'));
    if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
    const back = pieceNamed(dress.garment, 'back');
    const lines = back.markings.filter(({ kind }) => kind === 'lower-side');
    expect(lines).toHaveLength(3);
    const sewn = lines.slice(0, 2).reduce((sum, { path }) => sum + pathLength(path), 0);
    expect(sewn).toBeCloseTo(edgeLength(back, 'shoulder') + edgeLength(back, 'shoulder-2'), 6);
  });

  it('says which side, as worn, and what the arm edge loses', () => {
    for (const lower of ['left', 'right']) {
      const dress = tryDress({ steps: ['set-in-sleeve', ['uneven-shoulders', { lower }]] });
      if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
      const said = dress.draft
        .flatMap((part) => part.steps.map((step) => tell(step.saying, 'cm')))
        .join('\n');
      expect(said).toContain(`trim the ${lower} side, as worn`);
      expect(said).toContain('for a smooth cap lower the underarm');
      const sides = dress.garment.pieces.flatMap((piece) =>
        piece.markings.filter(({ kind }) => kind === 'lower-side').map(({ side }) => side),
      );
      expect(new Set(sides)).toEqual(new Set([lower]));
    }
  });

  it('refuses what a short shoulder or a shallow sleeve edge has no room for', () => {
    expect(refusalOf({ ageMonths: 6, steps: [['uneven-shoulders', { by: '25 mm' }]] })).toBe(
      'uneven-shoulders.by out-of-range',
    );
    const shallow: Steps = [['drop-shoulder', { finish: 'cap-pointed', fall: '12 mm' }]];
    expect(refusalOf(uneven(...shallow))).toBe('uneven-shoulders.no-room');
  });
});
