import { checks } from './checks.ts';
import { cutting } from './cutting.ts';
import { draft } from './draft.ts';
import { library } from './library.ts';
import { measures } from './measures.ts';
import { order } from './order.ts';
import { ownChanges } from './own-changes.ts';
import { paper } from './paper.ts';
import { skirtChecks } from './skirt-checks.ts';
import { store } from './store.ts';
import { trimChecks } from './trim-checks.ts';

/** Every English sentence, one flat catalogue; keys start with the room's word (`measure.`, `check.`, ...). */
export const en = {
  ...measures,
  ...draft,
  ...checks,
  ...skirtChecks,
  ...cutting,
  ...paper,
  ...order,
  ...ownChanges,
  ...library,
  ...store,
  ...trimChecks,
} as const;
