import type { ReactNode } from 'react';
import type { PayFile, PayWork } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useOrderFile, useSession, useUnits } from '../../session/use-session.ts';
import { AmountField, EntryList } from './pay-parts.tsx';
import { useChangePay, usePayProblem } from './use-pay.ts';

/** What was agreed for this order: its currency, its price, the hurry. */
export function AgreedFields({ work }: { readonly work: PayWork | null }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const pay = useOrderFile((file) => file.pay);
  const change = useChangePay();
  const word = {
    currency: say('page.bill.currency', {}, units),
    agreed: say('page.bill.agreed', {}, units),
    rush: say('page.bill.rush', {}, units),
  };
  return (
    <section className="part">
      <h3>{say('page.bill.order', {}, units)}</h3>
      <div className="fields">
        <TextField
          label={word.currency}
          value={pay?.currency ?? ''}
          about={
            work === null ? undefined : say('page.bill.currency.about', { currency: work.currency }, units)
          }
          problem={usePayProblem(work, 'pay.currency')}
          onDone={session.settle}
          onChange={(text) =>
            change(
              word.currency,
              (draft) => {
                if (text.trim() === '') delete draft.currency;
                else draft.currency = text;
              },
              'currency',
            )
          }
        />
        <AmountField
          label={word.agreed}
          value={pay?.agreed}
          unit={work?.currency ?? ''}
          about={say('page.bill.agreed.about', {}, units)}
          problem={usePayProblem(work, 'pay.agreed')}
          onDone={session.settle}
          onChange={(text) =>
            change(
              word.agreed,
              (draft) => {
                if (text === undefined) delete draft.agreed;
                else draft.agreed = text;
              },
              'agreed',
            )
          }
        />
        <NumberField
          label={word.rush}
          value={pay?.rush}
          unit="%"
          byRule="0"
          problem={usePayProblem(work, 'pay.rush')}
          notANumber={say('page.pay.not-a-number', {}, units)}
          onDone={session.settle}
          onChange={(value) =>
            change(
              word.rush,
              (draft) => {
                if (value === undefined) delete draft.rush;
                else draft.rush = value;
              },
              'rush',
            )
          }
        />
      </div>
    </section>
  );
}

type ExtraFile = NonNullable<PayFile['extras']>[number];

/** Changes, journeys, reductions. */
export function Extras({ work }: { readonly work: PayWork | null }): ReactNode {
  const units = useUnits();
  const extras = useOrderFile((file) => file.pay?.extras) ?? [];
  const change = useChangePay();
  const word = say('page.bill.extras', {}, units);
  return (
    <section className="part">
      <h3>{word}</h3>
      <p className="quiet small">{say('page.bill.extras.about', {}, units)}</p>
      <EntryList
        entries={extras}
        nameOf={({ about }) => about}
        onTakeOut={(at) =>
          change(word, (draft) => {
            draft.extras = (draft.extras ?? []).filter((_, i) => i !== at);
          })
        }
        add={say('page.bill.extras.add', {}, units)}
        onAdd={() =>
          change(word, (draft) => {
            draft.extras = [...(draft.extras ?? []), { about: say('page.bill.extras.new', {}, units) }];
          })
        }
      >
        {(extra, i) => <ExtraFields extra={extra} index={i} work={work} />}
      </EntryList>
    </section>
  );
}

function ExtraFields({
  extra,
  index,
  work,
}: {
  readonly extra: ExtraFile;
  readonly index: number;
  readonly work: PayWork | null;
}): ReactNode {
  const session = useSession();
  const units = useUnits();
  const change = useChangePay();
  const problem = usePayProblem(work, `pay.extras[${index}].price`);
  const write = (field: string, recipe: (draft: ExtraFile) => void): void =>
    change(
      say('page.bill.extras', {}, units),
      (draft) => {
        const own = draft.extras?.[index];
        if (own !== undefined) recipe(own);
      },
      `extras[${index}].${field}`,
    );
  return (
    <>
      <TextField
        label={say('page.bill.extras.what', {}, units)}
        value={extra.about}
        onDone={session.settle}
        onChange={(about) =>
          write('about', (own) => {
            own.about = about;
          })
        }
      />
      <AmountField
        label={say('page.bill.extras.price', {}, units)}
        value={extra.price}
        unit={work?.currency ?? ''}
        problem={problem}
        onDone={session.settle}
        onChange={(price) =>
          write('price', (own) => {
            if (price === undefined) delete own.price;
            else own.price = price;
          })
        }
      />
      <NumberField
        label={say('page.bill.extras.minutes', {}, units)}
        value={extra.minutes}
        unit="min"
        notANumber={say('page.pay.not-a-number', {}, units)}
        onDone={session.settle}
        onChange={(minutes) =>
          write('minutes', (own) => {
            if (minutes === undefined) delete own.minutes;
            else own.minutes = minutes;
          })
        }
      />
    </>
  );
}
