import { produce } from 'immer';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_TEXT } from '../../../../tests/fixtures/example-order.ts';
import type { KeptLay, OrderFile } from '../../../engine/order/index.ts';
import { dropLay, putLay } from './keep-lay.ts';
import { renameChild, renameCloth } from './renamed.ts';
import { layIn, layKey } from './seen-lay.ts';

const place = { piece: 'front', copy: 0, turn: 0, mirrored: false, x: 1, y: 2, pinned: false } as const;
const lay = (child: string | null, names: readonly string[]): KeptLay => ({
  cloth: 'ivory satin',
  child,
  engine: 1,
  seed: 1,
  evaluations: 10,
  lengths: [{ at: null, mark: 'm', places: names.map((name) => ({ ...place, child: name })) }],
});

const order: OrderFile = produce(JSON.parse(EXAMPLE_TEXT) as OrderFile, (file) => {
  putLay(file, lay(null, ['Amina', 'Efua']));
  putLay(file, lay('Amina', ['Amina']));
});

describe('lays go with the names of what lies on them', () => {
  it('of a cloth', () => {
    const after = produce(order, (file) => renameCloth(file, 0, ' cream satin '));
    expect(after.lays?.map(({ cloth }) => cloth)).toEqual(['cream satin', 'cream satin']);
    expect(after.cloths[0]?.name).toBe(' cream satin ');
  });

  it('of a child', () => {
    const after = produce(order, (file) => renameChild(file, 0, 'Amina Bello'));
    expect(layIn(after, layKey({ cloth: 'ivory satin', child: 'Amina Bello' }))).toBeDefined();
    const [party] = after.lays ?? [];
    expect(party?.lengths[0]?.places.map(({ child }) => child)).toEqual(['Amina Bello', 'Efua']);
  });

  it('also where she is called like another, who is told apart by a number on the pieces', () => {
    const after = produce(order, (file) => renameChild(file, 0, 'Efua'));
    const [party] = after.lays ?? [];
    expect(party?.lengths[0]?.places.map(({ child }) => child)).toEqual(['Efua', 'Efua (2)']);
    expect(layIn(after, layKey({ cloth: 'ivory satin', child: 'Efua' }))).toBeDefined();
  });

  const typed = (...names: readonly string[]): OrderFile =>
    names.reduce(
      (file, name) => produce(file, (draft) => renameChild(draft, 0, name)),
      names.reduce((file, name) => produce(file, (draft) => renameCloth(draft, 0, name)), order),
    );

  it.each([
    ['is cleared before the new one is typed', ['', 'C', 'Cream']],
    ['of another stands there for a moment', ['Efua', 'Efua M', 'ivory net', 'IVORY net', 'ivory nets']],
    ['comes back in the end', ['', ' ', 'Efua', 'cotton lawn', 'Ivory']],
  ])('when a name %s', (_, names) => {
    const last = names.at(-1) ?? '';
    const after = typed(...names);
    expect(layIn(after, layKey({ cloth: last, child: null }))).toBeDefined();
    expect(layIn(after, layKey({ cloth: last, child: last }))).toBeDefined();
    const [party] = after.lays ?? [];
    expect(party?.lengths[0]?.places.map(({ child }) => child)).toEqual([last, 'Efua']);
  });

  it('and those of two cloths of one name for a moment are not mixed up', () => {
    const both = produce(order, (file) => putLay(file, { ...lay(null, ['Efua']), cloth: 'ivory net' }));
    const after = ['ivory net', 'ivory net too'].reduce(
      (file, name) => produce(file, (draft) => renameCloth(draft, 0, name)),
      both,
    );
    expect(after.lays?.map(({ cloth }) => cloth)).toEqual(['ivory net too', 'ivory net too', 'ivory net']);
  });
});

describe('a lay in the file', () => {
  it('takes the place of the one before; where little is other, little is changed', () => {
    const [first] = lay('Amina', ['Amina']).lengths;
    if (first === undefined) throw new Error('It has a length.');
    const moved = first.places.map((one) => ({ ...one, x: 50, pinned: true }));
    const after = produce(order, (file) =>
      putLay(file, { ...lay('Amina', ['Amina']), lengths: [{ ...first, places: moved }] }),
    );
    expect(after.lays).toHaveLength(2);
    expect(after.lays?.[0]).toBe(order.lays?.[0]);
    expect(after.lays?.[1]?.lengths[0]?.places[0]).toEqual({
      child: 'Amina',
      piece: 'front',
      copy: 0,
      turn: 0,
      x: 50,
      y: 2,
      pinned: true,
    });
  });

  it('can be taken out, and leaves no empty list', () => {
    const one = produce(order, (file) => dropLay(file, layKey({ cloth: 'ivory satin', child: 'Amina' })));
    expect(one.lays).toHaveLength(1);
    const none = produce(one, (file) => dropLay(file, layKey({ cloth: 'ivory satin', child: null })));
    expect('lays' in none).toBe(false);
  });
});
