import { describe, expect, it } from 'vitest';
import { GUIDE_PARTS, guidePicture } from './guide-pictures.ts';

describe('the pictures of the guide', () => {
  it.each(GUIDE_PARTS)('%s is drawn, and shows what it speaks of', (part) => {
    const { lines, words, bounds } = guidePicture(part, 'in');
    expect(bounds.maxX - bounds.minX).toBeGreaterThan(100);
    expect(lines.some(({ look }) => look === 'line' || look === 'live')).toBe(true);
    for (const { at } of words) {
      expect(at.x).toBeGreaterThanOrEqual(bounds.minX);
      expect(at.x).toBeLessThanOrEqual(bounds.maxX);
      expect(at.y).toBeGreaterThanOrEqual(bounds.minY);
      expect(at.y).toBeLessThanOrEqual(bounds.maxY);
    }
  });

  it('names the four measures at their places, and lights them up', () => {
    const { lines, words } = guidePicture('measure', 'in');
    expect(words.map(({ text }) => text)).toEqual([
      'chest girth',
      'shoulder length',
      'waist girth',
      'back length',
    ]);
    expect(lines.filter(({ look }) => look === 'live')).toHaveLength(4);
  });
});
