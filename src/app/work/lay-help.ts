import { type LegReport, packWithHelp } from '../../engine/lay/index.ts';
import type { Help } from './lay-bench.ts';

/**
 * A second search in a worker of its own, started when it is first wanted. One that breaks down is done without: the
 * first search then hears that nothing shorter was found.
 */
export function openHelp(start: () => Worker): () => Help | null {
  let worker: Worker | null | 'none' = navigator.hardwareConcurrency > 1 ? null : 'none';
  const reports: LegReport[] = [];
  const begin = (): Worker => {
    const begun = start();
    begun.addEventListener('message', ({ data }: MessageEvent<LegReport>) => reports.push(data));
    begun.addEventListener('error', (event) => {
      event.preventDefault();
      begun.terminate();
      worker = 'none';
    });
    return begun;
  };
  return () => {
    if (worker === 'none') return null;
    worker ??= begin();
    const { pack, waiting } = packWithHelp({
      send: (request) => {
        if (worker !== 'none') worker?.postMessage(request);
      },
      take: (job) => {
        const at = reports.findIndex((report) => report.job === job);
        if (at >= 0) return reports.splice(at, 1)[0];
        return worker === 'none' ? { job, best: null } : undefined;
      },
    });
    return { pack, waiting };
  };
}
