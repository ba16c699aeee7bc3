import { type ReactNode, useState } from 'react';
import { tell } from '../../../engine/design/index.ts';
import {
  type IssuedPaper,
  type PaperKind,
  type PayFile,
  type PayWork,
  shownDay,
} from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useDevice } from '../../device/device.tsx';
import { today } from '../../device/today.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useOrderFile, useSession, useUnits } from '../../session/use-session.ts';
import { issuePay } from '../../work/pay.ts';
import type { PayGrounds } from '../../work/pay-wish.ts';
import { AmountField, EntryList, MakeButton, useMakePay } from './pay-parts.tsx';
import { useChangePay, usePayProblem } from './use-pay.ts';

/**
 * Gives out a paper: its number is taken from the book, the paper is noted in the order, kept on the device, and saved
 * as PDF. If anything fails after the number was taken, that number is never used.
 */
function useGiving(grounds: PayGrounds): {
  readonly give: (kind: PaperKind, payment?: number) => Promise<void>;
  readonly busy: boolean;
  readonly wrong: string | null;
  readonly told: ReturnType<typeof useMakePay>['told'];
} {
  const { store } = useDevice();
  const session = useSession();
  const units = useUnits();
  const { make, told } = useMakePay();
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);

  const given = async (kind: PaperKind, payment?: number): Promise<string | null> => {
    const which = payment === undefined ? {} : { payment };
    // A first try without a number: none is used up for what can't be given out.
    const tried = await issuePay(grounds, { kind, number: '', ...which });
    const refused = refusalOf(tried);
    if (refused !== null || !tried.ok || !tried.value.ok) return refused;
    const number = await store.takeNumber(kind);
    if (!number.ok) return say('page.bill.papers.no-number', { why: tell(number.problem.say, units) }, units);
    const paper: IssuedPaper = { ...tried.value.value, number: number.value };
    session.change({ key: 'page.did.paper', values: { number: paper.number } }, (file) => {
      file.pay ??= {};
      file.pay.papers = [...(file.pay.papers ?? []), paper];
    });
    session.settle();
    await session.saveNow();
    await make(grounds, { kind: 'issued', issued: paper });
    return null;
  };
  const refusalOf = (end: Awaited<ReturnType<typeof issuePay>>): string | null => {
    if (!end.ok) return say('page.pay.not-made', { why: end.code === 'failed' ? end.why : end.code }, units);
    if (end.value.ok) return null;
    if (end.value.code === 'refused') return tell(end.value.why, units);
    return say('page.pay.problem', { what: '' }, units);
  };
  const give = async (kind: PaperKind, payment?: number): Promise<void> => {
    setBusy(true);
    setWrong(null);
    setWrong(await given(kind, payment));
    setBusy(false);
  };
  return { give, busy, wrong, told };
}

/** Quotes, invoices and receipts that were given out, and buttons for new ones. */
export function IssuedPapers({
  work,
  grounds,
}: {
  readonly work: PayWork;
  readonly grounds: PayGrounds;
}): ReactNode {
  const units = useUnits();
  const papers = useOrderFile((file) => file.pay?.papers) ?? [];
  const { give, busy, wrong, told } = useGiving(grounds);
  return (
    <section className="part">
      <h3>{say('page.bill.papers', {}, units)}</h3>
      <p className="quiet small">{say('page.bill.papers.about', {}, units)}</p>
      {papers.length === 0 && <p className="quiet">{say('page.bill.papers.none', {}, units)}</p>}
      <ul className="pay-rows">
        {papers.map((paper) => (
          <li key={paper.number} className="pay-row">
            <p>
              {say(
                'page.bill.papers.line',
                {
                  kind: { word: `paper.${paper.kind}.name` },
                  number: paper.number,
                  day: shownDay(paper.day),
                  total: `${paper.currency} ${paper.total}`,
                },
                units,
              )}
            </p>
            <MakeButton
              grounds={grounds}
              paper={{ kind: 'issued', issued: paper }}
              look="quiet"
              name={say('page.bill.papers.again.what', { number: paper.number }, units)}
            >
              {say('page.bill.papers.again', {}, units)}
            </MakeButton>
          </li>
        ))}
      </ul>
      <div className="row row-wrap">
        <Button look="main" disabled={busy || work.bill === null} onPress={() => void give('quote')}>
          {say('page.bill.give.quote', {}, units)}
        </Button>
        <Button disabled={busy || work.bill === null} onPress={() => void give('invoice')}>
          {say('page.bill.give.invoice', {}, units)}
        </Button>
      </div>
      <GivingSaid wrong={wrong} told={told} />
    </section>
  );
}

/** Why nothing was given out, or that it was. */
function GivingSaid({ wrong, told }: Pick<ReturnType<typeof useGiving>, 'wrong' | 'told'>): ReactNode {
  return (
    <>
      {wrong !== null && (
        <p role="alert" className="wrong">
          {wrong}
        </p>
      )}
      {told !== null && <p role="status">{told.text}</p>}
    </>
  );
}

type Payment = NonNullable<PayFile['received']>[number];

/** Deposits and payments, each with its receipt. */
export function Received({
  work,
  grounds,
}: {
  readonly work: PayWork;
  readonly grounds: PayGrounds;
}): ReactNode {
  const units = useUnits();
  const received = useOrderFile((file) => file.pay?.received) ?? [];
  const change = useChangePay();
  const { give, busy, wrong, told } = useGiving(grounds);
  const word = say('page.bill.received', {}, units);
  return (
    <section className="part">
      <h3>{word}</h3>
      <EntryList
        entries={received}
        nameOf={({ day, amount }) => `${amount} ${day}`}
        onTakeOut={(at) =>
          change(word, (draft) => {
            draft.received = (draft.received ?? []).filter((_, i) => i !== at);
          })
        }
        add={say('page.bill.received.add', {}, units)}
        onAdd={() =>
          change(word, (draft) => {
            draft.received = [...(draft.received ?? []), { day: today(), amount: '' }];
          })
        }
      >
        {(payment, i) => (
          <>
            <PaymentFields payment={payment} index={i} work={work} />
            <div className="pay-button">
              <Button disabled={busy || work.bill === null} onPress={() => void give('receipt', i)}>
                {say('page.bill.received.receipt', {}, units)}
              </Button>
            </div>
          </>
        )}
      </EntryList>
      <GivingSaid wrong={wrong} told={told} />
    </section>
  );
}

function PaymentFields({
  payment,
  index,
  work,
}: {
  readonly payment: Payment;
  readonly index: number;
  readonly work: PayWork;
}): ReactNode {
  const session = useSession();
  const units = useUnits();
  const change = useChangePay();
  const path = `pay.received[${index}]`;
  const amountProblem = usePayProblem(work, `${path}.amount`);
  const dayProblem = usePayProblem(work, `${path}.day`);
  const write = (field: string, recipe: (draft: Payment) => void): void =>
    change(
      say('page.bill.received', {}, units),
      (draft) => {
        const own = draft.received?.[index];
        if (own !== undefined) recipe(own);
      },
      `received[${index}].${field}`,
    );
  return (
    <>
      <TextField
        kind="day"
        label={say('page.bill.received.day', {}, units)}
        value={payment.day}
        problem={dayProblem}
        onDone={session.settle}
        onChange={(day) =>
          write('day', (own) => {
            own.day = day;
          })
        }
      />
      <AmountField
        label={say('page.bill.received.amount', {}, units)}
        value={payment.amount}
        unit={work.currency}
        problem={amountProblem}
        onDone={session.settle}
        onChange={(amount) =>
          write('amount', (own) => {
            own.amount = amount ?? '';
          })
        }
      />
      <TextField
        label={say('page.bill.received.how', {}, units)}
        value={payment.how ?? ''}
        onDone={session.settle}
        onChange={(how) =>
          write('how', (own) => {
            if (how.trim() === '') delete own.how;
            else own.how = how;
          })
        }
      />
    </>
  );
}
