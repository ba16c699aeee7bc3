// Set-up shared by `npm start` and `npm test`. Plain Node, no packages: it runs before there are any.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

/** Runs a command in the project's folder and gives its exit code. */
export function statusOf(command, args, env = {}) {
  const done = spawnSync(command, args, {
    cwd: ROOT,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  if (done.error) throw done.error;
  return done.status ?? 1;
}

/** As `statusOf`, but ends the process with the exit code when the command fails. */
export function run(command, args, env = {}) {
  const status = statusOf(command, args, env);
  if (status !== 0) process.exit(status);
}

/** Installs the packages when they are missing or not those of the lock file. */
export function installPackages() {
  const lock = join(ROOT, 'package-lock.json');
  const installed = join(ROOT, 'node_modules', '.package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return;
  if (existsSync(installed) && sameVersions(lock, installed)) return;
  console.error('Installing packages ...');
  run('npm', ['ci', '--no-audit', '--no-fund']);
}

function sameVersions(lock, installed) {
  const versions = (file) => {
    const { packages } = JSON.parse(readFileSync(file, 'utf8'));
    return Object.entries(packages)
      .filter(([path, entry]) => path !== '' && entry.optional !== true)
      .map(([path, { version }]) => `${path}@${version}`)
      .sort()
      .join('\n');
  };
  return versions(lock) === versions(installed);
}
