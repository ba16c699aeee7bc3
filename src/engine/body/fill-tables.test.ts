import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

it('the tables are those of data/*.csv (otherwise run tools/make-fill-tables.mjs)', () => {
  const made = execFileSync('node', ['tools/make-fill-tables.mjs', '--print'], { encoding: 'utf8' });
  expect(readFileSync('src/engine/body/fill-tables.ts', 'utf8')).toBe(made);
});
