import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { RULERS } from '../../engine/units/index.ts';
import { DraftingTable, type DraftingTableProps } from './drafting-table.tsx';
import { FIRST_LOOK, TABLE_VIEWS } from './table-types.ts';
import { libraryWish, tableDressOf } from './test-dress.ts';

const dress = tableDressOf(libraryWish('clover'));
const draw = (props: Partial<DraftingTableProps> = {}): string =>
  renderToStaticMarkup(
    createElement(DraftingTable, {
      dress,
      others: [],
      units: 'cm',
      ruler: RULERS.millimetre,
      look: FIRST_LOOK,
      onLook: () => {},
      picked: null,
      onPick: () => {},
      ...props,
    }),
  );
const count = (text: string, part: RegExp): number => text.match(part)?.length ?? 0;

describe('the table as markup', () => {
  it('draws every piece with its cutting line, stitching, grain, and a bracket at a fold', () => {
    const drawn = draw();
    const folds = dress.pieces.filter(({ piece }) => piece.edges.some(({ kind }) => kind === 'fold'));
    expect(count(drawn, /data-piece=/g)).toBe(dress.pieces.length);
    expect(count(drawn, /class="t-cutting"/g)).toBe(dress.pieces.length);
    expect(count(drawn, /class="t-stitching"/g)).toBe(dress.pieces.length);
    expect(count(drawn, /class="t-grain"/g)).toBe(dress.pieces.length);
    expect(count(drawn, /class="t-bracket"/g)).toBe(folds.length);
    expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('hides what is not to be shown', () => {
    const shown = { ...FIRST_LOOK.shown, allowances: false, lining: false, measures: false, names: false };
    const drawn = draw({ look: { ...FIRST_LOOK, shown } });
    expect(drawn).not.toContain('class="t-cutting"');
    expect(drawn).not.toContain('data-piece="front-lining"');
    expect(drawn).not.toContain('class="t-measure"');
    expect(drawn).not.toContain('class="t-name"');
  });

  it.each(TABLE_VIEWS)('draws the view %s without a number that is none', (view) => {
    const drawn = draw({ look: { ...FIRST_LOOK, view }, others: [{ name: 'Bola', garment: dress.garment }] });
    expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
    expect(count(drawn, /<path/g)).toBeGreaterThan(view === 'drafting' ? 1 : 3);
  });

  it('reads an edge: its length, its piece, what it is sewn to', () => {
    const drawn = draw({ picked: { kind: 'edge', piece: 'front', edge: 'side' } });
    expect(drawn).toContain('class="t-picked"');
    expect(drawn).toContain('class="t-partner"');
    expect(drawn).toMatch(/Sewn to Back yoke: Side, Back: Side, sewn flat/);
  });

  it('lifts layers off, from the outside', () => {
    const sewn = { ...FIRST_LOOK, view: 'sewn' } as const;
    expect(draw({ look: sewn })).toContain('t-layer-shell');
    const lifted = draw({ look: { ...sewn, lifted: 1 } });
    expect(lifted).not.toContain('t-layer-shell');
    expect(lifted).toContain('t-layer-lining');
    expect(lifted).toContain('Put back: dress');
  });

  it('marks what does not fit, and says so where nothing can be drawn', () => {
    const marks = [
      { id: 'a', level: 'stop', where: { pieces: ['front'], edges: [{ piece: 'front', edge: 'side' }] } },
    ] as const;
    expect(draw({ marks })).toContain('data-mark="a"');
    expect(draw({ dress: null })).toContain('once it can be drawn');
  });
});
