import { readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type BrowserContext, chromium, expect, type Page, type TestInfo, test } from '@playwright/test';
import { type Files, forged, handmade, textOf, unzipped } from '../zips.ts';
import { field, goTo, kept, openExample, write } from './page.ts';

/** The browser is killed so often in the middle of saving; `FROCKWRIGHT_KILLS=50` for the long run. */
const KILLS = Number(process.env.FROCKWRIGHT_KILLS ?? 3);

/** A browser with a profile folder on the disk, as a person has one, and the id of its main process. */
async function openProfile(profile: string, info: TestInfo, baseURL: string | undefined) {
  const { executablePath, args } = info.project.use.launchOptions ?? {};
  const context = await chromium.launchPersistentContext(profile, {
    ...(executablePath === undefined ? {} : { executablePath }),
    ...(args === undefined ? {} : { args }),
    ...(baseURL === undefined ? {} : { baseURL }),
    ...(info.project.use.viewport === undefined ? {} : { viewport: info.project.use.viewport }),
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const browser = context.browser();
  if (browser === null) throw new Error('A profile has a browser.');
  const client = await browser.newBrowserCDPSession();
  const { processInfo } = await client.send('SystemInfo.getProcessInfo');
  const main = processInfo.find(({ type }) => type === 'browser');
  if (main === undefined) throw new Error('The browser has a main process.');
  return { context, page, pid: main.id };
}

/** A waist of its own for each number, in odd sixteenths of an inch from 16 to 19. */
const waistOf = (n: number): string => `${16 + (Math.floor(n / 8) % 3)} ${(n % 8) * 2 + 1}/16`;

/** Types one number after another and waits until each is kept, until the browser is gone. */
async function typeUntilGone(page: Page, told: { typed: number; kept: number }): Promise<void> {
  try {
    for (;;) {
      told.typed += 1;
      await write(page, 'waist girth', waistOf(told.typed));
      await page.locator('[data-kept="saved"]').waitFor({ state: 'attached' });
      told.kept = told.typed;
    }
  } catch (error) {
    if (!/closed|crashed|disconnected/i.test(String(error))) throw error;
  }
}

/** The one order of the book as it lies on the disk, and whether its newest undo step is the one that wrote its waist. */
const onDisk = (page: Page): Promise<{ orders: number; waist: unknown; agrees: boolean }> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const [{ name = '' } = {}] = await indexedDB.databases();
    const db = await done(indexedDB.open(name));
    const tx = db.transaction(['orders', 'histories']);
    const [orders, histories] = await Promise.all([
      done(tx.objectStore('orders').getAll()),
      done(tx.objectStore('histories').getAll()),
    ]);
    db.close();
    const { steps, position } = JSON.parse(histories[0]);
    const newest = steps[position - 1];
    const { waistGirth: waist } = orders[0].file.children[0].measures;
    const agrees = JSON.stringify(newest?.patches ?? []).includes(JSON.stringify(waist));
    return { orders: orders.length, waist, agrees };
  });

test(`killed ${KILLS} times in the middle of saving, the browser has the last change that it said was kept`, async ({
  baseURL,
  isMobile,
}, info) => {
  test.skip(isMobile, 'One size is enough.');
  test.setTimeout(60_000 + KILLS * 40_000);
  const profile = join(tmpdir(), `frockwright-kills-${process.pid}`);
  const told = { typed: 0, kept: 0 };
  let inFlight = 0;
  let address = '';
  let last: BrowserContext | null = null;
  try {
    for (let kill = 0; kill <= KILLS; kill++) {
      const { context, page, pid } = await openProfile(profile, info, baseURL);
      last = context;
      if (kill === 0) {
        await openExample(page);
        await kept(page);
        address = page.url();
      } else {
        await page.goto(address);
        await expect(field(page, 'waist girth')).toHaveValue(/\d/);
        const { orders, waist, agrees } = await onDisk(page);
        const possible = Array.from({ length: told.typed - told.kept + 1 }, (_, i) => waistOf(told.kept + i));
        expect(possible, `kill ${kill}`).toContain(waist);
        expect(agrees, `kill ${kill}: the order and its undo steps are of one moment`).toBe(true);
        expect(orders).toBe(1);
        await expect(field(page, 'waist girth')).toHaveValue(String(waist));
        await expect(page.locator('[data-piece="front-yoke"]').first()).toBeVisible();
        if (told.typed > told.kept) inFlight += 1;
      }
      if (kill === KILLS) break;
      const typing = typeUntilGone(page, told);
      await expect.poll(() => told.kept, { intervals: [20] }).toBeGreaterThan(0);
      // A save begins 0.4 s after the number and is soon answered: any moment of two such rounds.
      await pause(Math.random() * 1600);
      process.kill(pid, 'SIGKILL');
      await typing;
    }
    console.log(`${KILLS} kills, ${inFlight} with a change on its way, ${told.typed} changes typed`);
  } finally {
    await last?.close();
    // Its last processes may still be writing.
    await rm(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 200 });
  }
});

test('a device without room says so, keeps what was kept, and keeps the change when there is room', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (value, key) {
      // As a browser refuses it when the disk is full.
      if (document.documentElement.dataset.full === 'yes')
        throw new DOMException('full', 'QuotaExceededError');
      return put.call(this, value, key);
    };
  });
  await openExample(page);
  await kept(page);
  const full = (yes: string): Promise<void> =>
    page.evaluate((now) => {
      document.documentElement.dataset.full = now;
    }, yes);
  await full('yes');
  await write(page, 'waist girth', '18 1/4');
  await expect(page.locator('.kept-failed')).toContainText(
    'There is no room left to keep this on the device',
  );
  expect((await onDisk(page)).waist).toBe('18');
  await expect(field(page, 'waist girth')).toHaveValue('18 1/4');
  await full('no');
  await page.locator('.kept-failed').getByRole('button').click();
  await kept(page);
  expect((await onDisk(page)).waist).toBe('18 1/4');
});

/** Brings a file as a backup, and answers the sentence with which it is refused. */
async function refusal(page: Page, bytes: Uint8Array): Promise<string> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring orders from a backup' }).click();
  await (await chooser).setFiles({ name: 'b.zip', mimeType: 'application/zip', buffer: Buffer.from(bytes) });
  const alert = page.getByRole('dialog').getByRole('alert');
  await expect(alert).toBeVisible();
  const sentence = (await alert.textContent()) ?? '';
  await expect(page.getByRole('button', { name: 'Write this' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Leave it' }).click();
  return sentence;
}

test('a hostile backup is refused with a sentence, or shown as plain text; nothing is written', async ({
  page,
}) => {
  await openExample(page);
  await write(page, 'waist girth', '18 1/4');
  await kept(page);
  const before = await onDisk(page);
  await page.getByRole('link', { name: 'Order book' }).click();
  const arrives = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make a backup' }).click();
  const files: Files = unzipped(new Uint8Array(await readFile(await (await arrives).path())));
  const part = Object.keys(files).find((name) => name.startsWith('orders/')) ?? '';
  const order = JSON.parse(textOf(files, part));

  const bomb = handmade([{ name: part, content: new Uint8Array(300_000_000), told: 100 }]);
  expect(await refusal(page, bomb)).toMatch(/unpack to more/);
  const odd = forged({ ...files, '../../page.html': new Uint8Array([60]) }, part, textOf(files, part));
  expect(await refusal(page, odd)).toMatch(/a part that no backup has/);
  expect(await refusal(page, new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]))).toMatch(/not a backup file/);

  // A title that is a script, and children that are no list: the one is text, the other is told as unreadable.
  const script =
    '<img src=x onerror="document.body.dataset.ran=1"><script>document.body.dataset.ran=1</script>';
  const spoiled = JSON.stringify(order).replaceAll(order.file.title, script.replaceAll('"', '\\"'));
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring orders from a backup' }).click();
  await (await chooser).setFiles({
    name: 'b.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(forged(files, part, spoiled)),
  });
  await expect(page.getByRole('dialog').getByText(script).first()).toBeVisible();
  await expect(page.locator('body')).not.toHaveAttribute('data-ran');
  await page.getByRole('button', { name: 'Leave it' }).click();

  const wrong = JSON.stringify({ ...order, file: { ...order.file, children: 3 } });
  const again = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Bring orders from a backup' }).click();
  const buffer = Buffer.from(forged(files, part, wrong));
  await (await again).setFiles({ name: 'b.zip', mimeType: 'application/zip', buffer });
  await expect(page.getByRole('dialog').getByText(/This part can’t be read: .*“?"?children/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Write this' })).toHaveCount(0);
  expect(await onDisk(page)).toEqual(before);
});

test('a worker that breaks down over a paper is told, and the next try works', async ({ page }) => {
  await page.addInitScript(() => {
    const workers: Worker[] = [];
    globalThis.Worker = class extends Worker {
      constructor(url: string | URL, options?: WorkerOptions) {
        super(url, options);
        if (String(url).includes('paper-worker')) workers.push(this);
      }
    };
    // As a browser tells that it has ended a worker that took too much room.
    Object.assign(globalThis, {
      breakDown: () => {
        for (const worker of workers.splice(0)) {
          worker.terminate();
          worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
        }
      },
    });
  });
  await openExample(page);
  await goTo(page, 'Paper');
  await expect(page.locator('.paper-row').first()).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  await page.evaluate(() => (globalThis as unknown as { breakDown: () => void }).breakDown());
  await expect(page.getByText(/broke down|could not be made|out of memory/).first()).toBeVisible();
  const arrives = page.waitForEvent('download', { timeout: 60_000 });
  await page.getByRole('button', { name: 'Make the PDF' }).click();
  expect((await arrives).suggestedFilename()).toMatch(/\.pdf$/);
});
