import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

it('the tables are those of data/*.csv (otherwise run tools/make-growth-tables.mjs)', () => {
  const made = JSON.parse(
    execFileSync('node', ['tools/make-growth-tables.mjs', '--print'], { encoding: 'utf8' }),
  );
  expect(Object.keys(made).length).toBe(4);
  for (const [name, text] of Object.entries(made)) {
    expect(readFileSync(`src/engine/body/${name}`, 'utf8'), name).toBe(text);
  }
});
