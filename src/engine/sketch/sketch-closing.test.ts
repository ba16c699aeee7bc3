import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, type Wish } from '../../../tests/dress-of.ts';
import { outlineIsClosed, pathBounds, pathEnd, pathLength, pathNearest } from '../geometry/index.ts';
import { edgeEnd, edgeOf } from '../piece/index.ts';
import { type SketchLine, type SketchSide, sketchDress } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

const openings = (steps: Steps, side: SketchSide): readonly SketchLine[] =>
  sketchDress(dressOf({ steps }), side).lines.filter((line) => line.stroke === 'opening');

const circles = (lines: readonly SketchLine[]): readonly SketchLine[] =>
  lines.filter(({ path }) => outlineIsClosed(path));

const middle = ({ path }: SketchLine): { x: number; y: number } => {
  const box = pathBounds(path);
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
};

describe('sketch of what closes a dress', () => {
  it('a keyhole lies on the centre back under the neck, with its button and its loop', () => {
    const steps: Steps = [['keyhole-back', { diameter: '12 mm' }]];
    const dress = dressOf({ steps });
    const { lines } = sketchDress(dress, 'back');
    const { path } = edgeOf(pieceNamed(dress, 'back'), 'keyhole');
    expect(lines.some((line) => line.path === path)).toBe(true);
    const neck = edgeEnd(pieceNamed(dress, 'back'), 'keyhole');
    expect(neck.x).toBeCloseTo(0, 9);
    const seen = openings(steps, 'back');
    const [button] = circles(seen);
    const [loop] = seen.filter((line) => line !== button);
    if (button === undefined || loop === undefined) throw new Error('A button and a loop are drawn.');
    const box = pathBounds(button.path);
    expect(box.maxX - box.minX).toBeCloseTo(12, 6);
    for (const line of [button, loop]) {
      const { minX, maxX, minY, maxY } = pathBounds(line.path);
      expect(Math.max(Math.abs(minX), Math.abs(maxX))).toBeLessThan(25);
      expect(minY).toBeGreaterThan(neck.y - 5);
      expect(maxY).toBeLessThan(neck.y + 25);
    }
    // The loop reaches round the button from the other edge.
    expect(pathBounds(loop.path).minX).toBeLessThan(box.minX);
    expect(pathBounds(loop.path).maxX).toBeGreaterThan(0);
    expect(openings(steps, 'front')).toEqual([]);
  });

  it('buttons stand on the centre line, as many as close the back, beside the one edge that laps over', () => {
    const steps: Steps = ['back-buttons', 'gathered-skirt'];
    const { closing } = dressOf({ steps });
    if (closing?.kind !== 'buttons') throw new Error('The back is buttoned.');
    const seen = openings(steps, 'back');
    expect(circles(seen).length).toBe(closing.count);
    for (const button of circles(seen)) expect(middle(button).x).toBeCloseTo(0, 6);
    const edges = seen.filter(({ path }) => !outlineIsClosed(path) && Math.abs(pathEnd(path).x) > 1);
    expect(edges.map(({ path }) => pathEnd(path).x)).toEqual([-closing.stand]);
  });

  it('a cord crosses from each pair of loops to the next', () => {
    const { closing } = dressOf({ steps: ['back-lacing'] });
    if (closing?.kind !== 'lacing') throw new Error('The back is laced.');
    const slanting = openings(['back-lacing'], 'back').filter(({ path }) => {
      const { minX, maxX, minY, maxY } = pathBounds(path);
      return minX < -1 && maxX > 1 && maxY > minY + 1;
    });
    // The bow at the waist may cover the last crossing.
    expect(slanting.length).toBeGreaterThanOrEqual(2 * (closing.loops - 2));
    expect(slanting.length).toBeLessThanOrEqual(2 * (closing.loops - 1));
  });

  it('press studs lie along both shoulders, on the front that laps over', () => {
    const dress = dressOf({ steps: ['shoulder-studs'] });
    if (dress.closing?.kind !== 'shoulder-studs') throw new Error('The shoulders open.');
    const studs = circles(openings(['shoulder-studs'], 'front'));
    expect(studs.length).toBe(2 * dress.closing.count);
    const shoulder = edgeOf(pieceNamed(dress, 'front'), 'shoulder').path;
    for (const stud of studs) {
      const { x, y } = middle(stud);
      expect(pathNearest(shoulder, { x: Math.abs(x), y }).distance).toBeCloseTo(10, 1);
    }
    expect(circles(openings(['shoulder-studs'], 'back'))).toEqual([]);
  });

  it('of a wrapped front the upper edge is seen whole, the lower one up to where it goes under', () => {
    const dress = dressOf({ steps: ['wrap-front'] });
    const neck = edgeOf(pieceNamed(dress, 'front'), 'neckline').path;
    const start = neck.segments[0].from;
    const lengths = sketchDress(dress, 'front')
      .lines.filter(
        ({ stroke, path }) => stroke === 'outline' && pathNearest(path, pathEnd(neck)).distance < 0.1,
      )
      .map(({ path }) => pathLength(path));
    expect(start.x).toBeLessThan(-20);
    // The half as drawn lies under the other; what is left of its edge ends before the centre.
    expect(lengths.some((length) => Math.abs(length - pathLength(neck)) < 0.1)).toBe(false);
    const mirrored = sketchDress(dress, 'front').lines.filter(
      ({ path }) => Math.abs(pathLength(path) - pathLength(neck)) < 1e-6,
    );
    expect(mirrored.length).toBe(1);
  });
});
