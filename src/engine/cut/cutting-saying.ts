import type { Piece } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';

/** How often and how a piece is cut, to be spoken: 'Cut 2 in satin, 1 pair'. `cloth` is the cloth's name. */
export function cuttingSaying({ cutting }: Piece, cloth: string): Saying {
  const { as, copies } = cutting;
  const values = { copies, cloth, pairs: copies / 2 };
  switch (as) {
    case 'fold':
      return { key: 'cutting.on-fold', values };
    case 'pair':
      return { key: copies === 2 ? 'cutting.one-pair' : 'cutting.pairs', values };
    case 'single':
      return { key: 'cutting.single', values };
  }
}
