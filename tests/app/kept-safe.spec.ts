import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, type Page, test } from '@playwright/test';
import { unzipSync } from 'fflate';
import { field, goTo, kept, openExample, openTwice, write } from './page.ts';

const restoreFrom = async (page: Page, path: string): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring orders from a backup' }).click();
  await (await chooser).setFiles(path);
};

const backupOf = async (page: Page): Promise<string> => {
  const arrives = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make a backup' }).click();
  return (await arrives).path();
};

/** The orders in a backup file, by name of the part. */
async function ordersIn(path: string): Promise<Readonly<Record<string, unknown>>> {
  const parts = Object.entries(unzipSync(new Uint8Array(await readFile(path))));
  const texts = parts.filter(([name]) => name.startsWith('orders/'));
  return Object.fromEntries(
    texts.map(([name, bytes]) => [name, JSON.parse(new TextDecoder().decode(bytes))]),
  );
}

test('a reload in the middle of typing loses nothing', async ({ page }) => {
  await openExample(page);
  const chest = field(page, 'chest girth');
  await chest.click();
  await chest.press('ControlOrMeta+A');
  await chest.pressSequentially('19 1/4');
  // The field is still being typed in when the page goes: nothing has been left, nothing pressed.
  await page.reload();
  await expect(field(page, 'chest girth')).toHaveValue('19 1/4');
  await page.getByRole('button', { name: /Undo: chest girth of Amina/ }).click();
  await expect(field(page, 'chest girth')).toHaveValue('18 1/2');
});

test('a backup, an emptied device, and the way back: the orders are equal, settings and deleted ones too', async ({
  page,
}) => {
  await openExample(page);
  await write(page, 'chest girth', '19');
  await kept(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  await page.getByRole('button', { name: 'Open the example party' }).click();
  await expect(page.getByRole('heading', { name: 'Measures of Amina' })).toBeVisible();
  await page.getByRole('link', { name: 'Order book' }).click();
  await expect(page.locator('.order-row')).toHaveCount(2);
  await page
    .getByRole('button', { name: /More to do with/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Delete' }).click();
  await expect(page.locator('.order-row')).toHaveCount(1);
  await page.getByText('centimetres', { exact: true }).click();
  await page.getByText('dark', { exact: true }).click();
  const before = await backupOf(page);

  await page.evaluate(async () => {
    const books = await indexedDB.databases();
    for (const { name = '' } of books) indexedDB.deleteDatabase(name);
  });
  await page.reload();
  await expect(page.getByRole('button', { name: 'Start your own with five numbers' })).toBeVisible();
  await expect(page.getByRole('radio', { name: 'inches' })).toBeChecked();

  await restoreFrom(page, before);
  await page.getByText(/^Take its settings too/).click();
  await expect(page.getByText(/it was deleted when the backup was made/)).toBeVisible();
  await page.getByRole('button', { name: 'Write this' }).click();
  await expect(page.getByText(/Added: 2\./)).toBeVisible();
  await expect(page.locator('.order-row')).toHaveCount(1);
  await expect(page.getByRole('radio', { name: 'centimetres' })).toBeChecked();
  await expect(page.getByRole('radio', { name: 'dark' })).toBeChecked();
  await page.getByText('Deleted', { exact: true }).click();
  await expect(page.getByText(/can be brought back until/)).toBeVisible();

  const [was, is] = [await ordersIn(before), await ordersIn(await backupOf(page))];
  expect(Object.keys(was)).toHaveLength(2);
  expect(is).toEqual(was);
});

test('a deleted order goes for good only when she says so twice', async ({ page }) => {
  await openExample(page);
  await kept(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  await page.getByRole('button', { name: /More to do with/ }).click();
  await page.getByRole('button', { name: 'Delete' }).click();
  await page.getByRole('button', { name: /^Open the example/ }).waitFor();
  const book = page.getByText('Deleted', { exact: true });
  await book.click();
  await expect(page.locator('.order-row')).toHaveCount(1);
  await page.getByRole('button', { name: /More to do with/ }).click();
  await page.getByRole('button', { name: 'Remove for good' }).click();
  await page.getByRole('button', { name: 'Yes, remove it for good' }).click();
  await expect(page.getByText(/is gone for good/)).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Start your own with five numbers' })).toBeVisible();
});

test('what is typed while the clash of two windows is asked about is kept beside the other state', async ({
  page,
  context,
}) => {
  const other = await openTwice(page, context);
  const waist = field(other, 'waist girth');
  await waist.click();
  await waist.press('ControlOrMeta+A');
  await waist.pressSequentially('18 1/4');
  const dialog = other.getByRole('alertdialog', { name: 'This order was changed in another window' });
  await dialog.getByRole('button', { name: 'Take the other' }).click();
  await expect(field(other, 'chest girth')).toHaveValue('19');
  await expect(field(other, 'waist girth')).toHaveValue('18');
  await other.getByRole('link', { name: 'Order book' }).click();
  await other.locator('.order-row', { hasText: 'kept from another window' }).getByRole('link').click();
  await goTo(other, 'Measures');
  await expect(field(other, 'waist girth')).toHaveValue('18 1/4');
});

test('after one visit the page works without a network', async ({ baseURL, viewport, isMobile }, info) => {
  const profile = join(tmpdir(), `frockwright-offline-${process.pid}-${info.project.name}`);
  const { executablePath, args } = info.project.use.launchOptions ?? {};
  const context = await chromium.launchPersistentContext(profile, {
    ...(executablePath === undefined ? {} : { executablePath }),
    ...(args === undefined ? {} : { args }),
    viewport,
    isMobile,
    hasTouch: isMobile,
    ...(baseURL === undefined ? {} : { baseURL }),
  });
  try {
    const page = context.pages()[0] ?? (await context.newPage());
    await openExample(page);
    await kept(page);
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    await context.setOffline(true);
    await expect(
      page.evaluate(() =>
        fetch('/not-kept-by-anyone.txt').then(
          () => 'answered',
          () => 'no network',
        ),
      ),
    ).resolves.toBe('no network');
    await page.goto('/');
    await page.getByRole('link', { name: /Flower girls for a garden wedding/ }).click();
    await goTo(page, 'Measures');
    await expect(page.locator('.t-piece').first()).toBeVisible();
    const drawn = await page.locator('.t-piece .t-stitching').first().getAttribute('d');
    await write(page, 'chest girth', '20');
    await kept(page);
    await expect(page.locator('.t-piece .t-stitching').first()).not.toHaveAttribute('d', drawn ?? '');
    await page.goto('/#/guide');
    await expect(page.locator('svg.guide-picture')).toHaveCount(7);
  } finally {
    await context.close();
  }
});
