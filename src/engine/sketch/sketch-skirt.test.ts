import { describe, expect, it } from 'vitest';
import { dressOf, type Wish } from '../../../tests/dress-of.ts';
import { outlineIsClosed, pathBounds, pathEnd, pathNearest, pathStart } from '../geometry/index.ts';
import { type SketchLine, type SketchSide, type SketchStroke, sketchDress } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

const lines = (steps: Steps, side: SketchSide, stroke?: SketchStroke): readonly SketchLine[] =>
  sketchDress(dressOf({ steps }), side).lines.filter(
    (line) => stroke === undefined || line.stroke === stroke,
  );

const lowest = (drawn: readonly SketchLine[]): number =>
  Math.max(...drawn.map((line) => pathBounds(line.path).maxY));

/** Seams that end on the hem. */
function goreSeams(steps: Steps, side: SketchSide): readonly SketchLine[] {
  const all = lines(steps, side);
  const hems = all.filter(({ stroke, path }) => stroke === 'outline' && Math.abs(pathEnd(path).x) < 0.01);
  return all.filter(
    ({ stroke, path }) =>
      stroke === 'seam' &&
      pathEnd(path).y > pathStart(path).y + 100 &&
      hems.some((hem) => pathNearest(hem.path, pathEnd(path)).distance < 0.5),
  );
}

describe('sketch of a skirt', () => {
  it('shows every seam between gores once, from the waist to the hem', () => {
    for (const gores of [5, 6, 10]) {
      const steps: Steps = [['gored-skirt', { gores }]];
      const [front, back] = [goreSeams(steps, 'front'), goreSeams(steps, 'back')];
      expect(front.length + back.length, `${gores} gores`).toBe(gores);
      const waist = lines(steps, 'front', 'seam').filter(
        ({ path }) => pathBounds(path).maxY < pathStart(front[0]?.path ?? path).y + 20,
      );
      for (const { path } of front)
        expect(
          Math.min(...waist.map((line) => pathNearest(line.path, pathStart(path)).distance)),
        ).toBeLessThan(0.5);
    }
  });

  it('six gores show four in front: three seams, one at the centre', () => {
    const seams = goreSeams([['gored-skirt', { gores: 6 }]], 'front');
    expect(seams.map(({ path }) => Math.sign(Math.round(pathEnd(path).x))).toSorted()).toEqual([-1, 0, 1]);
  });

  it('a skirt on the fold has no seam in front; its centre back has one', () => {
    expect(goreSeams(['a-line-skirt'], 'front')).toEqual([]);
    expect(goreSeams(['a-line-skirt'], 'back').length).toBe(1);
    expect(goreSeams(['gathered-skirt'], 'back')).toEqual([]);
  });

  it('a high-low hem shows the longer back below the front', () => {
    const skirt: Steps = [['circle-skirt', { part: 'half' }]];
    const behind = lines([...skirt, 'high-low-hem'], 'front', 'light').filter(
      ({ path }) => pathBounds(path).maxY > 200,
    );
    expect(lowest(behind)).toBeCloseTo(lowest(lines([...skirt, 'high-low-hem'], 'back', 'outline')), 6);
    expect(lowest(behind)).toBeGreaterThan(
      lowest(lines([...skirt, 'high-low-hem'], 'front', 'outline')) + 30,
    );
    expect(lines(skirt, 'front', 'light').every(({ path }) => pathBounds(path).maxY < 200)).toBe(true);
  });

  it('tiers are parted by seams from which their gathers run', () => {
    const drawn = lines([['tiered-skirt', { tiers: 3 }]], 'front');
    const waist = Math.max(...lines([], 'front').map(({ path }) => pathBounds(path).maxY));
    const seams = drawn.filter(({ stroke, path }) => stroke === 'seam' && pathBounds(path).minY > waist + 20);
    expect(seams.length).toBe(2 * 2);
    const gathers = drawn.filter(({ stroke, path }) => stroke === 'gather' && pathStart(path).y > waist + 20);
    for (const { path } of gathers)
      expect(Math.min(...seams.map((s) => pathNearest(s.path, pathStart(path)).distance))).toBeLessThan(3);
  });

  it('tucks are drawn where they are sewn, and the skirt stays as long', () => {
    const tucks: Steps[number] = ['growth-tuck', { tucks: 2, tuckDepth: '12 mm', above: '90 mm' }];
    const plain = lines(['gathered-skirt'], 'front');
    const tucked = lines(['gathered-skirt', tucks], 'front');
    expect(lowest(tucked)).toBeCloseTo(lowest(plain), 6);
    const more = (stroke: SketchStroke) =>
      tucked.filter((l) => l.stroke === stroke).length - plain.filter((l) => l.stroke === stroke).length;
    expect([more('seam'), more('pleat')]).toEqual([4, 4]);
    // The lowest fold hangs 90 mm above the hem, at the centre.
    const folds = tucked
      .filter((l) => l.stroke === 'seam')
      .map((l) => pathStart(l.path))
      .filter((p) => p.x === 0);
    expect(lowest(plain) - Math.max(...folds.map((p) => p.y))).toBeCloseTo(90, -1);
  });

  it('net is a light closed shape over the skirt, which is seen through it', () => {
    const plain = lines(['tiered-skirt'], 'front');
    const drawn = lines(['tiered-skirt', 'net-overskirt'], 'front');
    const net = drawn.filter((line) => line.net === true);
    expect(net.map(({ stroke }) => stroke)).toEqual(['light']);
    expect(net.every(({ path }) => outlineIsClosed(path))).toBe(true);
    expect(drawn.length).toBeGreaterThan(plain.length);
  });
});
