import { type LegReport, packWithHelp } from '../../engine/lay/index.ts';
import type { Help } from './lay-bench.ts';

/**
 * A second search in a worker of its own, started when it is first wanted. One that breaks down is done without: the
 * first search then hears that nothing shorter was found.
 */
export function openHelp(start: () => Worker): () => Help | null {
  let help: { readonly now: Help; readonly isGone: () => boolean } | null = null;
  return () => {
    if (navigator.hardwareConcurrency < 2) return null;
    help ??= begun(start());
    return help.isGone() ? null : help.now;
  };
}

function begun(worker: Worker): { readonly now: Help; readonly isGone: () => boolean } {
  const reports: LegReport[] = [];
  let isGone = false;
  let news: (() => void) | null = null;
  const arrive = (): void => {
    news?.();
    news = null;
  };
  worker.addEventListener('message', ({ data }: MessageEvent<LegReport>) => {
    reports.push(data);
    arrive();
  });
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    worker.terminate();
    isGone = true;
    arrive();
  });
  const { pack, waiting } = packWithHelp({
    send: (request) => worker.postMessage(request),
    take: (job) => {
      const at = reports.findIndex((report) => report.job === job);
      if (at >= 0) return reports.splice(at, 1)[0];
      return isGone ? { job, best: null } : undefined;
    },
  });
  const arrived = (): Promise<void> =>
    reports.length > 0 || isGone
      ? Promise.resolve()
      : new Promise((resolve) => {
          news = resolve;
        });
  return { now: { pack, waiting, arrived }, isGone: () => isGone };
}
