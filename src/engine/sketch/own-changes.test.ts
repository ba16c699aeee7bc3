import { expect, test } from 'vitest';
import { dressOf, type Wish } from '../../../tests/dress-of.ts';
import { pathLength } from '../geometry/index.ts';
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
  ['a collar cut in two', ['flat-collar', ['split-along', { piece: 'collar', from: 'outer', to: 'neck' }]]],
  ['a bodice cut at the arm', ['edge-strip', ['split-along', { from: 'centre', to: 'armhole' }]]],
];

test.each(CHANGED)('%s is drawn all the same', (_, steps) => {
  const dress = dressOf({ steps });
  for (const side of ['front', 'back'] as const)
    expect(sketchDress(dress, side).lines.length).toBeGreaterThan(3);
});

test.each([
  ['at the centre back', 'rounded', []],
  ['at the centre front', 'whole', ['back-zip']],
] as const)('a collar that is opened out %s lies on the dress as before', (_, shape, more) => {
  const collar: NonNullable<Wish['steps']> = [...more, ['flat-collar', { shape }]];
  const opened = dressOf({ steps: [...collar, ['mirror-piece', { piece: 'collar' }]] });
  for (const side of ['front', 'back'] as const)
    expect(sketchDress(opened, side)).toEqual(sketchDress(dressOf({ steps: collar }), side));
});

test('a back that a tuck has widened over the centre is drawn without a cord of no length', () => {
  const tuck: NonNullable<Wish['steps']>[number] = [
    'add-tuck',
    { piece: 'back', from: 'waist', fromShare: 0.41, to: 'neckline', depth: '21 mm' },
  ];
  const dress = dressOf({ steps: ['back-lacing', tuck] });
  for (const { path } of sketchDress(dress, 'back').lines) expect(pathLength(path)).toBeGreaterThan(0);
});
