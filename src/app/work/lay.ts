import { proxy } from 'comlink';
import type { LayAnswer, LayGrounds, LayLook, LayWish, OnLaid, OnLayProgress } from './lay-wish.ts';
import type { LayDoor } from './lay-worker.ts';
import { openWorkshop, type WorkEnd } from './workshop.ts';

const workshop = openWorkshop<LayDoor>(
  () => new Worker(new URL('./lay-worker.ts', import.meta.url), { type: 'module' }),
);

/** The lays of an order as they are kept, and short ones where none is; null where another look was asked for meanwhile. */
export const lookAtLays = (grounds: LayGrounds, onLaid: OnLaid): Promise<WorkEnd<LayLook | null>> =>
  workshop.begin<LayLook | null>((door) => door.look(grounds, proxy(onLaid)));

/** What the width table would say to buy, mm; null where it says nothing. */
export const boughtByTable = (grounds: LayGrounds, cloth: string): Promise<WorkEnd<number | null>> =>
  workshop.begin<number | null>((door) => door.byTable(grounds, cloth));

/** A worker that says nothing for so long has gone, though nobody was told, ms. */
const SILENT = 45_000;

/** Goes on from a lay and makes it shorter. A worker that falls silent ends it as failed. */
export async function searchLay(wish: LayWish, onProgress: OnLayProgress): Promise<WorkEnd<LayAnswer>> {
  let isSilent = false;
  let isOver = false;
  const giveUp = (): void => {
    isSilent = true;
    workshop.stop();
  };
  let watch = setTimeout(giveUp, SILENT);
  // What a worker tells on its way comes by a way of its own, and may come after the answer.
  const heard: OnLayProgress = (step) => {
    if (isOver) return;
    clearTimeout(watch);
    watch = setTimeout(giveUp, SILENT);
    onProgress(step);
  };
  const end = await workshop.begin<LayAnswer>((door) => door.search(wish, proxy(heard)));
  isOver = true;
  clearTimeout(watch);
  return isSilent ? { ok: false, code: 'failed', why: '' } : end;
}

/** Ends the search: the answer is then the best so far. */
export const enoughLaid = (): Promise<WorkEnd<void>> => workshop.begin<void>((door) => door.enough());

/** Breaks everything off without an answer. */
export const stopLaying = (): void => workshop.stop();
