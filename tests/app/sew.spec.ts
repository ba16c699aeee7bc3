import { expect, type Page, test } from '@playwright/test';
import { accessFaults, goTo, kept, openExample, watch } from './page.ts';

async function openSewing(page: Page): Promise<void> {
  await openExample(page);
  await goTo(page, 'Sew');
  await expect(page.getByRole('heading', { name: 'Sewing for Amina' })).toBeVisible();
}

test('steps are ticked off, undone, and still there after a reload', async ({ page }) => {
  const { complaints } = watch(page);
  await openSewing(page);
  const first = page.locator('[data-step]').first();
  await first.getByRole('checkbox').check();
  await expect(page.getByText(/^1 of \d+ steps done$/)).toBeVisible();
  await page.getByRole('button', { name: /^Undo: done: / }).click();
  await expect(page.getByText(/^0 of \d+ steps done$/)).toBeVisible();
  await first.getByRole('checkbox').check();
  await kept(page);
  await page.reload();
  await expect(page.getByText(/^1 of \d+ steps done$/)).toBeVisible();
  await expect(page.locator('[data-step]').first().getByRole('checkbox')).toBeChecked();
  expect(complaints).toEqual([]);
});

test('a step changes its place, by a name of its own for undo', async ({ page }) => {
  const { complaints } = watch(page);
  await openSewing(page);
  const first = page.locator('[data-step]').first();
  const moved = (await first.getAttribute('data-step')) ?? '';
  await first.getByRole('button', { name: /^Later: / }).click();
  await expect(page.locator('[data-step]').nth(1)).toHaveAttribute('data-step', moved);
  await page.getByRole('button', { name: /^Undo: another order of .+, Amina$/ }).click();
  await expect(first).toHaveAttribute('data-step', moved);
  expect(complaints).toEqual([]);
});

test('a step tells what to do and why, with its drawing, and the cautions stand above', async ({ page }) => {
  await openSewing(page);
  await expect(page.getByText(/Count pins and needles/)).toBeVisible();
  await expect(page.getByText(/not legal advice/).first()).toBeVisible();
  const turn = page.locator('[data-step="turn"]');
  await turn.locator('.finding-head').click();
  await expect(turn).toContainText('Works only while the centre back and the sides are open.');
  await expect(turn.getByRole('img', { name: /^Drawing of the step: Turn/ })).toBeVisible();
});

test('her own minutes make the next child’s plan', async ({ page }) => {
  await openSewing(page);
  const zip = page.locator('[data-step="zip"]');
  await zip.locator('.finding-head').click();
  const took = zip.getByRole('textbox', { name: 'It took you' });
  await took.fill('56');
  await took.blur();
  await expect(zip.locator('.sew-time')).toHaveText('56 min');
  await expect(zip.getByRole('checkbox')).toBeChecked();
  await page
    .getByRole('navigation', { name: 'Children of this order' })
    .getByRole('link', { name: 'Efua' })
    .click();
  // Twice as long as estimated for Amina, so twice as long for Efua, and no longer an estimate.
  await expect(page.locator('[data-step="zip"] .sew-time')).toHaveText('56 min');
});

test('the clock writes down how long a step took, also over a reload', async ({ page }) => {
  await openSewing(page);
  const first = page.locator('[data-step]').first();
  await first.getByRole('button', { name: /^Start the clock/ }).click();
  await expect(first.getByRole('button', { name: /^Stop: 1 min/ })).toBeVisible();
  await page.reload();
  await first.getByRole('button', { name: /^Stop: 1 min/ }).click();
  await expect(first.locator('.sew-time')).toHaveText('1 min');
});

test('a step left out or moved says what it breaks, and nothing is lost', async ({ page }) => {
  await openSewing(page);
  const zip = page.locator('[data-step="zip"]');
  const count = await page.locator('[data-step]').count();
  await zip.locator('.finding-head').click();
  await zip.getByRole('button', { name: /^Leave out Zip/ }).click();
  await expect(page.getByText(/^Zip: .* is left out\. It stays open: .*opening edge/)).toBeVisible();
  await expect(page.locator('[data-step]')).toHaveCount(count);
  await zip.getByRole('button', { name: /^Put back Zip/ }).click();
  await expect(page.getByText(/is left out/)).toHaveCount(0);

  const turn = page.locator('[data-step="turn"]');
  await turn.locator('.finding-head').click();
  await turn.getByRole('button', { name: /^Earlier: Turn/ }).click();
  await expect(page.getByText(/^Turn: .* now comes before Armholes .*, which it needs/)).toBeVisible();
  await page.getByRole('button', { name: 'Back to the order of the plan' }).click();
  await expect(page.getByRole('heading', { name: 'What your changes break' })).toHaveCount(0);
});

test('the party is sewn in batches', async ({ page }) => {
  await openSewing(page);
  await page.getByText('all, in batches', { exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Sewing for all, in batches' })).toBeVisible();
  const zips = page.locator('[data-batch="zip zip"]');
  await expect(zips.getByRole('checkbox', { name: /^Done for Efua: Zip/ })).toBeVisible();
  await zips.getByRole('checkbox', { name: /^Done for all: Zip/ }).check();
  for (const child of ['Amina', 'Efua', 'Noor'])
    await expect(zips.getByRole('checkbox', { name: new RegExp(`^Done for ${child}: Zip`) })).toBeChecked();
});

test('all of it works by keyboard, and nothing serious stands in the way of anyone', async ({ page }) => {
  await openSewing(page);
  const head = page.locator('[data-step="neck-lining"] .finding-head');
  await head.focus();
  await page.keyboard.press('Enter');
  await expect(head).toHaveAttribute('aria-expanded', 'true');
  await page.locator('[data-step="neck-lining"]').getByRole('checkbox').focus();
  await page.keyboard.press('Space');
  await expect(page.getByText(/^1 of \d+ steps done$/)).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await page.getByText('all, in batches', { exact: true }).click();
  expect(await accessFaults(page)).toEqual([]);
});
