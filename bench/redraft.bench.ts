import { Bench } from 'tinybench';
import { it } from 'vitest';
import { completeBody } from '../src/engine/body/index.ts';
import { checkGarment } from '../src/engine/check/index.ts';
import { makeCutPieces } from '../src/engine/cut/index.ts';
import { designDress } from '../src/engine/design/index.ts';
import type { Garment } from '../src/engine/piece/index.ts';

const STEPS = ['neckline', 'drop-shoulder', 'yoke', 'back-zip', 'pleated-skirt', 'lining'];
const WISH = {
  block: { kind: 'drafted', given: {} },
  steps: STEPS.map((step) => ({ step, given: {} })),
  clothWidth: { main: 1400, yoke: 1400, skirt: 1400, lining: 1400, net: 1400, trim: 1400 },
  units: 'in',
  ruler: null,
} as const;
const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '110', date: '' };

/** One whole lined dress with yoke and pleats, room by room, each time from other measures so that no cache helps. */
it('redraft of one whole lined dress', async () => {
  let turn = 0;
  const body = () => {
    const completed = completeBody({ ageMonths: 60, measured: { chestGirth: 540 + (turn++ % 400) / 10 } });
    if (!completed.ok) throw new Error('The body of the bench must be complete.');
    return completed.body;
  };
  const design = (wearer = body()): Garment => {
    const dress = designDress({ ...WISH, body: wearer });
    if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
    return dress.garment;
  };
  const bounds = { chestEase: [20, 152], waistEase: [20, 100] } as const;
  const whole = () => {
    const wearer = body();
    const garment = design(wearer);
    checkGarment({ garment, body: wearer, bounds });
    makeCutPieces(garment, { label: () => LABEL });
  };
  /** Fresh garments for the rooms that come after the design; paths remember their lengths, so none is used twice. */
  const stock = (count: number) =>
    Array.from({ length: count }, () => {
      const wearer = body();
      return { wearer, garment: design(wearer) };
    });
  const [forCheck, forCut] = [stock(1500), stock(1500)];
  const next = <T>(list: T[]): T => list.pop() ?? (stock(1)[0] as T);

  const bench = new Bench({ time: 3000, warmupTime: 500 });
  bench.add('body', () => void body());
  bench.add('block and design', () => void design());
  bench.add('check', () => {
    const { garment, wearer } = next(forCheck);
    checkGarment({ garment, body: wearer, bounds });
  });
  bench.add('cut', () => void makeCutPieces(next(forCut).garment, { label: () => LABEL }));
  bench.add('whole redraft', whole);
  await bench.run();
  const rows = bench.tasks.map((task) => {
    const { result } = task;
    if (!('latency' in result)) throw new Error(`${task.name} has not run.`);
    return { room: task.name, medianMs: result.latency.p50, p99Ms: result.latency.p99 };
  });
  const total = rows.at(-1)?.medianMs ?? 1;
  console.table(
    rows.map(({ room, medianMs, p99Ms }) => ({
      room,
      'median ms': medianMs.toFixed(3),
      '99 % ms': p99Ms.toFixed(3),
      share: `${((medianMs / total) * 100).toFixed(0)} %`,
    })),
  );
});
