import { expect, test } from '@playwright/test';
import { accessFaults, openExample } from './page.ts';

test('the guide is one step away from everywhere, and draws its own pictures', async ({ page }) => {
  test.setTimeout(120_000);
  const heading = page.getByRole('heading', { name: 'From the tape to the last stitch' });
  await page.goto('/');
  await page.getByRole('link', { name: 'From the tape to the last stitch' }).click();
  await expect(heading).toBeVisible();
  await page.goto('/#/start');
  await page.getByRole('link', { name: 'Guide' }).click();
  await expect(heading).toBeVisible();
  await openExample(page);
  const address = page.url();
  await page.getByRole('banner').getByRole('link', { name: 'Guide' }).click();
  await expect(heading).toBeVisible();
  const pictures = page.locator('svg.guide-picture');
  await expect(pictures).toHaveCount(7);
  for (const one of await pictures.all()) {
    expect(await one.locator('path').count()).toBeGreaterThan(1);
    expect(await one.locator('path').first().getAttribute('d')).toMatch(/^M-?\d/);
  }
  // Drawn, not fetched: there is no image in it.
  await expect(page.locator('main img, main image')).toHaveCount(0);
  await expect(page.getByText('Caution')).toHaveCount(3);
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Back to where you were' }).click();
  await expect(page).toHaveURL(address);
});

test('on a phone the drawing has at least half of the height above the panel', async ({ page, isMobile }) => {
  test.skip(!isMobile, 'A larger screen has the room.');
  await openExample(page);
  await expect(page.locator('.t-piece').first()).toBeVisible();
  const sheet = await page.locator('.t-sheet').boundingBox();
  const panel = await page.locator('.panel').boundingBox();
  expect(sheet?.height ?? 0).toBeGreaterThanOrEqual((panel?.y ?? 0) / 2);
  const menu = page.locator('.t-menu > summary');
  await menu.tap();
  for (const target of await page
    .locator('.t-menu button, .t-menu summary, .t-menu select, .t-zoom button')
    .all()) {
    const box = await target.boundingBox();
    expect(box?.height ?? 44).toBeGreaterThanOrEqual(44);
    expect(box?.width ?? 44).toBeGreaterThanOrEqual(44);
  }
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('group', { name: 'View' }).getByRole('button', { name: 'Sketch' }).tap();
  await expect(page.locator('.t-sketch').first()).toBeVisible();
  await expect(page.getByRole('group', { name: 'View' })).toBeHidden();
});
