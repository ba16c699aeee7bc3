import { expect, type Page, test } from '@playwright/test';
import { accessFaults, goTo, openExample, watch } from './page.ts';

/** Amina's zip ends half an inch below the waist. */
async function shortenZip(page: Page): Promise<void> {
  await openExample(page);
  await goTo(page, 'Dress');
  await page.getByText('Amina alone', { exact: true }).click();
  await page.locator('[data-step="back-zip"] .step-title').click();
  const below = page.locator('.param[data-param="belowWaist"]').getByRole('textbox');
  await below.fill('1/2');
  await below.blur();
  await goTo(page, 'Fit');
  await expect(page.getByRole('heading', { name: 'How it fits Amina' })).toBeVisible();
}

test('all is well with the example, and what was measured is told', async ({ page }) => {
  const { complaints } = watch(page);
  await openExample(page);
  await goTo(page, 'Fit');
  await page.getByText(/^What fits \(\d+\)$/).click();
  await page.locator('[data-finding="chest-ease"] .finding-head').click();
  await expect(page.locator('[data-finding="chest-ease"]')).toContainText(
    /Measured: 2 1\/16 in\. Allowed: 13\/16 in to 6 in\./,
  );
  expect(complaints).toEqual([]);
});

test('what does not fit is counted, told, shown on the table and mended by a button', async ({ page }) => {
  await shortenZip(page);
  const tags = page.getByRole('navigation', { name: 'Children of this order' });
  await expect(tags.getByRole('link', { name: 'Amina' })).toContainText('To look at: 1');
  const finding = page.locator('[data-finding="closing-long-enough"]').first();
  await finding.locator('.finding-head').click();
  await expect(finding).toContainText(/Measured: 1\/2 in\. Allowed: 3 1\/8 in or more/);
  await expect(finding).toContainText('What to do: Make the opening');
  await expect(page.locator('.t-mark-shown').first()).toBeAttached();
  await finding
    .getByRole('button', { name: /^Set “Back zip: Runs below the waist by” to 3 .* for Amina/ })
    .click();
  await expect(tags.getByRole('link', { name: 'Amina' })).toContainText('Everything fits');
  await page.getByRole('button', { name: /^Undo: mend: Set “Back zip/ }).click();
  await expect(tags.getByRole('link', { name: 'Amina' })).toContainText('To look at: 1');
});

test('a dress that can’t be drawn says why and is mended by the rule', async ({ page }) => {
  await openExample(page);
  await goTo(page, 'Block');
  const ease = page.getByRole('textbox', { name: 'Chest ease' });
  await ease.fill('20');
  await ease.blur();
  await goTo(page, 'Fit');
  await expect(page.getByRole('heading', { name: 'The dress can’t be drawn' })).toBeVisible();
  await page.getByRole('button', { name: 'Put “Chest ease” back to the rule, for everyone' }).click();
  await expect(page.getByRole('heading', { name: 'The dress can’t be drawn' })).toBeHidden();
});

test('every child is seen at a glance', async ({ page }) => {
  await shortenZip(page);
  await page.getByText('Every child at a glance').click();
  const glance = page.locator('.everyone');
  await expect(glance.getByRole('link')).toHaveCount(5);
  await expect(glance.getByRole('link', { name: /^Amina/ })).toContainText('1 to look at');
  await glance.getByRole('link', { name: /^Efua/ }).click();
  await expect(page.getByRole('heading', { name: 'How it fits Efua' })).toBeVisible();
});

test('cautions defer to the rules where she sells', async ({ page }) => {
  await openExample(page);
  await goTo(page, 'Fit');
  const net = page.locator('[data-finding="net-caution"]');
  await net.locator('.finding-head').click();
  await expect(net).toContainText('not legal advice');
});

test('nothing serious stands in the way of anyone', async ({ page }) => {
  await shortenZip(page);
  await page.locator('.finding-head').first().click();
  expect(await accessFaults(page)).toEqual([]);
});
