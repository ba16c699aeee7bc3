import { createHash } from 'node:crypto';
import { deflateRawSync } from 'node:zlib';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

/** A backup taken apart by another reader than the store's own. */
export type Files = Record<string, Uint8Array>;
export const unzipped = (bytes: Uint8Array): Files => unzipSync(bytes);
export const zipped = (files: Files): Uint8Array => zipSync(files);
export const textOf = (files: Files, part: string): string => strFromU8(files[part] ?? new Uint8Array());

/** Node's own SHA-256, as a judge of the store's. */
export const digest = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** A backup with one part changed, and the manifest made to agree, as somebody who knows the form would do it. */
export function forged(files: Files, part: string, content: string | null): Uint8Array {
  const changed = { ...files };
  if (content === null) delete changed[part];
  else changed[part] = strToU8(content);
  const others = Object.entries(changed).filter(([name]) => name !== 'manifest.json');
  const manifest = {
    ...JSON.parse(textOf(files, 'manifest.json')),
    counts: { orders: others.filter(([name]) => name.startsWith('orders/')).length },
    parts: others.map(([name, bytes]) => ({ name, bytes: bytes.length, sha256: digest(bytes) })),
  };
  return zipped({ ...changed, 'manifest.json': strToU8(JSON.stringify(manifest)) });
}

/**
 * A zip of local entries only, each with the unpacked size that it claims (APPNOTE.TXT 4.3.7), and no directory. For
 * files that no honest program writes.
 */
export function handmade(
  entries: readonly { name: string; content: Uint8Array; told?: number }[],
): Uint8Array {
  const packings = new Map<Uint8Array, Buffer>();
  return Buffer.concat(
    entries.flatMap(({ name, content, told = content.length }) => {
      const packed = packings.get(content) ?? deflateRawSync(content);
      packings.set(content, packed);
      const header = Buffer.alloc(30);
      header.writeUInt32LE(0x04034b50, 0);
      header.writeUInt16LE(20, 4);
      header.writeUInt16LE(8, 8);
      header.writeUInt32LE(packed.length, 18);
      header.writeUInt32LE(told, 22);
      header.writeUInt16LE(Buffer.byteLength(name), 26);
      return [header, Buffer.from(name), packed];
    }),
  );
}
