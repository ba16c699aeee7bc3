import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  BOUNDS,
  changePiece,
  goodGarment,
  goodInput,
  wearerWith,
  withEdgePath,
} from '../../../tests/fixtures/good-garment.ts';
import {
  curveBetween,
  type Path,
  pathEnd,
  pathEndTangent,
  pathExtend,
  pathLength,
  pathOffset,
  pathStart,
  pathStartTangent,
  pathTranslate,
  rotate,
} from '../geometry/index.ts';
import { edgeOf, type Garment, pieceOf, type Seam } from '../piece/index.ts';
import { type Check, type CheckCode, type CheckInput, checkGarment, type Level } from './index.ts';

/** A good garment is spoiled by a random amount: less than the tolerance passes, more is caught. */

const RUNS = { seed: 20251125, numRuns: 120 };

const found = (input: CheckInput, code: CheckCode, seam?: string): Check[] =>
  checkGarment(input).filter(
    (check) =>
      check.code === code && (seam === undefined || JSON.stringify(check.say).includes(`check.seam.${seam}`)),
  );

const ORDER: readonly Level[] = ['ok', 'note', 'warn', 'stop'];
const worst = (checks: readonly Check[]): Level | undefined =>
  ORDER.findLast((level) => checks.some((check) => check.level === level));

const spoiled = (garment: Garment): CheckInput => ({ ...goodInput(), garment });
const dress = goodGarment();
const pleated = goodGarment({ skirt: 'pleated' });

/** Evenly spread numbers; fast-check's own doubles crowd round zero. */
const spread = (from: number, to: number) =>
  fc.integer({ min: 0, max: 100_000 }).map((n) => from + ((to - from) * n) / 100_000);

/** Both signs, up to `most`, with extra weight just inside and just outside the limits. */
const amount = (most: number, ...limits: number[]) =>
  fc.oneof(
    spread(-most, most),
    fc.constantFrom(...limits.flatMap((limit) => [0.995, 1.005].flatMap((k) => [k * limit, -k * limit]))),
  );
const EIGHTH = 25.4 / 8;

/** Away from a limit by more than rounding can bridge. */
const clearOf = (value: number, ...limits: number[]): boolean =>
  limits.every((limit) => Math.abs(Math.abs(value) - limit) > 1e-4);

const seamLevel = (off: number): Level =>
  Math.abs(off) <= 0.5 ? 'ok' : Math.abs(off) <= EIGHTH ? 'warn' : 'stop';

describe('a garment spoiled by a random amount', () => {
  test.each([
    ['shoulder', 'back', 'shoulder', 1],
    ['side', 'front', 'side', 1],
    ['skirt-join', 'skirt-back', 'side', 1],
    ['waist-lining', 'back-lining', 'waist', 2],
  ] as const)('seam-lengths: %s made longer or shorter', (seam, piece, edge, copies) => {
    fc.assert(
      fc.property(amount(6, 0.5 / copies, EIGHTH / copies), (d) => {
        fc.pre(clearOf(copies * d, 0.5, EIGHTH));
        const garment = withEdgePath(dress, piece, edge, (p) =>
          d >= 0 ? pathExtend(p, { end: d }) : scaledTo(p, d),
        );
        expect(worst(found(spoiled(garment), 'seam-lengths', seam))).toBe(seamLevel(copies * d));
      }),
      RUNS,
    );
  });

  test('seam-lengths: what is too much in gathered cloth counts as much less in the seam', () => {
    fc.assert(
      fc.property(amount(12, 0.5, EIGHTH), (d) => {
        fc.pre(clearOf(d, 0.5, EIGHTH));
        const garment = withEdgePath(dress, 'skirt-front', 'waist', (p) => scaledTo(p, d));
        // Two copies of the half, and two of cloth to one of waist.
        expect(worst(found(spoiled(garment), 'seam-lengths', 'waist'))).toBe(seamLevel(d));
      }),
      RUNS,
    );
  });

  test('corners-run-smooth: the neck turned at the shoulder', () => {
    fc.assert(
      fc.property(amount(30, 5, 15), (degrees) => {
        fc.pre(clearOf(degrees, 5, 15));
        const garment = withEdgePath(dress, 'front', 'neckline', (p) => turned(p, 0, degrees));
        const level = Math.abs(degrees) <= 5 ? 'ok' : Math.abs(degrees) <= 15 ? 'warn' : 'stop';
        expect(worst(found(spoiled(garment), 'corners-run-smooth'))).toBe(level);
      }),
      RUNS,
    );
  });

  test('corners-run-smooth: the neck turned at the fold, where more than 25 degrees are meant as a point', () => {
    fc.assert(
      fc.property(amount(35, 3, 25), (degrees) => {
        fc.pre(clearOf(degrees, 3, 25));
        const garment = withEdgePath(dress, 'front', 'neckline', (p) => turned(p, degrees, 0));
        const level = Math.abs(degrees) <= 3 || Math.abs(degrees) > 25 ? 'ok' : 'warn';
        expect(worst(found(spoiled(garment), 'corners-run-smooth'))).toBe(level);
      }),
      RUNS,
    );
  });

  test.each([
    ['flat', dress, 'front-lining', 1],
    ['gathered', dress, 'skirt-front', 2],
    ['pleated', pleated, 'skirt-front', 1],
  ] as const)('notches-meet: a notch of a %s side moved', (_, garment, piece, ratio) => {
    fc.assert(
      fc.property(amount(8, ratio, ratio * EIGHTH), (d) => {
        fc.pre(clearOf(d / ratio, 1, EIGHTH));
        const moved = changePiece(garment, piece, (p) => ({
          ...p,
          notches: p.notches.map((n) => ({ ...n, at: n.at + d })),
        }));
        const off = Math.abs(d / ratio);
        expect(worst(found(spoiled(moved), 'notches-meet'))).toBe(
          off <= 1 ? 'ok' : off <= EIGHTH ? 'warn' : 'stop',
        );
      }),
      RUNS,
    );
  });

  test('notches-meet: in an eased seam the ease may lie before a notch or after it', () => {
    const seam = dress.seams.find((s) => s.id === 'neck-lining');
    const ease = seam?.join.kind === 'eased' ? seam.join.ease / 2 : 0;
    expect(ease).toBeGreaterThan(2);
    const withNotch = (garment: Garment, piece: string, at: number): Garment =>
      changePiece(garment, piece, (p) => ({
        ...p,
        notches: [...p.notches, { edge: 'neckline', at, style: 'single', match: 'neck' }],
      }));
    fc.assert(
      fc.property(amount(ease + 6, ease + 1, 1), (more) => {
        fc.pre(Math.abs(more + 1) > 1e-4 && Math.abs(more - ease - 1) > 1e-4);
        fc.pre(Math.abs(more + EIGHTH) > 1e-4 && Math.abs(more - ease - EIGHTH) > 1e-4);
        const garment = withNotch(withNotch(dress, 'front', 40), 'front-lining', 40 + more);
        const off = Math.max(-more, more - ease, 0);
        expect(worst(found(spoiled(garment), 'notches-meet'))).toBe(
          off <= 1 ? 'ok' : off <= EIGHTH ? 'warn' : 'stop',
        );
      }),
      RUNS,
    );
  });

  test('notches-meet: copies of a half follow each other mirrored, along one whole width', () => {
    const half = pathLength(edgeOf(pieceOf(dress, 'front'), 'waist').path);
    /** The front waist twice, sewn to one uncut width with two notches. */
    const whole = (at: number, first: number, second: number): CheckInput => {
      const notch = (where: number) => ({ edge: 'waist', at: where, style: 'single', match: 'm' }) as const;
      const pieces = dress.pieces
        .filter((p) => p.id === 'front' || p.id === 'skirt-front')
        .map((p) => ({ ...p, notches: p.id === 'front' ? [notch(at)] : [notch(first), notch(second)] }));
      const seam: Seam = {
        id: 'waist',
        name: 'waist',
        a: [{ piece: 'front', edge: 'waist', times: 2 }],
        b: [{ piece: 'skirt-front', edge: 'waist', times: 1 }],
        join: { kind: 'flat' },
        smoothStart: false,
        smoothEnd: false,
      };
      return spoiled({ ...dress, pieces, seams: [seam] });
    };
    fc.assert(
      fc.property(spread(5, half - 5), (at) => {
        fc.pre(Math.abs(at - half / 2) > 2);
        expect(worst(found(whole(at, at, 2 * half - at), 'notches-meet'))).toBe('ok');
        expect(worst(found(whole(at, at, half + at), 'notches-meet'))).not.toBe('ok');
      }),
      RUNS,
    );
  });

  test('notches-meet: an edge that the ring walks backwards counts from its end', () => {
    const waist = pathLength(edgeOf(pieceOf(dress, 'front'), 'waist').path);
    fc.assert(
      fc.property(spread(20, 120), amount(4, 1), (ours, shift) => {
        const theirs = waist - ours + shift;
        const notch = (at: number) => [{ edge: 'waist', at, style: 'single', match: 'm' } as const];
        const pieces = dress.pieces
          .filter((p) => p.id === 'front' || p.id === 'front-lining')
          .map((p) => ({ ...p, notches: notch(p.id === 'front' ? ours : theirs) }));
        const once = (piece: string, reversed: boolean) => [{ piece, edge: 'waist', times: 1, reversed }];
        const seam: Seam = {
          id: 'waist-lining',
          name: 'waist-lining',
          a: once('front', true),
          b: once('front-lining', false),
          join: { kind: 'flat' },
          smoothStart: false,
          smoothEnd: false,
        };
        fc.pre(clearOf(shift, 1));
        const level = worst(found(spoiled({ ...dress, pieces, seams: [seam] }), 'notches-meet'));
        expect(level === 'ok').toBe(Math.abs(shift) <= 1);
      }),
      RUNS,
    );
  });

  test('notches-meet: a notch dropped on one side leaves its mates alone', () => {
    fc.assert(
      fc.property(fc.constantFrom(...dress.pieces.map((piece) => piece.id)), (id) => {
        const garment = changePiece(dress, id, (p) => ({ ...p, notches: [] }));
        // The bodice holds the skirt and the lining together; without it both are alone.
        const alone = id === 'front' || id === 'back' ? 2 : 0;
        expect(
          found(spoiled(garment), 'notches-meet').filter((check) => check.level === 'warn'),
        ).toHaveLength(alone);
      }),
      RUNS,
    );
  });

  test('outline-closed: an edge moved off its neighbours', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...dress.pieces.flatMap((p) => p.edges.map((e) => [p.id, e.name] as const))),
        spread(-9, -1),
        ([piece, edge], power) => {
          const d = 10 ** power;
          fc.pre(Math.abs(d - 1e-6) > 1e-9);
          const garment = withEdgePath(dress, piece, edge, (p) =>
            pathTranslate(p, { x: d * 0.6, y: d * 0.8 }),
          );
          expect(worst(found(spoiled(garment), 'outline-closed'))).toBe(d <= 1e-6 ? 'ok' : 'stop');
        },
      ),
      RUNS,
    );
  });

  test('lining-fits: a lining trimmed by up to 3 mm passes, by more is told', () => {
    fc.assert(
      fc.property(spread(0, 9), fc.constantFrom('neckline', 'armhole'), (trim, edge) => {
        // A tenth of a millimetre of trim lies within the half millimetre that seams may differ by.
        fc.pre(Math.abs(trim - 3) > 0.3 && Math.abs(trim - 5) > 0.3);
        const garment = ['front', 'back'].reduce((g, half) => {
          const shell = edgeOf(pieceOf(dress, half), edge).path;
          return withEdgePath(g, `${half}-lining`, edge, () => pathOffset(shell, -trim));
        }, dress);
        const seam = edge === 'neckline' ? 'neck-lining' : 'armhole-lining';
        expect(worst(found(spoiled(garment), 'lining-fits', seam))).toBe(
          trim < 3 ? 'ok' : trim < 5 ? 'warn' : 'stop',
        );
      }),
      RUNS,
    );
  });

  test('lining-fits: a lining smaller than the shell at the neck is caught', () => {
    fc.assert(
      fc.property(spread(0, 6), (d) => {
        fc.pre(clearOf(2 * d, 0.5));
        const shell = edgeOf(pieceOf(dress, 'front'), 'neckline').path;
        const back = edgeOf(pieceOf(dress, 'back'), 'neckline').path;
        const garment = withEdgePath(
          withEdgePath(dress, 'back-lining', 'neckline', () => back),
          'front-lining',
          'neckline',
          () => scaledTo(shell, -d),
        );
        expect(worst(found(spoiled(garment), 'lining-fits', 'neck-lining'))).toBe(
          2 * d <= 0.5 ? 'ok' : 'stop',
        );
      }),
      RUNS,
    );
  });

  test('head-passes: neckline and twice the opening against the head', () => {
    const neckline =
      2 *
      ['front', 'back'].reduce((sum, id) => sum + pathLength(edgeOf(pieceOf(dress, id), 'neckline').path), 0);
    fc.assert(
      fc.property(spread(0, 300), spread(400, 600), (slit, head) => {
        const spare = neckline + 2 * slit - head;
        fc.pre(clearOf(spare, 0, 30));
        const closing = { kind: 'centred-zip', openingLength: slit, zipLength: slit } as const;
        const input = { ...goodInput({ closing }), body: wearerWith({ headGirth: head }) };
        expect(worst(found(input, 'head-passes'))).toBe(spare < 0 ? 'stop' : spare < 30 ? 'warn' : 'ok');
      }),
      RUNS,
    );
  });

  test('chest-ease: four quarters less the chest, within the bounds and never under 2 cm', () => {
    fc.assert(
      fc.property(spread(560, 640), spread(10, 50), spread(0, 40), (chestGirth, least, room) => {
        const ease = 4 * 160 - chestGirth;
        fc.pre([20, least, least + room].every((limit) => Math.abs(ease - limit) > 0.01));
        const input = {
          ...goodInput(),
          body: wearerWith({ chestGirth }),
          bounds: { ...BOUNDS, chestEase: [least, least + room] as const },
        };
        const level = ease < 20 ? 'stop' : ease < least || ease > least + room ? 'warn' : 'ok';
        expect(worst(found(input, 'chest-ease'))).toBe(level);
      }),
      RUNS,
    );
  });
});

/** The same curve, longer or shorter by `d` in all. */
function scaledTo(path: Path, d: number): Path {
  const k = 1 + d / pathLength(path);
  const scaled = (p: { x: number; y: number }) => ({ x: p.x * k, y: p.y * k });
  const [first, ...rest] = path.segments.map((s) =>
    s.kind === 'line'
      ? { ...s, from: scaled(s.from), to: scaled(s.to) }
      : { ...s, from: scaled(s.from), c1: scaled(s.c1), c2: scaled(s.c2), to: scaled(s.to) },
  );
  return first === undefined ? path : { segments: [first, ...rest] };
}

/** A curve with its two end directions turned by some degrees. */
const turned = (path: Path, atStart: number, atEnd: number): Path =>
  curveBetween(
    pathStart(path),
    rotate(pathStartTangent(path), (atStart * Math.PI) / 180),
    pathEnd(path),
    rotate(pathEndTangent(path), (atEnd * Math.PI) / 180),
  );
