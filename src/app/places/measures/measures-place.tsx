import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';

export function MeasuresPlace(): ReactNode {
  return <h2>{say('page.place.measures', {}, 'in')}</h2>;
}
