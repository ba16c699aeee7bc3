import { startPacking } from './start-packing.ts';
import type { PackLayout, PackProblem, PackProgress, PackRefusal, PackSettings } from './types.ts';

/** A search that can be worked at bit by bit and given another layout on its way. */
export interface Legs {
  /** Does a little piece of work. False once nothing is left to do. */
  readonly work: () => boolean;
  /** The shortest layout so far, one that was taken over counted. */
  readonly best: () => PackLayout | null;
  /** Trial places so far. */
  readonly evaluations: () => number;
  /** How much of the run is done, 0 to 1, by evaluations or by the clock of the settings. */
  readonly gone: () => number;
  /** Goes on from this layout. */
  readonly takeOver: (layout: PackLayout) => void;
}

export type LegsStart =
  | { readonly ok: true; readonly legs: Legs }
  | { readonly ok: false; readonly refusals: readonly PackRefusal[] };

/** Far enough apart that no two searches of a run, nor their parts, draw the same chance. */
const NEXT_SEED = 7919;

/**
 * A search over several layouts to begin from: taking one over ends the run at hand and starts another from there, for
 * what is left of the evaluations. Repeatable as long as the layouts come at equal counts of evaluations.
 */
export function legsOf(problem: PackProblem, settings: PackSettings): LegsStart {
  let before = 0;
  let now: PackProgress = { evaluations: 0, best: null };
  let taken: PackLayout | null = null;
  let runs = 0;
  const evaluations = (): number => before + now.evaluations;
  const gone = (): number =>
    Math.max(evaluations() / Math.max(1, settings.evaluations), settings.gone?.() ?? 0);
  const begin = (start: PackSettings['start']) =>
    startPacking(problem, {
      seed: settings.seed + NEXT_SEED * runs++,
      evaluations: Math.max(1, settings.evaluations - before),
      gone,
      ...(start === undefined ? {} : { start }),
    });
  const first = begin(settings.start);
  if (!first.ok) return first;
  let { run } = first;
  let ended = false;
  const best = (): PackLayout | null => shorterLayout(taken, now.best);
  return {
    ok: true,
    legs: {
      best,
      evaluations,
      gone,
      work: () => {
        if (ended) return false;
        const { value, done } = run.next();
        now = value;
        ended = done === true;
        return !ended;
      },
      takeOver: (layout) => {
        if (ended) return;
        before = evaluations();
        now = { evaluations: 0, best: null };
        taken = layout;
        const next = begin(layout.places);
        if (!next.ok) throw new Error('A problem that was packed is refused.');
        run = next.run;
      },
    },
  };
}

/** The shorter one; of two as long the first. */
export function shorterLayout(a: PackLayout | null, b: PackLayout | null): PackLayout | null {
  if (a === null || b === null) return a ?? b;
  return b.length < a.length ? b : a;
}
