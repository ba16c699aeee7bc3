import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { useOrderFile, useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { placeAddress } from '../address.ts';
import { renameChild } from '../cloth/renamed.ts';
import { ChildFacts } from './child-facts.tsx';

/** The children of the order: added, named, taken out. */
export function ChildCards(): ReactNode {
  const session = useSession();
  const units = useUnits();
  const children = useOrderFile((file) => file.children);
  const add = (): void => {
    const name = say('page.order.child.new-name', { number: children.length + 1 }, units);
    session.change({ key: 'page.did.add-child', values: { child: name } }, (file) => {
      // Until she knows better, a child of the age of the first one, or of four years.
      const [first] = file.children;
      file.children.push({ name, ageMonths: first?.ageMonths ?? 48 });
    });
  };
  return (
    <section className="stack">
      <div className="part-head">
        <h2>{say('page.order.children', {}, units)}</h2>
        <Button onPress={add}>{say('page.order.child.add', {}, units)}</Button>
      </div>
      {children.map((_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a child of an order is known by its place in it.
        <ChildCard key={index} index={index} alone={children.length === 1} />
      ))}
    </section>
  );
}

function ChildCard({ index, alone }: { readonly index: number; readonly alone: boolean }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const name = useOrderFile((file) => file.children[index]?.name ?? '');
  const problem = useProblemAt(`children[${index}]`);
  const nameProblem = useProblemAt(`children[${index}].name`);
  const remove = (): void => {
    const takeBack = session.change({ key: 'page.did.remove-child', values: { child: name } }, (file) => {
      file.children.splice(index, 1);
    });
    toastDone(say('page.order.child.removed', { child: name }, units), takeBack);
  };
  return (
    <div className="part">
      {problem !== null && <p className="wrong">{problem}</p>}
      <div className="fields">
        <TextField
          label={say('page.order.child.name', {}, units)}
          value={name}
          problem={nameProblem}
          needed={say('page.order.child.name.needed', {}, units)}
          onDone={session.settle}
          onChange={(text) =>
            session.change(
              { key: 'page.did.rename-child', values: { child: text } },
              (file) => renameChild(file, index, text),
              { cause: `children[${index}].name` },
            )
          }
        />
        <ChildFacts index={index} />
      </div>
      <div className="row row-end row-wrap">
        {!alone && (
          <Button
            look="wrong"
            name={say('page.order.child.remove.what', { child: name }, units)}
            onPress={remove}
          >
            {say('page.order.child.remove', {}, units)}
          </Button>
        )}
        <Link
          href={placeAddress(session.id, index, 'measures')}
          className="button button-quiet"
          aria-label={say('page.order.child.open.what', { child: name }, units)}
        >
          {say('page.order.child.open', {}, units)}
        </Link>
      </div>
    </div>
  );
}
