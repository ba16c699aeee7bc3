import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';

export function OrderPlace(): ReactNode {
  return <h2>{say('page.place.order', {}, 'in')}</h2>;
}
