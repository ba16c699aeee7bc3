import * as v from 'valibot';
import { LARGEST_ORDER } from '../engine/order/index.ts';
import {
  BACKUP_VERSION,
  hasDigests,
  idOfPart,
  MANIFEST,
  MANIFEST_FORM,
  type Manifest,
  SETTINGS_PART,
  sha256,
} from './backup-form.ts';
import { failure } from './problem.ts';
import { type OrderRecord, type ReadRecord, readRecord, saying } from './record.ts';
import { givenSettings } from './settings.ts';
import type { Answer, Settings, StoreWord, UnreadablePart } from './types.ts';
import { type Parts, unpack } from './unpack.ts';

/** What a backup holds, every part held against the manifest and every record against its form. */
export interface BackupContents {
  readonly madeAt: string;
  readonly orders: readonly (readonly [id: string, record: OrderRecord])[];
  readonly settings: Partial<Settings>;
  readonly unreadable: readonly UnreadablePart[];
}

/**
 * Opens a backup. One damaged part refuses the file, unless the rest is asked for: then it stands among the unreadable.
 * A part that is whole but no order (it was broken when the backup was made) refuses nothing.
 */
export async function openBackup(
  bytes: Uint8Array,
  leaveOutDamaged: boolean,
): Promise<Answer<BackupContents>> {
  if (!hasDigests()) return failure('failed', 'store.backup.not-secure');
  const unpacked = unpack(bytes);
  if (!unpacked.ok) return unpacked;
  const manifest = readManifest(unpacked.value);
  if (!manifest.ok) return manifest;
  const { whole, damaged } = await sortParts(unpacked.value, manifest.value);
  const first = damaged[0];
  if (first !== undefined && !leaveOutDamaged) {
    return failure('bad-backup', first.key, { part: first.part });
  }
  const unreadable: UnreadablePart[] = damaged.map(({ part, key }) => ({ part, why: saying(key, { part }) }));
  const orders: [string, OrderRecord][] = [];
  for (const [part, content] of whole) {
    const id = idOfPart(part);
    if (id === null) continue;
    const read = readOrderPart(content);
    if (read?.ok) orders.push([id, read.record]);
    else unreadable.push({ part, why: read?.why ?? saying('store.backup.part-unreadable', { part }) });
  }
  const settings = whole.get(SETTINGS_PART);
  const json = settings === undefined ? null : readPart(settings);
  const { madeAt } = manifest.value;
  return {
    ok: true,
    value: { madeAt, orders, settings: json?.ok ? givenSettings(json.value) : {}, unreadable },
  };
}

function readManifest(parts: Parts): Answer<Manifest> {
  const content = parts.get(MANIFEST);
  if (content === undefined) return failure('bad-backup', 'store.backup.no-manifest');
  const json = content === null ? null : readPart(content);
  if (!json?.ok) return failure('bad-backup', 'store.backup.bad-manifest');
  if (isNewer(json.value)) return failure('bad-backup', 'store.backup.newer-form');
  const read = v.safeParse(MANIFEST_FORM, json.value);
  if (!read.success) return failure('bad-backup', 'store.backup.bad-manifest');
  const names = read.output.parts.map(({ name }) => name);
  if (new Set(names).size < names.length) return failure('bad-backup', 'store.backup.bad-manifest');
  const orders = names.filter((name) => idOfPart(name) !== null).length;
  if (orders !== read.output.counts.orders) return failure('bad-backup', 'store.backup.counts');
  return { ok: true, value: read.output };
}

function isNewer(manifest: unknown): boolean {
  const read = v.safeParse(v.object({ frockwrightBackup: v.number() }), manifest);
  return read.success && read.output.frockwrightBackup > BACKUP_VERSION;
}

type Damaged = { readonly part: string; readonly key: StoreWord };

/** Which parts are what the manifest says that was written. */
async function sortParts(
  parts: Parts,
  manifest: Manifest,
): Promise<{ whole: ReadonlyMap<string, Uint8Array<ArrayBuffer>>; damaged: readonly Damaged[] }> {
  const whole = new Map<string, Uint8Array<ArrayBuffer>>();
  const damaged: Damaged[] = [];
  const listed = new Set([MANIFEST]);
  for (const { name, bytes, sha256: told } of manifest.parts) {
    listed.add(name);
    const content = parts.get(name);
    if (content === undefined) damaged.push({ part: name.slice(0, 80), key: 'store.backup.part-missing' });
    else if (content === null || content.length !== bytes || (await sha256(content)) !== told) {
      damaged.push({ part: name, key: 'store.backup.part-damaged' });
    } else whole.set(name, content);
  }
  for (const part of parts.keys()) {
    if (!listed.has(part)) damaged.push({ part, key: 'store.backup.part-unlisted' });
  }
  return { whole, damaged };
}

/** Null for what is no order at all, or larger than one that could be saved again. */
function readOrderPart(content: Uint8Array): ReadRecord | null {
  const json = readPart(content);
  if (!json.ok) return null;
  const read = readRecord(json.value);
  return read.ok && JSON.stringify(read.record.file).length > LARGEST_ORDER ? null : read;
}

type PartJson = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

function readPart(content: Uint8Array): PartJson {
  try {
    return { ok: true, value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(content)) };
  } catch {
    // Not UTF-8, not JSON, or nested beyond all measure.
    return { ok: false };
  }
}
