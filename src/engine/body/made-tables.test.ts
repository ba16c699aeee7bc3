import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

it.each([
  ['tools/make-tables.mjs', ['size-tables.ts']],
  [
    'tools/make-growth-tables.mjs',
    ['growth-tables.ts', 'forecast-error-tables.ts', 'survey-tables.ts', 'us-label-table.ts'],
  ],
  ['tools/make-fill-tables.mjs', ['fill-tables.ts']],
])('the tables are those of data/*.csv (otherwise run %s)', (tool, files) => {
  const made = JSON.parse(execFileSync('node', [tool, '--print'], { encoding: 'utf8' }));
  expect(Object.keys(made)).toEqual(files);
  for (const name of files) expect(readFileSync(`src/engine/body/${name}`, 'utf8'), name).toBe(made[name]);
});
