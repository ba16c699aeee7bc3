import * as v from 'valibot';
import { instant, isId } from './record.ts';

/**
 * The form of a backup: a zip with `manifest.json`, one JSON file for each order (`orders/<id>.json`, the record as it
 * lies in the store) and `settings.json`. The manifest names every other part with its length and SHA-256 (FIPS 180-4),
 * so that a damaged part is found and named.
 */
export const MANIFEST = 'manifest.json';
export const SETTINGS_PART = 'settings.json';
export const orderPart = (id: string): string => `orders/${id}.json`;
const ORDER_PART = /^orders\/(.+)\.json$/;

/** The id of the order that lies in a part; null for any other part. */
export function idOfPart(part: string): string | null {
  const id = ORDER_PART.exec(part)?.[1];
  return id !== undefined && isId(id) ? id : null;
}

export const BACKUP_VERSION = 1;

export const MANIFEST_FORM = v.object({
  frockwrightBackup: v.literal(BACKUP_VERSION),
  madeAt: instant,
  counts: v.object({ orders: v.number() }),
  parts: v.array(
    v.object({
      name: v.string(),
      bytes: v.pipe(v.number(), v.integer(), v.minValue(0)),
      sha256: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/)),
    }),
  ),
});
export type Manifest = v.InferOutput<typeof MANIFEST_FORM>;

/**
 * How large a backup may be. An order is at most 2 million letters, of which each takes up to three bytes in UTF-8;
 * usual ones take 5 to 50 kB, so that thousands of orders stay far below all of this. Anything beyond is no backup of
 * ours, and is refused before it fills the memory of a phone.
 */
export const LIMITS = {
  fileBytes: 50_000_000,
  parts: 20_000,
  partBytes: 8_000_000,
  unpackedBytes: 100_000_000,
} as const;

/** Browsers keep digests from a page that came over plain http from another machine. */
export const hasDigests = (): boolean => typeof crypto !== 'undefined' && crypto.subtle !== undefined;

/** SHA-256 as 64 hexadecimal digits. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
