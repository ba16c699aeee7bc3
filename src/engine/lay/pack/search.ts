import { allowedX, allowedY, xAtShare, yAtShare } from './allowed.ts';
import { type PlaceFinder, placeFinder } from './best-place.ts';
import { type Board, boardOf } from './board.ts';
import { type Chance, chance as chanceOf } from './chance.ts';
import { type Field, fieldOf } from './field.ts';
import { type Patience, restore, type Snapshot, separate, snapshotOf } from './separate.ts';
import type { Shape } from './shape.ts';
import { slideLeft } from './slide-left.ts';
import type { PackLayout, PackProblem, PackProgress, PackSettings } from './types.ts';

/** The part of the run that looks for new arrangements; the rest presses the best one together. */
const EXPLORING = 0.8;

/**
 * A run that is long enough begins several times and goes on with the best: how good an arrangement can become is settled
 * early. A beginning takes this many trials and this share of the run at least; no further one begins that would end after
 * the last share. Beginnings of many pieces come out alike: there the time is better spent on one.
 */
const BEGINNING = { trials: 5e6, share: 0.1, last: 0.36, most: 60 };

interface Bench {
  readonly board: Board;
  readonly field: Field;
  readonly find: PlaceFinder;
  readonly chance: Chance;
  readonly gone: () => number;
  /** The best of this beginning. */
  best: Snapshot | null;
  bestLength: number;
  /** How much shorter the next attempt is to be, as a part of the length. */
  step: number;
  /** The best of the beginnings before this one. */
  leader: { readonly best: Snapshot; readonly length: number } | null;
  /** The best in the form in which it is told, made once. */
  told: { readonly of: Snapshot; readonly layout: PackLayout } | null;
}

/** Runs the whole search; yields after every little piece of work. */
export function* search(
  problem: PackProblem,
  shapes: ReadonlyMap<Float64Array, Shape>,
  settings: PackSettings,
): Generator<PackProgress, PackProgress, undefined> {
  const board = boardOf(problem, shapes);
  const field = fieldOf(board);
  const chance = chanceOf(settings.seed);
  let pieces = 0;
  const bench: Bench = {
    board,
    field,
    find: placeFinder(board, field, chance),
    chance,
    // A little piece of work that tries no place counts as one trial: a run always comes to its end.
    gone: () =>
      Math.max((field.evaluations() + pieces) / Math.max(1, settings.evaluations), settings.gone?.() ?? 0),
    best: null,
    bestLength: Number.POSITIVE_INFINITY,
    step: FIRST_SHRINK,
    leader: null,
    told: null,
  };
  const progress = (): PackProgress => ({ evaluations: field.evaluations(), best: layoutOf(bench) });
  firstLayout(bench, problem, settings);
  const least = leastLength(bench);
  yield progress();
  const severalTimes = settings.start === undefined && board.count <= BEGINNING.most;
  for (const _ of severalTimes ? begin(bench, least) : explore(bench, least)) {
    pieces++;
    yield progress();
    if (bench.gone() >= EXPLORING) break;
  }
  follow(bench);
  for (const _ of compress(bench, least)) {
    pieces++;
    yield progress();
    if (bench.gone() >= 1) break;
  }
  return progress();
}

function layoutOf(bench: Bench): PackLayout | null {
  const { board, leader } = bench;
  const behind = leader !== null && leader.length <= bench.bestLength;
  const best = behind ? leader.best : bench.best;
  const length = behind ? leader.length : bench.bestLength;
  if (best === null) return null;
  if (bench.told?.of === best) return bench.told.layout;
  const places = Array.from(best.x, (x, i) => ({
    variant: (best.variant[i] as number) - (board.firstVariant[i] as number),
    x,
    y: best.y[i] as number,
  }));
  const layout = { places, length };
  bench.told = { of: best, layout };
  return layout;
}

/** No layout can be shorter: the area, the longest item, the fixed ones. */
function leastLength({ board, field }: Bench): number {
  let least = board.area / board.width;
  for (let i = 0; i < board.count; i++) {
    if (board.laid[i] === 0) continue;
    if (board.free[i] === 0) {
      least = Math.max(least, (field.x[i] as number) + (board.w[field.variant[i] as number] as number));
      continue;
    }
    let own = Number.POSITIVE_INFINITY;
    for (let k = 0; k < (board.variantCount[i] as number); k++) {
      const g = (board.firstVariant[i] as number) + k;
      own = Math.min(own, (board.fromX[g] as number) + (board.w[g] as number));
    }
    least = Math.max(least, own);
  }
  return least;
}

function rightEdge({ board, field }: Bench): number {
  let edge = 0;
  for (let i = 0; i < board.count; i++) {
    if (board.laid[i] === 0) continue;
    edge = Math.max(edge, (field.x[i] as number) + (board.w[field.variant[i] as number] as number));
  }
  return edge;
}

/** Keeps a valid layout if it is the shortest so far, pushed together once more. */
function keep(bench: Bench): void {
  slideLeft(bench.board, bench.field);
  const length = rightEdge(bench);
  if (length >= bench.bestLength) return;
  bench.best = snapshotOf(bench.field);
  bench.bestLength = length;
}

/** Fixed items go to their places; the others one after the other, in an endless strip: valid, and far from short. */
function firstLayout(bench: Bench, problem: PackProblem, settings: PackSettings): void {
  const { board, field } = bench;
  let x = 0;
  problem.items.forEach(({ fixed }, i) => {
    if (fixed === undefined) return;
    const g = (board.firstVariant[i] as number) + fixed.variant;
    field.put(i, g, fixed.x, fixed.y);
    x = Math.max(x, fixed.x + (board.w[g] as number));
  });
  for (let i = 0; i < board.count; i++) {
    if (board.free[i] === 0) continue;
    const given = settings.start?.[i];
    if (given !== undefined) {
      const g = (board.firstVariant[i] as number) + given.variant;
      field.put(i, g, allowedX(board, g, given.x, board.longest), allowedY(board, g, given.y));
      continue;
    }
    const g = board.firstVariant[i] as number;
    const step = board.stepX[g] as number;
    const from = board.fromX[g] as number;
    let px = Math.max(x, from);
    if (step > 0) px = from + Math.ceil((px - from) / step - 1e-9) * step;
    px = allowedX(board, g, px, board.longest);
    field.put(i, g, px, board.fromY[g] as number);
    x = px + (board.w[g] as number);
  }
  field.refresh();
  if (field.total() === 0) keep(bench);
}

/** Scatters the free items over a strip of this length. */
function scatter({ board, field, chance }: Bench, length: number): void {
  for (let i = 0; i < board.count; i++) {
    if (board.free[i] === 0) continue;
    const g = (board.firstVariant[i] as number) + chance.below(board.variantCount[i] as number);
    field.put(i, g, xAtShare(board, g, chance.next(), length), yAtShare(board, g, chance.next()));
  }
  field.refresh();
}

/** Brings every free item into a strip that is shorter: what lies right of a chance cut slides left. */
function squeeze({ board, field, chance }: Bench, from: number, to: number): void {
  const cut = chance.next() * from;
  for (let i = 0; i < board.count; i++) {
    if (board.free[i] === 0) continue;
    const g = field.variant[i] as number;
    const w = board.w[g] as number;
    const x = field.x[i] as number;
    const slid = x + w / 2 > cut ? x - (from - to) : x;
    field.put(i, g, allowedX(board, g, slid, to), field.y[i] as number);
  }
  field.refresh();
}

/** How tight the first scattered layout is, and how much looser each next try. */
const FIRST_DENSITY = 0.65;
const LOOSER = 0.88;

/** Shrinks, as parts of the length: large ones as long as they come easily, then down to the last one, and stay. */
const FIRST_SHRINK = 0.03;
const EASY_SHRINK = 0.006;
const LAST_SHRINK = 0.001;

const HASTY: Patience = { strikes: 1, sweeps: 15 };
const THOROUGH: Patience = { strikes: 3, sweeps: 60 };
/** Now and then a failure is followed for longer: layouts of exact fits need it, others lose little. */
const DOGGED: Patience = { strikes: 3, sweeps: 200 };
const DOGGED_EACH = 8;

/** Explores from several beginnings, then goes on from the best of them. */
function* begin(bench: Bench, least: number): Generator<void> {
  for (;;) {
    const since = bench.gone();
    const before = bench.field.evaluations();
    for (const _ of explore(bench, least)) {
      yield;
      const trials = bench.field.evaluations() - before;
      if (trials >= BEGINNING.trials && bench.gone() - since >= BEGINNING.share) break;
    }
    if (bench.best === null || bench.bestLength <= least * (1 + 1e-9)) return;
    if (2 * bench.gone() - since > BEGINNING.last) break;
    lead(bench);
    bench.best = null;
    bench.bestLength = Number.POSITIVE_INFINITY;
    bench.step = FIRST_SHRINK;
  }
  follow(bench);
  yield* explore(bench, least);
}

/** What has been found is kept as the leader, if it leads. */
function lead(bench: Bench): void {
  const { best, bestLength: length } = bench;
  if (best !== null && length < (bench.leader?.length ?? Number.POSITIVE_INFINITY))
    bench.leader = { best, length };
}

/** The search goes on with the leader, if one leads. */
function follow(bench: Bench): void {
  const { leader } = bench;
  if (leader === null || leader.length >= bench.bestLength) return;
  bench.best = leader.best;
  bench.bestLength = leader.length;
  bench.step = LAST_SHRINK;
}

function* explore(bench: Bench, least: number): Generator<void> {
  const { board, field, find, chance } = bench;
  if (board.free.every((free) => free === 0)) return;
  for (let density = FIRST_DENSITY; ; density *= LOOSER) {
    const length = Math.min(board.longest, Math.max(least, board.area / board.width / density));
    if (length >= bench.bestLength) break;
    scatter(bench, length);
    const patience = length < board.longest ? HASTY : THOROUGH;
    if (yield* separate(board, field, find, chance, length, patience)) {
      keep(bench);
      break;
    }
  }
  const failures: Snapshot[] = [];
  while (bench.best !== null && bench.bestLength > least * (1 + 1e-9)) {
    yield;
    const { step } = bench;
    const target = Math.max(least, bench.bestLength * (1 - step));
    if (failures.length === 0) {
      restore(field, bench.best);
      squeeze(bench, bench.bestLength, target);
    }
    const dogged = failures.length % DOGGED_EACH === DOGGED_EACH - 1;
    const patience = step > EASY_SHRINK ? HASTY : dogged ? DOGGED : THOROUGH;
    if (yield* separate(board, field, find, chance, target, patience)) {
      keep(bench);
      failures.length = 0;
    } else if (step > LAST_SHRINK) {
      bench.step = Math.max(LAST_SHRINK, step / 2);
      failures.length = 0;
    } else {
      failures.push(snapshotOf(field));
      failures.sort((a, b) => a.loss - b.loss);
      const pick = Math.floor(Math.abs(chance.bell() * 0.25) * failures.length);
      restore(field, failures[Math.min(failures.length - 1, pick)] as Snapshot);
      disturb(bench, target);
    }
  }
}

/** Exchanges two large items of different shape; small ones that end up under them go along. */
function disturb(bench: Bench, length: number): void {
  const { board, field, chance } = bench;
  const large = largeItems(board);
  if (large.length < 2) return;
  for (let tries = 0; tries < 20; tries++) {
    const a = large[chance.below(large.length)] as number;
    const b = large[chance.below(large.length)] as number;
    const ga = field.variant[a] as number;
    const gb = field.variant[b] as number;
    if (board.shapeOf[ga] === board.shapeOf[gb]) continue;
    exchange(bench, a, b, length);
    return;
  }
}

function exchange({ board, field }: Bench, a: number, b: number, length: number): void {
  const centre = (i: number): readonly [number, number] => {
    const g = field.variant[i] as number;
    return [
      (field.x[i] as number) + (board.w[g] as number) / 2,
      (field.y[i] as number) + (board.h[g] as number) / 2,
    ];
  };
  const [ax, ay] = centre(a);
  const [bx, by] = centre(b);
  const moveTo = (i: number, cx: number, cy: number): void => {
    const g = field.variant[i] as number;
    const w = board.w[g] as number;
    const h = board.h[g] as number;
    field.put(i, g, allowedX(board, g, cx - w / 2, length), allowedY(board, g, cy - h / 2));
  };
  const area = (i: number): number =>
    (board.shapes[board.shapeOf[field.variant[i] as number] as number] as { area: number }).area;
  const carried: (readonly [number, number, number])[] = [];
  for (let i = 0; i < board.count; i++) {
    if (i === a || i === b || board.free[i] === 0) continue;
    const [cx, cy] = centre(i);
    const inside = (k: number, kx: number, ky: number): boolean => {
      const g = field.variant[k] as number;
      return (
        area(i) < 0.5 * area(k) &&
        Math.abs(cx - kx) < (board.w[g] as number) / 2 &&
        Math.abs(cy - ky) < (board.h[g] as number) / 2
      );
    };
    // What lies where the larger will land makes room by taking the larger one's old place.
    if (area(a) >= area(b) && inside(a, bx, by)) carried.push([i, cx + ax - bx, cy + ay - by]);
    else if (area(b) > area(a) && inside(b, ax, ay)) carried.push([i, cx + bx - ax, cy + by - ay]);
  }
  moveTo(a, bx, by);
  moveTo(b, ax, ay);
  for (const [i, cx, cy] of carried) moveTo(i, cx, cy);
  field.refresh();
}

function largeItems(board: Board): readonly number[] {
  const hull = (i: number): number =>
    (board.shapes[board.shapeOf[board.firstVariant[i] as number] as number] as { hullArea: number }).hullArea;
  const items = Array.from(board.free, (free, i) => (free === 1 ? i : -1)).filter((i) => i >= 0);
  items.sort((a, b) => hull(b) - hull(a));
  const total = items.reduce((sum, i) => sum + hull(i), 0);
  let sum = 0;
  return items.filter((i) => {
    const before = sum;
    sum += hull(i);
    return before < 0.75 * total;
  });
}

/** Very small shrinks from the best layout; only successes are kept. */
function* compress(bench: Bench, least: number): Generator<void> {
  const { board, field, find, chance } = bench;
  while (bench.gone() < 1 && bench.best !== null && bench.bestLength > least * (1 + 1e-9)) {
    const along = (bench.gone() - EXPLORING) / (1 - EXPLORING);
    const step = 0.0005 + (0.00001 - 0.0005) * Math.max(0, along);
    const target = Math.max(least, bench.bestLength * (1 - step));
    restore(field, bench.best);
    squeeze(bench, bench.bestLength, target);
    if (yield* separate(board, field, find, chance, target, { strikes: 5, sweeps: 40 })) keep(bench);
    yield;
  }
}
