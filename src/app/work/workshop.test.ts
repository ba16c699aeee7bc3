import { expose } from 'comlink';
import { describe, expect, it } from 'vitest';
import { openWorkshop } from './workshop.ts';

/** What the worker of the tests can do. */
const door = {
  double: async (n: number): Promise<number> => 2 * n,
  never: (): Promise<number> => new Promise(() => {}),
  refuse: async (): Promise<number> => {
    throw new Error('no cloth left');
  },
};
type Door = typeof door;

/** A worker as the page sees it, over a channel of messages: there are no workers of a browser here. */
class TestWorker extends EventTarget {
  readonly #channel = new MessageChannel();
  ended = false;

  constructor() {
    super();
    expose(door, this.#channel.port2 as unknown as MessagePort);
    this.#channel.port1.onmessage = ({ data }) => this.dispatchEvent(new MessageEvent('message', { data }));
  }
  postMessage(message: unknown, transfer: Transferable[]): void {
    this.#channel.port1.postMessage(message, transfer);
  }
  terminate(): void {
    this.ended = true;
    this.#channel.port1.close();
  }
}

function testShop() {
  const workers: TestWorker[] = [];
  const shop = openWorkshop<Door>(() => {
    const worker = new TestWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  });
  return { shop, workers };
}

describe('a worker beside the page', () => {
  it('is started when there is something to do, and kept', async () => {
    const { shop, workers } = testShop();
    expect(workers).toHaveLength(0);
    expect(await shop.begin((api) => api.double(3))).toEqual({ ok: true, value: 6 });
    expect(await shop.begin((api) => api.double(4))).toEqual({ ok: true, value: 8 });
    expect(workers).toHaveLength(1);
    shop.stop();
  });

  it('can be broken off: all that waits ends, and the next work has a new worker', async () => {
    const { shop, workers } = testShop();
    const ends = [shop.begin((api) => api.never()), shop.begin((api) => api.never())];
    shop.stop();
    expect(await Promise.all(ends)).toEqual([
      { ok: false, code: 'stopped' },
      { ok: false, code: 'stopped' },
    ]);
    expect(workers[0]?.ended).toBe(true);
    expect(await shop.begin((api) => api.double(5))).toEqual({ ok: true, value: 10 });
    expect(workers).toHaveLength(2);
    shop.stop();
  });

  it('that breaks down says so, and the next work has a new one', async () => {
    const { shop, workers } = testShop();
    const end = shop.begin((api) => api.never());
    const broken = Object.assign(new Event('error'), { message: 'out of memory' });
    workers[0]?.dispatchEvent(broken);
    expect(await end).toEqual({ ok: false, code: 'failed', why: 'out of memory' });
    expect(await shop.begin((api) => api.double(1))).toEqual({ ok: true, value: 2 });
    expect(workers).toHaveLength(2);
    shop.stop();
  });

  it('a fault in the work is told, and the worker stays', async () => {
    const { shop, workers } = testShop();
    const end = await shop.begin((api) => api.refuse());
    expect(end).toMatchObject({ ok: false, code: 'failed' });
    expect(end.ok === false && end.code === 'failed' && end.why).toContain('no cloth left');
    expect(await shop.begin((api) => api.double(2))).toEqual({ ok: true, value: 4 });
    expect(workers).toHaveLength(1);
    shop.stop();
  });
});
