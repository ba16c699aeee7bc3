import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed } from '../../../tests/dress-of.ts';
import {
  distance,
  outlineContains,
  pathAt,
  pathBounds,
  pathEnd,
  pathLength,
  pathNearest,
} from '../geometry/index.ts';
import { edgeOf, outlineOf } from '../piece/index.ts';
import { type SketchLine, type SketchStroke, sketchDress } from './index.ts';

const ofStroke = (lines: readonly SketchLine[], stroke: SketchStroke): readonly SketchLine[] =>
  lines.filter((line) => line.stroke === stroke);

const widest = (lines: readonly SketchLine[]): number =>
  Math.max(...lines.map((line) => pathBounds(line.path).maxX));

describe('flat sketch', () => {
  it('shows the very edges of the pieces, once for each half', () => {
    const dress = dressOf({ steps: ['neckline', 'drop-shoulder', 'yoke'] });
    const { lines } = sketchDress(dress, 'front');
    for (const [piece, edge] of [
      ['front-yoke', 'neckline'],
      ['front-yoke', 'sleeve-edge'],
      ['front-yoke', 'yoke-line'],
      ['front', 'side'],
    ] as const) {
      const { path } = edgeOf(pieceNamed(dress, piece), edge);
      expect(lines.filter((line) => line.path === path).length, edge).toBe(1);
      const mirrored = lines.filter(
        (line) => Math.abs(pathBounds(line.path).minX + pathBounds(path).maxX) < 1e-9,
      );
      expect(mirrored.length, edge).toBeGreaterThan(0);
    }
  });

  it('a fuller skirt stands off wider', () => {
    const hem = (ratio: number) =>
      widest(
        ofStroke(sketchDress(dressOf({ steps: [['gathered-skirt', { ratio }]] }), 'front').lines, 'outline'),
      );
    expect(hem(3)).toBeGreaterThan(hem(2));
    expect(hem(2)).toBeGreaterThan(hem(1.3));
    const part = (name: string) =>
      widest(
        ofStroke(
          sketchDress(dressOf({ steps: [['circle-skirt', { part: name }]] }), 'front').lines,
          'outline',
        ),
      );
    expect(part('full')).toBeGreaterThan(part('half'));
    expect(part('half')).toBeGreaterThan(part('quarter'));
  });

  it('gathers and pleats are shown where the waist is gathered or pleated', () => {
    const lines = (steps: string[]) => sketchDress(dressOf({ steps }), 'front').lines;
    expect(ofStroke(lines(['gathered-skirt']), 'gather').length).toBeGreaterThan(6);
    expect(ofStroke(lines(['gathered-skirt']), 'pleat').length).toBe(0);
    expect(ofStroke(lines(['pleated-skirt']), 'pleat').length).toBeGreaterThan(1);
    expect(ofStroke(lines(['circle-skirt']), 'gather').length).toBe(0);
  });

  it('the zip is seen from behind only, as long as it opens', () => {
    const dress = dressOf({ steps: ['back-zip', 'gathered-skirt'] });
    expect(ofStroke(sketchDress(dress, 'front').lines, 'opening')).toEqual([]);
    const seen = ofStroke(sketchDress(dress, 'back').lines, 'opening');
    const right = seen.filter((line) => pathBounds(line.path).minX >= 0);
    const length =
      Math.max(...right.map((l) => pathBounds(l.path).maxY)) -
      Math.min(...right.map((l) => pathBounds(l.path).minY));
    expect(length).toBeCloseTo(dress.closing?.openingLength ?? 0, 6);
  });

  it('a set-in sleeve ends clear of the bodice at every age', () => {
    for (const ageMonths of [12, 48, 96, 144]) {
      const dress = dressOf({ ageMonths, steps: ['set-in-sleeve'] });
      for (const line of sketchDress(dress, 'front').lines) expect(pathLength(line.path)).toBeGreaterThan(0);
      const bodice = pathBounds(edgeOf(pieceNamed(dress, 'front'), 'side').path).maxX;
      expect(widest(sketchDress(dress, 'front').lines)).toBeGreaterThan(bodice + 30);
    }
  });

  it('a dart is one line up to its tip, and the waist runs on over its mouth', () => {
    const steps: [string, { count: string }][] = [['waist-darts', { count: 'one' }]];
    const dress = dressOf({ steps });
    const front = pieceNamed(dress, 'front');
    const tip = pathEnd(edgeOf(front, 'dart-1-outer').path);
    const { lines } = sketchDress(dress, 'front');
    const toTip = lines.filter(({ path }) => distance(pathEnd(path), tip) < 1e-6);
    expect(toTip.map(({ stroke }) => stroke)).toEqual(['seam']);
    const waist = lines.filter(({ stroke, path }) => stroke === 'seam' && pathEnd(path).y > tip.y + 20);
    const whole = waist.reduce((sum, { path }) => sum + pathBounds(path).maxX - pathBounds(path).minX, 0);
    expect(whole).toBeCloseTo(2 * Math.max(...waist.map(({ path }) => pathBounds(path).maxX)), 0);
  });

  it('the arm hangs behind the bodice, not over it', () => {
    const steps = ['puff-sleeve'];
    const outline = outlineOf(pieceNamed(dressOf({ steps }), 'front'));
    const plain = new Set(sketchDress(dressOf({ steps: [] }), 'front').lines.map((l) => JSON.stringify(l)));
    for (const line of sketchDress(dressOf({ steps }), 'front').lines) {
      const { path } = line;
      if (plain.has(JSON.stringify(line)) || pathBounds(path).minX < 0) continue;
      const { point } = pathAt(path, pathLength(path) / 2);
      const within = outlineContains(outline, point) && pathNearest(outline, point).distance > 1;
      expect(within).toBe(false);
    }
  });
});
