import type { Draft } from 'immer';
import type { OrderFile } from '../../../engine/order/index.ts';

/** Names as lays have them: as the engine reads them. */
const read = (name: string): string => name.trim().normalize('NFC');

/** Gives a cloth another name; its lays go with it. */
export function renameCloth(file: Draft<OrderFile>, index: number, name: string): void {
  const cloth = file.cloths[index];
  if (cloth === undefined) return;
  const [from, to] = [read(cloth.name), read(name)];
  cloth.name = name;
  if (to === '') return;
  for (const lay of file.lays ?? []) if (lay.cloth === from) lay.cloth = to;
}

/** Gives a child another name; the lays on which her pieces are go with her. */
export function renameChild(file: Draft<OrderFile>, index: number, name: string): void {
  const child = file.children[index];
  if (child === undefined) return;
  const [from, to] = [read(child.name), read(name)];
  child.name = name;
  // Two of one name are told apart by a number on their pieces, so neither can take over the lays of the other.
  const isTaken = file.children.some((other, i) => i !== index && [from, to].includes(read(other.name)));
  if (to === '' || isTaken) return;
  for (const lay of file.lays ?? []) {
    if (lay.child === from) lay.child = to;
    for (const { places } of lay.lengths) {
      for (const place of places) if (place.child === from) place.child = to;
    }
  }
}
