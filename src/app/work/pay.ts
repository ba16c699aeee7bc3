import type {
  IssuedPaper,
  IssueOrder,
  MadePayPaper,
  PayAnswer,
  PayGrounds,
  PayPaper,
  PayWork,
} from './pay-wish.ts';
import type { PayDoor } from './pay-worker.ts';
import { openWorkshop, type WorkEnd } from './workshop.ts';

const workshop = openWorkshop<PayDoor>(
  () => new Worker(new URL('./pay-worker.ts', import.meta.url), { type: 'module' }),
);

/** Shopping list, days and price of an order, reckoned in the worker. */
export const reckonPay = (grounds: PayGrounds): Promise<WorkEnd<PayAnswer<PayWork>>> =>
  workshop.begin<PayAnswer<PayWork>>((door) => door.reckon(grounds));

/** A quote, an invoice or a receipt as it will stand in the order. */
export const issuePay = (grounds: PayGrounds, what: IssueOrder): Promise<WorkEnd<PayAnswer<IssuedPaper>>> =>
  workshop.begin<PayAnswer<IssuedPaper>>((door) => door.issue(grounds, what));

/** Writes a list, a paper that was given out, or the calendar file. */
export const makePay = (grounds: PayGrounds, paper: PayPaper): Promise<WorkEnd<PayAnswer<MadePayPaper>>> =>
  workshop.begin<PayAnswer<MadePayPaper>>((door) => door.make(grounds, paper));
