// `node bench/page/figures.mjs [--built] [load] [usable] [drag] [book]`: builds the page, opens it in the system's Chromium and prints how large its
// first load is, how soon it can be used, how fast a dragged number is redrawn and how a book of 2,000 orders opens.
// Times depend on what else the machine does: how busy it was is printed with them. `--built` takes the last
// build; words choose what is measured.
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { serveFolder } from '../../tools/serve.mjs';
import { ROOT, run } from '../../tools/setup.mjs';
import { fillBook, timesToFind, timeToOpen } from './book.mjs';
import { timedDrag } from './drag.mjs';

const FOLDER = join(ROOT, 'dist', 'bench-page');
const ORDERS = 2000;
const SLOWER = 4;
/**
 * The numbers that are dragged: a line of the yoke, which soon comes to its bounds and so needs more moves for as many
 * redraws, and one that moves most of the dress.
 */
const DRAGGED = [
  { step: 'yoke', param: 'rise', count: 600, rounds: 12 },
  { step: 'pleated-skirt', param: 'length' },
];

if (!process.argv.includes('--built')) {
  run('npx', [
    '--no-install',
    'vite',
    'build',
    '--config',
    'vite.app.config.ts',
    '--logLevel',
    'error',
    '--outDir',
    FOLDER,
  ]);
}
const served = await serveFolder(FOLDER);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
});

console.log(`${cpus().length} cores; ${loadavg()[0].toFixed(1)} programs were waiting for them\n`);
console.log('| what | measured | wanted |');
console.log('|---|---|---|');
try {
  if (isAsked('load')) await firstLoad();
  for (const slower of [1, SLOWER]) {
    if (isAsked('usable')) await usable(slower);
    for (const dragged of DRAGGED) if (isAsked('drag')) await drags(slower, dragged);
  }
  if (isAsked('book')) await book();
} finally {
  await browser.close();
  served.close();
}
console.log(`\n${loadavg()[0].toFixed(1)} programs were waiting at the end`);

function isAsked(part) {
  const chosen = process.argv.slice(2).filter((word) => !word.startsWith('--'));
  return chosen.length === 0 || chosen.includes(part);
}

function row(what, measured, wanted) {
  console.log(`| ${what} | ${measured} | ${wanted} |`);
}

/** A new device, without what an earlier visit kept; so much slower than this machine. */
async function visit(slower = 1) {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const client = await context.newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: slower });
  // When something was first on the screen, by the page's own clock.
  await page.addInitScript(() => {
    const seen = {};
    globalThis.firstSeen = seen;
    const wanted = ['.welcome button', '.start input', '.order-row'];
    const look = () => {
      for (const one of wanted)
        if (seen[one] === undefined && document.querySelector(one)) seen[one] = performance.now();
    };
    new MutationObserver(look).observe(document, { subtree: true, childList: true });
  });
  return { context, page, client };
}

/** Script that is asked for before she touches anything. */
async function firstLoad() {
  const { context, page } = await visit();
  const bodies = [];
  page.on('response', (response) => {
    if (/\.js$/.test(new URL(response.url()).pathname)) bodies.push(response.body());
  });
  await page.goto(served.address, { waitUntil: 'networkidle' });
  await page.locator('.welcome button').first().waitFor();
  const sizes = (await Promise.all(bodies)).map((body) => gzipSync(body, { level: 9 }).length);
  const all = sizes.reduce((sum, size) => sum + size, 0);
  row(
    `script of the first load, gzipped, ${sizes.length} files`,
    `${(all / 1000).toFixed(1)} kB`,
    '< 250 kB',
  );
  await context.close();
}

/** The book's first button, and the first field of a new order, each loaded afresh; the middle of five. */
async function usable(slower) {
  for (const [where, path, seen] of [
    ['the first page takes a touch', '', '.welcome button'],
    ['the first field of a new order takes a letter', '#/start', '.start input'],
  ]) {
    const times = [];
    for (let i = 0; i < 5; i++) {
      const { context, page } = await visit(slower);
      await page.goto(`${served.address}${path}`);
      await page.locator(seen).first().waitFor();
      times.push(await page.evaluate((one) => globalThis.firstSeen[one], seen));
      await context.close();
    }
    row(`${where}, ${pace(slower)}`, `${at(times, 0.5).toFixed(0)} ms`, slower === 1 ? '' : '< 2000 ms');
  }
}

async function drags(slower, dragged) {
  const { context, page, client } = await visit();
  await page.goto(served.address);
  await page.getByRole('button', { name: 'Open the example party' }).click();
  await page.getByRole('heading', { name: 'Measures of Amina' }).waitFor();
  await page
    .getByRole('navigation', { name: 'Places of the work' })
    .getByRole('link', { name: 'Dress' })
    .click();
  await page.locator('li[data-step]').first().waitFor();
  await client.send('Emulation.setCPUThrottlingRate', { rate: slower });
  const { redraw, waited, frame, busy } = await timedDrag(page, client, dragged);
  const limit = slower === 1 ? '< 16 ms' : '< 33 ms';
  const name = `${dragged.step}: ${dragged.param} dragged, ${redraw.length} redraws, ${pace(slower)}`;
  const two = (times) => `${at(times, 0.5).toFixed(1)} / ${at(times, 0.95).toFixed(1)} ms`;
  row(`${name}: move heard to lines in the page, median / p95`, two(redraw), limit);
  row('&nbsp; from the browser getting the move', two(waited), '');
  row('&nbsp; to the frame that shows it', two(frame), '');
  row('&nbsp; the main thread’s own time', two(busy), limit);
  await context.close();
}

async function book() {
  const { context, page } = await visit();
  await page.goto(served.address);
  await page.getByRole('button', { name: 'Open the example party' }).click();
  await page.getByRole('heading', { name: 'Measures of Amina' }).waitFor();
  await page.goto(served.address);
  await page.locator('.order-row').first().waitFor();
  await fillBook(page, ORDERS);
  const opened = [];
  for (let i = 0; i < 5; i++) opened.push(await timeToOpen(page));
  row(
    `a book of ${ORDERS} orders opens, middle / slowest of 5`,
    `${at(opened, 0.5).toFixed(0)} / ${at(opened, 1).toFixed(0)} ms`,
    '< 1000 ms',
  );
  const found = await timesToFind(page, ['harvest', 'naming day 13', 'communion 1', 'wedding 1900', 'feast']);
  row(
    'and finds, middle / slowest of 5',
    `${at(found, 0.5).toFixed(0)} / ${at(found, 1).toFixed(0)} ms`,
    '< 100 ms',
  );
  await context.close();
}

/** The value below which the given share of them lies. */
function at(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

function pace(slower) {
  return slower === 1 ? 'as it is' : `${slower} times slower`;
}
