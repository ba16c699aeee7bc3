import { Clipper, FillRule, type PathD, type PathsD } from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { bodiceBack, bodiceFront, bowKnot, yokeFront } from '../../../tests/fixtures/cut-pieces.ts';
import { dressToLay, flat, laidOut, layFaults, PLAIN, planned, toLay } from '../../../tests/fixtures/laid.ts';
import { type Path, type Point, pathStart } from '../geometry/index.ts';
import { edgeOf } from '../piece/index.ts';
import type { Lay, LayCloth, LayPiece, StripeMatch } from './index.ts';
import { planLay } from './index.ts';
import { packProblem } from './pack-problem.ts';
import { rectangle } from './polygons.ts';
import { cornersBounds } from './turns.ts';

const underarm: StripeMatch = { group: 'underarm', edge: 'side', at: 'start' };

/** Where a point of the stitching line lies on the cloth: found from the cutting line, which has the same shape. */
function onCloth(lay: Lay, pieces: readonly LayPiece[], match: StripeMatch): readonly Point[] {
  return lay.stretches.flatMap(({ from, pieces: laid }) =>
    laid.flatMap(({ piece, outline, mirrored, turn, pins }) => {
      const own = pieces[piece]?.cut.piece;
      if (own === undefined) return [];
      const start = pathStart(edgeOf(own, match.edge).path);
      const [head, foot] = pins;
      if (head === undefined || foot === undefined || turn !== 0) throw new Error('Heads lie alike.');
      // Upright pieces: y runs along the cloth from the head, x to the right of the head's way, or left when mirrored.
      const along = head.at.x + (start.y - own.grain.to.y);
      const across = head.at.y + (start.x - own.grain.to.x) * (mirrored ? 1 : -1);
      expect(outline.segments.length).toBeGreaterThan(2);
      return [{ x: from + along, y: across }];
    }),
  );
}

const phase = (value: number, every: number): number => {
  const rest = ((value % every) + every) % every;
  return Math.min(rest, every - rest) < 1e-6 ? 0 : rest;
};

describe('stripes and checks', () => {
  const pieces = [
    toLay(bodiceFront(), { matches: [underarm] }),
    toLay(bodiceBack(), { matches: [underarm] }),
    toLay(bowKnot()),
    toLay(yokeFront()),
  ];

  test('stripes across the cloth: all underarms lie on the line of a stripe', () => {
    const cloth: LayCloth = { ...PLAIN, repeat: { along: { every: 57, first: 11 } } };
    for (const folding of ['single', 'lengthwise'] as const) {
      const lay = laidOut(planned(pieces, { ...cloth, folding }), 600);
      expect(layFaults(lay)).toEqual([]);
      const points = onCloth(lay, pieces.slice(0, 2), underarm);
      expect(points).toHaveLength(folding === 'single' ? 3 : 2);
      for (const { x } of points) expect(phase(x - 11, 57)).toBeCloseTo(0, 5);
    }
  });

  test('checks: along and across, each back on the side of the front to which it is sewn', () => {
    const repeat = { along: { every: 50, first: 0 }, across: { every: 36, first: 5 } };
    const lay = laidOut(planned(pieces, { ...PLAIN, repeat }), 600);
    expect(layFaults(lay)).toEqual([]);
    const points = onCloth(lay, pieces.slice(0, 2), underarm);
    expect(points).toHaveLength(3);
    for (const { x } of points) expect(phase(x, 50)).toBeCloseTo(0, 5);
    // The front's centre line lies on a line of the check, so its other side is the mirror image: phases p and -p.
    const [front, ...backs] = points.map(({ y }) => phase(y - 5, 36));
    const mirroredPhase = phase(-(front ?? 0), 36);
    expect(backs.toSorted((a, b) => a - b)[0]).toBeCloseTo(Math.min(front ?? 0, mirroredPhase), 5);
    expect(backs.toSorted((a, b) => a - b)[1]).toBeCloseTo(Math.max(front ?? 0, mirroredPhase), 5);
  });

  test('a chain of matches that cannot agree keeps the first and tells by how much the other misses', () => {
    const waist: StripeMatch = { group: 'waist', edge: 'side', at: 'end' };
    const longer = { ...bodiceBack(1.1), label: { ...bodiceBack().label, title: 'Long back' } };
    const twice = [
      toLay(bodiceFront(), { matches: [underarm, waist] }),
      toLay(longer, { matches: [underarm, waist] }),
    ];
    const plan = planned(twice, { ...PLAIN, repeat: { along: { every: 57, first: 0 } } });
    const clash = plan.notes.find(({ key }) => key === 'lay.note.stripes-off');
    // From underarm to waist the front measures 135, the back a tenth more.
    expect(clash?.values).toMatchObject({ piece: 'Long back', group: 'waist' });
    expect(clash?.values.off).toEqual({ mm: expect.closeTo(13.5, 6) });
  });

  test('an edge that the piece does not have is refused', () => {
    const wrong = toLay(bowKnot(), { matches: [{ ...underarm, edge: 'armhole' }] });
    const result = planLay([wrong], { ...PLAIN, repeat: { along: { every: 57, first: 0 } } });
    expect(result.ok ? [] : result.refusals.map(({ key }) => key)).toEqual(['lay.no-such-edge']);
  });
});

const shared = (a: readonly Point[], b: Path): number =>
  Math.abs(Clipper.areaPathsD(Clipper.intersectD([[...a]], [flat(b)], FillRule.NonZero, 4)));

describe('flaws', () => {
  const stain = [
    { x: 90, y: 100 },
    { x: 160, y: 120 },
    { x: 140, y: 400 },
    { x: 100, y: 380 },
  ];

  test('no piece touches a flaw on single cloth, and one beyond the lay costs nothing', () => {
    const far = stain.map(({ x, y }) => ({ x: x + 5000, y }));
    const cloth: LayCloth = { ...PLAIN, flaws: [{ outline: stain }, { outline: far }] };
    const lay = laidOut(planned(dressToLay(), cloth), 6000);
    expect(layFaults(lay)).toEqual([]);
    for (const { outline } of lay.stretches.flatMap((s) => s.pieces)) expect(shared(stain, outline)).toBe(0);
    expect(lay.length).toBeLessThan(3000);
  });

  test('on folded cloth a flaw in either layer is kept free', () => {
    const cloth: LayCloth = { ...PLAIN, folding: 'lengthwise', flaws: [{ outline: stain }] };
    const lay = laidOut(planned(dressToLay(), cloth), 800);
    expect(layFaults(lay)).toEqual([]);
    // The fold lies at 700, so what is 100 to 400 from the selvedge is 300 to 600 from the fold.
    const folded = stain.map(({ x, y }) => ({ x, y: 700 - y }));
    for (const { outline } of lay.stretches[0]?.pieces ?? []) expect(shared(folded, outline)).toBe(0);
  });
});

/** An outline moved so that its box begins at a place. */
function placedRing(corners: Float64Array, { x, y }: Point): PathD {
  const { minX, minY } = cornersBounds(corners);
  return Array.from({ length: corners.length / 2 }, (_, i) => ({
    x: (corners[2 * i] ?? 0) - minX + x,
    y: (corners[2 * i + 1] ?? 0) - minY + y,
  }));
}

describe('a leftover of odd outline', () => {
  const triangle = [
    { x: 20, y: 30 },
    { x: 920, y: 30 },
    { x: 20, y: 730 },
  ];

  test('what it lacks of its box is kept from the pieces, and nothing else', () => {
    const plan = planned([toLay(bowKnot())], { ...PLAIN, remnant: triangle });
    const [stretch] = plan.stretches;
    if (stretch === undefined) throw new Error('The knot is laid on one stretch.');
    expect(stretch.depth).toBeCloseTo(700, 6);
    expect(plan.cloth.longest).toBeCloseTo(900, 6);
    const { problem } = packProblem(stretch, plan.cloth, 0, []);
    const rings = problem.items.flatMap(({ fixed, variants }) => {
      const corners = variants[0]?.outline;
      return fixed === undefined || corners === undefined ? [] : [placedRing(corners, fixed)];
    });
    // On the strip the cloth begins 3 mm (half the gap) along and 3.9 mm (and the tolerance) across.
    const cloth = triangle.map(({ x, y }) => ({ x: x - 20 + 3, y: y - 30 + 3.9 }));
    const box = rectangle(3, 3.9, 903, 703.9).map((p) => ({ ...p }));
    const area = (paths: PathsD): number => Math.abs(Clipper.areaPathsD(paths));
    expect(area(Clipper.intersectD(rings, [cloth], FillRule.NonZero, 4))).toBeLessThan(1);
    const free = Clipper.differenceD([box], [...rings, cloth], FillRule.NonZero, 4);
    expect(area(free)).toBeLessThan(1);
  });

  test('is laid single, and must be cloth', () => {
    const knot = [toLay(bowKnot())];
    const folded = planLay(knot, { ...PLAIN, remnant: triangle, folding: 'lengthwise' });
    expect(folded.ok ? [] : folded.refusals.map(({ key }) => key)).toEqual(['lay.remnant-single']);
    const nothing = planLay(knot, { ...PLAIN, remnant: triangle.slice(0, 2) });
    expect(nothing.ok ? [] : nothing.refusals.map(({ key }) => key)).toEqual(['lay.remnant-odd']);
  });
});
