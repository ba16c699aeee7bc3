import { type ReactNode, useRef } from 'react';
import { type Bill, moneyText } from '../../../engine/bill/index.ts';
import { goodsName, hoursOf, type PayWork } from '../../../engine/order/index.ts';
import { say, type WordKey } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { useUnits } from '../../session/use-session.ts';
import { AgreedFields, Extras } from './agreed.tsx';
import { IssuedPapers, Received } from './issued-papers.tsx';
import { MakerOnPaper } from './maker-on-paper.tsx';
import { OwnTimes } from './own-times.tsx';
import { ReckonState } from './pay-parts.tsx';
import { RateFields } from './rate-fields.tsx';
import { usePay } from './use-pay.ts';
import '../../look/pay.css';

/** What the order costs and how that comes about, what was agreed, given out and paid, and what an hour brought. */
export function BillPlace(): ReactNode {
  const units = useUnits();
  const { work, wrong, busy, grounds } = usePay();
  const rate = useRef<HTMLDivElement>(null);
  return (
    <div className="stack">
      <h2>{say('page.bill.title', {}, units)}</h2>
      <ReckonState busy={busy} wrong={wrong} />
      {work !== null && work.bill === null && (
        <div className="doubt">
          <p>{say('pay.no-rate', {}, units)}</p>
          <Button onPress={() => rate.current?.querySelector('input')?.focus()}>
            {say('page.bill.write-rate', {}, units)}
          </Button>
        </div>
      )}
      {work !== null && work.bill !== null && <Breakdown work={work} bill={work.bill} />}
      {work !== null && <IssuedPapers work={work} grounds={grounds} />}
      {work !== null && <Received work={work} grounds={grounds} />}
      <AgreedFields work={work} />
      <Extras work={work} />
      <RateFields work={work} rate={rate} />
      <OwnTimes work={work} />
      <MakerOnPaper />
      <p className="quiet small">{say('page.pay.everywhere', {}, units)}</p>
    </div>
  );
}

const COLUMNS = ['materials', 'sundries', 'labour', 'overhead', 'profit', 'price'] as const;

function Breakdown({ work, bill }: { readonly work: PayWork; readonly bill: Bill }): ReactNode {
  const units = useUnits();
  const told = (key: WordKey, values = {}): string => say(key, values, units);
  const { totals } = bill;
  const sums = [
    ...(bill.rush.minor === 0 ? [] : [[told('page.bill.sum.rush'), bill.rush] as const]),
    ...(bill.difference.minor === 0 ? [] : [[told('page.bill.sum.agreed'), bill.difference] as const]),
    [told('page.bill.sum.net'), totals.net] as const,
    ...(work.tax === null ? [] : [[told('paper.pay.tax', work.tax), totals.tax] as const]),
    [told('page.bill.sum.total'), totals.total] as const,
    [told('page.bill.sum.deposit'), bill.deposit] as const,
    ...(totals.received.minor === 0 ? [] : [[told('page.bill.sum.received'), totals.received] as const]),
    [told('page.bill.sum.due'), totals.due] as const,
  ];
  return (
    <section className="part">
      <h3>{told('page.bill.how')}</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by the keyboard too. */}
      <section className="pay-wide" tabIndex={0} aria-label={told('page.bill.how')}>
        <table className="pay-table">
          <thead>
            <tr>
              <th scope="col">{told('page.bill.col.child')}</th>
              <th scope="col">{told('page.bill.col.hours')}</th>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {told(`page.bill.col.${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {bill.children.map((child) => (
              <tr key={child.name}>
                <th scope="row">{child.name}</th>
                <td>{hoursOf(child.minutes)}</td>
                {COLUMNS.map((column) => (
                  <td key={column}>{moneyText(child[column])}</td>
                ))}
              </tr>
            ))}
            {bill.extras.map(({ about, price }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: an extra is known by its place in the list.
              <tr key={i}>
                <th scope="row">{about}</th>
                <td colSpan={COLUMNS.length} />
                <td>{moneyText(price)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {work.unpriced.length > 0 && (
        <p className="doubt">
          {told('pay.unpriced', {
            goods: work.unpriced.map(({ what }) => goodsName(what, units)).join('; '),
          })}
        </p>
      )}
      <dl className="pay-sums">
        {sums.map(([name, amount]) => (
          <div key={name} className="pay-sum">
            <dt>{name}</dt>
            <dd>{moneyText(amount)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
