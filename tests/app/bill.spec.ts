import { readFile } from 'node:fs/promises';
import { type Download, expect, type Page, test } from '@playwright/test';
import ical from 'node-ical';
import { readPdf } from '../outside/pdf-reading.ts';
import { accessFaults, field, goTo, kept, openExample, watch, write } from './page.ts';

/** Presses a button that saves a file, and reads the file. */
async function saved(
  page: Page,
  button: string,
): Promise<{ readonly file: Download; readonly bytes: Buffer }> {
  const arrives = page.waitForEvent('download', { timeout: 120_000 });
  await page.getByRole('button', { name: button, exact: true }).click();
  const file = await arrives;
  return { file, bytes: await readFile(await file.path()) };
}

const textOf = async (bytes: Uint8Array): Promise<string> =>
  (await readPdf(bytes)).map(({ text }) => text).join(' ');

test('from measures to an invoice', async ({ page }) => {
  const { complaints, requests } = watch(page);
  await openExample(page);
  await write(page, 'chest girth', '19');

  await goTo(page, 'Shopping');
  await expect(page.getByText('ivory satin', { exact: true })).toBeVisible({ timeout: 60_000 });
  await write(page, 'Price of ivory satin', '9.50');
  await write(page, 'Price of ivory net', '3.20');
  await expect(page.getByText(/^No price yet for: cotton lawn/)).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);

  await goTo(page, 'Bill');
  await expect(page.getByText('What does an hour of your work cost?', { exact: false })).toBeVisible();
  await write(page, 'Your currency', 'GBP');
  await page.getByRole('button', { name: 'Write what an hour costs' }).click();
  await expect(field(page, 'An hour of your work')).toBeFocused();
  await write(page, 'An hour of your work', '14');
  await expect(page.getByRole('table')).toBeVisible();
  await page.getByRole('button', { name: 'Add an extra' }).click();
  await write(page, 'Price of it', '12 EUR');
  await expect(page.getByText('this is in EUR', { exact: false })).toBeVisible();
  await write(page, 'Price of it', '12.50');
  await expect(page.locator('.pay-table').getByText('£12.50')).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);

  const { file, bytes } = await saved(page, 'Give an invoice');
  expect(file.suggestedFilename()).toMatch(/^I-[A-Z]{4}-0001 - .*\.pdf$/);
  const text = await textOf(bytes);
  expect(text).toContain('Invoice');
  expect(text).toContain('12.50');
  const second = await saved(page, 'Give an invoice');
  expect(second.file.suggestedFilename()).toMatch(/^I-[A-Z]{4}-0002 - /);
  await kept(page);

  await page.reload();
  await expect(page.getByText(/^Invoice I-[A-Z]{4}-0001, /)).toBeVisible({ timeout: 60_000 });
  expect(complaints).toEqual([]);
  expect(
    requests.filter((url) => !url.startsWith('blob:') && new URL(url).host !== new URL(page.url()).host),
  ).toEqual([]);
});

test('days are planned by her hours, kept free, told beside other orders, and put into a calendar', async ({
  page,
}) => {
  await openExample(page);
  await goTo(page, 'Days');
  await expect(page.getByText('Set your hours below', { exact: false })).toBeVisible({ timeout: 60_000 });
  for (const day of ['Monday', 'Tuesday', 'Wednesday', 'Thursday']) await write(page, day, '5');
  const when = page.locator('.pay-day', { hasText: 'Last fitting' });
  await expect(when).toBeVisible();
  const { file, bytes } = await saved(page, 'Make the calendar file');
  expect(file.suggestedFilename()).toMatch(/\.ics$/);
  const events = Object.values(ical.sync.parseICS(bytes.toString('utf8'))).flatMap((one) =>
    one?.type === 'VEVENT' ? [one] : [],
  );
  expect(events.length).toBe(await page.locator('.pay-day').count());
  expect(bytes.toString('utf8')).not.toMatch(/Amina|Efua|Lena|Noor/);
  await page.getByRole('button', { name: 'Keep these days free' }).click();
  await expect(page.getByText('These days are kept for this order.')).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await kept(page);

  await page.getByRole('link', { name: 'Order book' }).click();
  await page.getByRole('button', { name: /^More/ }).first().click();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await page.locator('.order-row a', { hasText: '(copy)' }).click();
  await goTo(page, 'Days');
  await expect(page.getByText(/together take/).first()).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Keep these days free' }).click();
  await kept(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  await expect(page.getByRole('heading', { name: 'Weeks that are too full' })).toBeVisible();
});
