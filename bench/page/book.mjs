// A book of many orders, laid straight into the page's own database from one that the page wrote itself.

const TITLES = ['Garden wedding', 'Feast of the village', 'First communion', 'Naming day', 'Harvest dance'];

/** Copies the newest order so often that the book holds `count`, each with a title and a day of its own. */
export async function fillBook(page, count) {
  await page.evaluate(
    async ({ count, titles }) => {
      const [{ name }] = await indexedDB.databases();
      const done = (request) =>
        new Promise((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const db = await done(indexedDB.open(name));
      const tx = db.transaction(['orders', 'histories'], 'readwrite');
      const ended = new Promise((resolve, reject) => {
        tx.oncomplete = resolve;
        tx.onabort = () => reject(tx.error);
      });
      const [orders, histories] = [tx.objectStore('orders'), tx.objectStore('histories')];
      const [id] = await done(orders.getAllKeys());
      const [record, history] = [await done(orders.get(id)), await done(histories.get(id))];
      const first = Date.UTC(2027, 0, 1);
      for (let i = 1; i < count; i++) {
        const title = `${titles[i % titles.length]} ${i}`;
        const dueDay = new Date(first + (i % 700) * 86_400_000).toISOString().slice(0, 10);
        orders.put({ ...record, file: { ...record.file, title, dueDay } }, `${id}${i}`);
        histories.put(history, `${id}${i}`);
      }
      await ended;
      db.close();
    },
    { count, titles: TITLES },
  );
}

/** Ms from the page beginning to load until the first order of the book is on the screen. */
export async function timeToOpen(page) {
  await page.reload();
  await page.locator('.order-row').first().waitFor();
  return page.evaluate(() => globalThis.firstSeen['.order-row']);
}

/** Ms from a word being put into the field until the list shows only what has it, for each of the words. */
export async function timesToFind(page, words) {
  const times = [];
  for (const word of words) {
    times.push(
      await page.evaluate(async (looked) => {
        const field = [...document.querySelectorAll('input')].find((input) => input.type === 'text');
        const list = () => [...document.querySelectorAll('.order-title')].map((title) => title.textContent);
        const words = looked.split(' ');
        const isFound = () =>
          list().length > 0 &&
          list().every((title) => words.every((part) => title.toLowerCase().includes(part)));
        const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set;
        const put = (text) => {
          write.call(field, text);
          field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        };
        put('');
        await new Promise((resolve) => setTimeout(resolve, 600));
        if (isFound()) throw new Error('What is looked for must not be all that is there.');
        const began = performance.now();
        const seen = new Promise((resolve) => {
          const watch = new MutationObserver(() => {
            if (!isFound()) return;
            watch.disconnect();
            resolve(performance.now() - began);
          });
          watch.observe(document.body, { subtree: true, childList: true, characterData: true });
        });
        put(looked);
        return seen;
      }, word),
    );
  }
  return times;
}
