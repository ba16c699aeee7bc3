import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'vitest';

/**
 * A test that asks a program outside npm. Where the program is not installed the test is skipped and its name says
 * so; with FROCKWRIGHT_REQUIRE_JUDGES set it fails instead.
 */
export function judgedBy(program: string, name: string, body: () => void | Promise<void>): void {
  if (isInstalled(program)) test(`${name} [${program}]`, body);
  else if (process.env.FROCKWRIGHT_REQUIRE_JUDGES) {
    test(`${name} [${program} is not installed]`, () => {
      throw new Error(`${program} is needed, as FROCKWRIGHT_REQUIRE_JUDGES is set.`);
    });
  } else test.skip(`${name} [skipped: ${program} is not installed]`, body);
}

function isInstalled(program: string): boolean {
  return spawnSync(program, ['--version']).error === undefined;
}

/** Runs a program on a file with these bytes. Throws when it does not end well. */
export function runOn(
  bytes: Uint8Array | string,
  program: string,
  args: (file: string) => readonly string[],
): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'frockwright-judge-'));
  try {
    const file = join(folder, 'judged');
    writeFileSync(file, bytes);
    const run = spawnSync(program, args(file), { maxBuffer: 1 << 28 });
    if (run.error !== undefined) throw run.error;
    if (run.status !== 0) throw new Error(`${program}: ${run.stderr}${run.stdout}`);
    return run.stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
