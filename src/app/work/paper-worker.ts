import { expose } from 'comlink';
import bold from '../../../assets/fonts/NotoSans-Bold.ttf';
import regular from '../../../assets/fonts/NotoSans-Regular.ttf';
import { createPaperBench, type PaperBench } from './paper-bench.ts';

/** The worker that draws and writes papers. The fonts come from the page's own place, also without a network. */

async function bytesAt(address: string): Promise<Uint8Array> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

let bench: Promise<PaperBench> | null = null;

function benchNow(): Promise<PaperBench> {
  bench ??= Promise.all([bytesAt(regular), bytesAt(bold)]).then(([regular, bold]) =>
    createPaperBench({ regular, bold }),
  );
  // A font that could not be fetched is fetched again the next time.
  bench.catch(() => {
    bench = null;
  });
  return bench;
}

const door = {
  look: async (...given: Parameters<PaperBench['look']>) => (await benchNow()).look(...given),
  make: async (...given: Parameters<PaperBench['make']>) => (await benchNow()).make(...given),
};

export type PaperDoor = typeof door;

expose(door);
