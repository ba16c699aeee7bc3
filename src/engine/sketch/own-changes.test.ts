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

/** What the lines of one drawing have that the other has not. */
const more = (steps: NonNullable<Wish['steps']>, than: NonNullable<Wish['steps']>): readonly string[] => {
  const lines = (all: NonNullable<Wish['steps']>) =>
    sketchDress(dressOf({ steps: all }), 'front').lines.map(
      ({ stroke, path }) => `${stroke} ${pathLength(path).toFixed(1)}`,
    );
  const before = lines(than);
  return lines(steps).filter((line) => !before.includes(line));
};

test.each([
  ['collar', 'flat-collar', 'outer', 'neck'],
  ['sleeve', 'set-in-sleeve', 'underarm-front', 'underarm-back'],
  ['belt', 'belt', 'left', 'right'],
  ['strap', 'shoulder-straps', 'left', 'right'],
])('a %s that is cut in two keeps its shape', (piece, step, from, to) => {
  const cut: NonNullable<Wish['steps']> = [step, ['split-along', { piece, from, to }]];
  expect(more(cut, [step])).toEqual([]);
  expect(more([step], cut)).toEqual([]);
});

test.each([
  ['waist', 'hem'],
  ['side', 'centre'],
  ['centre', 'hem'],
])('a skirt that is cut from %s to %s keeps its shape and shows the seam', (from, to) => {
  const skirt: NonNullable<Wish['steps']> = ['a-line-skirt'];
  const cut: NonNullable<Wish['steps']> = [...skirt, ['split-along', { piece: 'skirt-front', from, to }]];
  expect(more(skirt, cut)).toEqual([]);
  const shown = more(cut, skirt);
  expect(shown.length).toBe(2);
  for (const line of shown) expect(line).toMatch(/^seam \d{2,3}\./);
});

test('a part that is cut once more comes together as well', () => {
  const twice: NonNullable<Wish['steps']> = [
    'set-in-sleeve',
    ['split-along', { piece: 'sleeve', from: 'underarm-front', to: 'underarm-back' }],
    ['split-along', { piece: 'sleeve', from: 'own-line', to: 'sleeve-edge' }, 'again'],
  ];
  expect(more(twice, ['set-in-sleeve'])).toEqual([]);
});
