import { expect, type Page, test } from '@playwright/test';
import { openExample, watch } from './page.ts';

/** So many things are done; `FROCKWRIGHT_WANDER=2000` for the long run. */
const ACTS = Number(process.env.FROCKWRIGHT_WANDER ?? 120);
const SEED = Number(process.env.FROCKWRIGHT_SEED ?? 20261201);

/** What is typed into any field, fit or not. */
const TEXTS = [
  ...['', '0', '12', '1/2', '-3', '18 1/4', 'abc', '99999', '3 cm', '1e9', '½', '  ', '22.5', '1,5'],
  ...['2026-13-40', '💐', 'O’Neill', '<b>x</b>'],
];
const KEYS = ['Tab', 'Escape', 'Control+z', 'Control+y', 'ArrowDown', '+', '0', 'n', 'b'];
const PLACES = [
  ...['order', 'measures', 'block', 'dress', 'fit', 'cloth', 'paper'],
  ...['sew', 'shopping', 'days', 'bill'],
];
const PRESSED = 'button:not([disabled]), a, summary, [role=option], [role=switch], select';

/** Numbers from 0 to 1 that are the same for the same seed: a linear congruence (Numerical Recipes, from memory). */
function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Does one thing that a hand could do, by chance, and says what. */
async function act(page: Page, roll: () => number): Promise<string> {
  const one = <T>(all: readonly T[]): T | undefined => all[Math.floor(roll() * all.length)];
  const kind = roll();
  if (kind < 0.08) {
    const place = one(PLACES) ?? '';
    const child = 1 + Math.floor(roll() * 5);
    const order = /#\/o\/([^/]+)\//.exec(page.url())?.[1];
    await page.goto(order === undefined ? '/#/' : `/#/o/${order}/${child}/${place}`);
    return `goes to ${place} of child ${child}`;
  }
  if (kind < 0.14) {
    const key = one(KEYS) ?? '';
    await page.keyboard.press(key);
    return `presses ${key}`;
  }
  if (kind < 0.42) {
    const field = one(await page.locator('input:visible:not([type=file])').all());
    if (field === undefined) return 'finds no field';
    const type = await field.getAttribute('type');
    const text = (type === 'date' ? one(['2027-05-01', '2020-01-01', '']) : one(TEXTS)) ?? '';
    if (type === 'checkbox' || type === 'radio') await field.click({ force: true });
    else await field.fill(text);
    if (roll() < 0.7) await field.blur();
    return `writes “${text}” into ${await field.evaluate((at: HTMLInputElement) => at.labels?.[0]?.textContent ?? '')}`;
  }
  if (kind < 0.92) {
    const pressed = one(await page.locator(PRESSED).filter({ visible: true }).all());
    if (pressed === undefined) return 'finds nothing to press';
    const name = await pressed.evaluate((at) => at.getAttribute('aria-label') ?? at.textContent ?? '');
    if (/^(Bring orders|Load the page)/.test(name.trim())) return 'leaves files alone';
    const list = await pressed.evaluate((at) => (at instanceof HTMLSelectElement ? at.options.length : 0));
    if (list > 0) await pressed.selectOption({ index: Math.floor(roll() * list) });
    else await pressed.click();
    return `presses ${name.slice(0, 60)}`;
  }
  const table = page.locator('.t-drawing');
  const box = (await table.count()) === 0 ? null : await table.boundingBox();
  if (box === null) return 'finds no table';
  const [x, y] = [box.x + roll() * box.width, box.y + roll() * box.height];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + (roll() - 0.5) * 200, y + (roll() - 0.5) * 200, { steps: 4 });
  await page.mouse.up();
  return 'drags on the table';
}

test(`a hand that does ${ACTS} things by chance breaks no part of the page`, async ({ page }, info) => {
  test.setTimeout(60_000 + ACTS * 2000);
  const { complaints } = watch(page);
  await openExample(page);
  page.on('dialog', (dialog) => void dialog.dismiss());
  page.setDefaultTimeout(700);
  const roll = dice(SEED + (info.project.name === 'phone' ? 1 : 0));
  const done: string[] = [];
  for (let i = 0; i < ACTS; i++) {
    try {
      done.push(await act(page, roll));
    } catch (error) {
      // Something else lay over it, or it went away: so it would for a hand.
      if (!/Timeout|not attached|detached|navigat/i.test(String(error))) throw error;
      await page.keyboard.press('Escape');
    }
    const broken = await page.locator('.mishap, #page:empty').count();
    expect(broken, `after: ${done.slice(-8).join('; ')}\n${complaints.join('\n')}`).toBe(0);
  }
  expect(complaints, done.slice(-8).join('; ')).toEqual([]);
  // Whatever she did, what is kept can be read.
  await page.goto('/#/');
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible({ timeout: 20_000 });
  await expect(page.getByRole('heading', { name: 'Orders that can’t be read' })).toHaveCount(0);
});
