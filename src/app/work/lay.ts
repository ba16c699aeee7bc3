import { proxy } from 'comlink';
import type { LayAnswer, LayWish, OnLayProgress } from './lay-wish.ts';
import type { LayDoor } from './lay-worker.ts';
import { openWorkshop, type WorkEnd } from './workshop.ts';

const workshop = openWorkshop<LayDoor>(
  () => new Worker(new URL('./lay-worker.ts', import.meta.url), { type: 'module' }),
);

/** Searches for short lays in the worker and answers with the best ones, drawn. */
export const layCloths = (wish: LayWish, onProgress: OnLayProgress): Promise<WorkEnd<LayAnswer>> =>
  workshop.begin<LayAnswer>((door) => door.lay(wish, proxy(onProgress)));

/** Ends the search: the answer is then the best so far. */
export const enoughLaid = (): Promise<WorkEnd<void>> => workshop.begin<void>((door) => door.enough());

/** Breaks the search off without an answer. */
export const stopLaying = (): void => workshop.stop();
