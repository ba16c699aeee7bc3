import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, type Wish } from '../../../tests/dress-of.ts';
import {
  angleBetween,
  direction,
  distance,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathLength,
  pathNearest,
  pathStart,
} from '../geometry/index.ts';
import { edgeOf, edgeStart, type Garment } from '../piece/index.ts';
import { type SketchLine, type SketchSide, sketchDress } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

const SIDES = ['front', 'back'] as const;
const key = ({ stroke, path }: SketchLine): string => JSON.stringify([stroke, path]);

/** What a further step draws on the right half. */
function added(steps: Steps, step: Steps[number], side: SketchSide): readonly SketchLine[] {
  const before = new Set(sketchDress(dressOf({ steps }), side).lines.map(key));
  return sketchDress(dressOf({ steps: [...steps, step] }), side).lines.filter(
    (line) => !before.has(key(line)) && pathBounds(line.path).minX > -0.01,
  );
}

const places = (path: Path): readonly Point[] =>
  Array.from({ length: 21 }, (_, i) => pathAt(path, (i / 20) * pathLength(path)).point);

const edge = (dress: Garment, side: SketchSide, name: string): Path =>
  edgeOf(pieceNamed(dress, side), name).path;

/** How far the nearest of the lines strays from another line, all along. */
const strays = (lines: readonly SketchLine[], from: Path): number =>
  Math.min(...lines.map(({ path }) => Math.max(...places(path).map((p) => pathNearest(from, p).distance))));

/** Where the outer edge of a collar or frill comes over the shoulder, from the neck point. */
function overShoulder(dress: Garment, lines: readonly SketchLine[], side: SketchSide): readonly number[] {
  const shoulder = edge(dress, side, 'shoulder');
  const neckPoint = edgeStart(pieceNamed(dress, side), 'shoulder');
  return lines
    .filter(({ stroke }) => stroke === 'outline')
    .flatMap(({ path }) => [pathStart(path), pathEnd(path)])
    .filter((p) => pathNearest(shoulder, p).distance < 0.5 && distance(p, neckPoint) > 12)
    .map((p) => distance(p, neckPoint));
}

describe('sketch of a flat collar', () => {
  const flat: Steps[number] = ['flat-collar', { standAway: '0 mm', neckEase: '0 mm' }];

  it('lies on the neck where it does not stand', () => {
    const dress = dressOf({ steps: ['back-zip'] });
    for (const side of SIDES)
      expect(strays(added(['back-zip'], flat, side), edge(dress, side, 'neckline')), side).toBeLessThan(0.3);
  });

  it('stands at the neck the more, the more the shoulders overlap, and never far', () => {
    const dress = dressOf({ steps: ['back-zip'] });
    const stand = (by: string) =>
      strays(
        added(['back-zip'], ['flat-collar', { standAway: by }], 'back'),
        edge(dress, 'back', 'neckline'),
      );
    expect(stand('25 mm')).toBeGreaterThan(stand('8 mm') + 0.5);
    expect(stand('25 mm')).toBeLessThan(12);
  });

  it('is as wide as drafted over the shoulder, where back and front meet', () => {
    for (const shape of ['rounded', 'pointed', 'whole']) {
      const [front, back] = SIDES.map((side) => {
        const steps: Steps = ['back-zip'];
        const given = { shape, standAway: '0 mm', neckEase: '0 mm' };
        return overShoulder(dressOf({ steps }), added(steps, ['flat-collar', given], side), side);
      });
      expect(front?.[0], shape).toBeCloseTo(50, 0);
      expect(back?.[0], shape).toBeCloseTo(front?.[0] ?? 0, 1);
    }
  });

  it('hides what lies under it: buttons are seen below its edge only', () => {
    const top = (steps: Steps): number =>
      Math.min(
        ...sketchDress(dressOf({ steps }), 'back')
          .lines.filter((line) => line.stroke === 'opening')
          .map((line) => pathBounds(line.path).minY),
      );
    expect(top(['back-buttons', flat]) - top(['back-buttons'])).toBeGreaterThan(40);
  });

  it('parts at the centre back where the neck does, and only there', () => {
    const atCentre = (steps: Steps): number =>
      added(steps, flat, 'back').filter(({ path }) => pathBounds(path).maxX < 0.01).length;
    expect(atCentre(['back-zip'])).toBe(1);
    expect(atCentre(['keyhole-back'])).toBe(1);
    expect(atCentre([])).toBe(0);
  });

  it('keeps the corner of a square neck', () => {
    const steps: Steps = [['neckline', { shape: 'square' }]];
    const neck = edge(dressOf({ steps }), 'front', 'neckline');
    expect(strays(added(steps, flat, 'front'), neck)).toBeLessThan(0.5);
  });
});

describe('outer edge of a flat collar', () => {
  /** Sharp turns of the line that reaches further out than the neck. */
  const sharpTurns = (shape: string, standAway: string): number => {
    const steps: Steps = [['neckline', { shape }]];
    const collar: Steps[number] = ['flat-collar', { shape: 'pointed', standAway }];
    const lines = added(steps, collar, 'front').filter(
      ({ path }) => path.segments.length > 3 && pathBounds(path).maxX > 60,
    );
    expect(lines.length).toBe(1);
    return lines
      .flatMap(({ path }) => path.segments.filter(({ from, to }) => distance(from, to) > 0.01))
      .map(({ from, to }) => direction(from, to))
      .filter((way, i, all) => angleBetween(all[i - 1] ?? way, way) > Math.PI / 4).length;
  };

  it.each(['sweetheart', 'square', 'v', 'round'])(
    'has no other corners on a %s neck when it stands',
    (neck) => {
      expect(sharpTurns(neck, '30 mm')).toBe(sharpTurns(neck, '0 mm'));
    },
  );
});

describe('sketch of a neck frill', () => {
  it('hangs from the neck as deep as it is, front and back alike at the shoulder', () => {
    const steps: Steps = ['back-zip'];
    const dress = dressOf({ steps });
    const [front, back] = SIDES.map((side) => {
      const lines = added(steps, ['neck-frill', { frillWidth: '40 mm' }], side);
      const neck = edge(dress, side, 'neckline');
      const far = lines
        .filter(({ stroke }) => stroke === 'outline')
        .flatMap(({ path }) => places(path).map((p) => pathNearest(neck, p).distance));
      expect(Math.max(...far), side).toBeLessThan(41);
      expect(Math.max(...far), side).toBeGreaterThan(38);
      return overShoulder(dress, lines, side);
    });
    expect(front?.[0]).toBeCloseTo(40, 0);
    expect(back?.[0]).toBeCloseTo(40, 0);
  });

  it('is gathered at the neck only where it is a gathered strip', () => {
    const gathers = (way: string): number =>
      added([], ['neck-frill', { way }], 'front').filter(({ stroke }) => stroke === 'gather').length;
    expect(gathers('gathered')).toBeGreaterThan(3);
    expect(gathers('circular')).toBe(0);
  });
});
