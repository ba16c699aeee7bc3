import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { TextField } from '../../parts/text-field.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { UnitsChoice } from '../units-choice.tsx';
import { ChildCards } from './child-cards.tsx';
import { ClothCards } from './cloth-cards.tsx';

/** The order itself: what it is called, for whom, for which day, the children and the cloths. */
export function OrderPlace(): ReactNode {
  return (
    <div className="stack">
      <section className="part">
        <div className="fields">
          <OrderText field="title" />
          <OrderText field="customer" />
          <DueDay />
          <UnitsChoice />
        </div>
      </section>
      <ChildCards />
      <ClothCards />
    </div>
  );
}

function OrderText({ field }: { readonly field: 'title' | 'customer' }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const value = useOrderFile((file) => file[field]);
  const problem = useProblemAt(field);
  return (
    <TextField
      label={say(`page.order.${field}`, {}, units)}
      value={value}
      problem={problem}
      {...(field === 'title' ? { needed: say('page.order.title.needed', {}, units) } : {})}
      onDone={session.settle}
      onChange={(text) =>
        session.change(
          { key: `page.did.${field}`, values: {} },
          (file) => {
            if (field === 'title' || text !== '') file[field] = text;
            else delete file.customer;
          },
          { cause: field },
        )
      }
    />
  );
}

function DueDay(): ReactNode {
  const session = useSession();
  const units = useUnits();
  return (
    <TextField
      kind="day"
      label={say('page.order.due', {}, units)}
      about={say('page.order.due.about', {}, units)}
      value={useOrderFile((file) => file.dueDay)}
      problem={useProblemAt('dueDay')}
      onDone={session.settle}
      onChange={(day) =>
        session.change(
          { key: 'page.did.due', values: {} },
          (file) => {
            file.dueDay = day;
          },
          { cause: 'dueDay' },
        )
      }
    />
  );
}
