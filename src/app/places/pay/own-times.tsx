import type { ReactNode } from 'react';
import { moneyText } from '../../../engine/bill/index.ts';
import { hoursOf, type PayWork, WORK_KINDS } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { useOrderFile, useSession, useUnits } from '../../session/use-session.ts';
import { EntryList } from './pay-parts.tsx';
import { useChangePay } from './use-pay.ts';

/** Minutes that she really took, and what an hour brought. */
export function OwnTimes({ work }: { readonly work: PayWork | null }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const spent = useOrderFile((file) => file.pay?.spent) ?? [];
  const change = useChangePay();
  const word = say('page.bill.spent', {}, units);
  return (
    <section className="part">
      <h3>{word}</h3>
      <p className="quiet small">{say('page.bill.spent.about', {}, units)}</p>
      <EntryList
        entries={spent}
        nameOf={({ on, minutes }) => `${say(`work.${on}`, {}, units)}, ${minutes} min`}
        onTakeOut={(at) =>
          change(word, (draft) => {
            draft.spent = (draft.spent ?? []).filter((_, i) => i !== at);
          })
        }
        add={say('page.bill.spent.add', {}, units)}
        onAdd={() =>
          change(word, (draft) => {
            draft.spent = [...(draft.spent ?? []), { on: 'sew', minutes: 0 }];
          })
        }
      >
        {(entry, i) => (
          <>
            <Choice
              label={say('page.bill.spent.on', {}, units)}
              value={entry.on}
              options={WORK_KINDS.map((id) => ({ id, text: say(`work.${id}`, {}, units) }))}
              onChange={(on) =>
                change(word, (draft) => {
                  const own = draft.spent?.[i];
                  if (own !== undefined) own.on = on;
                })
              }
            />
            <NumberField
              label={say('page.bill.spent.minutes', {}, units)}
              value={entry.minutes}
              unit="min"
              notANumber={say('page.pay.not-a-number', {}, units)}
              onDone={session.settle}
              onChange={(minutes) =>
                change(
                  word,
                  (draft) => {
                    const own = draft.spent?.[i];
                    if (own !== undefined) own.minutes = minutes ?? 0;
                  },
                  `spent[${i}]`,
                )
              }
            />
          </>
        )}
      </EntryList>
      {work?.earned != null && (
        <p role="status">
          <strong>
            {say('page.bill.earned', { amount: moneyText(work.earned), hours: hoursOf(work.spent) }, units)}
          </strong>
        </p>
      )}
    </section>
  );
}
