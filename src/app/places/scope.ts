import type { ChildFile, OrderFile } from '../../engine/order/index.ts';

/** For whom a change is made: for every child of the order, or for one of them. */
export type Scope = 'party' | number;

/** The part of the order file that holds what is said for them; undefined where the order has no such child. */
export const holderOf = (file: OrderFile, scope: Scope): OrderFile | ChildFile | undefined =>
  scope === 'party' ? file : file.children[scope];

/** Where that part stands in the order file, as problems name it. */
export const pathOf = (scope: Scope): string => (scope === 'party' ? '' : `children[${scope}].`);
