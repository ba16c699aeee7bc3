import type { EditClaim, StoreEvent } from './types.ts';

/** Word between the tabs of one book: what was written, and who has which order open. */
export interface Tabs {
  announce(what: { readonly orders: readonly string[] } | 'settings'): void;
  subscribe(listener: (event: StoreEvent) => void): () => void;
  /** For what concerns this tab only. */
  tell(event: StoreEvent): void;
  close(): void;
}

export function openTabs(name: string): Tabs {
  const listeners = new Set<(event: StoreEvent) => void>();
  const tell = (event: StoreEvent) => {
    for (const listener of listeners) listener(event);
  };
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(`${name}: written`);
  channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    const event = readMessage(data);
    if (event !== null) tell(event);
  });
  let open = true;
  return {
    tell,
    // A save may come through while the page is being left: that is no failure of the save.
    announce: (what) => open && channel?.postMessage(what),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: () => {
      open = false;
      channel?.close();
    },
  };
}

/** The other tab may run another version of the program, so its word is read with care. */
function readMessage(data: unknown): StoreEvent | null {
  if (data === 'settings') return { kind: 'settings' };
  const isOrders =
    typeof data === 'object' && data !== null && 'orders' in data && Array.isArray(data.orders);
  if (!isOrders) return null;
  const ids = (data as { readonly orders: readonly unknown[] }).orders.filter((id) => typeof id === 'string');
  return { kind: 'orders', ids };
}

/**
 * Claims an order for this tab by a Web Lock, which the browser gives back even when the tab crashes. Does not wait:
 * the second tab is told at once.
 */
export async function claimOrder(name: string, id: string): Promise<EditClaim> {
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  if (locks === undefined) return { held: 'unknown', release: () => {} };
  let release = () => {};
  const untilReleased = new Promise<void>((resolve) => {
    release = resolve;
  });
  const held = await new Promise<EditClaim['held']>((resolve) => {
    locks
      .request(`${name}: order ${id}`, { ifAvailable: true }, (lock) => {
        resolve(lock === null ? 'elsewhere' : 'here');
        return lock === null ? undefined : untilReleased;
      })
      .catch(() => resolve('unknown'));
  });
  return { held, release };
}
