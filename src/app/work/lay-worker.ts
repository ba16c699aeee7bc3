import { expose } from 'comlink';
import bold from '../../../assets/fonts/NotoSans-Bold.ttf';
import regular from '../../../assets/fonts/NotoSans-Regular.ttf';
import { createLayBench, type LayBench } from './lay-bench.ts';
import { fontsOnce } from './worker-fonts.ts';

/** The worker that lays cloths. */

let bench: LayBench | null = null;
const fonts = fontsOnce(regular, bold);
const pause = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

const door = {
  lay: async (...given: Parameters<LayBench['lay']>) => {
    bench ??= createLayBench(await fonts(), () => performance.now(), pause);
    return bench.lay(...given);
  },
  enough: async () => bench?.enough(),
};

export type LayDoor = typeof door;

expose(door);
