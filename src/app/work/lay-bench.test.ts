import { describe, expect, it } from 'vitest';
import { EXAMPLE_TEXT } from '../../../tests/fixtures/example-order.ts';
import type { OrderFile } from '../../engine/order/index.ts';
import { createLayBench } from './lay-bench.ts';
import type { ClothLaid, LayGrounds } from './lay-wish.ts';

const grounds = (of: LayGrounds['of']): LayGrounds => ({
  file: JSON.parse(EXAMPLE_TEXT) as OrderFile,
  today: '2027-04-24',
  of,
});

/** A bench whose clock runs on by a whole second whenever it is looked at, so that it listens after every step. */
function benchThatListens() {
  let now = 0;
  return createLayBench(
    () => {
      now += 1000;
      return now;
    },
    () => new Promise((done) => setTimeout(done, 0)),
    () => null,
  );
}

const length = ({ lengths }: ClothLaid): number =>
  lengths.reduce((sum, { placed }) => sum + (placed.at(-1)?.length ?? 0), 0);

describe('a look at all lays', () => {
  it('tells each cloth before any is searched for, and again when it is no longer than before', async () => {
    const told: ClothLaid[] = [];
    const look = await benchThatListens().look(grounds(0), (one) => told.push(one));
    if (look?.ok !== true) throw new Error('The example can be laid.');
    const names = look.laid.map(({ cloth }) => cloth.name);
    expect(names.length).toBeGreaterThan(1);
    expect(told.map(({ cloth }) => cloth.name)).toEqual([...names, ...names]);
    for (const [i, last] of look.laid.entries()) {
      const first = told[i];
      if (first === undefined) throw new Error('It was told.');
      expect(length(last)).toBeLessThanOrEqual(length(first) + 1e-6);
      expect(last.lengths.flatMap(({ placed }) => placed.flatMap(({ places }) => places))).toHaveLength(
        first.lengths.flatMap(({ placed }) => placed.flatMap(({ places }) => places)).length,
      );
    }
  });

  it('ends when another is asked for', async () => {
    const bench = benchThatListens();
    const first = bench.look(grounds(0), () => {});
    const second = bench.look(grounds(0), () => {});
    expect(await first).toBeNull();
    expect((await second)?.ok).toBe(true);
  });

  it('rests while a search is under way', async () => {
    const bench = benchThatListens();
    const order: string[] = [];
    const look = bench.look(grounds(0), () => {}).then(() => order.push('look'));
    const wish = {
      ...grounds(0),
      cloth: 'ivory satin',
      child: 'Amina',
      seed: 1,
      until: { evaluations: 300 },
    };
    const search = bench.search(wish, () => {}).then(() => order.push('search'));
    await Promise.all([look, search]);
    expect(order).toEqual(['search', 'look']);
  });
});
