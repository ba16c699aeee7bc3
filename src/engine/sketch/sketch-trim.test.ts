import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, type Wish } from '../../../tests/dress-of.ts';
import { outlineIsClosed, type Path, pathBounds, pathNearest, pathStart } from '../geometry/index.ts';
import { edgeOf, type Garment } from '../piece/index.ts';
import { type SketchLine, type SketchSide, sketchDress } from './index.ts';

type Steps = NonNullable<Wish['steps']>;

const key = ({ stroke, path }: SketchLine): string => JSON.stringify([stroke, path]);

/** What further steps draw. */
function added(steps: Steps, more: Steps, side: SketchSide): readonly SketchLine[] {
  const before = new Set(sketchDress(dressOf({ steps }), side).lines.map(key));
  return sketchDress(dressOf({ steps: [...steps, ...more] }), side).lines.filter((l) => !before.has(key(l)));
}

const edge = (dress: Garment, piece: string, name: string): Path =>
  edgeOf(pieceNamed(dress, piece), name).path;
const boxes = (lines: readonly SketchLine[]) => lines.map(({ path }) => pathBounds(path));
const highest = (lines: readonly SketchLine[]): number => Math.min(...boxes(lines).map((b) => b.minY));
const lowest = (lines: readonly SketchLine[]): number => Math.max(...boxes(lines).map((b) => b.maxY));
const reach = (lines: readonly SketchLine[]): number => Math.max(...boxes(lines).map((b) => b.maxX));

describe('sketch of trims', () => {
  it('a belt lies on the waist, as wide as it is, from side to side', () => {
    const waist = edge(dressOf({}), 'front', 'waist');
    const belt = added([], [['belt', { beltWidth: '40 mm' }]], 'front');
    const { minY, maxY, maxX } = pathBounds(waist);
    expect(lowest(belt)).toBeCloseTo(maxY, 0);
    expect(highest(belt)).toBeCloseTo(minY - 40, 0);
    expect(Math.abs(reach(belt) - maxX)).toBeLessThan(12);
  });

  it('a sash in the side seams crosses only the side on which it is tied', () => {
    expect(added([], ['sash'], 'front')).toEqual([]);
    expect(added([], ['sash'], 'back').length).toBeGreaterThan(4);
    expect(added([], [['sash', { sewn: 'all-round' }]], 'front').length).toBeGreaterThan(1);
  });

  it('straps run over the shoulders, before and behind', () => {
    for (const side of ['front', 'back'] as const) {
      const shoulder = edge(dressOf({}), side, 'shoulder');
      const straps = added([], ['shoulder-straps'], side).filter(({ path }) => pathStart(path).x > 0);
      expect(straps.length).toBeGreaterThan(0);
      expect(
        Math.min(...straps.map(({ path }) => pathNearest(shoulder, pathStart(path)).distance)),
      ).toBeLessThan(0.5);
    }
  });

  it('a band or cuff goes on from the end of the sleeve by its depth', () => {
    const band = (depth: string) =>
      reach(added(['set-in-sleeve'], [['sleeve-band', { bandDepth: depth }]], 'front'));
    // The arm hangs 40 degrees from the level.
    expect(band('50 mm') - band('20 mm')).toBeCloseTo(30 * Math.cos((40 * Math.PI) / 180), 1);
  });

  it('a ruffle hangs from the hem, lies on the dress at the neck, and stands off at the arm', () => {
    const ruffle = (name: string): Steps => [['ruffle', { edge: name, ruffleDepth: '40 mm' }]];
    const skirt: Steps = ['a-line-skirt'];
    const hem = lowest(sketchDress(dressOf({ steps: skirt }), 'front').lines);
    expect(lowest(added(skirt, ruffle('hem'), 'front')) - hem).toBeCloseTo(40, 0);
    const neck = pathBounds(edge(dressOf({}), 'front', 'neckline'));
    const atNeck = lowest(added([], ruffle('neckline'), 'front'));
    expect(atNeck - neck.maxY).toBeGreaterThan(35);
    expect(atNeck - neck.maxY).toBeLessThan(41);
    const plain = reach(sketchDress(dressOf({}), 'front').lines);
    expect(reach(added([], ruffle('armhole'), 'front'))).toBeGreaterThan(plain + 15);
  });

  it('a bow sits at every place that can be asked for', () => {
    for (const place of ['waist-front', 'chest', 'neck', 'shoulder', 'sleeve', 'skirt'])
      expect(added(['gathered-skirt'], [['sewn-bow', { place }]], 'front').length, place).toBeGreaterThan(3);
    for (const place of ['waist-back', 'nape'])
      expect(added(['gathered-skirt'], [['sewn-bow', { place }]], 'back').length, place).toBeGreaterThan(3);
  });

  it('bows on the sleeves are two, one on each arm; one on the shoulder is on the left of the wearer', () => {
    const bows = added(['set-in-sleeve'], ['sleeve-bow'], 'front');
    expect(bows.filter(({ path }) => pathBounds(path).minX > 0).length).toBeGreaterThan(2);
    expect(bows.filter(({ path }) => pathBounds(path).maxX < 0).length).toBeGreaterThan(2);
    const one = (side: SketchSide) => added([], [['sewn-bow', { place: 'shoulder', bowTail: '0 mm' }]], side);
    expect(boxes(one('front').filter(({ stroke }) => stroke === 'outline')).every((b) => b.maxX > 0)).toBe(
      true,
    );
    expect(Math.min(...boxes(one('back')).map((b) => b.minX))).toBeLessThan(-20);
  });

  it('buttons for show stand in a row under the neck, as many as are covered', () => {
    const circles = added([], [['covered-buttons', { buttonCount: 4 }]], 'front').filter(({ path }) =>
      outlineIsClosed(path),
    );
    expect(circles.length).toBe(4);
    const neck = pathStart(edge(dressOf({}), 'front', 'neckline'));
    for (const { minX, maxX, minY } of boxes(circles)) {
      expect(minX + maxX).toBeCloseTo(0, 6);
      expect(minY).toBeGreaterThan(neck.y);
    }
  });

  it('a rosette is as large as it is rolled', () => {
    const drawn = added(['gathered-skirt'], [['rosette', { rosetteDiameter: '70 mm' }]], 'front').filter(
      ({ path }) => outlineIsClosed(path),
    );
    expect(Math.max(...boxes(drawn).map((b) => b.maxX - b.minX))).toBeCloseTo(70, 3);
  });

  it('a binding runs along neck and arm at its width', () => {
    const dress = dressOf({});
    const line = added([], [['neck-binding', { finishedWidth: '10 mm' }]], 'front').find(
      ({ path }) => pathStart(path).x >= 0,
    );
    if (line === undefined) throw new Error('A binding is drawn.');
    expect(pathNearest(edge(dress, 'front', 'neckline'), pathStart(line.path)).distance).toBeCloseTo(11, 1);
    expect(added([], ['armhole-binding'], 'back').length).toBe(2);
  });
});
