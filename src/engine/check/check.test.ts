import { describe, expect, test } from 'vitest';
import { changeSeam, goodGarment, goodInput, TITLES } from '../../../tests/fixtures/good-garment.ts';
import { open, SPOILED, shiftNotch, spoiled } from '../../../tests/fixtures/spoiled-garments.ts';
import { en, speak } from '../words/index.ts';
import { type Check, type CheckCode, type CheckInput, checkGarment, summarise } from './index.ts';

const catalogue = { ...en, ...TITLES };

const dress = goodGarment();

describe('checkGarment', () => {
  test.each(SPOILED.map(([what, input, code, level, key]) => ({ what, input, code, level, key })))(
    '$code: $what -> $key',
    ({ input, code, level, key }) => {
      const found = checkGarment(input).filter((check) => check.code === code);
      const said = found.find((check) => check.say.key === `check.${key}`);
      expect(said, found.map((check) => check.say.key).join()).toBeDefined();
      expect(said?.level).toBe(level);
      if (level === 'ok') expect(found.map((check) => check.level)).not.toContain('stop');
      expect(said?.todo === null).toBe(level === 'ok');
    },
  );

  test('a good dress is good in every check, gathered or pleated', () => {
    for (const skirt of ['gathered', 'pleated'] as const) {
      const found = checkGarment(goodInput({ skirt }));
      expect(found.filter((check) => check.level !== 'ok')).toEqual([]);
      expect(summarise(found)).toEqual({ ok: found.length, note: 0, warn: 0, stop: 0 });
    }
  });

  test('every sentence of the checks can be said, in both systems, and none is left over', () => {
    const said = new Set<string>();
    for (const [, input] of SPOILED) {
      for (const check of checkGarment(input)) {
        for (const saying of [check.say, check.todo]) {
          if (saying === null) continue;
          said.add(saying.key);
          for (const units of ['cm', 'in'] as const) {
            expect(speak(saying, units, catalogue)).not.toMatch(/[{}]|undefined|NaN/);
          }
        }
      }
    }
    const sentences = Object.keys(en).filter((key) =>
      /^check\.(?!part\.|cloth\.|seam\.|edge\.|trim\.|trim-place\.)/.test(key),
    );
    expect([...said].sort()).toEqual(sentences.sort());
  });

  test('places name pieces and edges that the garment has', () => {
    for (const [, input] of SPOILED) {
      for (const { where } of checkGarment(input)) {
        for (const { piece, edge } of where.edges) {
          expect(where.pieces).toContain(piece);
          const named = input.garment.pieces.find((p) => p.id === piece);
          expect(named?.edges.map((e) => e.name)).toContain(edge);
        }
      }
    }
  });

  test('a seam that names an edge which is not there is a mistake of the design, and throws', () => {
    const garment = changeSeam(dress, 'side', (s) => ({
      ...s,
      a: [{ piece: 'front', edge: 'sied', times: 2 }],
    }));
    expect(() => checkGarment(spoiled(garment))).toThrow('front');
  });

  test('sentences read as a dressmaker would say them', () => {
    const saysOf = (input: CheckInput, code: CheckCode): string[] =>
      checkGarment(input)
        .filter((check: Check) => check.code === code)
        .map((check) => speak(check.say, 'cm', catalogue));
    expect(saysOf(goodInput(), 'seam-lengths')[0]).toBe('Shoulder seam agrees: 9 cm on each side.');
    expect(saysOf(open(110), 'head-passes')).toEqual([
      'The head does not pass: neckline and opening give 50.6 cm round, the head measures 51 cm.',
    ]);
    expect(saysOf(spoiled(shiftNotch(dress, 'front-lining', 2)), 'notches-meet')).toEqual([
      'Lining at the waist: the notches of Front and Front lining lie 0.2 cm apart when sewn.',
    ]);
  });
});
