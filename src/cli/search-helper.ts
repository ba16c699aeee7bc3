import { setImmediate } from 'node:timers/promises';
import { type MessagePort, Worker } from 'node:worker_threads';
import { helpingSearch, type LegReport, type LegRequest } from '../engine/lay/index.ts';
import type { SearchHelper } from './io.ts';

/** How long the helper works before it listens again, ms. */
const LISTEN = 50;

/** The other thread: does what is asked for, and sends the reports back. */
export function helpThrough(port: Pick<MessagePort, 'on' | 'postMessage'>): void {
  const helper = helpingSearch();
  let isWorking = false;
  const work = async (): Promise<void> => {
    if (isWorking) return;
    isWorking = true;
    while (helper.busy()) {
      for (const until = Date.now() + LISTEN; helper.busy() && Date.now() < until; ) {
        const report = helper.work();
        if (report !== null) port.postMessage(report);
      }
      await setImmediate();
    }
    isWorking = false;
  };
  port.on('message', (request: LegRequest) => {
    helper.ask(request);
    void work();
  });
}

/** Starts `file`, which calls `helpThrough`, in a thread of its own. One that fails finds nothing, and harms nothing. */
export function startSearchHelper(file: URL): SearchHelper {
  const worker = new Worker(file);
  const reports: LegReport[] = [];
  let hasFailed = false;
  let wake = (): void => {};
  worker.on('message', (report: LegReport) => {
    reports.push(report);
    wake();
  });
  worker.on('error', () => {
    hasFailed = true;
    wake();
  });
  return {
    link: {
      send: (request) => worker.postMessage(request),
      take: (job) => {
        const at = reports.findIndex((report) => report.job === job);
        if (at >= 0) return reports.splice(at, 1)[0];
        return hasFailed ? { job, best: null } : undefined;
      },
    },
    arrived: () =>
      new Promise((done) => {
        if (reports.length > 0 || hasFailed) done();
        else wake = done;
      }),
    end: async () => void (await worker.terminate()),
  };
}
