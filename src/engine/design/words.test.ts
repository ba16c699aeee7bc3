import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DESIGN_STEPS, hasWords } from './index.ts';

const folders = ['../design', '../block', '../construct'].map((name) => new URL(`${name}/`, import.meta.url));
const sources = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
    .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') })),
);

/** Literal catalogue keys: what stands in quotes and starts with a step's id or a word of the bench. */
const prefixes = [...DESIGN_STEPS.map((step) => step.id), 'draft', 'place', 'edge', 'end', 'piece'];
const KEY = new RegExp(`'((?:${prefixes.join('|')})\\.[a-z0-9.-]+)'`, 'g');

describe('words of the draft', () => {
  for (const { name, text } of sources) {
    it(`${name} uses only keys that have words`, () => {
      const keys = [...text.matchAll(KEY)]
        .map((match) => match[1] ?? '')
        .filter((key) => !isOwnWord(text, key));
      expect(keys.filter((key) => !hasWords(key))).toEqual([]);
    });
  }

  it('every choice of every parameter has words', () => {
    const keys = DESIGN_STEPS.flatMap((step) =>
      Object.entries(step.params).flatMap(([name, param]) =>
        param.kind === 'choice' ? param.choices.map((choice) => `${step.id}.${name}.${choice}`) : [],
      ),
    );
    expect(keys.filter((key) => !hasWords(key))).toEqual([]);
    expect(keys.length).toBeGreaterThan(20);
  });

  it('every rule names its source', () => {
    for (const step of DESIGN_STEPS) {
      for (const param of Object.values(step.params))
        expect(param.source.length, step.id).toBeGreaterThan(10);
    }
  });
});

/** A step's own words are written without its id: `'place.neck-point': 'the new neck point'`. */
const isOwnWord = (text: string, key: string): boolean => text.includes(`'${key}':`);
