import { bill } from './bill.ts';
import { checks } from './checks.ts';
import { cutting } from './cutting.ts';
import { draft } from './draft.ts';
import { growth } from './growth.ts';
import { lay } from './lay.ts';
import { library } from './library.ts';
import { measures } from './measures.ts';
import { measuring } from './measuring.ts';
import { order } from './order.ts';
import { ownChanges } from './own-changes.ts';
import { page } from './page.ts';
import { pageBook } from './page-book.ts';
import { pageCloth } from './page-cloth.ts';
import { pageClothRules } from './page-cloth-rules.ts';
import { pageDress } from './page-dress.ts';
import { pageFit } from './page-fit.ts';
import { pageGuide } from './page-guide.ts';
import { pageMeasures } from './page-measures.ts';
import { pageOrder } from './page-order.ts';
import { pagePaper } from './page-paper.ts';
import { pagePay } from './page-pay.ts';
import { pageSew } from './page-sew.ts';
import { pageTable } from './page-table.ts';
import { paper } from './paper.ts';
import { paperLay } from './paper-lay.ts';
import { sew } from './sew.ts';
import { skirtChecks } from './skirt-checks.ts';
import { store } from './store.ts';
import { trimChecks } from './trim-checks.ts';

/** Every English sentence, one flat catalogue; keys start with the room's word (`measure.`, `check.`, ...). */
export const en = {
  ...measures,
  ...measuring,
  ...draft,
  ...bill,
  ...checks,
  ...skirtChecks,
  ...cutting,
  ...page,
  ...pageBook,
  ...pageCloth,
  ...pageClothRules,
  ...pageDress,
  ...pageFit,
  ...pageGuide,
  ...pageMeasures,
  ...pageOrder,
  ...paper,
  ...paperLay,
  ...pagePaper,
  ...pagePay,
  ...pageSew,
  ...pageTable,
  ...order,
  ...ownChanges,
  ...library,
  ...store,
  ...trimChecks,
  ...lay,
  ...growth,
  ...sew,
} as const;
