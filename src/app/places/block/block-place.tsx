import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';

export function BlockPlace(): ReactNode {
  return <h2>{say('page.place.block', {}, 'in')}</h2>;
}
