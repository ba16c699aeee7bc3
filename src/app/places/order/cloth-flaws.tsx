import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { useProblemAt, useSession, useUnits } from '../../session/use-session.ts';
import { type OneCloth, putList } from './change-cloth.ts';

const FIELDS = ['fromEnd', 'fromSelvedge', 'along', 'across'] as const;
/** As a new flaw stands until she has measured it: a hand's breadth from both edges, a thumb wide. */
const NEW = { in: ['4', '4', '1'], cm: ['10', '10', '2'] } as const;

/** Places on a cloth that no piece may touch. */
export function ClothFlaws({ cloth, path, change }: OneCloth): ReactNode {
  const units = useUnits();
  const what = say('page.rules.flaws', {}, units);
  const flaws = cloth.flaws ?? [];
  const [fromEnd, fromSelvedge, size] = NEW[units];
  return (
    <fieldset className="uses stack">
      <legend>{what}</legend>
      <p className="quiet small">{say('page.rules.flaws.about', {}, units)}</p>
      {flaws.map((_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row of a list is known by its place in it.
        <div key={i} className="stack">
          <p className="small">{say('page.rules.flaws.one', { number: i + 1 }, units)}</p>
          <div className="fields">
            {FIELDS.map((field) => (
              <FlawField key={field} at={i} field={field} {...{ cloth, path, change }} />
            ))}
            <Button
              name={say('page.rules.flaws.remove', { number: i + 1 }, units)}
              onPress={() =>
                change('flaws.out', what, (draft) =>
                  putList(
                    draft,
                    'flaws',
                    flaws.filter((_, k) => k !== i),
                  ),
                )
              }
            >
              {say('page.rules.remove', {}, units)}
            </Button>
          </div>
        </div>
      ))}
      <div className="row row-wrap">
        <Button
          onPress={() =>
            change('flaws.in', what, (draft) =>
              putList(draft, 'flaws', [...flaws, { fromEnd, fromSelvedge, along: size, across: size }]),
            )
          }
        >
          {say('page.rules.flaws.add', {}, units)}
        </Button>
      </div>
    </fieldset>
  );
}

function FlawField({
  at,
  field,
  cloth,
  path,
  change,
}: OneCloth & { readonly at: number; readonly field: (typeof FIELDS)[number] }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const problem = useProblemAt(`${path}.flaws[${at}].${field}`);
  return (
    <LengthField
      label={say(`page.rules.flaws.${field}`, {}, units)}
      value={cloth.flaws?.[at]?.[field]}
      units={units}
      problem={problem}
      onDone={session.settle}
      onChange={(text) =>
        change(`flaws[${at}].${field}`, say('page.rules.flaws', {}, units), (draft) => {
          const flaw = draft.flaws?.[at];
          if (flaw !== undefined) flaw[field] = text ?? '';
        })
      }
    />
  );
}
