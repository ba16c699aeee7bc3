import { readFile } from 'node:fs/promises';
import { type Download, expect, type Page, test } from '@playwright/test';
import { makePack } from '../../src/engine/order/index.ts';
import { createTextMeasure, writePdf } from '../../src/pdf/index.ts';
import { loadFonts } from '../../src/pdf/load-fonts.ts';
import { exampleOrder } from '../fixtures/example-order.ts';
import { boxOf, type ReadPage, readPdf } from '../outside/pdf-reading.ts';
import { unzipped } from '../zips.ts';
import { accessFaults, goTo, kept, openExample, watch } from './page.ts';

async function openPaper(page: Page): Promise<void> {
  await openExample(page);
  await goTo(page, 'Paper');
  await expect(paperRow(page, 'Pattern at true size, A4')).toBeVisible({ timeout: 30_000 });
}

const paperRow = (page: Page, name: string) => page.locator('.paper-row', { hasText: name });

/** Presses a button that saves a file, and reads the file. */
async function saved(
  page: Page,
  button: string,
): Promise<{ readonly file: Download; readonly bytes: Uint8Array }> {
  const arrives = page.waitForEvent('download', { timeout: 120_000 });
  await page.getByRole('button', { name: button }).click();
  const file = await arrives;
  return { file, bytes: await readFile(await file.path()) };
}

/** The grey 100 mm square of a page: its largest filled box. */
function square(page: ReadPage | undefined): { readonly across: number; readonly down: number } {
  const boxes = (page?.paths ?? [])
    .filter(({ painted, runs }) => painted === 'fill' && runs.length > 0)
    .map(({ runs }) => boxOf(runs.flat()));
  const sides = boxes.map(({ minX, minY, maxX, maxY }) => ({ across: maxX - minX, down: maxY - minY }));
  return sides.reduce((a, b) => (b.across * b.down > a.across * a.down ? b : a));
}

/** Every point that is drawn on a page, in order, as far as a tenth of a micrometre. */
const lines = ({ paths }: ReadPage): string =>
  JSON.stringify(paths.map(({ painted, runs }) => [painted, runs.map((run) => run.map(rounded))]));
const rounded = ({ x, y }: { x: number; y: number }): string => `${x.toFixed(4)} ${y.toFixed(4)}`;

test('a pattern is made as promised, at true size, and as the command line makes it', async ({ page }) => {
  const { complaints } = watch(page);
  await openPaper(page);
  const count = await paperRow(page, 'Pattern at true size, A4').locator('.quiet').textContent();
  const promised = Number(/^(\d+) pages$/.exec(count ?? '')?.[1]);
  await expect(page.getByText(`${promised} sheets will come out of the printer.`)).toBeVisible();
  const { file, bytes } = await saved(page, 'Make the PDF');
  expect(file.suggestedFilename()).toBe('Amina - pattern-A4.pdf');

  const pages = await readPdf(bytes);
  expect(pages).toHaveLength(promised);
  for (const { width, height } of pages) {
    // ISO 216: A4 is 210 x 297 mm.
    expect(width).toBeCloseTo(210, 3);
    expect(height).toBeCloseTo(297, 3);
  }
  const { across, down } = square(pages[0]);
  expect(Math.abs(across - 100)).toBeLessThan(0.01);
  expect(Math.abs(down - 100)).toBeLessThan(0.01);

  const fonts = await loadFonts();
  // Her papers are the same whoever else is in the party.
  const alone = exampleOrder((order) => {
    order.children = order.children.slice(0, 1);
  });
  const tools = { today: '2027-04-24', measure: createTextMeasure(fonts), evenSo: false };
  const made = makePack(alone, tools);
  if (!made.ok) throw new Error(made.code);
  const document = made.pack.documents.find(({ path }) => path === 'Amina/pattern-A4.pdf');
  if (document?.kind !== 'pages') throw new Error('The pack has a pattern.');
  const creationDate = new Date('2027-04-24T00:00:00Z');
  const own = await readPdf(await writePdf(document.pages, { title: document.title, creationDate, fonts }));
  expect(pages.map(({ text }) => text)).toEqual(own.map(({ text }) => text));
  expect(pages.map(lines)).toEqual(own.map(lines));
  expect(complaints).toEqual([]);
});

test('the pages are seen before they are printed, and one of them large', async ({ page }) => {
  await openPaper(page);
  await page.getByRole('button', { name: 'Look at page A2' }).click();
  await expect(page.getByRole('heading', { name: /^A2 \(3 of/ })).toBeVisible();
  await page.getByRole('button', { name: 'Next page' }).click();
  await expect(page.getByRole('heading', { name: /^B1 \(4 of/ })).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();
  await paperRow(page, 'How to draw it by hand').click();
  await expect(
    page.getByRole('button', { name: 'Look at page Drawing by hand 1', exact: true }),
  ).toBeVisible();
});

test('what the square measured is made up for in the next print, and questioned when it is far off', async ({
  page,
}) => {
  await openPaper(page);
  const side = (name: string) => page.getByRole('textbox', { name });
  await side('Square across').fill('99');
  await side('Square down').fill('98.5');
  await side('Square down').blur();
  await expect(page.getByText(/drawn 101 % as wide and 101.5 % as high/)).toBeVisible();
  await expect(page.getByText(/That is 1.5 mm off/)).toBeVisible();
  await kept(page);
  const { bytes } = await saved(page, 'Make the PDF');
  const { across, down } = square((await readPdf(bytes))[0]);
  // On that printer 99/100 and 98.5/100 of this come out: 100 mm.
  expect(Math.abs(across * 0.99 - 100)).toBeLessThan(0.01);
  expect(Math.abs(down * 0.985 - 100)).toBeLessThan(0.01);

  await side('Square across').fill('93');
  await side('Square across').blur();
  await expect(page.getByText(/A printer alone does not err so much/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Print as it is' }).click();
  await expect(page.getByText(/A printer alone does not err so much/)).toHaveCount(0);
  await expect(side('Square across')).toHaveValue('');
});

test('another paper is another number of pages', async ({ page }) => {
  await openPaper(page);
  await page.getByRole('button', { name: /^A4/ }).click();
  await page.getByRole('option', { name: 'A3' }).click();
  await expect(paperRow(page, 'Pattern at true size, A3')).toBeVisible({ timeout: 30_000 });
  await expect(paperRow(page, 'Pattern at true size, A4')).toHaveCount(0);
  const { bytes } = await saved(page, 'Make the PDF');
  const [first] = await readPdf(bytes);
  // ISO 216: A3 is 297 x 420 mm.
  expect(first?.width).toBeCloseTo(297, 3);
  expect(first?.height).toBeCloseTo(420, 3);
});

test('long work can be broken off, and begun again', async ({ page }) => {
  test.setTimeout(180_000);
  await openPaper(page);
  await page.getByRole('button', { name: 'Make the whole pack' }).click();
  await expect(page.getByRole('progressbar')).toBeVisible();
  await page.getByRole('button', { name: 'Break off' }).click();
  await expect(page.getByText('Broken off. Nothing was made.')).toBeVisible();
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  // What she broke off herself is not told once more when she leaves.
  await goTo(page, 'Measures');
  await expect(page.getByRole('heading', { name: 'Measures of Amina' })).toBeVisible();
  expect(await page.locator('.toast', { hasText: 'Broken off' }).count()).toBe(0);
  await goTo(page, 'Paper');
  const { file, bytes } = await saved(page, 'Make the whole pack');
  expect(file.suggestedFilename()).toBe('Flower girls for a garden wedding.zip');
  const files = Object.keys(unzipped(bytes));
  for (const path of ['README.txt', 'cut-list.pdf', 'Tọ́lá/pattern-A4.pdf', 'Noor/checks.pdf']) {
    expect(files).toContain(path);
  }
});

test('work that is left is broken off and told, and the page goes on', async ({ page }) => {
  await openPaper(page);
  await page.getByRole('button', { name: 'Make the whole pack' }).click();
  await expect(page.getByRole('progressbar')).toBeVisible();
  await goTo(page, 'Measures');
  await expect(page.locator('.toast', { hasText: 'Broken off' })).toBeVisible();
  await goTo(page, 'Paper');
  await expect(paperRow(page, 'Pattern at true size, A4')).toBeVisible({ timeout: 30_000 });
});

test('what must not be cut is said first, and marked when it is printed all the same', async ({ page }) => {
  await openExample(page);
  await goTo(page, 'Order');
  // No piece of a bodice lies on a cloth of that width.
  const width = page.getByRole('textbox', { name: 'Width as bought', exact: true }).first();
  await width.fill('8');
  await width.blur();
  await goTo(page, 'Paper');
  await expect(page.getByText('Do not cut this yet').first()).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  await expect(page.getByRole('alertdialog', { name: 'Print it all the same?' })).toBeVisible();
  await page.getByRole('button', { name: 'Not yet' }).click();
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  const { bytes } = await saved(page, 'Make it, marked');
  const pages = await readPdf(bytes);
  expect(pages.map(({ text }) => text).join(' ')).toMatch(/do not cut/i);
});

test('papers are made without a network', async ({ page, context }) => {
  await openExample(page);
  await kept(page);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await context.setOffline(true);
  await page.reload();
  await goTo(page, 'Paper');
  await expect(paperRow(page, 'Pattern at true size, A4')).toBeVisible({ timeout: 30_000 });
  const { bytes } = await saved(page, 'Make the PDF');
  expect(new TextDecoder().decode(bytes.slice(0, 5))).toBe('%PDF-');
});

test('nothing serious stands in the way of anyone, in the light and in the dark', async ({ page }) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await openPaper(page);
    await saved(page, 'Make the PDF');
    await expect(page.getByText(/is in your downloads/)).toBeVisible();
    expect(await accessFaults(page)).toEqual([]);
    await page.goto('/');
  }
});
