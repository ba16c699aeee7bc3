import { helpingSearch, type LegRequest } from '../../engine/lay/index.ts';

/** The worker that helps the one that lays cloths, with a search of its own. */

const helper = helpingSearch();
const turns = new MessageChannel();
let working = false;

/** A little work at a time, so that it hears what it is told meanwhile. */
turns.port1.onmessage = () => {
  const until = performance.now() + 20;
  while (helper.busy() && performance.now() < until) {
    const report = helper.work();
    if (report !== null) self.postMessage(report);
  }
  working = helper.busy();
  if (working) turns.port2.postMessage(null);
};

self.addEventListener('message', ({ data }: MessageEvent<LegRequest>) => {
  helper.ask(data);
  if (working || !helper.busy()) return;
  working = true;
  turns.port2.postMessage(null);
});
