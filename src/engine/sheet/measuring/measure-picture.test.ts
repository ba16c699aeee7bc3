import { describe, expect, it } from 'vitest';
import { MEASURE_IDS } from '../../body/index.ts';
import {
  outlineContains,
  type Path,
  pathBounds,
  pathEnd,
  pathLength,
  pathNearest,
  pathStart,
} from '../../geometry/index.ts';
import { say } from '../../words/index.ts';
import { CHILD_HEIGHT } from './child-drawing.ts';
import { LANDMARKS, type LandmarkId } from './landmarks.ts';
import { landmarkPicture, measurePicture } from './measure-picture.ts';
import type { TakenId } from './tape-places.ts';

const ALL: readonly TakenId[] = [...MEASURE_IDS, 'weight'];

const pathsOf = (id: TakenId, ...looks: readonly string[]): readonly Path[] =>
  measurePicture(id).parts.flatMap(({ look, path }) => (looks.includes(look) ? [path] : []));

/** How long the tape is on the drawn child, mm. */
const tapeOf = (id: TakenId): number => pathsOf(id, 'tape').reduce((sum, path) => sum + pathLength(path), 0);

describe('where the tape runs', () => {
  it.each(MEASURE_IDS)('%s: the ends of the tape lie on the child, or straight beside it', (id) => {
    const body = pathsOf(id, 'skin', 'cloth', 'hair');
    for (const tape of pathsOf(id, 'tape', 'behind')) {
      for (const end of [pathStart(tape), pathEnd(tape)]) {
        if (['height', 'waistHeight', 'kneeHeight'].includes(id)) continue;
        const near = Math.min(...body.map((outline) => pathNearest(outline, end).distance));
        const isOn = body.some((outline) => outlineContains(outline, end));
        expect(isOn || near < 6, `${id} at ${end.x}, ${end.y}`).toBe(true);
      }
    }
  });

  it.each(ALL)('%s: what is drawn of it lies within the window', (id) => {
    const { window, letters } = measurePicture(id);
    for (const path of pathsOf(id, 'tape', 'behind')) {
      const box = pathBounds(path);
      expect(box.minX).toBeGreaterThanOrEqual(window.minX);
      expect(box.maxX).toBeLessThanOrEqual(window.maxX);
      expect(box.minY).toBeGreaterThanOrEqual(window.minY);
      expect(box.maxY).toBeLessThanOrEqual(window.maxY);
    }
    for (const { at } of letters) {
      expect(at.x > window.minX && at.x < window.maxX && at.y > window.minY && at.y < window.maxY).toBe(true);
    }
  });

  it('lengths on the drawing are near those of girls of 116 cm (US survey, Snyder 1977; data/size_table_girls_derived.csv)', () => {
    expect(tapeOf('height')).toBeCloseTo(CHILD_HEIGHT + 10, 0);
    // Table, 116 cm: arm 34.7, biacromial 25.7, back length (an estimate) 27.1, waist height (navel + 3 cm) 67.
    expect(Math.abs(tapeOf('armLength') - 355)).toBeLessThan(20);
    expect(Math.abs(tapeOf('shoulderWidth') - 265)).toBeLessThan(20);
    expect(Math.abs(tapeOf('backNeckToWaist') - 271)).toBeLessThan(10);
    expect(Math.abs(tapeOf('waistHeight') - 680)).toBeLessThan(25);
    expect(tapeOf('scyeDepth')).toBeLessThan(tapeOf('backNeckToWaist') / 2);
  });

  it('every landmark has a letter of its own, a name, and is shown from some side', () => {
    const letters = Object.values(LANDMARKS);
    expect(new Set(letters).size).toBe(letters.length);
    const shown = (['front', 'back', 'side'] as const).flatMap((view) =>
      landmarkPicture(view).letters.map(({ letter }) => letter),
    );
    expect(new Set(shown)).toEqual(new Set(letters));
    for (const id of Object.keys(LANDMARKS) as LandmarkId[]) {
      expect(say(`landmark.${id}.how`, {}, 'cm')).toMatch(/^[A-Z].*\.$/);
    }
  });
});
