import { layoutFaults, startPacking } from '../../src/engine/lay/pack/index.ts';
import { GARMENTS, type Instance, knownDensities, OTHERS, readInstance } from './instances.ts';

/**
 * `npm run bench:lay -- [seconds] [seeds] [instances]`: densities on the open instances, one core, medians over the
 * seeds, beside the records. Prints a table; every layout is looked through by the judge before it counts.
 */
const [seconds = '10', seeds = '1,2,3,4,5', names = [...GARMENTS, ...OTHERS].join(',')] =
  process.argv.slice(2);
const limit = Number(seconds);
const gaps: number[] = [];

console.log(`${limit} s on one core, median of seeds ${seeds}; per cent of the strip that is covered\n`);
console.log(
  '| instance | ours | least to most | record | gap | 2013 average | thousand trials a second | first layout, s |',
);
console.log('|---|---|---|---|---|---|---|---|');
for (const name of names.split(',')) {
  const instance = readInstance(name);
  const runs = seeds.split(',').map((seed) => timedRun(instance, Number(seed)));
  const sorted = runs.map(({ density }) => density).sort((a, b) => a - b);
  const ours = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const { record, cuckoo } = knownDensities(name);
  if ((GARMENTS as readonly string[]).includes(name)) gaps.push(record - ours);
  const span = `${sorted[0]?.toFixed(2)} to ${sorted.at(-1)?.toFixed(2)}`;
  const rate = Math.round(Math.min(...runs.map((run) => run.rate)) / 1000);
  const first = Math.max(...runs.map((run) => run.first)).toFixed(3);
  console.log(
    `| ${instance.name} | ${ours.toFixed(2)} | ${span} | ${record} | ${(record - ours).toFixed(2)} | ${cuckoo} | ${rate} | ${first} |`,
  );
}
if (gaps.length > 0) {
  const mean = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
  console.log(`\nMean gap to the record over ${gaps.length} garment instances: ${mean.toFixed(2)} points`);
}

function timedRun({ name, problem, area }: Instance, seed: number) {
  const start = performance.now();
  const gone = (): number => (performance.now() - start) / (1000 * limit);
  const packing = startPacking(problem, { seed, evaluations: Number.MAX_SAFE_INTEGER, gone });
  if (!packing.ok) throw new Error(`${name} was refused.`);
  let first = Number.NaN;
  for (;;) {
    const { value, done } = packing.run.next();
    if (value.best !== null && Number.isNaN(first)) first = (performance.now() - start) / 1000;
    if (done !== true) continue;
    if (value.best === null || layoutFaults(problem, value.best.places).length > 0) {
      throw new Error(`${name}, seed ${seed}: the layout is not valid.`);
    }
    return {
      density: (100 * area) / (problem.width * value.best.length),
      rate: value.evaluations / ((performance.now() - start) / 1000),
      first,
    };
  }
}
