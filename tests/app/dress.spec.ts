import { expect, type Locator, type Page, test } from '@playwright/test';
import { accessFaults, goTo, kept, openExample, watch } from './page.ts';

const row = (page: Page, step: string): Locator => page.locator(`[data-step="${step}"]`);
const param = (page: Page, step: string, name: string): Locator =>
  row(page, step).locator(`.param[data-param="${name}"]`);

async function openDress(page: Page): Promise<void> {
  await openExample(page);
  await goTo(page, 'Dress');
  await expect(page.getByRole('button', { name: 'Add to the dress' })).toBeVisible();
}

const open = async (page: Page, step: string): Promise<void> => {
  const title = row(page, step).locator('.step-title');
  if ((await title.getAttribute('aria-expanded')) !== 'true') await title.click();
};

async function add(page: Page, step: string): Promise<void> {
  await page.getByRole('button', { name: 'Add to the dress' }).click();
  await page.locator(`[data-add="${step}"]`).click();
  await expect(row(page, step).first()).toBeVisible();
}

test('a number is set for everyone, and goes back to its rule', async ({ page }) => {
  const { complaints } = watch(page);
  await openDress(page);
  await open(page, 'yoke');
  const rise = param(page, 'yoke', 'rise');
  await expect(rise.getByRole('textbox')).toHaveValue('1');
  await rise.getByRole('textbox').fill('1 1/2');
  await rise.getByRole('textbox').blur();
  await expect(page.getByRole('button', { name: /^Undo: Yoke: / })).toBeEnabled();
  await rise.getByRole('button', { name: /back to the rule$/ }).click();
  await expect(rise.getByRole('textbox')).toHaveValue('');
  await rise.getByRole('button', { name: /^The rule for/ }).click();
  await expect(rise).toContainText(/Anything from .* to .* works here/);
  expect(complaints).toEqual([]);
});

test('one step is open at a time', async ({ page }) => {
  await openDress(page);
  await open(page, 'yoke');
  await open(page, 'neckline');
  await expect(row(page, 'yoke').locator('.step-inside')).toHaveCount(0);
  await expect(row(page, 'neckline').locator('.step-inside')).toBeVisible();
});

test('one child has her own number, plainly marked, and is as all others again', async ({ page }) => {
  await openDress(page);
  await page.getByText('Amina alone', { exact: true }).click();
  await open(page, 'back-zip');
  const below = param(page, 'back-zip', 'belowWaist');
  await below.getByRole('textbox').fill('5');
  await below.getByRole('textbox').blur();
  await expect(row(page, 'back-zip').locator('.mark').first()).toHaveText('own for Amina');
  await page.getByText('everyone', { exact: true }).click();
  await expect(below).toContainText('Amina alone: 5');
  await below.getByRole('button', { name: /as for all again$/ }).click();
  await expect(row(page, 'back-zip').locator('.mark')).toHaveCount(0);
});

test('a step is left out for one child and put back', async ({ page }) => {
  await openDress(page);
  await page.getByText('Amina alone', { exact: true }).click();
  const worn = row(page, 'yoke').getByRole('switch', { name: 'Yoke is worn' });
  await worn.focus();
  await worn.press('Space');
  await expect(worn).not.toBeChecked();
  await expect(page.locator('[data-piece="front-yoke"]')).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo: leave out Yoke for Amina/ }).click();
  await expect(worn).toBeChecked();
  await expect(page.locator('[data-piece="front-yoke"]')).not.toHaveCount(0);
});

test('a step is found by typing, added in the place of its rival, taken out, and comes back by undo', async ({
  page,
}) => {
  await openDress(page);
  await page.getByRole('button', { name: 'Add to the dress' }).click();
  await page.getByRole('textbox', { name: 'Find' }).fill('circle');
  await expect(page.locator('[data-add="sash"]')).toHaveCount(0);
  await expect(page.locator('[data-add="circle-skirt"]')).toContainText('instead of: Pleated skirt');
  await page.locator('[data-add="circle-skirt"]').click();
  await expect(row(page, 'circle-skirt')).toBeVisible();
  await expect(row(page, 'pleated-skirt')).toHaveCount(0);
  await page.getByRole('button', { name: 'Take out Circle skirt' }).click();
  await expect(row(page, 'circle-skirt')).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo: take out Circle skirt/ }).click();
  await expect(row(page, 'circle-skirt')).toBeVisible();
});

test('what this dress can’t have says why', async ({ page }) => {
  await openDress(page);
  await page.getByRole('button', { name: 'Add to the dress' }).click();
  await page.getByRole('textbox', { name: 'Find' }).fill('band');
  await expect(page.locator('[data-add="sleeve-band"]')).toContainText('Not with this dress:');
  await expect(page.locator('[data-add="sleeve-band"]')).toBeDisabled();
});

test('her own changes choose their edge by name, stand several times, and change places', async ({
  page,
}) => {
  await openDress(page);
  await add(page, 'add-notch');
  await add(page, 'add-notch');
  const second = row(page, 'add-notch A notch more 2');
  await expect(second).toBeVisible();
  await second.getByRole('button', { name: /^Make A notch more: A notch more 2 earlier/ }).click();
  await expect(page.locator('[data-step^="add-notch"]').first()).toHaveAttribute(
    'data-step',
    'add-notch A notch more 2',
  );
  await second.locator('[data-param="piece"] .select').first().click();
  await page.locator('.list-box').getByRole('option', { name: 'Back', exact: true }).click();
  await expect(second.locator('[data-param="piece"] .select').first()).toContainText('Back');
});

test('the edge of a change is chosen by touching it on the table', async ({ page, isMobile }) => {
  await openDress(page);
  await add(page, 'add-notch');
  await row(page, 'add-notch').getByRole('button', { name: 'Edge: touch it on the table' }).click();
  await expect(page.getByText('Now touch the edge on the drawing.')).toBeVisible();
  // The table's own lists are the touch of the keyboard; on a phone they lie behind its button.
  if (isMobile) await page.locator('.t-menu > summary').click();
  const card = page.getByRole('region', { name: 'Piece' });
  await card.getByLabel('Piece').selectOption({ label: 'Back' });
  await card.getByLabel('Edge').selectOption({ label: 'Waist' });
  await expect(row(page, 'add-notch').locator('[data-param="edge"]').first()).toContainText('Waist');
  await expect(row(page, 'add-notch').locator('[data-param="piece"]').first()).toContainText('Back');
});

test('the place of a number lights up, and the number follows the hand', async ({ page, isMobile }) => {
  test.skip(isMobile, 'A mouse is dragged.');
  await openDress(page);
  await open(page, 'neckline');
  const drop = param(page, 'neckline', 'frontDrop').getByRole('textbox');
  await drop.focus();
  const handle = page.locator('[data-handle] .t-handle-reach').first();
  await expect(handle).toBeAttached();
  const box = await handle.boundingBox();
  if (box === null) throw new Error('The handle is on the screen.');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const before = await drop.inputValue();
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + 12, { steps: 4 });
  await page.mouse.up();
  await expect(drop).not.toHaveValue(before);
  await page.getByRole('button', { name: /^Undo: Neckline: / }).click();
  await expect(drop).toHaveValue(before);
});

test('twelve dresses are shown front and back, and one of them is begun from', async ({ page }) => {
  await openDress(page);
  await page.getByRole('button', { name: 'Begin from another' }).click();
  await expect(page.getByRole('img', { name: /, front and back$/ })).toHaveCount(12);
  await page.locator('[data-dress="brook"]').click();
  await expect(page.getByText('Begun from Brook')).toBeVisible();
  await expect(row(page, 'sash')).toBeVisible();
  await expect(page.getByText(/^Drawn from the numbers before/)).toBeHidden();
  await kept(page);
  await page.reload();
  await expect(page.getByText('Begun from Brook')).toBeVisible();
});

test('nothing serious stands in the way of anyone', async ({ page }) => {
  await openDress(page);
  await open(page, 'yoke');
  await expect(param(page, 'yoke', 'rise')).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Add to the dress' }).click();
  await expect(page.locator('[data-add="sash"]')).toBeVisible();
  expect(await accessFaults(page)).toEqual([]);
});
