import { completeBody } from '../../src/engine/body/index.ts';
import { type CutPiece, makeCutPieces } from '../../src/engine/cut/index.ts';
import { type ChosenStep, designDress } from '../../src/engine/design/index.ts';
import {
  type LayCloth,
  type LayPiece,
  placedFaults,
  planLay,
  readLay,
  runLay,
} from '../../src/engine/lay/index.ts';

/**
 * `npm run bench:party -- [seconds] [seeds]`: our own cases, dress pieces in true shape with curves: napped satin, both
 * ways, folded, bias, wide gaps, and a whole party. Prints densities and the time to the first lay; every lay is looked
 * through before it counts.
 */
const [seconds = '10', seeds = '1,2,3'] = process.argv.slice(2);
const limit = Number(seconds);

const STEPS: readonly (readonly ChosenStep[])[] = [
  steps('neckline', 'drop-shoulder', 'back-zip', 'pleated-skirt'),
  steps('neckline', 'set-in-sleeve', 'back-zip', 'circle-skirt'),
  steps('neckline', 'puff-sleeve', 'back-zip', 'a-line-skirt', 'flat-collar'),
  steps('neckline', 'flutter-sleeve', 'back-zip', 'gored-skirt', 'sash'),
];

const SATIN: LayCloth = {
  name: 'satin',
  kind: 'satin',
  usableWidth: 1400,
  shrinkage: 0,
  unit: 'ten-centimetres',
  extra: 0,
  way: 'one-way',
  folding: 'single',
  gap: 5,
};

interface Case {
  readonly name: string;
  readonly cloth: LayCloth;
  readonly pieces: readonly LayPiece[];
}

const CASES: readonly Case[] = [
  { name: 'one girl, nap', cloth: SATIN, pieces: party(1) },
  { name: 'three girls, both ways', cloth: { ...SATIN, way: 'both-ways' }, pieces: party(3) },
  { name: 'three girls, folded', cloth: { ...SATIN, folding: 'lengthwise' }, pieces: party(3) },
  { name: 'three girls, on the bias', cloth: { ...SATIN, way: 'both-ways' }, pieces: onBias(party(3)) },
  { name: 'three girls, gap of 20 mm', cloth: { ...SATIN, gap: 20 }, pieces: party(3) },
  { name: 'a party, nap', cloth: SATIN, pieces: party(9) },
  { name: 'a party, both ways', cloth: { ...SATIN, way: 'both-ways' }, pieces: party(9) },
];

console.log(`${limit} s on one core, median of seeds ${seeds}\n`);
console.log(
  '| lay | pieces | corners in the middle | first lay, s | length then, mm | length, mm | least possible | covered |',
);
console.log('|---|---|---|---|---|---|---|---|');
for (const { name, cloth, pieces } of CASES) {
  const runs = seeds.split(',').map((seed) => timedRun(pieces, cloth, Number(seed)));
  runs.sort((a, b) => a.length - b.length);
  const run = runs[Math.floor(runs.length / 2)];
  if (run === undefined) continue;
  const { count, corners, first, firstLength, length, least, density } = run;
  const covered = (100 * density).toFixed(1);
  console.log(
    `| ${name} | ${count} | ${corners} | ${first.toFixed(2)} | ${firstLength.toFixed(0)} | ${length.toFixed(0)} | ${least.toFixed(0)} | ${covered} % |`,
  );
}

function timedRun(pieces: readonly LayPiece[], cloth: LayCloth, seed: number) {
  const start = performance.now();
  const planned = planLay(pieces, cloth);
  if (!planned.ok) throw new Error(planned.refusals.map(({ key }) => key).join());
  const { plan } = planned;
  const gone = (): number => (performance.now() - start) / (1000 * limit);
  const run = runLay(plan, { seed, evaluations: Number.MAX_SAFE_INTEGER, gone });
  let first = Number.NaN;
  let firstLength = Number.NaN;
  for (;;) {
    const { value, done } = run.next();
    if (value.best !== null && Number.isNaN(first)) {
      first = (performance.now() - start) / 1000;
      firstLength = readLay(plan, value.best).length;
    }
    if (done !== true) continue;
    if (value.best === null || placedFaults(plan, value.best).length > 0) {
      throw new Error('The lay is not valid.');
    }
    const items = plan.stretches.flatMap((stretch) => stretch.items);
    const corners = items
      .map((item) => (item.variants[0]?.posed.corners.length ?? 0) / 2)
      .sort((a, b) => a - b);
    const lay = readLay(plan, value.best);
    return {
      count: items.length,
      corners: corners[Math.floor(corners.length / 2)] ?? 0,
      first,
      firstLength,
      length: lay.length,
      least: plan.leastLength,
      density: lay.density,
    };
  }
}

function steps(...names: readonly string[]): readonly ChosenStep[] {
  return names.map((step) => ({ step, given: {} }));
}

/** So many girls of four to nine years, each in one of the dresses; all pieces but lining and net. */
function party(girls: number): readonly LayPiece[] {
  return Array.from({ length: girls }, (_, i) =>
    piecesOf(STEPS[i % STEPS.length] ?? [], 48 + 8 * i, `Girl ${i + 1}`),
  ).flat();
}

function onBias(pieces: readonly LayPiece[]): readonly LayPiece[] {
  return pieces.map((piece) => ({ ...piece, grain: 'bias' }));
}

function piecesOf(dress: readonly ChosenStep[], ageMonths: number, child: string): readonly LayPiece[] {
  const body = completeBody({ ageMonths, measured: {} });
  if (!body.ok) throw new Error('The body of the bench must be complete.');
  const made = designDress({
    body: body.body,
    block: { kind: 'drafted', given: {} },
    steps: dress,
    clothWidth: { main: 1400, yoke: 1400, skirt: 1400, lining: 1400, net: 1400, trim: 1400 },
    units: 'cm',
    ruler: null,
  });
  if (!made.ok) throw new Error('The dress of the bench must be drawn.');
  const cut: readonly CutPiece[] = makeCutPieces(made.garment, {
    label: () => ({ title: 'Piece', cutting: 'Cut 1', child, size: '', date: '' }),
  });
  return cut
    .filter(({ piece }) => piece.cloth !== 'lining' && piece.cloth !== 'net')
    .map((piece): LayPiece => ({ cut: piece, child, grain: 'lengthwise', garment: child }));
}
