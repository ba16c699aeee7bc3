import type { ReactNode } from 'react';
import { moneyText, PRICE_UNITS, type ShoppingRow, sumOf } from '../../../engine/bill/index.ts';
import {
  buyText,
  goodsName,
  type PayWork,
  stashSaying,
  stashText,
  type WorkroomFile,
} from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { useTell, useUnits } from '../../session/use-session.ts';
import { AmountField, MakeButton, ReckonState } from './pay-parts.tsx';
import { OwnCurrency } from './rate-fields.tsx';
import { StashList } from './stash-list.tsx';
import { useChangeWorkroom, usePay, usePayProblem, useWorkroom } from './use-pay.ts';
import '../../look/pay.css';

/** What to buy, for how much, and what she has already. */
export function ShoppingPlace(): ReactNode {
  const units = useUnits();
  const { work, wrong, busy, grounds } = usePay();
  return (
    <div className="stack">
      <h2>{say('page.shopping.title', {}, units)}</h2>
      <ReckonState busy={busy} wrong={wrong} />
      {work !== null && (
        <section className="part">
          <div className="fields">
            <OwnCurrency work={work} />
          </div>
          <ul className="pay-rows">
            {work.shopping.map((row) => (
              <BuyRow key={row.key} row={row} work={work} />
            ))}
          </ul>
          <p>
            <strong>{say('page.shopping.total', { amount: moneyText(work.materials) }, units)}</strong>
          </p>
          {work.unpriced.length > 0 && (
            <p className="doubt">
              {say(
                'pay.unpriced',
                { goods: work.unpriced.map(({ what }) => goodsName(what, units)).join('; ') },
                units,
              )}
            </p>
          )}
          {work.names.length > 1 && <EachChild work={work} />}
          <p className="quiet small">{say('paper.shopping.spare', {}, units)}</p>
          <div className="row row-wrap">
            <MakeButton look="main" grounds={grounds} paper={{ kind: 'list', list: 'shopping' }}>
              {say('page.pay.make.shopping', {}, units)}
            </MakeButton>
          </div>
        </section>
      )}
      <StashList work={work} />
      <p className="quiet small">{say('page.pay.everywhere', {}, units)}</p>
    </div>
  );
}

function EachChild({ work }: { readonly work: PayWork }): ReactNode {
  const units = useUnits();
  return (
    <details>
      <summary>{say('page.shopping.each', {}, units)}</summary>
      <ul>
        {work.names.map((child, i) => {
          const amount = moneyText(
            sumOf(
              work.shopping.flatMap(({ shares }) => shares[i] ?? []),
              work.currency,
            ),
          );
          return <li key={child}>{say('page.shopping.each.child', { child, amount }, units)}</li>;
        })}
      </ul>
    </details>
  );
}

type PriceFile = NonNullable<WorkroomFile['prices']>[number];

function BuyRow({ row, work }: { readonly row: ShoppingRow; readonly work: PayWork }): ReactNode {
  const units = useUnits();
  const tellIt = useTell();
  const name = goodsName(row.what, units);
  const have = stashText(row, units);
  return (
    <li className="pay-row pay-buy">
      <div>
        <div className="pay-row-head">
          <strong>{name}</strong>
          <span>
            {row.toBuy === 0
              ? say('page.shopping.nothing', {}, units)
              : say('page.shopping.buy', { buy: buyText(row) }, units)}
          </span>
          <span className="pay-amount">{row.cost === null ? '' : moneyText(row.cost)}</span>
        </div>
        {have !== '' && <p className="quiet small">{say('page.shopping.have', { have }, units)}</p>}
        {row.notes
          .filter(({ code }) => code !== 'bill.stash.enough')
          .map((note) => (
            <p
              key={note.code}
              className={note.code === 'bill.stash.too-small' ? 'doubt small' : 'quiet small'}
            >
              {tellIt(stashSaying(note, work.names))}
            </p>
          ))}
      </div>
      <PriceFields row={row} name={name} work={work} />
    </li>
  );
}

/** The price of a good, kept among her own for every order. */
function PriceFields({
  row,
  name,
  work,
}: {
  readonly row: ShoppingRow;
  readonly name: string;
  readonly work: PayWork;
}): ReactNode {
  const units = useUnits();
  const { prices = [] } = useWorkroom();
  const change = useChangeWorkroom();
  const kind = row.what.kind;
  const at = indexOfPrice(prices, row.key, kind);
  const given = prices[at];
  const problem = usePayProblem(work, `prices[${at}].price`);
  const isLong = row.unit !== null;
  const usual = isLong ? (units === 'in' ? 'yd' : 'm') : 'each';
  const write = (next: Partial<PriceFile>): void => {
    const price = { what: row.key, price: given?.price ?? '', per: given?.per ?? usual, ...next } as const;
    // A price that holds for all zips is left alone; this one gets its own.
    const own = prices.findIndex(({ what }) => what.trim().toLowerCase() === row.key);
    change('prices', own < 0 ? [...prices, price] : prices.map((old, i) => (i === own ? price : old)));
  };
  const clear = (): void =>
    change(
      'prices',
      prices.filter((_, i) => i !== at),
    );
  return (
    <div className="fields">
      <AmountField
        label={say('page.shopping.price', { what: name }, units)}
        value={given?.price}
        unit={work.currency}
        problem={problem}
        onChange={(text) => (text === undefined ? clear() : write({ price: text }))}
      />
      {isLong && (
        <Choice
          label={say('page.shopping.per', {}, units)}
          value={given?.per ?? usual}
          options={PRICE_UNITS.filter((per) => per !== 'each').map((id) => ({
            id,
            text: say(`page.shopping.per.${id}`, {}, units),
          }))}
          onChange={(per) => write({ per })}
        />
      )}
    </div>
  );
}

/** Her price of this very good, else of its kind; the last that stands there counts. */
function indexOfPrice(prices: readonly PriceFile[], key: string, kind: string): number {
  const named = (name: string): number =>
    prices.findLastIndex(({ what }) => what.trim().toLowerCase() === name);
  const own = named(key);
  return own < 0 ? named(kind) : own;
}
