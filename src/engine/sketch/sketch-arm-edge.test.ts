import { describe, expect, it } from 'vitest';
import { dressOf, type Wish } from '../../../tests/dress-of.ts';
import { boundsUnion, pathBounds } from '../geometry/index.ts';
import { type Sketch, sketchDress } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

const drawn = (steps: Steps): Sketch => sketchDress(dressOf({ steps }), 'front');
const gathers = (steps: Steps): number => drawn(steps).lines.filter((l) => l.stroke === 'gather').length;

/** How far the drawing reaches from the centre. */
function reach(steps: Steps): number {
  const [first, ...rest] = drawn(steps).lines.map((l) => pathBounds(l.path));
  if (first === undefined) throw new Error('A dress is drawn.');
  return rest.reduce(boundsUnion, first).maxX;
}

const STRAIGHT: Steps[number] = ['drop-shoulder', { finish: 'straight' }];

describe('sketch of what is sewn round the arm', () => {
  it('a wing reaches out beyond the sleeveless bodice, a deeper one further', () => {
    const wing = (depth: string) => reach([['flutter-sleeve', { depth }]]);
    expect(wing('60 mm')).toBeGreaterThan(reach([]));
    expect(wing('90 mm') - wing('60 mm')).toBeGreaterThan(15);
  });

  it('a strip stands out from the straight edge; only a longer one is gathered', () => {
    expect(reach([STRAIGHT, 'edge-strip'])).toBeGreaterThan(reach([STRAIGHT]) + 20);
    expect(gathers([STRAIGHT, 'edge-strip'])).toBeGreaterThan(0);
    expect(gathers([STRAIGHT])).toBe(0);
  });

  it('an extension is as long as asked, square to the edge', () => {
    const long = reach([STRAIGHT, ['sleeve-extension', { extension: '150 mm' }]]);
    const short = reach([STRAIGHT, ['sleeve-extension', { extension: '110 mm' }]]);
    expect(long - short).toBeGreaterThan(25);
    expect(long - short).toBeLessThan(45);
  });

  it('gathers are drawn at the end of a sleeve only where the end is gathered', () => {
    expect(gathers([['puff-sleeve', { places: 'top' }]])).toBe(0);
    expect(gathers([['puff-sleeve', { places: 'both' }]])).toBeGreaterThan(0);
    expect(gathers([['bishop-sleeve', { end: 'elastic' }]])).toBeGreaterThan(0);
  });
});
