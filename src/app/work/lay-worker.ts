import { expose } from 'comlink';
import { createLayBench } from './lay-bench.ts';
import { openHelp } from './lay-help.ts';

/** The worker that lays cloths. */

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));
const startHelper = (): Worker =>
  new Worker(new URL('./lay-helper-worker.ts', import.meta.url), { type: 'module' });

const door = createLayBench(() => performance.now(), pause, openHelp(startHelper));

export type LayDoor = typeof door;

expose(door);
