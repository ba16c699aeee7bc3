import { describe, expect, it } from 'vitest';
import { type ClothKind, checkGarment, type Level } from '../../src/engine/check/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf } from '../dress-of.ts';
import { changeSeam, goodGarment, goodInput } from '../fixtures/good-garment.ts';

/** How a skirt of this cloth, gathered so much, stands in the checks. */
function skirt(kind: ClothKind, ratio: number): Level | undefined {
  const garment = changeSeam(goodGarment(), 'waist', (s) => ({ ...s, join: { kind: 'gathered', ratio } }));
  const checks = checkGarment({ ...goodInput(), garment, clothKinds: { skirt: kind } });
  return checks.find(({ code }) => code === 'gather-ratio')?.level;
}

/** The same of a skirt in tiers, each gathered to the one above. */
function tiers(kind: ClothKind, ratio: number): readonly Level[] {
  const garment = dressOf({ steps: [['tiered-skirt', { waistRatio: ratio, tierRatio: ratio }]] });
  const checks = checkGarment({ ...goodInput(), garment, clothKinds: { skirt: kind } });
  return checks.filter(({ code }) => code === 'gather-ratio').map(({ level }) => level);
}

describe('gathers by cloth', () => {
  /** D. C. Lo, Pattern Cutting, as reported by a blog (a weak copy): thick wool and sweat, poplin, chiffon. */
  it.each([
    ['velvet', [1.5], [3, 4]],
    ['cotton', [2], [4.5]],
    ['chiffon', [3, 4], [1.5, 2]],
  ] as const)('heavy 1.5, medium 2, light 3 to 4: %s', (kind, given, others) => {
    for (const ratio of given) expect(skirt(kind, ratio), `${ratio}`).toBe('ok');
    for (const ratio of others) expect(skirt(kind, ratio), `${ratio}`).not.toBe('ok');
  });

  /** Common practice, no source. */
  it.each([
    ['satin', [1.5, 1.75, 2], [1.3, 2.5]],
    ['taffeta', [1.5, 1.75, 2], [1.3, 2.5]],
    ['net', [2, 2.5, 3], [1.5]],
  ] as const)(
    'a skirt of satin or taffeta 1.5 to 2, a petticoat of stiff net 2 to 3: %s',
    (kind, given, others) => {
      for (const ratio of given) expect(skirt(kind, ratio), `${ratio}`).toBe('ok');
      for (const ratio of others) expect(skirt(kind, ratio), `${ratio}`).toBe('note');
    },
  );

  it('tier on tier 1.5 in heavier cloth, 2 in light (two pages on tiers and gathered skirts)', () => {
    for (const kind of ['cotton', 'satin', 'taffeta'] as const)
      expect(tiers(kind, 1.5)).toEqual(['ok', 'ok', 'ok']);
    for (const kind of ['chiffon', 'net', 'organza'] as const)
      expect(tiers(kind, 2)).toEqual(['ok', 'ok', 'ok']);
  });

  it('a ruffle 1.5 to 3 (page on gathers), whatever the cloth if it is not a heavy one', () => {
    for (const kind of ['satin', 'taffeta', 'net', 'organza', 'chiffon', 'cotton'] as const)
      for (const ratio of [1.5, 2, 3]) {
        const garment = dressOf({ steps: [['neck-frill', { ratio }]] });
        const clothKinds = { main: kind, trim: kind };
        const [found] = checkGarment({ ...goodInput(), garment, clothKinds }).filter(
          ({ code }) => code === 'gather-ratio',
        );
        expect(found?.level, `${kind} ${ratio}`).toBe('ok');
      }
  });

  it('160 in into 26 in of any cloth is for pleats (pleat algebra, Nov 2018)', () => {
    const ratio = inches(160) / inches(26);
    for (const kind of ['velvet', 'satin', 'cotton', 'net', 'organza', 'chiffon', 'lace'] as const)
      expect(skirt(kind, ratio), kind).toBe('warn');
  });
});
