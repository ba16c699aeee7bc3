import type { ClothFile } from '../../../engine/order/index.ts';
import { useSession } from '../../session/use-session.ts';

/** Changes one cloth of the order; `field` is its path below the cloth, `what` the field as the maker calls it. */
type ChangeCloth = (field: string, what: string, recipe: (draft: ClothFile) => void) => void;

export interface OneCloth {
  readonly cloth: ClothFile;
  /** In the order file: `cloths[0]`. */
  readonly path: string;
  readonly change: ChangeCloth;
}

export function useChangeCloth(index: number, name: string): ChangeCloth {
  const session = useSession();
  return (field, what, recipe) =>
    void session.change(
      { key: 'page.did.cloth', values: { cloth: name, what } },
      (file) => {
        const draft = file.cloths[index];
        if (draft !== undefined) recipe(draft);
      },
      { cause: `cloths[${index}].${field}` },
    );
}

/** A list of an order is left out where it would be empty. */
export function putList<K extends 'grain' | 'flaws' | 'atHand'>(
  draft: ClothFile,
  field: K,
  list: NonNullable<ClothFile[K]>,
): void {
  if (list.length > 0) draft[field] = list;
  else delete draft[field];
}
