// `npm start`: from a fresh copy of the project to the page in the browser. `npm start -- --pack`: the pack of the
// example order instead, by the command line program. Plain Node, no packages of its own.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { serveFolder } from './serve.mjs';
import { installPackages, ROOT, run } from './setup.mjs';

const ORDER = join('examples', 'wedding-party.json');
const PACK = join('packs', 'wedding-party');

const [major = 0] = process.versions.node.split('.').map(Number);
if (major < 20) {
  console.error(`Node 20 or newer is needed; this is ${process.versions.node}.`);
  process.exit(1);
}
installPackages();
if (process.argv.includes('--pack')) makePack();
else await openPage();

function build(...more) {
  run('npx', ['--no-install', 'vite', 'build', '--logLevel', 'warn', ...more]);
}

async function openPage() {
  console.log('Building the page ...');
  build('--config', 'vite.app.config.ts');
  const given = Number(process.argv.find((word) => word.startsWith('--port='))?.slice('--port='.length) ?? 0);
  const { address } = await serveFolder(join(ROOT, 'dist', 'app'), given);
  console.log(`
Frockwright is at ${address}
It is served on this machine only. Press Ctrl+C to end it.`);
  if (!process.argv.includes('--no-browser')) openBrowser(address);
}

/** Opens the browser where there is a screen and one to open; says nothing where not, since the address is printed. */
function openBrowser(address) {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', address]
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '', address]
        : ['xdg-open', address];
  if (process.platform === 'linux') {
    const hasScreen = (process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY ?? '') !== '';
    if (!hasScreen || spawnSync('which', [command], { stdio: 'ignore' }).status !== 0) return;
  }
  const child = spawn(command, args, { stdio: 'ignore', detached: true });
  child.on('error', () => {});
  child.unref();
}

function makePack() {
  console.log('Building the program ...');
  build();
  console.log('Making the pack of the example order ...');
  run('node', [join('dist', 'frockwright.js'), 'pack', ORDER, '--into', PACK, '--replace']);
  const first = join(ROOT, PACK, 'README.txt');
  if (!existsSync(first)) throw new Error(`The pack has no ${first}.`);
  console.log(`
The example pack is in ${join(ROOT, PACK)}
Open first:            ${first}
Your own order:        node dist/frockwright.js example my-order.json
All that it can do:    node dist/frockwright.js --help`);
}
