import { describe, expect, it } from 'vitest';
import { RULERS } from '../../engine/units/index.ts';
import { draggedNumber } from './drag-number.ts';
import { governedAt, governedPlaces } from './governed-places.ts';
import { draggableParams, type ParamRef, paramKey, paramNow, withParam } from './param-now.ts';
import { libraryWish, tableDressOf } from './test-dress.ts';

const ofStep = (step: string, param: string): ParamRef => ({ of: 'step', step, as: null, param });

describe('what a number governs', () => {
  const wish = libraryWish('minnow');

  it('the drop of a drop shoulder takes the top of the outer edge straight down, one for one', () => {
    const governed = governedPlaces(wish, ofStep('drop-shoulder', 'drop'));
    const handle = governed?.handles.find(({ piece }) => piece === 'front');
    expect(handle).toMatchObject({ edge: 'sleeve-edge', middle: false });
    expect(handle?.moves.x).toBeCloseTo(0, 6);
    expect(handle?.moves.y).toBeCloseTo(1, 6);
    expect(new Set(governed?.points.map(({ piece }) => piece))).toEqual(
      new Set(['front', 'back', 'front-lining', 'back-lining']),
    );
  });

  it('the front depth of a neckline is dragged at the centre of the front, and leaves the back alone', () => {
    const governed = governedPlaces(wish, ofStep('neckline', 'frontDrop'));
    expect(governed?.handles).toHaveLength(1);
    expect(governed?.handles[0]?.piece).toBe('front');
    expect(governed?.handles[0]?.moves.y).toBeCloseTo(1, 6);
    expect(governed?.points.some(({ piece }) => piece === 'back')).toBe(false);
  });

  it('a number of the block is found too, and where the dress has no such number there is nothing', () => {
    // Without sleeves the underarm is that of the block; half a front takes a quarter of the ease.
    const chest = governedPlaces(libraryWish('skylark'), { of: 'block', param: 'chestEase' });
    const underarm = chest?.points.find((p) => p.piece === 'front' && p.edge === 'side' && !p.middle);
    expect(underarm?.moves.x).toBeCloseTo(0.25, 2);
    expect(governedPlaces(wish, ofStep('yoke', 'above'))).toBeNull();
    expect(governedPlaces(wish, { of: 'block', param: 'no-such' })).toBeNull();
  });

  it.each(['clover', 'lantern', 'brook', 'heron'])(
    '%s: every handle lies on the drawing and follows its number',
    (id) => {
      const dress = libraryWish(id);
      const { garment } = tableDressOf(dress);
      const refs = draggableParams(dress);
      let handles = 0;
      for (const ref of refs) {
        const governed = governedPlaces(dress, ref);
        for (const { piece: name, edge, middle, moves } of governed?.handles ?? []) {
          handles += 1;
          const piece = garment.pieces.find((p) => p.id === name);
          const at = piece === undefined ? null : governedAt(piece, edge, middle);
          expect(at, paramKey(ref)).not.toBeNull();
          expect(Math.hypot(moves.x, moves.y), paramKey(ref)).toBeGreaterThan(0.19);
        }
      }
      expect(handles).toBeGreaterThan(4);
    },
  );
});

describe('a number as it stands', () => {
  it('comes from the rule where none is given, else as given', () => {
    const wish = libraryWish('clover');
    const ref = ofStep('drop-shoulder', 'drop');
    const ruled = paramNow(wish, ref);
    expect(ruled?.kind).toBe('length');
    expect(paramNow(withParam(wish, ref, 'length', 20), ref)?.value).toBeCloseTo(20, 6);
    expect(ruled?.value).toBeGreaterThan(ruled?.range[0] ?? Number.NaN);
    expect(ruled?.value).toBeLessThan(ruled?.range[1] ?? Number.NaN);
  });
});

describe('dragging a point', () => {
  const wish = libraryWish('minnow');
  const ref = ofStep('drop-shoulder', 'drop');
  const governed = governedPlaces(wish, ref);
  const handle = governed?.handles.find(({ piece }) => piece === 'front');
  if (governed === null || handle === undefined) throw new Error('nothing to drag');
  const { now } = governed;
  const { garment } = tableDressOf(wish);
  const front = garment.pieces.find(({ id }) => id === 'front');
  const at = front === undefined ? null : governedAt(front, handle.edge, handle.middle);
  if (at === null) throw new Error('no point');

  it('gives the number that brings the point there, on her ruler', () => {
    const value = draggedNumber(now, handle, at, { x: at.x + 30, y: at.y + 10.3 }, RULERS.millimetre);
    expect(value).toBe(Math.round(now.value + 10.3));
    const moved = tableDressOf(withParam(wish, ref, 'length', value)).garment.pieces.find(
      (p) => p.id === 'front',
    );
    const there = moved === undefined ? null : governedAt(moved, handle.edge, handle.middle);
    expect(there?.y).toBeCloseTo(at.y + value - now.value, 3);
  });

  it('stays within the range, on the last mark that lies in it', () => {
    const [least, most] = now.range;
    const far = draggedNumber(now, handle, at, { x: at.x, y: at.y + 9999 }, RULERS.eighth);
    expect(far).toBeLessThanOrEqual(most + 1e-6);
    expect(far).toBeGreaterThan(most - RULERS.eighth.step);
    expect(far / RULERS.eighth.step).toBeCloseTo(Math.round(far / RULERS.eighth.step), 6);
    expect(draggedNumber(now, handle, at, { x: at.x, y: at.y - 9999 }, RULERS.eighth)).toBeCloseTo(least, 6);
  });

  it('a range narrower than the marks gives what the range allows', () => {
    const narrow = { ...now, value: 10.3, range: [10.2, 10.4] } as const;
    const value = draggedNumber(narrow, handle, at, { x: at.x, y: at.y + 50 }, RULERS.fiveMillimetres);
    expect(value).toBeCloseTo(10.4, 6);
  });
});
