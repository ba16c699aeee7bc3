// `npm start`: from a fresh copy of the project to a pack that can be printed. Plain Node, no packages of its own.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { installPackages, ROOT, run } from './setup.mjs';

const ORDER = join('examples', 'wedding-party.json');
const PACK = join('packs', 'wedding-party');

const [major = 0] = process.versions.node.split('.').map(Number);
if (major < 20) {
  console.error(`Node 20 or newer is needed; this is ${process.versions.node}.`);
  process.exit(1);
}
installPackages();
console.log('Building the program ...');
run('npx', ['--no-install', 'vite', 'build', '--logLevel', 'warn']);
console.log('Making the pack of the example order ...');
run('node', [join('dist', 'frockwright.js'), 'pack', ORDER, '--into', PACK, '--replace']);

const first = join(ROOT, PACK, 'README.txt');
if (!existsSync(first)) throw new Error(`The pack has no ${first}.`);
console.log(`
The example pack is in ${join(ROOT, PACK)}
Open first:            ${first}
Your own order:        node dist/frockwright.js example my-order.json
All that it can do:    node dist/frockwright.js --help`);
