import { strToU8, type Zippable, zipSync } from 'fflate';
import {
  BACKUP_VERSION,
  hasDigests,
  LIMITS,
  MANIFEST,
  type Manifest,
  orderPart,
  SETTINGS_PART,
  sha256,
} from './backup-form.ts';
import { readAll } from './book.ts';
import { answer, type Desk } from './database.ts';
import { failure } from './problem.ts';
import { rawText } from './raw-text.ts';
import { isId, readRecord } from './record.ts';
import { settingsIn } from './settings.ts';
import type { Answer, BackupFile } from './types.ts';
import { revisionOf } from './versions.ts';

/**
 * The same day for every part (the first that a zip can tell), so that the same book makes the same bytes. A zip holds
 * local time, so the day is made anew each time: the device may have crossed into another zone.
 */
const always = (): Date => new Date(1980, 0, 1);

/**
 * The whole book in one file. Broken records go into it as they lie there, unless the device can't read them or they
 * are larger than a part can be. Refuses to make a file that could not be read back.
 */
export function makeBackup(desk: Desk): Promise<Answer<BackupFile>> {
  return answer(async () => {
    if (!hasDigests()) return failure('failed', 'store.backup.not-secure');
    const madeAt = desk.now();
    const revisions: Record<string, number> = {};
    const files: File[] = [];
    let broken = 0;
    for (const [id, raw, fetched] of await readAll(desk.db)) {
      const read = readRecord(raw);
      if (read.ok) revisions[id] = revisionOf(read.record.versions);
      else broken++;
      const content = strToU8(read.ok ? JSON.stringify(read.record) : rawText(raw));
      if (fetched && isId(id) && content.length <= LIMITS.partBytes) files.push([orderPart(id), content]);
    }
    const orders = files.length;
    files.push([SETTINGS_PART, strToU8(JSON.stringify(await settingsIn(desk.db), null, 2))]);
    const unpacked = files.reduce((sum, [, content]) => sum + content.length, 0);
    if (files.length + 1 > LIMITS.parts || unpacked > LIMITS.unpackedBytes - LIMITS.partBytes) {
      return failure('too-large', 'store.backup.book-too-large');
    }
    const bytes = await zipFiles(files, madeAt, orders);
    const fileName = `frockwright-backup-${madeAt.slice(0, 10)}.zip`;
    return { ok: true, value: { fileName, bytes, madeAt, orders, broken, revisions } };
  });
}

type File = readonly [part: string, content: Uint8Array<ArrayBuffer>];

async function zipFiles(
  files: readonly File[],
  madeAt: string,
  orders: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const parts = await Promise.all(
    files.map(async ([name, content]) => ({ name, bytes: content.length, sha256: await sha256(content) })),
  );
  const manifest: Manifest = { frockwrightBackup: BACKUP_VERSION, madeAt, counts: { orders }, parts };
  const all: Zippable = Object.fromEntries([
    [MANIFEST, strToU8(JSON.stringify(manifest, null, 2))],
    ...files,
  ]);
  return zipSync(all, { mtime: always(), level: 6 });
}
