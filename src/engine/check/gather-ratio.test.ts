import { describe, expect, test } from 'vitest';
import { dressOf } from '../../../tests/dress-of.ts';
import { changeSeam, goodGarment, goodInput } from '../../../tests/fixtures/good-garment.ts';
import { type Saying, say, type WordKey } from '../words/index.ts';
import { type Check, type CheckInput, CLOTH_KINDS, type ClothKind, checkGarment } from './index.ts';

const gathers = (input: CheckInput): readonly Check[] =>
  checkGarment(input).filter((check) => check.code === 'gather-ratio');
const told = ({ key, values }: Saying): string => say(key as WordKey, values, 'in');
const variant = (check: Check): string => check.say.key.replace('check.gather-ratio.', '');

/** What is found of a skirt that is gathered to the waist. */
function skirtOf(kind: ClothKind | null, ratio: number): Check {
  const garment = changeSeam(goodGarment(), 'waist', (s) => ({ ...s, join: { kind: 'gathered', ratio } }));
  const [check] = gathers({ ...goodInput(), garment, clothKinds: { skirt: kind, main: 'velvet' } });
  if (check === undefined) throw new Error('The skirt is gathered.');
  return check;
}

/** What is found of the gathered seams of a dress cut from one cloth, by seam. */
function seamsOf(kind: ClothKind, steps: Parameters<typeof dressOf>[0]['steps']): readonly string[] {
  const garment = dressOf({ steps: steps ?? [] });
  const clothKinds = { main: kind, skirt: kind, lining: kind, net: kind, trim: kind };
  return gathers({ ...goodInput(), garment, clothKinds }).map(
    (check) => `${JSON.stringify(check.say.values.seam)} ${variant(check)}`,
  );
}

describe('gathers by the cloth that is gathered', () => {
  test('from plain to thick, and the level of each', () => {
    const levels = (kind: ClothKind | null, ...ratios: readonly number[]) =>
      ratios.map((ratio) => [variant(skirtOf(kind, ratio)), skirtOf(kind, ratio).level].join(' '));
    const [none, flat, sparse] = ['none stop', 'flat note', 'sparse note'];
    const [fine, full, thick] = ['ok-in ok', 'full note', 'thick-in warn'];
    expect(levels('velvet', 0.9, 1.1, 1.2, 2, 2.1, 3, 3.1)).toEqual([
      none,
      flat,
      fine,
      fine,
      full,
      full,
      thick,
    ]);
    expect(levels('satin', 1.1, 1.4, 1.5, 2, 2.5, 4, 4.1)).toEqual([
      flat,
      sparse,
      fine,
      fine,
      full,
      full,
      thick,
    ]);
    expect(levels('cotton', 1.4, 1.5, 3, 3.1, 4.1)).toEqual([sparse, fine, fine, full, thick]);
    expect(levels('net', 1.9, 2, 4, 4.1, 6, 6.1)).toEqual([sparse, fine, fine, full, full, thick]);
    expect(levels('chiffon', 2.9, 3, 4, 5, 6.1)).toEqual([sparse, fine, fine, full, thick]);
  });

  test('a kind of which nothing is known, and cloth whose kind the order leaves out, keep the general range', () => {
    for (const kind of ['lace', 'crepe', 'lining', null] as const) {
      const levels = [0.9, 1.1, 1.2, 4, 4.1].map((ratio) => skirtOf(kind, ratio).level);
      expect(levels, `${kind}`).toEqual(['stop', 'note', 'ok', 'ok', 'warn']);
    }
    expect(variant(skirtOf(null, 2))).toBe('ok');
  });

  test('the sentence names the cloth, never the cloth of another part', () => {
    for (const kind of CLOTH_KINDS) {
      const word = kind === 'lining' ? 'lining cloth' : kind;
      for (const ratio of [1.3, 2, 3.9, 7]) {
        expect(told(skirtOf(kind, ratio).say), `${ratio}`).toContain(` ${word} gathered ${ratio} to 1`);
      }
    }
    const { say: said, todo } = skirtOf('satin', 2.5);
    expect(told(said)).toBe('Waist seam: satin gathered 2.5 to 1 is fuller than the usual 1.5 to 2.');
    expect(todo === null ? '' : told(todo)).toContain('strip of the same cloth');
  });

  test('tiers of light cloth need less than its skirt, the uppermost too', () => {
    const tiers = (ratio: number) =>
      seamsOf('chiffon', [['tiered-skirt', { waistRatio: ratio, tierRatio: ratio }]]);
    expect(tiers(2).map((found) => found.split(' ').at(-1))).toEqual(['ok-in', 'ok-in', 'ok-in']);
    expect(tiers(1.5).map((found) => found.split(' ').at(-1))).toEqual(['sparse', 'sparse', 'sparse']);
  });

  test('a puff sleeve and a lining skirt may be gathered little in any cloth', () => {
    for (const kind of CLOTH_KINDS) {
      const found = seamsOf(kind, ['puff-sleeve', 'circle-skirt', 'lining']);
      expect(found.length).toBeGreaterThan(2);
      expect(found.filter((one) => !one.endsWith('ok-in'))).toEqual([]);
    }
  });

  test('a frill takes the usual range of frills', () => {
    for (const kind of CLOTH_KINDS) {
      const [found] = seamsOf(kind, [['neck-frill', { ratio: 2 }]]);
      expect(found, kind).toMatch(/frill.* ok-in$/);
    }
  });
});
