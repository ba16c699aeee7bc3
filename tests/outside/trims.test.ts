import { describe, expect, it } from 'vitest';
import { makeCutPieces } from '../../src/engine/cut/index.ts';
import { pathBounds, pathEnd, pathStart } from '../../src/engine/geometry/index.ts';
import { edgeLength, edgeStart } from '../../src/engine/piece/index.ts';
import { inches } from '../../src/engine/units/index.ts';
import { dressOf, pieceNamed } from '../dress-of.ts';

const LABEL = { title: '', cutting: '', child: '', size: '', date: '' };

describe('sash, folded once (published teaching page)', () => {
  it('finished 3 in with 1/2 in seams is cut 7 in wide', () => {
    const dress = dressOf({ steps: [['sash', { sashWidth: '3 in', ends: 'straight' }]] });
    const own = { table: { free: inches(1 / 2), attach: inches(1 / 2) } };
    const cut = makeCutPieces(dress, { label: () => LABEL, own }).find(({ piece }) => piece.id === 'sash');
    if (cut === undefined) throw new Error('The sash must be cut.');
    const { minY, maxY } = pathBounds(cut.cuttingLine);
    // The fold is the upper edge, so the cloth opens out to twice what is drawn.
    expect(2 * (maxY - minY)).toBeCloseTo(inches(7), 6);
  });
});

describe('tied bow', () => {
  it('span 8 in, tails 10 in, knot 3 in: a strip of 39 in', () => {
    // Each loop is half the span and lies double: 2 x 8 + 2 x 10 + 3. A web page of August 2012 counts the span
    // once and prints 31, which leaves the loops single.
    const given = { bowSpan: '8 in', bowTail: '10 in', bowKnot: '3 in', ends: 'straight' };
    const dress = dressOf({ steps: [['tied-bow', given]] });
    expect(edgeLength(pieceNamed(dress, 'tied-bow'), 'upper')).toBeCloseTo(inches(39), 6);
  });
});

/** The first buttonhole of a buttoned back: its length, both sides of the centre line, and its way from the neck. */
function firstHole(given: Readonly<Record<string, string>>) {
  const dress = dressOf({ steps: [['back-buttons', given]] });
  const back = pieceNamed(dress, 'back');
  const hole = back.markings.find(({ kind }) => kind === 'buttonhole')?.path;
  const { closing } = dress;
  if (hole === undefined || closing?.kind !== 'buttons') throw new Error('The back must be buttoned.');
  const [outer, inner] = [pathStart(hole), pathEnd(hole)];
  return {
    length: inner.x - outer.x,
    beyond: -outer.x,
    within: inner.x,
    fromNeck: outer.y - edgeStart(back, 'neckline').y,
    stand: closing.stand,
    told: closing.holeLength,
  };
}

describe('buttonholes', () => {
  it('flat button of 1 in, 1/4 in thick: 1 1/4 in, of it 1/8 beyond the centre line (published lesson)', () => {
    const hole = firstHole({ diameter: '1 in', thickness: '1/4 in', hole: 'thickness' });
    expect(hole.length).toBeCloseTo(inches(1.25), 6);
    expect(hole.told).toBeCloseTo(inches(1.25), 6);
    expect(hole.beyond).toBeCloseTo(inches(1 / 8), 6);
    expect(hole.within).toBeCloseTo(inches(1 + 1 / 8), 6);
  });

  it('button of 12 mm and 3 mm: hole 15, stand 12, first hole 18 from the neck (teaching page, computed)', () => {
    const hole = firstHole({ diameter: '12 mm', hole: 'three-mm', stand: 'diameter' });
    expect(hole.length).toBeCloseTo(15, 6);
    expect(hole.stand).toBeCloseTo(12, 6);
    expect(hole.fromNeck).toBeCloseTo(18, 6);
  });
});

describe('covered buttons', () => {
  it('a disc is cut twice as wide as its button, nothing added (common practice, no source)', () => {
    const dress = dressOf({ steps: [['covered-buttons', { diameter: '14 mm' }]] });
    const cut = makeCutPieces(dress, { label: () => LABEL }).find(({ piece }) => piece.id === 'button-cover');
    if (cut === undefined) throw new Error('The cover must be cut.');
    const { minX, maxX, minY, maxY } = pathBounds(cut.cuttingLine);
    expect(maxX - minX).toBeCloseTo(28, 3);
    expect(maxY - minY).toBeCloseTo(28, 3);
  });
});
