import { registerSW } from 'virtual:pwa-register';
import { say } from '../../engine/words/index.ts';
import { toast } from '../parts/toast.tsx';

/**
 * Keeps a copy of the page on the device, so that it works without a network. A newer version is offered, and taken
 * when she says so: never in the middle of her work.
 */
export function keepPageOnDevice(): void {
  const take = registerSW({
    onNeedRefresh: () =>
      toast(say('page.new-version', {}, 'in'), {
        word: say('page.new-version.take', {}, 'in'),
        run: () => void take(true),
      }),
  });
}
