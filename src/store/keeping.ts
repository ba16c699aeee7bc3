import type { Keeping } from './types.ts';

/** How the browser keeps the data. Every part of this may be missing in a browser, or be refused. */
export async function keepingNow(): Promise<Keeping> {
  const storage = storageManager();
  const [lasting, room] = await Promise.all([
    tried(() => storage?.persisted?.()),
    tried(() => storage?.estimate?.()),
  ]);
  return {
    lasting: lasting === null ? 'unknown' : lasting ? 'yes' : 'no',
    usedBytes: room?.usage ?? null,
    roomBytes: room?.quota ?? null,
  };
}

export async function askToKeep(): Promise<Keeping> {
  await tried(() => storageManager()?.persist?.());
  return keepingNow();
}

function storageManager(): Partial<StorageManager> | undefined {
  return typeof navigator === 'undefined' ? undefined : navigator.storage;
}

async function tried<T>(ask: () => Promise<T> | undefined): Promise<T | null> {
  try {
    return (await ask()) ?? null;
  } catch {
    return null;
  }
}
