import { expect, type Locator, type Page, test } from '@playwright/test';
import { createLayBench } from '../../src/app/work/lay-bench.ts';
import type { LayAnswer, LayWish } from '../../src/app/work/lay-wish.ts';
import { type KeptLay, LAY_ENGINE } from '../../src/engine/order/index.ts';
import { EXAMPLE_TEXT } from '../fixtures/example-order.ts';
import { accessFaults, field, goTo, kept, openExample, watch } from './page.ts';

test.setTimeout(180_000);

/** Opens the example at the place of cloth, with the lays of one child only, so that it is soon done. */
async function openCloth(page: Page): Promise<void> {
  await openExample(page);
  await goTo(page, 'Cloth');
  await forAmina(page);
  await expect(page.locator('.lay-buy')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('The pieces are being laid out')).toHaveCount(0, { timeout: 60_000 });
}

const forAmina = (page: Page): Promise<void> =>
  page.locator('.choice-one', { hasText: 'Amina' }).click({ timeout: 60_000 });

const drawing = (page: Page): Locator => page.getByRole('application', { name: /^Lay of/ });
const piece = (page: Page, id: string): Locator => page.locator(`[data-laid="${id}"] .lay-body`);
const outlines = (page: Page): Promise<readonly (string | null)[]> =>
  page.locator('.lay-body').evaluateAll((all) => all.map((one) => one.getAttribute('d')).sort());

/** The panel of a phone lies over the drawing; pulled down, the drawing is free. */
async function freeDrawing(page: Page, isMobile: boolean): Promise<void> {
  if (!isMobile) return;
  await page.getByRole('button', { name: 'Lower' }).focus();
  await page.keyboard.press('Enter');
}

async function chooseThird(page: Page): Promise<void> {
  await drawing(page).focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('PageDown');
  await expect(page.locator('.lay-held')).toBeVisible();
}

interface Spot {
  readonly x: number;
  readonly y: number;
}
const middleOf = (box: Spot & { readonly width: number; readonly height: number }): Spot => ({
  x: box.x + box.width / 2,
  y: box.y + box.height / 2,
});

/** Drags with a mouse, on a phone with a finger; answers what lets go. */
async function drag(page: Page, isMobile: boolean, from: Spot, to: Spot): Promise<() => Promise<unknown>> {
  if (!isMobile) {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 8 });
    return () => page.mouse.up();
  }
  const finger = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: readonly Spot[]) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: [...at] });
  await touch('touchStart', [from]);
  for (let k = 1; k <= 8; k++) {
    const [x, y] = [from.x + ((to.x - from.x) * k) / 8, from.y + ((to.y - from.y) * k) / 8];
    await touch('touchMove', [{ x, y }]);
  }
  return () => touch('touchEnd', []);
}

const largest = (page: Page): Promise<Spot & { readonly width: number; readonly height: number }> =>
  page.locator('.lay-body').evaluateAll((all) => {
    const boxes = all.map((one) => one.getBoundingClientRect());
    const { x, y, width, height } = boxes.reduce((a, b) => (b.width * b.height > a.width * a.height ? b : a));
    return { x, y, width, height };
  });

/** Goes on with the keys to a piece that is much smaller than the largest, which it can be put upon. */
async function chooseSmall(page: Page): Promise<void> {
  const { width, height } = await largest(page);
  await drawing(page).focus();
  for (let i = 0; i < 12; i++) {
    await page.keyboard.press('PageDown');
    const box = await page.locator('.lay-picked .lay-body').boundingBox();
    if (box !== null && box.width < 0.7 * width && box.height < 0.7 * height) return;
  }
  throw new Error('Some piece is smaller than the largest.');
}

/** The lay that the page has put on the device. */
async function keptOnDevice(page: Page): Promise<KeptLay> {
  const { lays } = await fileOnDevice(page);
  expect(lays).toHaveLength(1);
  return lays[0] as KeptLay;
}

/** The lays and the first cloth of the order as the page has put it on the device. */
async function fileOnDevice(
  page: Page,
): Promise<{ readonly lays: readonly unknown[]; readonly cloth: unknown }> {
  await kept(page);
  return await page.evaluate(
    () =>
      new Promise<{ lays: readonly unknown[]; cloth: unknown }>((resolve, reject) => {
        const open = indexedDB.databases().then(([first]) => indexedDB.open(first?.name ?? ''));
        void open.then((request) => {
          request.onerror = () => reject(request.error);
          request.onsuccess = () => {
            const all = request.result.transaction('orders').objectStore('orders').getAll();
            all.onsuccess = () => {
              const [{ file }] = all.result;
              resolve({ lays: file.lays ?? [], cloth: file.cloths[0] });
            };
          };
        });
      }),
  );
}

test('a lay is searched for, kept with the order, and is the same after a reload', async ({ page }) => {
  const { complaints } = watch(page);
  await openCloth(page);
  await expect(page.getByText('Found by a short search')).toBeVisible();
  await page.getByRole('button', { name: 'Look for a shorter lay' }).click();
  await expect(page.getByRole('progressbar')).toBeVisible();
  await page.waitForTimeout(2000);
  await page.getByRole('button', { name: 'Stop and keep the best' }).click();
  await expect(page.getByText('This lay is kept with the order')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('button', { name: /Undo: lay of ivory satin/ })).toBeEnabled();
  const before = await outlines(page);
  const lay = await keptOnDevice(page);
  expect(lay).toMatchObject({ cloth: 'ivory satin', child: 'Amina', engine: LAY_ENGINE, seed: 1 });
  expect(lay.evaluations).toBeGreaterThan(0);

  await page.reload();
  await forAmina(page);
  await expect(page.getByText('This lay is kept with the order')).toBeVisible({ timeout: 60_000 });
  expect(await outlines(page)).toEqual(before);
  expect(complaints).toEqual([]);
});

test('each cloth is drawn as soon as it is laid, before all lays are as short as they get at first', async ({
  page,
}) => {
  await openExample(page);
  await goTo(page, 'Cloth');
  await expect(page.getByText('The pieces are being laid out closer')).toBeVisible({ timeout: 60_000 });
  await expect(page.locator('.lay-body').first()).toBeAttached();
  await expect(page.getByText('Found by a short search')).toBeAttached({ timeout: 120_000 });
});

test('a cloth with stripes is laid folded, as the order says', async ({ page }) => {
  const { complaints } = watch(page);
  await openExample(page);
  await goTo(page, 'Order');
  const rules = page.locator('details', { hasText: 'How it is laid' }).first();
  await rules.locator('summary').click();
  await rules.locator('.choice-one', { hasText: 'folded lengthwise' }).click();
  const along = rules.getByRole('textbox', { name: 'Pattern comes again along, after' });
  await along.fill('1');
  await along.blur();
  await rules.getByRole('button', { name: 'Add a flaw' }).click();
  await rules.getByRole('button', { name: 'Add a piece' }).click();
  expect(await accessFaults(page)).toEqual([]);
  await goTo(page, 'Cloth');
  await forAmina(page);
  await expect(page.getByText('Found by a short search')).toBeAttached({ timeout: 90_000 });
  await expect(
    drawing(page)
      .getByText(/Folded lengthwise, face to face/)
      .first(),
  ).toBeAttached();
  await expect(page.locator('.lay-bad')).toHaveCount(0);
  await page.getByText('Why so much').click();
  await expect(page.getByText('One repeat of the pattern')).toBeAttached();
  const { lays, cloth } = await fileOnDevice(page);
  expect(lays).toEqual([]);
  expect(cloth).toMatchObject({ folding: 'lengthwise', repeat: { along: '1' } });
  expect(cloth).toHaveProperty('flaws');
  expect(cloth).toHaveProperty('grain');
  expect(complaints).toEqual([]);
});

test('a lay is marked as old when a piece has changed, and laid again from there', async ({ page }) => {
  await openCloth(page);
  await chooseThird(page);
  await page.keyboard.press('Enter');
  await expect(page.getByText('1 pinned')).toBeVisible();
  await goTo(page, 'Order');
  const width = page.getByRole('textbox', { name: 'Width as bought', exact: true }).first();
  await width.fill('59');
  await width.blur();
  await goTo(page, 'Cloth');
  await expect(page.getByText('A piece or the cloth has changed since this was laid')).toBeVisible({
    timeout: 60_000,
  });
  await page.getByRole('button', { name: 'Lay again from here' }).click();
  await page.waitForTimeout(1000);
  await page.getByRole('button', { name: 'Stop and keep the best' }).click();
  await expect(page.getByText('This lay is kept with the order')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('1 pinned')).toBeVisible();
});

test('a piece is dragged, pinned where it is put, and the rest moves out of its way', async ({
  page,
  isMobile,
}) => {
  await openCloth(page);
  await freeDrawing(page, isMobile);
  await chooseSmall(page);
  const id = await page.locator('.lay-picked').getAttribute('data-laid');
  const from = await page.locator('.lay-picked .lay-body').boundingBox();
  const over = await largest(page);
  if (id === null || from === null) throw new Error('A piece is held.');
  const letGo = await drag(page, isMobile, middleOf(from), middleOf(over));
  // What it lies over is shown while she drags.
  await expect(page.locator('.lay-bad').first()).toBeAttached();
  await letGo();
  await expect(page.getByRole('button', { name: /Undo: place of/ })).toBeEnabled();
  await expect(page.getByText('It can’t be cut so')).toBeAttached();
  await expect(page.getByText(/lies over .*, or nearer than/).first()).toBeAttached();
  const there = await piece(page, id).getAttribute('d');

  await page.getByRole('button', { name: 'Let the rest move' }).click();
  await page.waitForTimeout(2500);
  await page.getByRole('button', { name: 'Stop and keep the best' }).click();
  await expect(page.getByText('This lay is kept with the order')).toBeAttached({ timeout: 30_000 });
  expect(await piece(page, id).getAttribute('d')).toBe(there);
  await expect(page.locator('.lay-bad')).toHaveCount(0);

  for (const step of [/Undo: lay of ivory satin/, /Undo: place of/]) {
    await page.getByRole('button', { name: step }).click();
  }
  await expect(page.getByText('Found by a short search')).toBeAttached({ timeout: 30_000 });
  await page.getByRole('button', { name: /Redo: place of/ }).click();
  expect(await piece(page, id).getAttribute('d')).toBe(there);
  await page.getByRole('button', { name: 'Take all pins out' }).click();
  await expect(page.locator('.lay-pin-head')).toHaveCount(0);
});

test('a piece that is put off the cloth goes back, with a sentence', async ({ page, isMobile }) => {
  test.skip(isMobile, 'A mouse drags far; the rule is the same for a finger.');
  await openCloth(page);
  await chooseThird(page);
  const box = await page.locator('.lay-picked .lay-body').boundingBox();
  const sheet = await drawing(page).boundingBox();
  if (box === null || sheet === null) throw new Error('They are drawn.');
  const before = await outlines(page);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(sheet.x + sheet.width / 2, sheet.y + 8, { steps: 5 });
  await page.mouse.up();
  await expect(page.getByText(/would lie over the edge of the cloth/)).toBeVisible();
  expect(await outlines(page)).toEqual(before);
});

test('all of it goes by keyboard', async ({ page }) => {
  await openCloth(page);
  await chooseThird(page);
  const name = await page.locator('.lay-held strong').textContent();
  const before = await page.locator('.lay-picked .lay-body').getAttribute('d');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('button', { name: `Undo: place of ${name} on ivory satin` })).toBeEnabled();
  await expect(page.getByRole('status').getByText(`${name} is pinned`)).toBeAttached();
  expect(await page.locator('[data-laid].lay-picked, [data-laid].lay-bad').count()).toBeGreaterThan(0);
  // Pressing a key several times is one step back.
  await page.getByRole('button', { name: `Undo: place of ${name} on ivory satin` }).click();
  await expect(page.locator('.lay-picked .lay-body')).toHaveAttribute('d', before ?? '');
  await drawing(page).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText('1 pinned')).toBeAttached();
  await page.keyboard.press('Enter');
  await expect(page.getByText('1 pinned')).toHaveCount(0);
  await page.keyboard.press('Escape');
  await expect(page.locator('.lay-held')).toHaveCount(0);
});

test('a worker that breaks down in the middle is told, the best is kept, and another search works', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const workers: Worker[] = [];
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        if (String(url).includes('lay-worker')) workers.push(this);
      }
    };
    Object.assign(window, {
      // As a browser tells that it has ended a worker that took too much room.
      breakDown: () => {
        for (const worker of workers) {
          worker.terminate();
          worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
        }
      },
    });
  });
  await openCloth(page);
  await page.getByRole('button', { name: 'Look for a shorter lay' }).click();
  await expect(page.getByText(/so far/)).toBeVisible({ timeout: 30_000 });
  const best = await outlines(page);
  await page.evaluate(() => (window as unknown as { breakDown: () => void }).breakDown());
  await expect(page.getByText('The search broke down on this device')).toBeVisible();
  await expect(page.getByText('This lay is kept with the order')).toBeVisible();
  expect((await outlines(page)).length).toBe(best.length);
  await page.getByRole('button', { name: 'Look longer' }).click();
  await page.waitForTimeout(1500);
  await page.getByRole('button', { name: 'Stop and keep the best' }).click();
  await expect(page.getByText('This lay is kept with the order')).toBeVisible({ timeout: 30_000 });
});

test('equal seeds and tries give equal coordinates here and in Node, bit for bit', async ({ page }) => {
  const started = page.waitForEvent('worker', (worker) => worker.url().includes('lay-worker'));
  await openExample(page);
  await goTo(page, 'Cloth');
  const url = (await started).url();
  const file = JSON.parse(EXAMPLE_TEXT);
  const wish: LayWish = {
    file,
    today: '2027-04-24',
    of: 'party',
    cloth: 'ivory satin',
    child: null,
    seed: 5,
    until: { evaluations: 20_000 },
  };
  const onPage = await page.evaluate(askWorker, { url, wish });
  const bench = createLayBench(
    () => 0,
    () => Promise.resolve(),
    () => null,
  );
  const inNode = await bench.search(wish, () => {});
  if (!inNode.ok || !onPage.ok) throw new Error('Both find a lay.');
  expect(inNode.lengths[0]?.placed[0]?.places.length).toBeGreaterThan(20);
  expect(onPage.evaluations).toBe(inNode.evaluations);
  expect(JSON.stringify(onPage.lengths)).toBe(JSON.stringify(inNode.lengths));
});

/** Speaks with a worker of the page as comlink does; runs in the page. JSON keeps every bit of a number. */
function askWorker({ url, wish }: { url: string; wish: LayWish }): Promise<LayAnswer> {
  const worker = new Worker(url, { type: 'module' });
  const { port1, port2 } = new MessageChannel();
  // Progress is asked for by a call that wants an answer.
  port1.onmessage = ({ data }) => port1.postMessage({ id: data.id, type: 'RAW', value: undefined });
  return new Promise((resolve, reject) => {
    worker.onerror = (event) => reject(new Error(event.message));
    worker.onmessage = ({ data }) => {
      if (data.id !== 'asked') return;
      worker.terminate();
      if (data.type === 'RAW') resolve(data.value);
      else reject(new Error(JSON.stringify(data.value)));
    };
    const wishes = [
      { type: 'RAW', value: wish },
      { type: 'HANDLER', name: 'proxy', value: port2 },
    ];
    worker.postMessage({ id: 'asked', type: 'APPLY', path: ['search'], argumentList: wishes }, [port2]);
  });
}

test('what is kept is what the papers print', async ({ page }) => {
  await openCloth(page);
  const buy = page.locator('.lay-buy');
  await drawing(page).focus();
  await page.keyboard.press('PageUp');
  // The last piece goes far to the right: the lay gets long, and so does what is bought.
  const short = await buy.textContent();
  for (let i = 0; i < 6; i++) await page.keyboard.press('Shift+ArrowRight');
  await expect(buy).not.toHaveText(short ?? '');
  const long = ((await buy.textContent()) ?? '').replace('Buy ', '');
  await kept(page);
  await goTo(page, 'Paper');
  const row = page.locator('.paper-row', { hasText: 'How it lies on the cloth' });
  await row.click();
  await expect(page.locator('.paper-pages')).toContainText(long, { timeout: 60_000 });
});

test('nothing serious stands in the way of anyone, in the light and in the dark', async ({ page }) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await openCloth(page);
    await chooseThird(page);
    await page.getByText('Why so much').click();
    await page.getByText('What the offcuts still give').click();
    expect(await accessFaults(page)).toEqual([]);
    await page.goto('/');
  }
});

test('a child that can’t be drawn is told by her name, and the cloth of the others stays reachable', async ({
  page,
}) => {
  await openExample(page);
  await field(page, 'height').fill('3');
  await field(page, 'height').blur();
  await goTo(page, 'Cloth');
  await expect(page.getByRole('heading', { name: 'Lay the cloth' })).toBeVisible();
  await expect(page.locator('.panel-inside .wrong').first()).toContainText(/^Amina: .*height, 3 in/, {
    timeout: 60_000,
  });
  await page.getByRole('link', { name: /^Efua/ }).click();
  await page.locator('.choice-one', { hasText: 'Efua' }).click();
  await expect(page.locator('.lay-buy')).toBeVisible({ timeout: 60_000 });
});
