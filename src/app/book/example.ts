import example from '../../../examples/wedding-party.json?raw';
import { readKeptOrder } from '../../engine/order/index.ts';
import type { Answer, Store } from '../../store/index.ts';
import { placeAddress } from '../places/address.ts';

/** Puts the finished example party into the book; answers the address at which it is open. */
export async function openExample(store: Store): Promise<Answer<string>> {
  const read = readKeptOrder(JSON.parse(example));
  if (!read.ok) throw new Error('The example order must be an order.');
  const stored = await store.create({ file: read.file });
  return stored.ok ? { ok: true, value: placeAddress(stored.value.id, 0, 'measures') } : stored;
}
