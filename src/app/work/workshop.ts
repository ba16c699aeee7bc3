import { type Remote, wrap } from 'comlink';

/** How a piece of long work ended. A refusal of the engine is a value of the work, not a failure. */
export type WorkEnd<T> =
  | { readonly ok: true; readonly value: T }
  /** Broken off. */
  | { readonly ok: false; readonly code: 'stopped' }
  /** The worker broke down, or could not be started. */
  | { readonly ok: false; readonly code: 'failed'; readonly why: string };

/**
 * One worker beside the page, in which long work is done while the page stays free. It is started when there is
 * something to do, kept for the next piece of work, and can be ended at any moment.
 */
export interface Workshop<Api> {
  /** Asks the worker for something; never throws. Progress is told through functions wrapped in comlink's `proxy`. */
  begin<T>(run: (api: Remote<Api>) => Promise<T>): Promise<WorkEnd<T>>;
  /** Ends the worker at once. All that was begun ends as stopped; the next `begin` starts another one. */
  stop(): void;
}

interface Running<Api> {
  readonly worker: Worker;
  readonly api: Remote<Api>;
  /** Told to each piece of work that is still under way. */
  readonly waiting: Set<(end: Extract<WorkEnd<never>, { ok: false }>) => void>;
}

/** `start` makes the worker; it must hold the literal `new Worker(new URL(...), { type: 'module' })` for the build. */
export function openWorkshop<Api>(start: () => Worker): Workshop<Api> {
  let running: Running<Api> | null = null;

  const end = (how: Extract<WorkEnd<never>, { ok: false }>): void => {
    const ended = running;
    running = null;
    ended?.worker.terminate();
    for (const tell of ended?.waiting ?? []) tell(how);
  };

  const runningNow = (): Running<Api> => {
    if (running !== null) return running;
    const worker = start();
    const fail = (why: string): void => {
      if (running?.worker === worker) end({ ok: false, code: 'failed', why });
    };
    worker.addEventListener('error', ({ message }) => fail(message ?? ''));
    worker.addEventListener('messageerror', () => fail('messageerror'));
    running = { worker, api: wrap<Api>(worker), waiting: new Set() };
    return running;
  };

  return {
    begin: (run) =>
      new Promise((resolve) => {
        const { api, waiting } = runningNow();
        waiting.add(resolve);
        run(api)
          .then(
            (value) => resolve({ ok: true, value }),
            (error: unknown) => resolve({ ok: false, code: 'failed', why: String(error) }),
          )
          .finally(() => waiting.delete(resolve));
      }),
    stop: () => end({ ok: false, code: 'stopped' }),
  };
}
