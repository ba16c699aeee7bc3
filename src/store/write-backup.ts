import { strToU8, type Zippable, zipSync } from 'fflate';
import { BACKUP_VERSION, MANIFEST, type Manifest, orderPart, SETTINGS_PART, sha256 } from './backup-form.ts';
import { readAll } from './book.ts';
import { answer, type Desk } from './database.ts';
import { rawText } from './raw-text.ts';
import { isId, readRecord } from './record.ts';
import { settingsIn } from './settings.ts';
import type { Answer, BackupFile } from './types.ts';
import { revisionOf } from './versions.ts';

/** The same day for every part (the first that a zip can tell), so that the same book makes the same bytes. */
const ALWAYS = new Date(1980, 0, 1);

/** The whole book in one file. Broken records go into it as they lie there, whatever they are. */
export function makeBackup(desk: Desk): Promise<Answer<BackupFile>> {
  return answer(async () => {
    const madeAt = desk.now();
    const revisions: Record<string, number> = {};
    const texts: [part: string, text: string][] = [];
    let broken = 0;
    for (const [id, raw, fetched] of await readAll(desk.db)) {
      const read = readRecord(raw);
      if (read.ok) revisions[id] = revisionOf(read.record.versions);
      else broken++;
      if (fetched && isId(id)) texts.push([orderPart(id), read.ok ? JSON.stringify(raw) : rawText(raw)]);
    }
    const orders = texts.length;
    texts.push([SETTINGS_PART, JSON.stringify(await settingsIn(desk.db), null, 2)]);
    const bytes = await zipParts(texts, madeAt, orders);
    const fileName = `frockwright-backup-${madeAt.slice(0, 10)}.zip`;
    return { ok: true, value: { fileName, bytes, madeAt, orders, broken, revisions } };
  });
}

async function zipParts(
  texts: readonly (readonly [part: string, text: string])[],
  madeAt: string,
  orders: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const files: [string, Uint8Array<ArrayBuffer>][] = texts.map(([name, text]) => [name, strToU8(text)]);
  const parts = await Promise.all(
    files.map(async ([name, bytes]) => ({ name, bytes: bytes.length, sha256: await sha256(bytes) })),
  );
  const manifest: Manifest = { frockwrightBackup: BACKUP_VERSION, madeAt, counts: { orders }, parts };
  const all: Zippable = Object.fromEntries([
    [MANIFEST, strToU8(JSON.stringify(manifest, null, 2))],
    ...files,
  ]);
  return zipSync(all, { mtime: ALWAYS, level: 6 });
}
