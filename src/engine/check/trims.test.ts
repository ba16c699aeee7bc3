import { describe, expect, test } from 'vitest';
import { goodInput, wearerWith } from '../../../tests/fixtures/good-garment.ts';
import { hanging, small } from '../../../tests/fixtures/spoiled-trims.ts';
import { say } from '../words/index.ts';
import { type CheckInput, checkGarment } from './index.ts';

/** The variants that are found for a trim, in order. */
const variants = (input: CheckInput, code: 'ties-and-bows' | 'small-parts'): readonly string[] =>
  checkGarment(input)
    .filter((check) => check.code === code)
    .map((check) => check.say.key.replace(`check.${code}.`, ''));

const tied = (...trim: Parameters<typeof hanging>) => variants(hanging(...trim), 'ties-and-bows');

describe('ties and bows', () => {
  test('no tie at neck, nape or shoulder under 7; no bow with tails there; a bow without tails may stay', () => {
    for (const place of ['neck', 'nape', 'shoulder'] as const) {
      for (const kind of ['ties', 'sash', 'lacing'] as const) {
        expect(tied(kind, place, 20, 83)).toEqual(['neck-tie']);
        expect(tied(kind, place, 20, 84)).toEqual(['ok']);
        expect(tied(kind, place, 76, 84)).toEqual(['neck-long']);
      }
      expect(tied('sewn-bow', place, 0, 12)).toEqual(['ok']);
      expect(tied('sewn-bow', place, 30, 12)).toEqual(['neck-bow']);
    }
  });

  test('tails of bows 140 mm, sashes 360 mm, at the limit still well', () => {
    expect(tied('sewn-bow', 'waist-back', 140)).toEqual(['ok']);
    expect(tied('sewn-bow', 'waist-back', 141)).toEqual(['long']);
    expect(tied('tied-bow', 'sleeve', 141, 120)).toEqual(['long']);
    expect(tied('sash', 'waist-back', 361)).toContain('sash-long');
    expect(tied('ties', 'waist-back', 361, 167)).toContain('sash-long');
  });

  test('a laced back is told of at any age, long ends besides', () => {
    expect(tied('lacing', 'back', 140, 150)).toEqual(['back-cord']);
    expect(tied('lacing', 'back', 141, 20)).toEqual(['back-cord', 'long']);
  });

  test('from 14 on the standard is silent; without an age the height decides', () => {
    expect(tied('ties', 'nape', 500, 168)).toEqual([]);
    const tall = {
      ...hanging('ties', 'nape', 50, null),
      body: { ...wearerWith({ height: 1400 }), ageMonths: null },
    };
    expect(variants(tall, 'ties-and-bows')).toEqual(['ok']);
    expect(tied('ties', 'nape', 50, null)).toEqual(['neck-tie']);
  });

  test('a dress without trims is not told about', () => {
    expect(variants(goodInput(), 'ties-and-bows')).toEqual([]);
  });

  test('every warning names the exclusion and defers to the rules of the place', () => {
    const inputs = [
      hanging('ties', 'nape', 200),
      hanging('sewn-bow', 'neck', 50),
      hanging('tied-bow', 'nape', 90, 100),
      hanging('lacing', 'back', 200),
      hanging('sash', 'waist-front', 5000),
    ];
    const todos = inputs.flatMap((input) =>
      checkGarment(input).flatMap(({ code, todo }) =>
        code === 'ties-and-bows' && todo !== null ? [todo] : [],
      ),
    );
    expect(todos.length).toBe(7);
    for (const todo of todos) {
      const text = say(todo.key as Parameters<typeof say>[0], todo.values, 'cm');
      expect(text).toContain('ceremonies');
      expect(text).toContain('not legal advice');
    }
  });
});

describe('small parts', () => {
  test('are told of up to 36 months', () => {
    expect(variants(small('buttons', 7, 36), 'small-parts')).toEqual(['pull']);
    expect(variants(small('buttons', 7, 37), 'small-parts')).toEqual([]);
    expect(variants(small('studs', 2.9, 6), 'small-parts')).toEqual(['tiny']);
  });
});
