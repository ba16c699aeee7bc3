import {
  calendarOf,
  daysSaying,
  issuedDocument,
  issuePaper,
  type LaidOrder,
  laidOrder,
  type Order,
  payListDocument,
  payOfOrder,
  readOrderValue,
  safeFileName,
} from '../../engine/order/index.ts';
import { createTextMeasure, type PaperFonts, writePdf } from '../../pdf/index.ts';
import type {
  IssuedPaper,
  IssueOrder,
  MadePayPaper,
  PayAnswer,
  PayGrounds,
  PayPaper,
  PayWork,
} from './pay-wish.ts';

/** Reckons orders. Runs in a worker; lays an order anew only when something that is cut has changed. */
export interface PayBench {
  reckon(grounds: PayGrounds): PayAnswer<PayWork>;
  issue(grounds: PayGrounds, what: IssueOrder): PayAnswer<IssuedPaper>;
  make(grounds: PayGrounds, paper: PayPaper): Promise<PayAnswer<MadePayPaper>>;
}

export function createPayBench(fonts: PaperFonts): PayBench {
  const measure = createTextMeasure(fonts);
  let last: { readonly key: string; readonly order: Order; readonly laid: LaidOrder } | null = null;

  /** The dresses of the order, laid; those of before where nothing but money and names has changed. */
  const laidNow = ({ file, today }: PayGrounds): PayAnswer<{ order: Order; laid: LaidOrder }> => {
    const read = readOrderValue(file);
    if (!read.ok) return { ok: false, code: 'problems', problems: read.problems };
    const { pay: _pay, title: _title, customer: _customer, ...rest } = file;
    const children = rest.children.map(({ sewing: _sewing, ...child }) => child);
    const key = JSON.stringify([{ ...rest, children }, today]);
    if (last?.key !== key) {
      last = null;
      const laid = laidOrder(read.order, today);
      if (!laid.ok) return { ok: false, code: 'problems', problems: laid.problems };
      last = { key, order: read.order, laid: laid.laid };
    }
    // The lays know the cloths of the order that was laid.
    return { ok: true, value: { order: { ...read.order, cloths: last.order.cloths }, laid: last.laid } };
  };

  const workNow = (grounds: PayGrounds): PayAnswer<{ order: Order; work: PayWork }> => {
    const now = laidNow(grounds);
    if (!now.ok) return now;
    const { order, laid } = now.value;
    const { workroom, today, taken, timed } = grounds;
    const work = payOfOrder(order, laid, workroom, today, { taken: new Map(taken), timed });
    return { ok: true, value: { order, work } };
  };

  return {
    reckon(grounds) {
      const now = workNow(grounds);
      return now.ok ? { ok: true, value: now.value.work } : now;
    },
    issue(grounds, what) {
      const now = workNow(grounds);
      if (!now.ok) return now;
      const issued = issuePaper({ ...now.value, ...what, day: grounds.today });
      return issued.ok ? { ok: true, value: issued.paper } : { ok: false, code: 'refused', why: issued.why };
    },
    async make(grounds, paper) {
      const now = workNow(grounds);
      if (!now.ok) return now;
      const { order, work } = now.value;
      const { workroom, today } = grounds;
      const name = safeFileName(order.title, 'order');
      if (paper.kind === 'calendar') {
        const text = calendarOf(order, work, paper.names, paper.key, today);
        if (text === null) {
          const why = work.days.ok
            ? { key: 'pay.not-a-day', values: { found: '' } }
            : daysSaying(work.days.problem);
          return { ok: false, code: 'refused', why };
        }
        const content = new Blob([text], { type: 'text/calendar' });
        return { ok: true, value: { fileName: `${name} - days.ics`, content } };
      }
      const tools = { today, measure };
      const document =
        paper.kind === 'list'
          ? payListDocument(paper.list, order, work, workroom, tools)
          : issuedDocument(paper.issued, order, workroom, tools);
      const { pages, title, path } = document;
      const creationDate = new Date(`${order.madeOn ?? today}T00:00:00Z`);
      const bytes = await writePdf(pages, { title, creationDate, fonts });
      const fileName = paper.kind === 'list' ? `${name} - ${path}` : `${paper.issued.number} - ${name}.pdf`;
      return {
        ok: true,
        value: { fileName, content: new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }) },
      };
    },
  };
}
