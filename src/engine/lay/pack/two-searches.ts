import { type Legs, legsOf, shorterLayout } from './legs.ts';
import type { startPacking } from './start-packing.ts';
import type { PackLayout, PackProblem, PackProgress, PackSettings } from './types.ts';

/**
 * Two searches of one problem with chances of their own, in two threads. Every so many evaluations they meet, and one
 * that is behind goes on from the layout of the other. Each waits for the other there, so equal seeds and evaluations
 * give equal layouts, however fast either thread is. Nothing here knows of threads: the leading search asks by `LegRequest`
 * and the helping one answers by `LegReport`, both plain data; whoever uses them carries them to and fro.
 */
export type LegRequest =
  | {
      readonly kind: 'begin';
      readonly job: number;
      readonly problem: PackProblem;
      readonly settings: Pick<PackSettings, 'seed' | 'evaluations' | 'start'>;
    }
  | {
      readonly kind: 'leg';
      readonly job: number;
      /** Work until so many evaluations, counted from the beginning of the job. */
      readonly until: number;
      /** How much of the run a clock says is gone now, and will be at the end of the leg; both 0 without a clock. */
      readonly gone: number;
      readonly goneThen: number;
      /** Go on from this layout; null: from your own. */
      readonly from: PackLayout | null;
    }
  /** Stop now and report; the job will not be asked for again. */
  | { readonly kind: 'end'; readonly job: number };

export interface LegReport {
  readonly job: number;
  readonly best: PackLayout | null;
}

/** The way to the helping search and back. */
export interface HelperLink {
  readonly send: (request: LegRequest) => void;
  /** A report of this job that has come and was not taken yet. */
  readonly take: (job: number) => LegReport | undefined;
}

/** Trial places before the helper is asked: a run that ends earlier is not worth its while. */
const ALONE = 20_000;
/** Trial places between two meetings: about a second of a lay of many pieces. */
const LEG = 200_000;
/** Whose layout is longer by more than this part takes over the other's; if they are close both go on, for variety. */
const BEHIND = 0.005;
/** From here a search only presses its layout together, so that both had better begin from the shorter one. */
const PRESSING = 0.8;
const HELPER_SEED = 104_729;

/**
 * Packs as `startPacking` does, with the help of another search. A step that leaves `waiting` true waits for a report:
 * give the link time to get it before the next step. The helper makes as many evaluations again.
 */
export function packWithHelp(link: HelperLink): {
  readonly pack: typeof startPacking;
  readonly waiting: () => boolean;
} {
  let jobs = 0;
  let waiting = false;
  const lead = function* (problem: PackProblem, settings: PackSettings, legs: Legs) {
    let helped: PackLayout | null = null;
    const told = (): PackProgress => ({
      evaluations: legs.evaluations(),
      best: shorterLayout(legs.best(), helped),
    });
    let working = true;
    while (working && legs.evaluations() < ALONE) {
      working = legs.work();
      yield told();
    }
    if (!working) return told();
    const job = jobs++;
    const { seed, evaluations, start } = settings;
    const given = start === undefined ? {} : { start };
    link.send({
      kind: 'begin',
      job,
      problem,
      settings: { seed: seed + HELPER_SEED, evaluations: Math.max(1, evaluations - ALONE), ...given },
    });
    let from: PackLayout | null = null;
    let clock = 0;
    let ended = false;
    try {
      for (let until = LEG; working && !ended; until += LEG) {
        const gone = settings.gone?.() ?? 0;
        link.send({ kind: 'leg', job, until, gone, goneThen: Math.min(0.999, 2 * gone - clock), from });
        clock = gone;
        while (working && legs.evaluations() < ALONE + until) {
          working = legs.work();
          yield told();
        }
        for (;;) {
          // What ends by its count is waited for, so that all comes out the same again; a clock ends the helper too.
          if (!ended && (settings.gone?.() ?? 0) >= 1) {
            ended = true;
            link.send({ kind: 'end', job });
          }
          const report = link.take(job);
          waiting = report === undefined;
          if (report !== undefined) {
            helped = shorterLayout(helped, report.best);
            break;
          }
          yield told();
        }
        const own = legs.best();
        from = isBehind(helped, own, legs.gone()) ? own : null;
        if (helped !== null && isBehind(own, helped, legs.gone())) legs.takeOver(helped);
      }
    } finally {
      waiting = false;
      if (!ended) link.send({ kind: 'end', job });
    }
    return told();
  };
  return {
    waiting: () => waiting,
    pack: (problem, settings) => {
      const begun = legsOf(problem, settings);
      return begun.ok ? { ok: true, run: lead(problem, settings, begun.legs) } : begun;
    },
  };
}

function isBehind(own: PackLayout | null, other: PackLayout | null, gone: number): boolean {
  if (other === null || own === null) return own === null && other !== null;
  return own.length > other.length * (gone < PRESSING ? 1 + BEHIND : 1);
}

/** The helping side: give it every request, in order, and let it work while `busy`. */
export interface Helper {
  readonly ask: (request: LegRequest) => void;
  readonly busy: () => boolean;
  /** A little piece of work; what is ready to be sent back. */
  readonly work: () => LegReport | null;
}

interface Job {
  readonly legs: Legs;
  leg: Extract<LegRequest, { kind: 'leg' }> | null;
  began: number;
}

export function helpingSearch(): Helper {
  const jobs = new Map<number, Job>();
  const reports: LegReport[] = [];
  const begin = (problem: PackProblem, settings: PackSettings): Job | null => {
    let job: Job | null = null;
    const gone = (): number => (job === null ? 0 : goneOf(job));
    const begun = legsOf(problem, { ...settings, gone });
    if (!begun.ok) return null;
    job = { legs: begun.legs, leg: null, began: 0 };
    return job;
  };
  return {
    ask: (request) => {
      if (request.kind === 'begin') {
        const job = begin(request.problem, request.settings);
        if (job !== null) jobs.set(request.job, job);
        return;
      }
      const job = jobs.get(request.job);
      if (request.kind === 'end') {
        if (job?.leg != null) reports.push({ job: request.job, best: job.legs.best() });
        jobs.delete(request.job);
      } else if (job !== undefined) {
        if (request.from !== null) job.legs.takeOver(request.from);
        job.leg = request;
        job.began = job.legs.evaluations();
      }
    },
    busy: () => reports.length > 0 || [...jobs.values()].some(({ leg }) => leg !== null),
    work: () => {
      const ready = reports.shift();
      if (ready !== undefined) return ready;
      for (const [number, job] of jobs) {
        if (job.leg === null) continue;
        if (job.legs.work() && job.legs.evaluations() < job.leg.until) return null;
        job.leg = null;
        return { job: number, best: job.legs.best() };
      }
      return null;
    },
  };
}

/** Between what the clock said when the leg began and what it is expected to say at its end, by evaluations. */
function goneOf({ leg, began, legs }: Job): number {
  if (leg === null || leg.until <= began) return leg?.goneThen ?? 0;
  const along = (legs.evaluations() - began) / (leg.until - began);
  return leg.gone + (leg.goneThen - leg.gone) * Math.min(1, along);
}
