import { expect, test } from '@playwright/test';
import { accessFaults, field, goTo, kept, openExample, watch, write } from './page.ts';

test('the first visit opens the finished example', async ({ page, baseURL }) => {
  const { requests, complaints } = watch(page);
  await openExample(page);
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
  const tags = page.getByRole('navigation', { name: 'Children of this order' });
  for (const name of ['Amina', 'Tọ́lá', 'Efua', 'Lena', 'Noor']) {
    await expect(tags.getByRole('link', { name })).toContainText(/Everything fits|To look at/);
  }
  await tags.getByRole('link', { name: 'Noor' }).click();
  await expect(page.getByRole('heading', { name: 'Measures of Noor' })).toBeVisible();
  expect(requests.filter((url) => !url.startsWith(baseURL ?? '') && !/^(blob|data):/.test(url))).toEqual([]);
  expect(complaints).toEqual([]);
});

test('five numbers lead to a drawn dress', async ({ page }) => {
  const { complaints } = watch(page);
  await page.goto('/');
  const began = Date.now();
  await page.getByRole('button', { name: 'Start your own with five numbers' }).click();
  await write(page, 'Name of the child', 'Ada');
  await write(page, 'Age on that day', '4');
  await write(page, 'height', '40 1/2');
  await write(page, 'chest girth', '21 1/2');
  await write(page, 'waist girth', '20 1/4');
  await write(page, 'back length', '9 1/2');
  await page.getByRole('button', { name: 'Draw the dress' }).click();
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
  expect(Date.now() - began).toBeLessThan(60_000);
  await expect(page.getByRole('heading', { name: 'Measures of Ada' })).toBeVisible();
  await expect(field(page, 'chest girth')).toHaveValue('21 1/2');
  expect(complaints).toEqual([]);
});

test('a slip at the start is told at its field, and nothing is made', async ({ page }) => {
  await page.goto('/#/start');
  await write(page, 'Age on that day', '4');
  await write(page, 'height', '104');
  await page.getByRole('button', { name: 'Draw the dress' }).click();
  await expect(page.getByText(/the same number in centimetres would fit/)).toBeVisible();
  await page.getByRole('link', { name: 'Order book' }).click();
  await expect(page.getByRole('button', { name: 'Open the example party' })).toBeVisible();
});

test('nothing serious stands in the way of anyone', async ({ page }) => {
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await page.goto('/#/start');
  await expect(page.getByRole('button', { name: 'Draw the dress' })).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await page.goto('/#/');
  await openExample(page);
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
  await kept(page);
  expect(await accessFaults(page)).toEqual([]);
  for (const place of ['Order', 'Block']) {
    await goTo(page, place);
    await expect(page.getByRole('textbox').first()).toBeVisible();
    expect(await accessFaults(page)).toEqual([]);
  }
});

test('nothing serious in the dark either', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openExample(page);
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await page.goto('/#/');
  await expect(page.getByRole('heading', { name: 'Order book' })).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
});

test('works without a network from the second visit', async ({ page, context }) => {
  await openExample(page);
  await kept(page);
  await page.evaluate(async () => {
    const ready = await navigator.serviceWorker.ready;
    if (ready.active === null) throw new Error('No service worker.');
  });
  await page.reload();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Measures of Amina' })).toBeVisible();
  await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
});
