import { expose } from 'comlink';
import bold from '../../../assets/fonts/NotoSans-Bold.ttf';
import regular from '../../../assets/fonts/NotoSans-Regular.ttf';
import { createPayBench, type PayBench } from './pay-bench.ts';
import { fontsOnce } from './worker-fonts.ts';

/** The worker that reckons what orders take and cost, and writes their lists and bills. */

const fonts = fontsOnce(regular, bold);
let bench: PayBench | null = null;

async function benchNow(): Promise<PayBench> {
  const fetched = await fonts();
  bench ??= createPayBench(fetched);
  return bench;
}

const door = {
  reckon: async (...given: Parameters<PayBench['reckon']>) => (await benchNow()).reckon(...given),
  issue: async (...given: Parameters<PayBench['issue']>) => (await benchNow()).issue(...given),
  make: async (...given: Parameters<PayBench['make']>) => (await benchNow()).make(...given),
};

export type PayDoor = typeof door;

expose(door);
