// `npm test`: sets up, then runs every check of the project and says how many tests passed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installPackages, ROOT, run } from './setup.mjs';

/** Programs of the system that judge our PDFs a second time. */
const JUDGES = { pdftoppm: 'poppler-utils', pdfinfo: 'poppler-utils', qpdf: 'qpdf' };

installPackages();
bringJudges();
const checks = [
  ['types', 'tsc', ['--noEmit']],
  ['format and lint', 'biome', ['ci', '--error-on-warnings', '.']],
  ['walls between the rooms', 'depcruise', ['src', '--config', '.dependency-cruiser.cjs']],
  ['unused code', 'knip', []],
];
for (const [what, command, args] of checks) {
  console.log(`\n== ${what}`);
  run('npx', ['--no-install', command, ...args]);
}
console.log('\n== tests');
process.exit(runTests());

/** Installs the judges where this system lets us; says what is missing where it does not. */
function bringJudges() {
  const missing = () => Object.keys(JUDGES).filter((name) => !isThere(name));
  if (
    missing().length > 0 &&
    process.platform === 'linux' &&
    process.getuid?.() === 0 &&
    isThere('apt-get')
  ) {
    const packages = [...new Set(missing().map((name) => JUDGES[name]))];
    console.log(`Installing ${packages.join(', ')} ...`);
    const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
    spawnSync('apt-get', ['update'], quiet);
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', ...packages], quiet);
  }
  const still = missing();
  if (still.length === 0) return;
  console.log(
    `Not on this machine: ${still.join(', ')}. The tests that need them are skipped and counted below.`,
  );
}

function isThere(program) {
  return (
    spawnSync(process.platform === 'win32' ? 'where' : 'which', [program], { stdio: 'ignore' }).status === 0
  );
}

/** Runs vitest and closes with one plain line, so that a machine can read how many tests ran. */
function runTests() {
  const folder = mkdtempSync(join(tmpdir(), 'frockwright-test-'));
  const report = join(folder, 'report.json');
  const args = [
    '--no-install',
    'vitest',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ];
  const done = spawnSync('npx', args, { cwd: ROOT, stdio: 'inherit', shell: process.platform === 'win32' });
  try {
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, 'utf8'));
    console.log(`\n${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return done.status ?? 1;
}
