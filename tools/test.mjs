// `npm test`: sets up, then runs the checks of the project and says how many tests passed. Of the page it tries the way in
// and what is private; `npm run test:page` tries all of it.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installPackages, run, statusOf } from './setup.mjs';

/** Programs of the system that judge our PDFs a second time, and the browser in which the page is tried. */
const JUDGES = { pdftoppm: 'poppler-utils', pdfinfo: 'poppler-utils', qpdf: 'qpdf', chromium: 'chromium' };

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
const engine = runTests();
console.log('\n== the page in a browser');
const page = runBrowserTests();
const sum = (key) => engine[key] + page[key];
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed, ${sum('skipped')} skipped`);
process.exit(engine.status || page.status);

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

/** Runs vitest; gives the counts of its report. */
function runTests() {
  return withReport((report) => {
    const args = [
      '--no-install',
      'vitest',
      'run',
      '--maxWorkers=2',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ];
    const status = statusOf('npx', args);
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, 'utf8'));
    return { status, passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests };
  });
}

/** Builds the page and tries the way in and what is private, in the system's Chromium; without one all of it counts as skipped. */
function runBrowserTests() {
  if (!isThere('chromium') && process.env.CHROMIUM === undefined) {
    if (process.env.FROCKWRIGHT_REQUIRE_JUDGES) {
      console.log('There is no Chromium to try the page in.');
      return { status: 1, passed: 0, failed: 1, skipped: 0 };
    }
    return { status: 0, passed: 0, failed: 0, skipped: 1 };
  }
  return withReport((report) => {
    const status = statusOf('npx', ['--no-install', 'playwright', 'test', '--reporter=list,json'], {
      PLAYWRIGHT_JSON_OUTPUT_NAME: report,
      FROCKWRIGHT_PAGE: 'short',
    });
    const { stats } = JSON.parse(readFileSync(report, 'utf8'));
    return {
      status,
      passed: stats.expected + stats.flaky,
      failed: stats.unexpected,
      skipped: stats.skipped,
    };
  });
}

function withReport(work) {
  const folder = mkdtempSync(join(tmpdir(), 'frockwright-test-'));
  try {
    return work(join(folder, 'report.json'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
