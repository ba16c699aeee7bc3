import { describe, expect, test } from 'vitest';
import { layoutFaults, type PackItem, type PackProblem, type PackProgress, startPacking } from './index.ts';
import { type HelperLink, helpingSearch, type LegReport, packWithHelp } from './two-searches.ts';

/** An L and a wedge, so many of each. */
function jumble(count: number): PackProblem {
  const l = new Float64Array([0, 0, 50, 0, 50, 18, 20, 18, 20, 60, 0, 60]);
  const wedge = new Float64Array([0, 0, 44, 8, 30, 40, 6, 52]);
  const turned = (o: Float64Array): Float64Array => o.map((v) => -v);
  const item = (o: Float64Array): PackItem => ({ variants: [{ outline: o }, { outline: turned(o) }] });
  return { width: 150, items: Array.from({ length: count }, (_, i) => item(i % 2 === 0 ? l : wedge)) };
}

/** Both searches in one thread: the helper does `pace` pieces of work to each one of the leading search. */
function together(problem: PackProblem, evaluations: number, pace: number, seed = 3) {
  const helper = helpingSearch();
  const arrived: LegReport[] = [];
  let taken = 0;
  const link: HelperLink = {
    // As between threads, nothing is shared.
    send: (request) => helper.ask(structuredClone(request)),
    take: (job) => {
      const at = arrived.findIndex((report) => report.job === job);
      if (at < 0) return undefined;
      taken++;
      return arrived.splice(at, 1)[0];
    },
  };
  const { pack, waiting } = packWithHelp(link);
  const start = pack(problem, { seed, evaluations });
  if (!start.ok) throw new Error('It can be packed.');
  let owed = 0;
  let waits = 0;
  for (;;) {
    const { value, done } = start.run.next();
    if (done === true) return { value, taken, waits, left: helper.busy() };
    if (waiting()) waits++;
    for (owed += waiting() ? 1 : pace; owed >= 1; owed--) {
      if (!helper.busy()) continue;
      const report = helper.work();
      if (report !== null) arrived.push(report);
    }
  }
}

function alone(problem: PackProblem, evaluations: number, seed = 3): PackProgress {
  const start = startPacking(problem, { seed, evaluations });
  if (!start.ok) throw new Error('It can be packed.');
  for (;;) {
    const { value, done } = start.run.next();
    if (done === true) return value;
  }
}

describe('two searches', () => {
  const problem = jumble(18);

  test('give the same layout whichever thread is faster, and wait for each other', () => {
    const even = together(problem, 450_000, 1);
    const slowHelper = together(problem, 450_000, 0.3);
    const fastHelper = together(problem, 450_000, 3);
    expect(even.taken).toBeGreaterThanOrEqual(2);
    expect(slowHelper.waits).toBeGreaterThan(0);
    expect(slowHelper.value).toEqual(even.value);
    expect(fastHelper.value).toEqual(even.value);
    expect(even.left).toBe(false);
    if (even.value.best === null) throw new Error('There is a layout.');
    expect(layoutFaults(problem, even.value.best.places)).toEqual([]);
  });

  test('tell what is as short as either search alone had found by their first meeting', () => {
    for (const seed of [1, 2, 3]) {
      const both = together(problem, 420_000, 1, seed);
      expect(both.value.best?.length).toBeLessThanOrEqual(alone(problem, 200_000, seed).best?.length ?? 0);
    }
  });

  test('a short run does without help, and one that is broken off leaves the helper idle', () => {
    expect(together(problem, 10_000, 1).taken).toBe(0);
    expect(together(problem, 10_000, 1).value.best).toEqual(alone(problem, 10_000).best);
    const helper = helpingSearch();
    const { pack } = packWithHelp({ send: helper.ask, take: () => undefined });
    const start = pack(problem, { seed: 1, evaluations: 1e9 });
    if (!start.ok) throw new Error('It can be packed.');
    for (let i = 0; !helper.busy(); i++) {
      expect(i).toBeLessThan(100_000);
      start.run.next();
    }
    start.run.return?.();
    while (helper.busy()) helper.work();
    expect(helper.busy()).toBe(false);
  });

  test('a clock that runs out while a report is on its way ends the search: no more is asked for', () => {
    const asked: string[] = [];
    let legs = 0;
    let looks = 0;
    const { pack } = packWithHelp({
      send: ({ kind }) => {
        asked.push(kind);
        if (kind === 'leg') legs++;
      },
      // Comes at the second look, and only for the first leg.
      take: (job) => (++looks === 2 && legs === 1 ? { job, best: null } : undefined),
    });
    const start = pack(problem, { seed: 1, evaluations: 1e9, gone: () => (looks > 0 ? 1 : 0) });
    if (!start.ok) throw new Error('It can be packed.');
    for (let i = 0; start.run.next().done !== true; i++) expect(i).toBeLessThan(100_000);
    expect(asked).toEqual(['begin', 'leg', 'end']);
  });

  test('refuses what one search refuses', () => {
    const { pack } = packWithHelp({ send: () => {}, take: () => undefined });
    expect(pack({ ...problem, width: 10 }, { seed: 1, evaluations: 1000 }).ok).toBe(false);
  });
});
