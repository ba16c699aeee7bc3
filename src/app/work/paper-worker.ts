import { expose } from 'comlink';
import bold from '../../../assets/fonts/NotoSans-Bold.ttf';
import regular from '../../../assets/fonts/NotoSans-Regular.ttf';
import { createPaperBench, type PaperBench } from './paper-bench.ts';
import { fontsOnce } from './worker-fonts.ts';

/** The worker that draws and writes papers. The fonts come from the page's own place, also without a network. */

const fonts = fontsOnce(regular, bold);
let bench: PaperBench | null = null;

async function benchNow(): Promise<PaperBench> {
  const fetched = await fonts();
  bench ??= createPaperBench(fetched);
  return bench;
}

const door = {
  look: async (...given: Parameters<PaperBench['look']>) => (await benchNow()).look(...given),
  make: async (...given: Parameters<PaperBench['make']>) => (await benchNow()).make(...given),
};

export type PaperDoor = typeof door;

expose(door);
