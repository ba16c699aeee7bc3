import { describe, expect, it } from 'vitest';
import { LIBRARY } from '../../engine/design/index.ts';
import { distance, type Point, pathLength, pathMap } from '../../engine/geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Piece } from '../../engine/piece/index.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { applyTo } from './motion.ts';
import { sewOpen } from './sew-open.ts';
import { cutsOf, libraryDress } from './test-dress.ts';

/** What is meant by lying on each other: far less than a pencil line, mm. */
const NEAR = 0.01;

const IDS = LIBRARY.map(({ id }) => id);

function shell(id: string, joined: 'shoulder' | 'side'): readonly LaidPiece[] {
  const garment = libraryDress(id);
  return sewOpen(garment, cutsOf(garment), joined).find(({ layer }) => layer === 'shell')?.pieces ?? [];
}

function laidWith(
  laid: readonly LaidPiece[],
  half: string,
  edge: string,
  which: string,
): readonly LaidPiece[] {
  return laid.filter(
    ({ key, cut: { piece } }) =>
      key.endsWith(which) &&
      (piece.id === half || piece.id === `${half}-yoke`) &&
      piece.edges.some(({ name }) => name === edge),
  );
}

const on = ({ frame }: LaidPiece, at: Point): Point => applyTo(frame, at);

describe.each(IDS)('%s laid open', (id) => {
  it('joins front and back at the shoulder, end on end', () => {
    const laid = shell(id, 'shoulder');
    for (const which of ['one', 'other']) {
      const [front] = laidWith(laid, 'front', 'shoulder', which);
      const [back] = laidWith(laid, 'back', 'shoulder', which);
      if (front === undefined || back === undefined) throw new Error(`${id} has no shoulder.`);
      const ends = (end: (piece: Piece, edge: string) => Point): number =>
        distance(on(front, end(front.cut.piece, 'shoulder')), on(back, end(back.cut.piece, 'shoulder')));
      expect(ends(edgeStart)).toBeLessThan(NEAR);
      expect(ends(edgeEnd)).toBeLessThan(NEAR);
    }
  });

  it('joins front and back at the side, from the underarm to the waist', () => {
    const laid = shell(id, 'side');
    const fronts = laidWith(laid, 'front', 'side', 'one');
    const backs = laidWith(laid, 'back', 'side', 'one');
    const places = (pieces: readonly LaidPiece[]): readonly Point[] =>
      pieces.flatMap((one) => [
        on(one, edgeStart(one.cut.piece, 'side')),
        on(one, edgeEnd(one.cut.piece, 'side')),
      ]);
    const [a, b] = [places(fronts), places(backs)];
    expect(a.length).toBe(b.length);
    for (const [i, at] of a.entries()) expect(distance(at, b[i] ?? { x: 1e9, y: 0 })).toBeLessThan(NEAR);
  });

  it('stretches no piece of the bodice, and turns back and front to the same side of the cloth', () => {
    for (const joined of ['shoulder', 'side'] as const) {
      for (const { cut, frame, key } of shell(id, joined)) {
        if (cut.piece.id.startsWith('skirt')) continue;
        for (const edge of cut.piece.edges)
          expect(pathLength(pathMap(edge.path, frame))).toBeCloseTo(pathLength(edge.path), 5);
        const mirrored = frame.a * frame.d - frame.b * frame.c < 0;
        if (cut.piece.id.startsWith('front')) expect(mirrored).toBe(key.endsWith('other'));
        if (cut.piece.id.startsWith('back')) expect(mirrored).toBe(key.endsWith('one'));
      }
    }
  });
});

describe('skirts of the sewn view', () => {
  it('a gathered skirt is drawn in to half the waist of the front', () => {
    const garment = libraryDress('minnow');
    const laid = shell('minnow', 'shoulder');
    const skirt = laid.find(({ key }) => key === 'skirt-front one');
    const front = garment.pieces.find((piece) => piece.id === 'front');
    if (skirt === undefined || front === undefined) throw new Error('no skirt');
    const { path } = edgeOf(skirt.cut.piece, 'waist');
    expect(pathLength(pathMap(path, skirt.frame))).toBeCloseTo(pathLength(edgeOf(front, 'waist').path), 3);
  });

  it('a pleated ring hangs as wide as the waist, with an outer fold at each face', () => {
    const garment = libraryDress('marigold');
    const layer = sewOpen(garment, cutsOf(garment), 'shoulder').find((one) => one.layer === 'shell');
    const names = layer?.widths.map(({ key }) => key) ?? [];
    expect(names.filter((key) => key.includes('front'))).toHaveLength(2);
    const seam = garment.seams.find((s) => s.join.kind === 'pleated');
    const join = seam?.join.kind === 'pleated' ? seam.join : null;
    const folds = (layer?.widths ?? []).reduce((sum, width) => sum + width.folds.length, 0);
    // Knife pleats: one fold to each pleat; the ones at the centres and sides coincide with an edge.
    expect(folds).toBeGreaterThanOrEqual((join?.pleats ?? 0) - 3);
    expect(folds).toBeLessThanOrEqual((join?.pleats ?? 0) + 3);
  });

  it('skirts laid open at the side meet there, end on end', () => {
    const laid = shell('lantern', 'side');
    const [front, back] = ['skirt-front one', 'skirt-back one'].map((key) =>
      laid.find((one) => one.key === key),
    );
    if (front === undefined || back === undefined) throw new Error('no skirt');
    for (const end of [edgeStart, edgeEnd])
      expect(
        distance(on(front, end(front.cut.piece, 'side')), on(back, end(back.cut.piece, 'side'))),
      ).toBeLessThan(NEAR);
  });
});
