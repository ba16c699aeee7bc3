import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { field, goTo, kept, openExample, write } from './page.ts';

test('a change can be undone and redone by name, and survives a reload with its history', async ({
  page,
}) => {
  await openExample(page);
  const chest = field(page, 'chest girth');
  await expect(chest).toHaveValue('18 1/2');
  await chest.fill('19');
  await chest.blur();
  const undo = page.getByRole('button', { name: /Undo: chest girth of Amina/ });
  await expect(undo).toBeEnabled();
  await kept(page);

  await page.reload();
  await expect(chest).toHaveValue('19');
  await undo.click();
  await expect(chest).toHaveValue('18 1/2');
  await page.getByRole('button', { name: /Redo: chest girth of Amina/ }).click();
  await expect(chest).toHaveValue('19');
});

test('typing one number is one step', async ({ page }) => {
  await openExample(page);
  const waist = field(page, 'waist girth');
  await waist.click();
  await waist.press('ControlOrMeta+A');
  await waist.pressSequentially('18 1/4');
  await waist.blur();
  await page.getByRole('button', { name: /Undo: waist girth/ }).click();
  await expect(waist).toHaveValue('18');
});

test('a number that cannot be keeps the last drawing and is told at its field', async ({ page }) => {
  await openExample(page);
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
  const height = field(page, 'height');
  await height.fill('3');
  await height.blur();
  await expect(page.getByText(/^Drawn from the numbers before/)).toBeVisible();
  await expect(page.locator('.field-foot.wrong')).toContainText(/height, 3 in/);
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
  const tags = page.getByRole('navigation', { name: 'Children of this order' });
  await expect(tags.getByRole('link', { name: 'Amina' })).toContainText('Can’t be drawn');
  await expect(tags.getByRole('link', { name: 'Efua' })).toContainText('Everything fits');
  await height.fill('31 3/4');
  await height.blur();
  await expect(page.getByText(/^Drawn from the numbers before/)).toBeHidden();
});

test('other units change no length', async ({ page }) => {
  await openExample(page);
  await page.getByText('centimetres', { exact: true }).click();
  await expect(field(page, 'chest girth')).toHaveValue('47');
  await page.getByText('inches', { exact: true }).click();
  await expect(field(page, 'chest girth')).toHaveValue('18 1/2');
});

test('a new measuring keeps the one before', async ({ page }) => {
  await openExample(page);
  await write(page, 'chest girth', '19');
  await expect(page.getByText(/A new measuring is begun/)).toBeVisible();
  await page.getByText('Earlier measurings').click();
  await expect(page.getByText('Measured day not noted')).toBeVisible();
  await expect(page.locator('.pairs').first()).toContainText('18 1/2 in now 19 in');
});

test('children and cloths come and go, and come back by undo', async ({ page }) => {
  await openExample(page);
  await goTo(page, 'Order');
  const tags = page.getByRole('navigation', { name: 'Children of this order' }).getByRole('link');
  await expect(tags).toHaveCount(5);
  await page.getByRole('button', { name: 'Add a child' }).click();
  await expect(tags).toHaveCount(6);
  await page.getByRole('button', { name: 'Take Efua out of the order' }).click();
  await expect(tags).toHaveCount(5);
  await page.locator('.toast').getByRole('button', { name: 'Undo' }).click();
  await expect(tags).toHaveCount(6);
  await page.getByRole('button', { name: 'Take cotton lawn out of the order' }).click();
  await expect(page.getByRole('button', { name: 'Take cotton lawn out of the order' })).toBeHidden();
  await page.getByRole('button', { name: /Undo: take cotton lawn out/ }).click();
  await expect(page.getByRole('button', { name: 'Take cotton lawn out of the order' })).toBeVisible();
});

test('the block follows its fields, and a paper block begins from the drafted one', async ({ page }) => {
  await openExample(page);
  await goTo(page, 'Block');
  await expect(field(page, 'Chest ease')).toHaveValue('2');
  await write(page, 'Chest ease', '20');
  await expect(page.locator('.field-foot.wrong')).toContainText(/does not work here/);
  await page.getByRole('button', { name: /Undo: block: Chest ease/ }).click();
  await page.getByRole('button', { name: /^drafted from the measures/ }).click();
  await page.getByRole('option', { name: 'from my own paper' }).click();
  await expect(field(page, 'Neck width')).not.toHaveValue('');
  await expect(page.getByText(/^Drawn from the numbers before/)).toBeHidden();
});

test('the order book copies, puts away, deletes and brings back', async ({ page }) => {
  await openExample(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  const title = 'Flower girls for a garden wedding';
  const rows = page.locator('.order-row');
  const more = page.getByRole('button', { name: `More to do with ${title}`, exact: true });
  await expect(rows).toHaveCount(1);
  await more.click();
  await page.getByRole('button', { name: 'Copy' }).click();
  await expect(rows).toHaveCount(2);
  await expect(page.getByText(`${title} (copy)`)).toBeVisible();
  await more.click();
  await page.getByRole('button', { name: 'Delete' }).click();
  await expect(rows).toHaveCount(1);
  await page.locator('.toast').last().getByRole('button', { name: 'Undo' }).click();
  await expect(rows).toHaveCount(2);
  await more.click();
  await page.getByRole('button', { name: 'Put away' }).click();
  await expect(rows).toHaveCount(1);
  await page.getByText('Put away', { exact: true }).click();
  await expect(rows).toHaveCount(1);
  await page.getByText('On the table', { exact: true }).click();
  await write(page, 'Find an order', 'nothing like it');
  await expect(page.getByText(/No order has/)).toBeVisible();
});

test('a backup can be made and brought back', async ({ page }) => {
  await openExample(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  const arrives = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make a backup' }).click();
  const path = await (await arrives).path();
  await page.getByRole('button', { name: /More to do with/ }).click();
  await page.getByRole('button', { name: 'Delete' }).click();
  await expect(page.locator('.order-row')).toHaveCount(0);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring orders from a backup' }).click();
  await (await chooser).setFiles({
    name: 'backup.zip',
    mimeType: 'application/zip',
    buffer: await readFile(path),
  });
  await expect(page.getByRole('heading', { name: 'What is in this backup' })).toBeVisible();
});
