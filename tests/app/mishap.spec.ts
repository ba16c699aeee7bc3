import { expect, type Page, test } from '@playwright/test';
import { openExample, write } from './page.ts';

/** The drawing stumbles, as over a mistake in the program, until it is mended. */
const breakTable = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const real = window.matchMedia.bind(window);
    window.matchMedia = (query) => {
      if (query.includes('max-width')) throw new Error('The table stumbles.');
      return real(query);
    };
    Object.assign(globalThis, { mend: () => Object.assign(window, { matchMedia: real }) });
  });

const mend = (page: Page): Promise<void> =>
  page.evaluate(() => (globalThis as unknown as { mend(): void }).mend());

test('a part that can’t be shown leaves the others standing, and comes back', async ({ page }) => {
  await openExample(page);
  await expect(page.locator('.t-drawing')).toBeVisible();
  await breakTable(page);
  await write(page, 'chest girth', '19');
  const note = page.getByRole('alert').filter({ hasText: 'This part can’t be shown' });
  await expect(note).toBeVisible();
  await expect(page.locator('.t-drawing')).toBeHidden();
  // She can go on, and what she wrote is there.
  await write(page, 'waist girth', '18 1/2');
  await mend(page);
  await note.getByRole('button', { name: 'Show it again' }).click();
  await expect(page.locator('.t-drawing')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'waist girth', exact: true }).first()).toHaveValue('18 1/2');
});
