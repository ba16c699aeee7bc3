import { readKeptOrder } from '../../engine/order/index.ts';
import { type History, NO_HISTORY, type OrderContent, type Store } from '../../store/index.ts';

/**
 * What was typed in the last moment before the page went away. The order book answers too late for that; this storage
 * answers at once. It lies there only until the order is opened again, on this device as all else.
 */
interface Stash {
  readonly revision: number;
  readonly file: OrderContent['file'];
  readonly history: History;
}

const nameOf = (id: string): string => `unsaved ${id}`;

/** Puts an unsaved state by. Does nothing where the browser gives no room: then the last save holds. */
export function putBy(id: string, stash: Stash): void {
  for (const one of [stash, { ...stash, history: NO_HISTORY }]) {
    try {
      localStorage.setItem(nameOf(id), JSON.stringify(one));
      return;
    } catch {
      // Too large with its history, or no storage at all.
    }
  }
}

export function clearPutBy(id: string): void {
  try {
    localStorage.removeItem(nameOf(id));
  } catch {
    // Without storage nothing was put by.
  }
}

/**
 * Saves what was put by when the page went away, before the order is opened. Where another window has changed the order
 * since, the store keeps it beside that as a copy.
 */
export async function savePutBy(store: Pick<Store, 'load' | 'save'>, id: string): Promise<void> {
  const stash = read(id);
  if (stash === null) return;
  const stored = await store.load(id);
  const isThere = stored.ok && JSON.stringify(stored.value.file) === JSON.stringify(stash.file);
  if (isThere) return clearPutBy(id);
  const { revision, file, history } = stash;
  const result = await store.save(id, revision, { file, history });
  if (result.ok || result.conflict !== undefined) clearPutBy(id);
}

function read(id: string): Stash | null {
  try {
    const stash = JSON.parse(localStorage.getItem(nameOf(id)) ?? 'null') as Stash | null;
    const order = readKeptOrder(stash?.file);
    if (stash === null || !order.ok || order.fromOlderForm || typeof stash.revision !== 'number') return null;
    const isHistory = Array.isArray(stash.history?.steps) && typeof stash.history.position === 'number';
    return { revision: stash.revision, file: order.file, history: isHistory ? stash.history : NO_HISTORY };
  } catch {
    return null;
  }
}
