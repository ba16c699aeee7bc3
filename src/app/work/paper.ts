import { proxy } from 'comlink';
import type {
  MadePaper,
  OnPaperStep,
  PaperAnswer,
  PaperGrounds,
  PaperLook,
  PaperOf,
  PaperWish,
} from './paper-wish.ts';
import type { PaperDoor } from './paper-worker.ts';
import { openWorkshop, type WorkEnd } from './workshop.ts';

const workshop = openWorkshop<PaperDoor>(
  () => new Worker(new URL('./paper-worker.ts', import.meta.url), { type: 'module' }),
);

/** All papers of a child or of the party, and the pages of one of them, drawn in the worker. */
export const lookAtPaper = (
  grounds: PaperGrounds,
  of: PaperOf,
  path: string,
): Promise<WorkEnd<PaperAnswer<PaperLook>>> =>
  workshop.begin<PaperAnswer<PaperLook>>((door) => door.look(grounds, of, path));

/** Makes one paper, or everything, into a file. `onStep` hears how far it is. */
export const makePaper = (
  grounds: PaperGrounds,
  wish: PaperWish,
  onStep: OnPaperStep,
): Promise<WorkEnd<PaperAnswer<MadePaper>>> =>
  workshop.begin<PaperAnswer<MadePaper>>((door) => door.make(grounds, wish, proxy(onStep)));

/** Breaks off what is being drawn or made, and lets go of all that the worker holds. */
export const stopPaper = (): void => workshop.stop();
