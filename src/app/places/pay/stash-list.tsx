import type { ReactNode } from 'react';
import { goodsName, type PayWork, type WorkroomFile, withUnit } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Choice } from '../../parts/choice.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useUnits } from '../../session/use-session.ts';
import { EntryList } from './pay-parts.tsx';
import { useChangeWorkroom, useWorkroom } from './use-pay.ts';

type Stashed = NonNullable<WorkroomFile['stash']>[number];

/** What lies in her cupboard. */
export function StashList({ work }: { readonly work: PayWork | null }): ReactNode {
  const units = useUnits();
  const { stash = [] } = useWorkroom();
  const change = useChangeWorkroom();
  const write = (at: number, next: Stashed): void =>
    change(
      'stash',
      stash.map((old, i) => (i === at ? next : old)),
    );
  const first = work?.shopping[0];
  return (
    <section className="part">
      <h3>{say('page.shopping.stash', {}, units)}</h3>
      <p className="quiet small">{say('page.shopping.stash.about', {}, units)}</p>
      <EntryList
        entries={stash}
        nameOf={({ what }) => what}
        onTakeOut={(at) =>
          change(
            'stash',
            stash.filter((_, i) => i !== at),
          )
        }
        add={say('page.shopping.stash.add', {}, units)}
        onAdd={() => change('stash', [...stash, { what: first?.key ?? '' }])}
      >
        {(item, i) => <StashFields item={item} work={work} onChange={(next) => write(i, next)} />}
      </EntryList>
    </section>
  );
}

function StashFields({
  item,
  work,
  onChange,
}: {
  readonly item: Stashed;
  readonly work: PayWork | null;
  readonly onChange: (next: Stashed) => void;
}): ReactNode {
  const units = useUnits();
  const known = work?.shopping ?? [];
  const here = known.find(({ key }) => key === item.what.trim().toLowerCase());
  const isPieces = here !== undefined && here.unit === null;
  const withField = <K extends 'length' | 'width' | 'count'>(field: K, value: Stashed[K]): Stashed => {
    const next = { ...item };
    delete next[field];
    if (value !== undefined) next[field] = value;
    return next;
  };
  /** With its unit, as it holds for orders in the other one too. */
  const united = (text: string | undefined): string | undefined =>
    text === undefined ? text : String(withUnit(text, units, units === 'in' ? 'cm' : 'in'));
  const choices = known.map(({ key, what }) => ({ id: key, text: goodsName(what, units) }));
  return (
    <>
      {here === undefined ? (
        <TextField
          label={say('page.shopping.stash.what', {}, units)}
          value={item.what}
          onChange={(what) => onChange({ ...item, what })}
        />
      ) : (
        <Choice
          label={say('page.shopping.stash.what', {}, units)}
          value={here.key}
          options={choices}
          onChange={(what) => onChange({ ...item, what })}
        />
      )}
      {!isPieces && (
        <LengthField
          label={say('page.shopping.stash.length', {}, units)}
          value={item.length}
          units={units}
          onChange={(text) => onChange(withField('length', united(text)))}
        />
      )}
      {!isPieces && (
        <LengthField
          label={say('page.shopping.stash.width', {}, units)}
          value={item.width}
          units={units}
          onChange={(text) => onChange(withField('width', united(text)))}
        />
      )}
      {(isPieces || here === undefined) && (
        <NumberField
          label={say('page.shopping.stash.count', {}, units)}
          value={item.count}
          notANumber={say('page.pay.not-a-number', {}, units)}
          onChange={(count) => onChange(withField('count', count))}
        />
      )}
    </>
  );
}
