import type { Draft } from 'immer';
import { childNames, type OrderFile } from '../../../engine/order/index.ts';

type Named = { readonly name: string };

/**
 * Names as lays have them. While a name is being typed it may be empty, or that of another: then the lays are kept
 * under a name that nothing else has, and go on with the next letter.
 */
const told = (all: readonly Named[]): readonly string[] => childNames(all, (number) => `(${number})`);

type Renaming = (name: string) => string;

/** Changes one name of a list, and answers what the lays must call everything of that list from now on. */
function renaming(all: readonly Named[], change: () => void): Renaming {
  const before = told(all);
  change();
  const after = told(all);
  return (name) => after[before.indexOf(name)] ?? name;
}

/** Gives a cloth another name; its lays go with it. */
export function renameCloth(file: Draft<OrderFile>, index: number, name: string): void {
  const cloth = file.cloths[index];
  if (cloth === undefined) return;
  const nowCalled = renaming(file.cloths, () => {
    cloth.name = name;
  });
  for (const lay of file.lays ?? []) lay.cloth = nowCalled(lay.cloth);
}

/** Gives a child another name; the lays on which her pieces are go with her. */
export function renameChild(file: Draft<OrderFile>, index: number, name: string): void {
  const child = file.children[index];
  if (child === undefined) return;
  const nowCalled = renaming(file.children, () => {
    child.name = name;
  });
  for (const lay of file.lays ?? []) {
    if (lay.child !== undefined) lay.child = nowCalled(lay.child);
    for (const { places } of lay.lengths) {
      for (const place of places) place.child = nowCalled(place.child);
    }
  }
}
