import { readFile, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { LARGEST_ORDER, type Order, readOrder } from '../engine/order/index.ts';
import { EXIT, type Io } from './io.ts';
import { fileRefusal, orderRefusal, type Refusal, refusal } from './refusal.ts';

/** Reads an order from a file that the maker names. */
export async function openOrder(
  io: Io,
  file: string,
): Promise<{ readonly ok: true; readonly order: Order } | Refusal> {
  const text = await openText(resolve(io.folder, file), file);
  if (typeof text !== 'string') return text;
  const read = readOrder(text);
  return read.ok ? read : orderRefusal(read.problems, read.units);
}

export async function openText(path: string, file: string): Promise<string | Refusal> {
  let bytes: Uint8Array;
  try {
    const { size } = await stat(path);
    // A larger file is never an order; it is not taken into memory to find that out.
    if (size > LARGEST_ORDER)
      return refusal(EXIT.unusable, 'order.too-large', { most: LARGEST_ORDER / 1_000_000 });
    bytes = await readFile(path);
  } catch (error) {
    return fileRefusal(error, 'read', file);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refusal(EXIT.unusable, 'cli.file.not-utf8', { file });
  }
}
