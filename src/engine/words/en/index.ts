import { checks } from './checks.ts';
import { cutting } from './cutting.ts';
import { draft } from './draft.ts';
import { measures } from './measures.ts';
import { order } from './order.ts';
import { paper } from './paper.ts';

/** Every English sentence, one flat catalogue; keys start with the room's word (`measure.`, `check.`, ...). */
export const en = { ...measures, ...draft, ...checks, ...cutting, ...paper, ...order } as const;
