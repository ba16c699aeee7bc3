import { expect, test } from 'vitest';
import { dressOf, type Wish } from '../../../tests/dress-of.ts';
import { sketchDress } from './index.ts';

/** Changes of the maker's after which a piece has no longer the edges that it was made with. */
const CHANGED: readonly [string, NonNullable<Wish['steps']>][] = [
  ['an opened strap', ['shoulder-straps', ['mirror-piece', { piece: 'strap' }]]],
  ['a cut strip', ['edge-strip', ['split-along', { piece: 'sleeve-strip', from: 'start', to: 'end' }]]],
  [
    'a cut extension',
    [
      ['drop-shoulder', { finish: 'straight' }],
      'sleeve-extension',
      ['split-along', { piece: 'sleeve', from: 'underarm-front', to: 'underarm-back' }],
    ],
  ],
  ['a bodice cut at the arm', ['edge-strip', ['split-along', { from: 'centre', to: 'armhole' }]]],
];

test.each(CHANGED)('%s is drawn all the same', (_, steps) => {
  const dress = dressOf({ steps });
  for (const side of ['front', 'back'] as const)
    expect(sketchDress(dress, side).lines.length).toBeGreaterThan(3);
});
