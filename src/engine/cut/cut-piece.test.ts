import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dressOf } from '../../../tests/dress-of.ts';
import { aFront, frontEdges, label, panel, pieceOf } from '../../../tests/outside/cut-shapes.ts';
import { number } from '../../../tests/outside/geometry-shapes.ts';
import {
  distance,
  outlineContains,
  outlineSelfCrossings,
  pathAt,
  pathBounds,
  pathLength,
  pathNearest,
  point,
} from '../geometry/index.ts';
import { type Edge, type Garment, outlineOf, type Piece } from '../piece/index.ts';
import { en, speak } from '../words/index.ts';
import { ALLOWANCES, cuttingSaying, makeCutPiece, makeCutPieces, type OwnAllowances } from './index.ts';

const SEED = { seed: 31_415, numRuns: 120 };

describe('allowances', () => {
  const piece = pieceOf(panel(100, 100), { id: 'back-yoke', cloth: 'yoke' });
  const at = (own: OwnAllowances) => makeCutPiece(piece, { label, own }).allowances;

  it('come from the table, the maker, the cloth, the edge: the closest counts', () => {
    expect(at({})).toEqual({
      waist: ALLOWANCES.waist,
      right: ALLOWANCES.join,
      hem: 101.6,
      left: ALLOWANCES.join,
    });
    expect(at({ table: { join: 20 } }).right).toBe(20);
    expect(at({ table: { join: 20 }, cloth: { yoke: { join: 6 } } }).right).toBe(6);
    expect(at({ table: { join: 20 }, cloth: { main: { join: 6 } } }).right).toBe(20);
    const edges = [{ piece: 'back-yoke', edge: 'left', allowance: 3 }];
    expect(at({ cloth: { yoke: { join: 6 } }, edges })).toMatchObject({ right: 6, left: 3 });
    expect(at({ edges: [{ piece: 'front', edge: 'left', allowance: 3 }] }).left).toBe(ALLOWANCES.join);
  });

  it('are refused where no maker can have meant them', () => {
    expect(() => at({ table: { join: -1 } })).toThrow(RangeError);
    expect(() => at({ table: { join: 1500 } })).toThrow(RangeError);
    expect(() => at({ table: { join: Number.NaN } })).toThrow(RangeError);
  });

  it('of a lining hem are narrower', () => {
    const lining = pieceOf(panel(100, 100), { layer: 'lining' });
    expect(makeCutPiece(lining, { label }).allowances.hem).toBeLessThan(ALLOWANCES.hem);
  });

  it('of a sleeve edge that is sewn to its lining are those of a bagged edge, and it does not turn up', () => {
    const cap = panel(100, 100).map(
      (e): Edge => (e.name === 'hem' ? { ...e, name: 'sleeve-edge', kind: 'sleeve-hem' } : e),
    );
    const lone: Garment = { pieces: [pieceOf(cap)], seams: [], whole: {}, closing: null, trims: [] };
    const side = { piece: 'front', edge: 'sleeve-edge', times: 2 };
    const lined: Garment = {
      ...lone,
      seams: [
        {
          id: 'armhole-lining',
          name: 'armhole-lining',
          a: [side],
          b: [{ ...side, piece: 'front-lining' }],
          join: { kind: 'flat' },
          smoothStart: false,
          smoothEnd: false,
        },
      ],
    };
    expect(makeCutPieces(lone, { label })[0]?.allowances['sleeve-edge']).toBe(ALLOWANCES['sleeve-hem']);
    expect(makeCutPieces(lined, { label })[0]?.allowances['sleeve-edge']).toBe(ALLOWANCES.bagged);
  });
});

describe('notches', () => {
  const piece = pieceOf(panel(400, 300), {
    notches: [
      { edge: 'waist', at: 100, style: 'single', match: 'side' },
      { edge: 'right', at: 150, style: 'double', match: 'hip' },
    ],
  });

  it('are strokes from the cutting line inwards at the place that must match', () => {
    const own: OwnAllowances = { table: { waist: 15, join: 10 } };
    const { notches } = makeCutPiece(piece, { label, own });
    expect(notches).toEqual([
      { kind: 'line', from: point(100, -15), to: point(100, -9) },
      { kind: 'line', from: point(410, 147), to: point(404, 147) },
      { kind: 'line', from: point(410, 153), to: point(404, 153) },
    ]);
  });

  it('begin on the cutting line, end short of the stitching and stand square to it', () => {
    fc.assert(
      fc.property(
        aFront,
        number(0.02, 0.98),
        fc.constantFrom('neckline', 'armhole', 'side', 'waist'),
        (f, share, name) => {
          const edges = frontEdges(f);
          const on = edges.find((e) => e.name === name);
          if (on === undefined) throw new Error('No such edge.');
          const at = pathLength(on.path) * share;
          const own = pieceOf(edges, { notches: [{ edge: name, at, style: 'single', match: 'm' }] });
          const { notches, cuttingLine, allowances } = makeCutPiece(own, { label });
          const [stroke] = notches;
          if (stroke === undefined) throw new Error('No stroke.');
          const place = pathAt(on.path, at);
          expect(pathNearest(cuttingLine, stroke.from).distance).toBeLessThan(0.03);
          const along =
            (stroke.to.x - stroke.from.x) * place.tangent.x + (stroke.to.y - stroke.from.y) * place.tangent.y;
          expect(Math.abs(along)).toBeLessThan(1e-6);
          expect(distance(stroke.to, place.point)).toBeGreaterThan(0.35 * distance(stroke.from, place.point));
          expect(distance(stroke.from, place.point)).toBeLessThan(4 * (allowances[name] ?? 0));
        },
      ),
      SEED,
    );
  });

  it('of two strokes stay on a short edge and near its ends', () => {
    const short = pieceOf(panel(400, 300), {
      notches: [
        { edge: 'waist', at: 1, style: 'double', match: 'a' },
        { edge: 'waist', at: 400, style: 'double', match: 'b' },
      ],
    });
    const xs = makeCutPiece(short, { label }).notches.map((n) => n.from.x);
    expect(xs).toEqual([0, 6, 394, 400]);
  });
});

describe('the label', () => {
  it('has its place well inside, and the words that the caller gave', () => {
    fc.assert(
      fc.property(aFront, (f) => {
        const piece = pieceOf(frontEdges(f));
        const cut = makeCutPiece(piece, { label });
        const outline = outlineOf(piece);
        expect(outlineContains(outline, cut.labelAt)).toBe(true);
        // The best of a fine grid has at most a little more room.
        const box = pathBounds(outline);
        let best = 0;
        for (let x = box.minX; x <= box.maxX; x += 8) {
          for (let y = box.minY; y <= box.maxY; y += 8) {
            if (outlineContains(outline, point(x, y))) {
              best = Math.max(best, pathNearest(outline, point(x, y)).distance);
            }
          }
        }
        expect(pathNearest(outline, cut.labelAt).distance).toBeGreaterThan(0.85 * best);
        expect(cut.label).toMatchObject({ title: 'front', child: 'Ama' });
      }),
      { ...SEED, numRuns: 25 },
    );
  });

  it('says how often and how to cut', () => {
    const words = (cutting: Piece['cutting']) =>
      speak(cuttingSaying(pieceOf(panel(10, 10), { cutting }), 'satin'), 'cm', en);
    expect(words({ as: 'fold', copies: 1 })).toBe('Cut 1 in satin on the fold');
    expect(words({ as: 'pair', copies: 2 })).toBe('Cut 2 in satin, 1 pair');
    expect(words({ as: 'pair', copies: 4 })).toBe('Cut 4 in satin, 2 pairs');
    expect(words({ as: 'single', copies: 3 })).toBe('Cut 3 in satin');
  });
});

describe('the cutting line of a collar on a sweetheart neck', () => {
  it('has no speck that runs backward where two parallels meet', () => {
    const dress = dressOf({
      ageMonths: 6,
      measured: { height: 654, chestGirth: 417 },
      block: { kind: 'drafted', given: { frontShoulderFall: '17 mm' } },
      steps: [
        ['neckline', { shape: 'sweetheart', frontDrop: '3 mm', backDrop: '4 mm' }],
        'back-buttons',
        ['flat-collar', { neckEase: '7 mm', shape: 'rounded' }],
      ],
    });
    const collar = makeCutPieces(dress, { label }).find(({ piece }) => piece.id === 'collar');
    if (collar === undefined) throw new Error('There is a collar.');
    expect(outlineSelfCrossings(collar.cuttingLine)).toEqual([]);
  });
});
