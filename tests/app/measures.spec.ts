import { expect, type Page, test } from '@playwright/test';
import { accessFaults, field, openExample, watch, write } from './page.ts';

/** Amina was born and measured on these days; the event is in June 2027. */
async function writeDays(page: Page, born: string, measured: string): Promise<void> {
  const facts = page.getByText('Birthday and day of measuring');
  if (!(await page.getByRole('textbox', { name: 'Measured on' }).isVisible())) await facts.click();
  await write(page, 'Birthday', born);
  await write(page, 'Measured on', measured);
}

test('where the tape runs and where a filled-in number comes from stand one tap away', async ({ page }) => {
  const { complaints } = watch(page);
  await openExample(page);
  await page.getByRole('button', { name: 'How to measure: hip girth' }).click();
  const guide = page.locator('.tape-guide');
  await expect(
    guide.getByRole('img', {
      name: /^Drawing of a child seen from the front, with the tape laid for the hip/,
    }),
  ).toBeVisible();
  await expect(guide).toContainText('Level round the fullest part of the seat');
  await expect(guide).toContainText(/Where this number comes from: .*Snyder 1977/);
  await expect(guide).toContainText(/Nine girls of ten lie from 1\d/);
  await page.getByRole('button', { name: 'How to measure: shoulder length' }).click();
  const shoulder = page.locator('.tape-guide').last();
  await expect(shoulder).toContainText('D: bone at the end of the shoulder.');
  await expect(shoulder).not.toContainText('Where this number comes from');
  expect(await accessFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a weight and an age that do not fit are doubted at their own fields', async ({ page }) => {
  await openExample(page);
  await write(page, 'weight', '24');
  await expect(field(page, 'weight')).toHaveValue('24 lb');
  await expect(page.getByText(/24 kg does not fit the measurements/)).toBeHidden();
  await write(page, 'weight', '24 kg');
  const weight = page.locator('.measure', { has: field(page, 'weight') });
  await expect(weight.locator('.doubt')).toContainText(/24 kg does not fit the measurements.*24 lb/);
  await write(page, 'weight', '');
  await writeDays(page, '2018-03-04', '2027-01-20');
  const birthday = page.locator('.field', { has: field(page, 'Birthday') });
  await expect(birthday.locator('.doubt')).toContainText(/measurements of a child of \d+ to \d+ months/);
});

test('where the child stands and what it will measure is drawn, told, and drafted when she says so', async ({
  page,
}) => {
  await openExample(page);
  await writeDays(page, '2025-06-04', '2026-11-02');
  await page.getByText('Growth to the day', { exact: true }).click();
  const height = page.getByRole('img', {
    name: /^height by age \(WHO 2006 and 2007\)\. At 16 months: 31 3\/4 in\./,
  });
  await expect(height).toBeVisible();
  await expect(height).toHaveAttribute(
    'aria-label',
    /On the day, at 24 months, as forecast: .*nine children of ten/,
  );
  await expect(page.getByText(/^The dress is drafted as Amina was measured/)).toBeVisible();
  await expect(page.getByText(/^By height: size \d+/)).toBeVisible();
  await page.getByText('grown to the day', { exact: true }).click();
  await expect(page.getByText(/^The dress is drafted as Amina was measured/)).toBeHidden();
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await accessFaults(page)).toEqual([]);
});

test('averages stand beside what was measured', async ({ page }) => {
  await openExample(page);
  await page.getByText('Average children to compare').click();
  const averages = page.locator('details', { hasText: 'Average children to compare' }).last();
  await expect(averages).toContainText(/Amina: 18 1\/2 in/);
  await averages.getByText('height and weight', { exact: true }).click();
  await expect(averages).toContainText('Measure the height and the weight first.');
  await write(page, 'weight', '24 lb');
  await expect(averages).toContainText(/give or take/);
});

test('the measuring sheet is made for the child that is shown', async ({ page }) => {
  await openExample(page);
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Measuring sheet to print' }).click();
  expect((await saved).suggestedFilename()).toBe('Amina - measuring-sheet.pdf');
  await expect(page.getByText('The sheet is saved as Amina - measuring-sheet.pdf.')).toBeVisible();
});
