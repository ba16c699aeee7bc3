import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { number } from '../../../tests/outside/geometry-shapes.ts';
import {
  cubic,
  curveBetween,
  distance,
  linePath,
  outlineArea,
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathFlatten,
  pathLength,
  pathMirrorLine,
  pathNearest,
  pathOf,
  pathStart,
  point,
} from '../geometry/index.ts';
import { type Edge, type EdgeKind, type Garment, outlineOf, type Piece } from '../piece/index.ts';
import { en } from '../words/en/index.ts';
import { speak } from '../words/index.ts';
import {
  ALLOWANCES,
  type CutOptions,
  cuttingSaying,
  makeCutPiece,
  makeCutPieces,
  type OwnAllowances,
} from './index.ts';

const SEED = { seed: 31_415, numRuns: 120 };
const label: CutOptions['label'] = (piece) => ({
  title: piece.id,
  cutting: '',
  child: 'Ama',
  size: '4 years',
  date: '',
});

function pieceOf(edges: readonly Edge[], more: Partial<Piece> = {}): Piece {
  return {
    id: 'front',
    title: { key: 'any', values: {} },
    edges,
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'pair', copies: 2 },
    grain: { from: point(10, 100), to: point(10, 10) },
    notches: [],
    markings: [],
    ...more,
  };
}

const edge = (name: string, kind: EdgeKind, path: Path): Edge => ({ name, kind, path });

const panel = (width: number, height: number): Edge[] => [
  edge('waist', 'waist', linePath(point(0, 0), point(width, 0))),
  edge('right', 'join', linePath(point(width, 0), point(width, height))),
  edge('hem', 'hem', linePath(point(width, height), point(0, height))),
  edge('left', 'join', linePath(point(0, height), point(0, 0))),
];

/** Half of a front: neckline, shoulder, armhole, side, waist, centre on the fold. */
interface Front {
  readonly neckWidth: number;
  readonly neckDepth: number;
  readonly shoulder: number;
  readonly slope: number;
  readonly depth: number;
  readonly chest: number;
  readonly length: number;
  readonly waist: number;
}

const aFront: fc.Arbitrary<Front> = fc.record({
  neckWidth: number(45, 65),
  neckDepth: number(45, 80),
  shoulder: number(55, 95),
  slope: number(10, 30),
  depth: number(60, 80),
  chest: number(20, 40),
  length: number(70, 130),
  waist: number(-15, 5),
});

function frontEdges(f: Front): Edge[] {
  const neckPoint = point(f.neckWidth, 0);
  const tip = point(f.neckWidth + f.shoulder, f.slope);
  const underarm = point(tip.x + f.chest, tip.y + f.depth + f.chest);
  const side = point(underarm.x + f.waist, underarm.y + f.length);
  const centre = point(0, side.y);
  return [
    edge('neckline', 'neck', curveBetween(point(0, f.neckDepth), point(1, 0), neckPoint, point(0.25, -1))),
    edge('shoulder', 'shoulder', linePath(neckPoint, tip)),
    edge('armhole', 'armhole', curveBetween(tip, point(-0.1, 1), underarm, point(1, 0.05))),
    edge('side', 'side', linePath(underarm, side)),
    edge('waist', 'waist', linePath(side, centre)),
    edge('centre', 'fold', linePath(centre, point(0, f.neckDepth))),
  ];
}

/** The rules that hold for every cutting line. */
function expectSound(piece: Piece, cuttingLine: Path): void {
  expect(outlineIsClosed(cuttingLine)).toBe(true);
  expect(outlineSelfCrossings(cuttingLine)).toEqual([]);
  const stitching = outlineOf(piece);
  expect(outlineArea(cuttingLine)).toBeGreaterThanOrEqual(outlineArea(stitching) - 1e-6);
  const total = pathLength(stitching);
  for (let i = 0; i < 80; i++) {
    const p = pathAt(stitching, (total * i) / 80).point;
    if (!outlineContains(cuttingLine, p)) expect(pathNearest(cuttingLine, p).distance).toBeLessThan(1e-3);
  }
}

/** Points every 2 mm or so. */
const alongPath = (path: Path): Point[] => {
  const steps = Math.ceil(pathLength(path) / 2);
  return Array.from({ length: steps }, (_, i) => pathAt(path, (pathLength(path) * i) / steps).point);
};

const middle = (e: Edge): Point => pathAt(e.path, pathLength(e.path) / 2).point;

describe('the cutting line', () => {
  it('of a rectangle with 15 mm sides and a 60 mm hem has the size that arithmetic gives', () => {
    const own: OwnAllowances = { table: { join: 15, waist: 15, hem: 60 } };
    const { cuttingLine, allowances } = makeCutPiece(pieceOf(panel(400, 300)), { label, own });
    expect(pathBounds(cuttingLine)).toEqual({ minX: -15, minY: -15, maxX: 415, maxY: 360 });
    expect(outlineArea(cuttingLine)).toBeCloseTo(430 * 375, 6);
    expect(allowances).toEqual({ waist: 15, right: 15, hem: 60, left: 15 });
    expect(pathLength(cuttingLine)).toBeCloseTo(2 * (430 + 375), 6);
  });

  it('of a front is closed, simple, and lies its allowance away from the middle of every edge', () => {
    fc.assert(
      fc.property(aFront, (f) => {
        const piece = pieceOf(frontEdges(f), { cutting: { as: 'fold', copies: 1 } });
        const { cuttingLine, allowances } = makeCutPiece(piece, { label });
        expectSound(piece, cuttingLine);
        for (const e of piece.edges) {
          expect(
            Math.abs(pathNearest(cuttingLine, middle(e)).distance - (allowances[e.name] ?? -1)),
          ).toBeLessThan(0.05);
        }
      }),
      SEED,
    );
  });

  it('keeps to the fold, and its neighbours run out to the line of the fold', () => {
    const piece = pieceOf(
      frontEdges({
        neckWidth: 55,
        neckDepth: 60,
        shoulder: 70,
        slope: 20,
        depth: 70,
        chest: 30,
        length: 90,
        waist: -5,
      }),
    );
    const { cuttingLine, allowances } = makeCutPiece(piece, { label });
    expect(allowances.centre).toBe(0);
    const box = pathBounds(cuttingLine);
    expect(box.minX).toBeCloseTo(0, 9);
    const onFold = pathFlatten(cuttingLine, 1).filter((p) => Math.abs(p.x) < 1e-9);
    expect(Math.min(...onFold.map((p) => p.y))).toBeCloseTo(60 - 6, 6);
    expect(Math.max(...onFold.map((p) => p.y))).toBeCloseTo(box.maxY, 6);
  });

  it('stays simple whatever the maker adds', () => {
    fc.assert(
      fc.property(
        aFront,
        fc.record({
          neck: number(0, 40),
          shoulder: number(0, 60),
          armhole: number(0, 60),
          side: number(0, 60),
          waist: number(0, 60),
        }),
        (f, table) => {
          const piece = pieceOf(frontEdges(f));
          const { cuttingLine } = makeCutPiece(piece, { label, own: { table } });
          expectSound(piece, cuttingLine);
        },
      ),
      SEED,
    );
  });

  it('cuts off the loop that an allowance makes in a hollow tighter than itself', () => {
    const slot: Edge[] = [
      edge('left', 'side', linePath(point(0, 0), point(100, 0))),
      edge('hollow', 'neck', pathOf(cubic(point(100, 0), point(100, 60), point(116, 60), point(116, 0)))),
      edge(
        'right',
        'side',
        linePath(point(116, 0), point(220, 0), point(220, 150), point(0, 150), point(0, 0)),
      ),
    ];
    const piece = pieceOf(slot);
    for (const neck of [4, 8, 12, 20]) {
      const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { neck, side: 10 } } });
      expectSound(piece, cuttingLine);
    }
  });
});

describe('a corner at a hem', () => {
  /** A skirt panel whose sides lean or bow, so that only a mirrored corner lies flat when turned up. */
  const aPanel = fc
    .record({
      lean: number(-60, 90),
      bow: number(-12, 12),
      hem: number(20, 110),
      side: number(6, 25),
      dip: number(-8, 8),
    })
    .map(({ lean, bow, hem, side, dip }) => {
      const [a, b, c, d] = [point(0, 0), point(300, 0), point(300 + lean, 260), point(-lean, 260)];
      const bowed = (from: Point, to: Point, by: number) =>
        pathOf(
          cubic(
            from,
            point(from.x + (to.x - from.x) / 3 + by, from.y + (to.y - from.y) / 3),
            point(from.x + (2 * (to.x - from.x)) / 3 + by, from.y + (2 * (to.y - from.y)) / 3),
            to,
          ),
        );
      const hemLine = pathOf(
        cubic(c, point(c.x + (d.x - c.x) / 3, 260 + dip), point(c.x + (2 * (d.x - c.x)) / 3, 260 + dip), d),
      );
      const piece = pieceOf([
        edge('waist', 'waist', linePath(a, b)),
        edge('right', 'side', bowed(b, c, bow)),
        edge('hem', 'hem', hemLine),
        edge('left', 'side', bowed(d, a, -bow)),
      ]);
      return { piece, own: { table: { hem, side } }, straight: dip === 0 };
    });

  it('turns up onto the piece and its allowance, nothing stands out and nothing is missing', () => {
    fc.assert(
      fc.property(aPanel, ({ piece, own }) => {
        const { cuttingLine } = makeCutPiece(piece, { label, own });
        expectSound(piece, cuttingLine);
        const hem = piece.edges[2];
        if (hem === undefined) throw new Error('The hem is missing.');
        for (const [corner, tangentTo] of [
          [pathStart(hem.path), pathAt(hem.path, 1e-3).point],
          [pathEnd(hem.path), pathAt(hem.path, pathLength(hem.path) - 1e-3).point],
        ] as const) {
          const along = point((tangentTo.x - corner.x) * 1e3, (tangentTo.y - corner.y) * 1e3);
          const up = point(-along.y, along.x);
          const above = (p: Point) => (p.x - corner.x) * up.x + (p.y - corner.y) * up.y;
          const sign = Math.sign(above(point(150, 0)));
          const folded = pathMirrorLine(cuttingLine, corner, point(corner.x + along.x, corner.y + along.y));
          // What lies below the hem line near this corner, folded up, must lie on the cutting line's own inside ...
          for (const p of alongPath(folded)) {
            if (distance(p, corner) > 1.3 * own.table.hem || above(p) * sign < 0.01) continue;
            if (!outlineContains(cuttingLine, p))
              expect(pathNearest(cuttingLine, p).distance).toBeLessThan(0.03);
          }
          // ... and along the side it lies edge on edge. Close to the far end of the turning the hem's curve decides.
          const reach = Math.min(own.table.hem * 0.6, 60);
          const sideways = alongPath(cuttingLine).filter(
            (p) =>
              above(p) * sign > 0 &&
              above(p) * sign < reach &&
              distance(p, corner) < own.table.side + reach + 20,
          );
          expect(sideways.length).toBeGreaterThan(0);
          for (const p of sideways) expect(pathNearest(folded, p).distance).toBeLessThan(0.05);
        }
      }),
      SEED,
    );
  });

  it('leaning out by 45 degrees leans in below the hem, by hand', () => {
    const [a, b, c, d] = [point(0, 0), point(200, 0), point(300, 100), point(-100, 100)];
    const piece = pieceOf([
      edge('waist', 'waist', linePath(a, b)),
      edge('right', 'side', linePath(b, c)),
      edge('hem', 'hem', linePath(c, d)),
      edge('left', 'side', linePath(d, a)),
    ]);
    const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { hem: 40, side: 10, waist: 10 } } });
    // The side line lies 10 root 2 out from the corner on the hem line; 40 below it, it is 40 further in.
    const out = 300 + 10 * Math.SQRT2;
    for (const p of [point(out, 100), point(out - 40, 140), point(200 - out, 100), point(240 - out, 140)]) {
      expect(pathNearest(cuttingLine, p).distance).toBeLessThan(1e-9);
    }
    expect(pathBounds(cuttingLine).maxX).toBeCloseTo(out, 9);
  });

  it('on the fold goes straight on along the fold', () => {
    const piece = pieceOf(panel(200, 300).map((e) => (e.name === 'left' ? { ...e, kind: 'fold' } : e)));
    const { cuttingLine } = makeCutPiece(piece, { label, own: { table: { hem: 80, join: 10, waist: 10 } } });
    expect(pathBounds(cuttingLine)).toEqual({ minX: 0, minY: -10, maxX: 210, maxY: 380 });
  });
});

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
    const lone: Garment = { pieces: [pieceOf(cap)], seams: [], whole: {}, closing: null };
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
