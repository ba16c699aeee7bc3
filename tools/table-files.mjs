// What the makers of tables share: the rows of `data/*.csv` in, constants for `src/engine/body/` out.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const DATA = new URL('../data/', import.meta.url);
const BODY = new URL('../src/engine/body/', import.meta.url);
const BIOME = fileURLToPath(new URL('../node_modules/.bin/biome', import.meta.url));

/** The measures that the survey (Snyder 1977) took, by our names for them and by those in its files. */
export const SURVEY_NAMES = {
  chestGirth: 'chest_girth',
  waistGirth: 'natural_waist_girth',
  hipGirth: 'hip_girth',
  headGirth: 'head_girth',
  neckGirth: 'neck_girth',
  upperArmGirth: 'upper_arm_girth',
  wristGirth: 'wrist_girth',
  armLength: 'arm_length_acromion_wrist',
  kneeHeight: 'knee_height_tibiale',
  navelHeight: 'waist_height',
};

/** The rows of a file in `data/`, by column. Quoted cells (texts with commas) stand only after the columns that are read. */
export function readRows(name) {
  const [head, ...lines] = readFileSync(new URL(name, DATA), 'utf8').trim().split(/\r?\n/);
  const columns = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? '']));
  });
}

/** Writes texts, by file name, formatted into `src/engine/body/`; with `--print` only prints them, as JSON. */
export function giveTables(files) {
  const made = Object.entries(files).map(([name, input]) => [
    name,
    execFileSync(BIOME, ['format', `--stdin-file-path=${name}`], { input, encoding: 'utf8' }),
  ]);
  if (process.argv.includes('--print')) process.stdout.write(JSON.stringify(Object.fromEntries(made)));
  else for (const [name, text] of made) writeFileSync(new URL(name, BODY), text);
}
