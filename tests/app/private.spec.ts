import { expect, test } from '@playwright/test';
import { field, goTo, kept, openExample } from './page.ts';

/**
 * Children's data stay on the device. Every request of the whole path is recorded, those of workers and of the service
 * worker too; none may go anywhere but to the place from which the page itself came.
 */
test('no request leaves the page’s own origin over the whole path', async ({ page, context, baseURL }) => {
  test.setTimeout(120_000);
  const asked: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  page.on('websocket', (socket) => asked.push(socket.url()));
  // A beacon or a fetch that the record misses would still meet the policy of the page; it must not hold a hole.
  await page.goto('/');
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toMatch(/default-src 'self'/);
  expect(policy).toMatch(/connect-src 'self'(;|$)/);

  await openExample(page);
  await field(page, 'chest girth').fill('19');
  await field(page, 'chest girth').blur();
  const places = page.getByRole('navigation', { name: 'Places of the work' }).getByRole('link');
  for (const place of await places.allTextContents()) {
    await goTo(page, place);
    await expect(page).toHaveURL(new RegExp(`/${place.toLowerCase()}$`));
    await page.waitForTimeout(500);
  }
  await goTo(page, 'Paper');
  await expect(page.locator('.paper-row').first()).toBeVisible({ timeout: 30_000 });
  const arrives = page.waitForEvent('download', { timeout: 60_000 });
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  await arrives;
  await kept(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  const backup = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make a backup' }).click();
  await backup;
  await page.goto('/#/guide');
  await expect(page.locator('svg.guide-picture')).toHaveCount(7);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));

  // The record is alive: it holds the page, its worker and the fonts that the worker fetched.
  expect(asked.some((url) => /paper-worker/.test(url))).toBe(true);
  expect(asked.some((url) => /\.ttf$/.test(url))).toBe(true);
  const own = new URL(baseURL ?? '').origin;
  const foreign = asked.filter((url) => !/^(blob|data):/.test(url) && new URL(url).origin !== own);
  expect(foreign).toEqual([]);
  expect(asked.filter((url) => url.startsWith('blob:') && !url.startsWith(`blob:${own}`))).toEqual([]);
});
