import { expect, type Page, test } from '@playwright/test';
import { goTo, kept, openExample } from './page.ts';

/** Opens the yoke and touches its rise: answers the field and where its point lies on the screen. */
async function riseOfYoke(page: Page) {
  await openExample(page);
  await goTo(page, 'Dress');
  const step = page.locator('[data-step="yoke"]');
  await step.locator('.step-title').click();
  const rise = step.locator('.param[data-param="rise"]').getByRole('textbox');
  await expect(rise).toHaveValue('1');
  await rise.focus();
  const handle = page.locator('[data-handle] .t-handle-reach').first();
  await expect(handle).toBeAttached();
  return { rise, handle };
}

/** Where the point stands when the table has come to rest: on a phone it first comes near. */
async function middleOf(handle: Awaited<ReturnType<typeof riseOfYoke>>['handle']) {
  let before: unknown = null;
  await expect(async () => {
    const [last, box] = [before, await handle.boundingBox()];
    before = box;
    expect(box).toEqual(last);
  }).toPass({ intervals: [400] });
  const box = await handle.boundingBox();
  if (box === null) throw new Error('The point is on the screen.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const yokeLine = (page: Page): Promise<string | null> =>
  page.locator('[data-piece="front-yoke"] .t-cloth').first().getAttribute('d');

test('while a point is dragged its piece and its number follow; letting go is one step, which is kept', async ({
  page,
  isMobile,
}) => {
  const { rise, handle } = await riseOfYoke(page);
  const { x, y } = await middleOf(handle);
  const before = await yokeLine(page);
  const shown = page.locator('.t-dragged');
  // A finger is sent as the browser gets it from the screen; a mouse goes the way of a mouse.
  const client = await page.context().newCDPSession(page);
  const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', down: number): Promise<unknown> =>
    client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x, y: y + down }],
    });
  if (isMobile) await finger('touchStart', 0);
  else {
    await page.mouse.move(x, y);
    await page.mouse.down();
  }
  for (const down of [-2, -4, -6, -8]) {
    if (isMobile) await finger('touchMove', down);
    else await page.mouse.move(x, y + down);
  }
  await expect(shown).toBeVisible();
  await expect.poll(() => yokeLine(page)).not.toBe(before);
  // She still holds the point; once she rests, the field has followed too.
  await expect(rise).not.toHaveValue('1');
  const number = await rise.inputValue();
  // The one is written with the signs for fractions, the other as she types.
  const digits = ((await shown.textContent()) ?? '').normalize('NFKC').replace(/\D/g, '');
  expect(digits).toBe(number.replace(/\D/g, ''));
  if (isMobile) await finger('touchEnd', 0);
  else await page.mouse.up();
  await expect(shown).toBeHidden();
  await expect(rise).toHaveValue(number);
  await kept(page);
  await page.getByRole('button', { name: /^Undo: Yoke: / }).click();
  await expect(rise).toHaveValue('1');
  await expect.poll(() => yokeLine(page)).toBe(before);
});

test('a point that is dragged beyond what can be drawn goes back to the last number that could', async ({
  page,
  isMobile,
}) => {
  test.skip(isMobile, 'A mouse goes as far.');
  const { rise, handle } = await riseOfYoke(page);
  const { x, y } = await middleOf(handle);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let up = 4; up <= 200; up += 4) await page.mouse.move(x, y - up);
  // The words that come over the table leave it where it is.
  await expect(page.getByText(/^Drawn from the numbers before/)).toBeVisible();
  await page.mouse.up();
  await expect(page.getByText(/^Drawn from the numbers before/)).toBeHidden();
  await expect(rise).not.toHaveValue('1');
  expect((await handle.boundingBox())?.y ?? 0).toBeLessThan(y);
});
