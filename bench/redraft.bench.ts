import { Bench } from 'tinybench';
import { it } from 'vitest';
import { completeBody } from '../src/engine/body/index.ts';
import { checkGarment } from '../src/engine/check/index.ts';
import { makeCutPieces } from '../src/engine/cut/index.ts';
import { type ChosenStep, designDress } from '../src/engine/design/index.ts';
import type { Garment } from '../src/engine/piece/index.ts';

type Given = ChosenStep['given'];
const steps = (...list: readonly (string | [string, Given])[]): readonly ChosenStep[] =>
  list.map((s) => (typeof s === 'string' ? { step: s, given: {} } : { step: s[0], given: s[1] }));

/** A lined dress with yoke and pleats, and the heaviest that the steps can make. */
const DRESSES = {
  'lined, yoke, pleats': steps('neckline', 'drop-shoulder', 'yoke', 'back-zip', 'pleated-skirt', 'lining'),
  'heaviest: tiers, net, puff, collar': steps(
    'neckline',
    'back-zip',
    ['puff-sleeve', { places: 'both' }],
    ['tiered-skirt', { tiers: 3 }],
    'net-overskirt',
    'lining',
    'flat-collar',
  ),
} as const;

const WISH = {
  block: { kind: 'drafted', given: {} },
  clothWidth: { main: 1400, yoke: 1400, skirt: 1400, lining: 1400, net: 1400, trim: 1400 },
  units: 'in',
  ruler: null,
} as const;
const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '110', date: '' };
const BOUNDS = { chestEase: [20, 152], waistEase: [20, 100] } as const;

let turn = 0;
/** Each time another body, so that no cache of lengths helps. */
const nextBody = (ageMonths = 60) => {
  const completed = completeBody({ ageMonths: ageMonths + (turn++ % 400) / 400, measured: {} });
  if (!completed.ok) throw new Error('The body of the bench must be complete.');
  return completed.body;
};

const design = (chosen: readonly ChosenStep[], body = nextBody()): Garment => {
  const dress = designDress({ ...WISH, steps: chosen, body });
  if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
  return dress.garment;
};

const redraft = (chosen: readonly ChosenStep[], ageMonths?: number): void => {
  const body = nextBody(ageMonths);
  const garment = design(chosen, body);
  checkGarment({ garment, body, bounds: BOUNDS });
  makeCutPieces(garment, { label: () => LABEL });
};

for (const [name, chosen] of Object.entries(DRESSES)) {
  it(`redraft, room by room: ${name}`, async () => {
    /** Fresh garments for the rooms after the design: paths remember their lengths, so none is used twice. */
    const stock = Array.from({ length: 1200 }, () => {
      const body = nextBody();
      return { body, garment: design(chosen, body) };
    });
    const next = () => stock.pop() ?? { body: nextBody(), garment: design(chosen) };
    const bench = new Bench({ time: 2500, warmupTime: 500 });
    bench.add('body', () => void nextBody());
    bench.add('block and design', () => void design(chosen));
    bench.add('check', () => {
      const { garment, body } = next();
      checkGarment({ garment, body, bounds: BOUNDS });
    });
    bench.add('cut', () => void makeCutPieces(next().garment, { label: () => LABEL }));
    bench.add('whole redraft', () => redraft(chosen));
    bench.add('ten sizes', () => {
      for (let size = 0; size < 10; size++) redraft(chosen, 24 + size * 12);
    });
    await bench.run();
    const rows = bench.tasks.map(({ name: room, result }) => {
      if (!('latency' in result)) throw new Error(`${room} has not run.`);
      return { room, medianMs: result.latency.p50, p99Ms: result.latency.p99 };
    });
    const whole = rows.find(({ room }) => room === 'whole redraft')?.medianMs ?? 1;
    console.table(
      rows.map(({ room, medianMs, p99Ms }) => ({
        room,
        'median ms': medianMs.toFixed(3),
        '99 % ms': p99Ms.toFixed(3),
        'of a redraft': `${((medianMs / whole) * 100).toFixed(0)} %`,
      })),
    );
  });
}
