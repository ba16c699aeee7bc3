import { expect, test } from '@playwright/test';
import { field, goTo, kept, openExample, openTwice, write } from './page.ts';

test('a thumb writes fractions with our own keypad, and goes on to the next field', async ({
  page,
  isMobile,
}) => {
  test.skip(!isMobile, 'A larger screen has its own keyboard.');
  await page.goto('/#/start');
  await field(page, 'height').tap();
  const keypad = page.getByRole('group', { name: 'Number keys' });
  for (const key of ['4', '0', '1/2']) await keypad.getByRole('button', { name: key, exact: true }).tap();
  await expect(field(page, 'height')).toHaveValue('40 1/2');
  await keypad.getByRole('button', { name: 'show sixteenths' }).tap();
  await keypad.getByRole('button', { name: '3/16', exact: true }).tap();
  await expect(field(page, 'height')).toHaveValue('40 3/16');
  await keypad.getByRole('button', { name: 'Next' }).tap();
  await expect(field(page, 'chest girth')).toBeFocused();
  await keypad.getByRole('button', { name: '2', exact: true }).tap();
  await keypad.getByRole('button', { name: 'take back' }).tap();
  await expect(field(page, 'chest girth')).toHaveValue('');
  for (const key of await keypad.getByRole('button').all()) {
    expect((await key.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
  }
});

test('a touch beside the keypad is not lost while the keypad goes away', async ({ page, isMobile }) => {
  test.skip(!isMobile, 'Only a phone has the keypad.');
  await openExample(page);
  await goTo(page, 'Dress');
  const skirt = page.locator('[data-step="pleated-skirt"]');
  await skirt.locator('.step-title').tap();
  await skirt.locator('[data-param="length"]').getByRole('textbox').tap();
  await expect(page.getByRole('group', { name: 'Number keys' })).toBeVisible();
  const neckline = page.locator('[data-step="neckline"]');
  await neckline.locator('.step-title').tap();
  await expect(neckline.locator('.step-inside')).toBeVisible();
  await expect(page.getByRole('group', { name: 'Number keys' })).toBeHidden();
});

test('every target of a phone is large enough for a thumb', async ({ page, isMobile }) => {
  test.skip(!isMobile, 'Only thumbs need it.');
  await openExample(page);
  for (const target of await page.locator('.button, .place, .tag, .field-box, .choice-one').all()) {
    if (!(await target.isVisible())) continue;
    const box = await target.boundingBox();
    expect(box?.height ?? 0).toBeGreaterThanOrEqual(44);
  }
  const scrolled = await page.evaluate(() => ({
    wide: document.documentElement.scrollWidth - innerWidth,
    high: document.documentElement.scrollHeight - innerHeight,
  }));
  expect(scrolled).toEqual({ wide: 0, high: 0 });
});

test('the place where she is stands in sight', async ({ page }) => {
  await openExample(page);
  await page.goto(page.url().replace(/measures$/, 'paper'));
  const here = page.getByRole('navigation', { name: 'Places of the work' }).locator('[aria-current]');
  await expect(here).toHaveText('Paper');
  await expect(here).toBeInViewport({ ratio: 0.9 });
});

test('two windows change one order, and nobody’s change is lost', async ({ page, context }) => {
  const other = await openTwice(page, context);
  await write(other, 'waist girth', '18 1/4');
  const dialog = other.getByRole('alertdialog', { name: 'This order was changed in another window' });
  await expect(dialog).toBeVisible();
  await dialog.getByRole('button', { name: 'Go on with mine' }).click();
  await expect(dialog).toBeHidden();
  await kept(other);
  await other.goto('/#/');
  await expect(other.locator('.order-row')).toHaveCount(2);
  await page.reload();
  await expect(field(page, 'chest girth')).toHaveValue('19');
  await expect(field(page, 'waist girth')).toHaveValue('18');
});

test('the whole way from the first visit to another measure goes by keyboard', async ({ page, isMobile }) => {
  test.skip(isMobile, 'A phone has no keyboard.');
  await page.goto('/');
  const reach = async (name: string): Promise<void> => {
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const element = document.activeElement;
        return element?.getAttribute('aria-label') ?? element?.textContent ?? '';
      });
      if (here.trim().startsWith(name)) return;
    }
    throw new Error(`The keyboard does not reach "${name}".`);
  };
  await reach('Open the example party');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Measures of Amina' })).toBeVisible();
  await reach('Efua');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Measures of Efua' })).toBeVisible();
  await reach('Block');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Block' })).toBeVisible();
});
