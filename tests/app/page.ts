import AxeBuilder from '@axe-core/playwright';
import { type BrowserContext, expect, type Locator, type Page } from '@playwright/test';

/** Opens the page for the first time and the example party in it. */
export async function openExample(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: 'Open the example party' }).click();
  await expect(page.getByRole('heading', { name: 'Measures of Amina' })).toBeVisible();
}

/** Goes to a place of the open order. */
export async function goTo(page: Page, place: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Places of the work' })
    .getByRole('link', { name: place, exact: true })
    .click();
}

/** The field of that name. */
export const field = (page: Page, name: string): Locator =>
  page.getByRole('textbox', { name, exact: true }).first();

/** Writes into a field and leaves it, as one does before the next thing. */
export async function write(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text);
  await field(page, name).blur();
}

/** Waits until the last change is on the device. */
export async function kept(page: Page): Promise<void> {
  await expect(page.locator('[data-kept="saved"]')).toBeAttached();
}

/** Opens the example in two windows, and changes the chest in the first: the second, which is answered, is behind. */
export async function openTwice(page: Page, context: BrowserContext): Promise<Page> {
  await openExample(page);
  await kept(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(field(other, 'chest girth')).toHaveValue('18 1/2');
  await write(page, 'chest girth', '19');
  await kept(page);
  return other;
}

/** What WCAG 2.2 A and AA rules find wrong with the page as it stands; empty when nothing. */
export async function accessFaults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
  );
}

/** Everything that the page asks of a network, and everything that it complains about. */
export function watch(page: Page): { readonly requests: string[]; readonly complaints: string[] } {
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  return { requests, complaints };
}
