import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import type { WordKey } from '../../engine/words/index.ts';

/**
 * One place of the work on an order. To add a place: write its panel in a folder of its own, add it to `PLACES` at its
 * place in her order of work, and its word to `page.place.<id>` in the catalogue. Routes, strip and keyboard follow.
 */
export interface Place {
  readonly id: string;
  /** Last part of the address: `#/o/<order>/<child>/<path>`. */
  readonly path: string;
  readonly word: WordKey;
  /** What belongs to this place, in the panel. Gets everything from the session. */
  readonly panel: LazyExoticComponent<ComponentType>;
  /**
   * What lies on the table beside the panel: the pieces of the child (`drawing`), something of the place's own, or
   * nothing, and the panel takes the page.
   */
  readonly table: 'drawing' | 'none' | LazyExoticComponent<ComponentType>;
}

/** The places in the order of her work. She may go to any of them at any time. */
export const PLACES: readonly Place[] = [
  {
    id: 'order',
    path: 'order',
    word: 'page.place.order',
    panel: lazy(async () => ({ default: (await import('./order/order-place.tsx')).OrderPlace })),
    table: 'none',
  },
  {
    id: 'measures',
    path: 'measures',
    word: 'page.place.measures',
    panel: lazy(async () => ({ default: (await import('./measures/measures-place.tsx')).MeasuresPlace })),
    table: 'drawing',
  },
  {
    id: 'block',
    path: 'block',
    word: 'page.place.block',
    panel: lazy(async () => ({ default: (await import('./block/block-place.tsx')).BlockPlace })),
    table: 'drawing',
  },
  {
    id: 'dress',
    path: 'dress',
    word: 'page.place.dress',
    panel: lazy(async () => ({ default: (await import('./dress/dress-place.tsx')).DressPlace })),
    table: 'drawing',
  },
  {
    id: 'fit',
    path: 'fit',
    word: 'page.place.fit',
    panel: lazy(async () => ({ default: (await import('./fit/fit-place.tsx')).FitPlace })),
    table: 'drawing',
  },
  {
    id: 'cloth',
    path: 'cloth',
    word: 'page.place.cloth',
    panel: lazy(async () => ({ default: (await import('./cloth/cloth-place.tsx')).ClothPlace })),
    table: lazy(async () => ({ default: (await import('./cloth/cloth-table.tsx')).ClothTable })),
  },
  {
    id: 'paper',
    path: 'paper',
    word: 'page.place.paper',
    panel: lazy(async () => ({ default: (await import('./paper/paper-place.tsx')).PaperPlace })),
    table: lazy(async () => ({ default: (await import('./paper/paper-table.tsx')).PaperTable })),
  },
  {
    id: 'sew',
    path: 'sew',
    word: 'page.place.sew',
    panel: lazy(async () => ({ default: (await import('./sew/sew-place.tsx')).SewPlace })),
    table: 'none',
  },
  {
    id: 'shopping',
    path: 'shopping',
    word: 'page.place.shopping',
    panel: lazy(async () => ({ default: (await import('./pay/shopping-place.tsx')).ShoppingPlace })),
    table: 'none',
  },
  {
    id: 'days',
    path: 'days',
    word: 'page.place.days',
    panel: lazy(async () => ({ default: (await import('./pay/days-place.tsx')).DaysPlace })),
    table: 'none',
  },
  {
    id: 'bill',
    path: 'bill',
    word: 'page.place.bill',
    panel: lazy(async () => ({ default: (await import('./pay/bill-place.tsx')).BillPlace })),
    table: 'none',
  },
];
