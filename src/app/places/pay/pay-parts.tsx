import { type ReactNode, useState } from 'react';
import { tell } from '../../../engine/design/index.ts';
import { say } from '../../../engine/words/index.ts';
import { download } from '../../device/download.ts';
import { Button } from '../../parts/button.tsx';
import { KeyedField } from '../../parts/keyed-field.tsx';
import { fieldSentence, useTell, useUnits } from '../../session/use-session.ts';
import { makePay } from '../../work/pay.ts';
import type { PayGrounds, PayPaper } from '../../work/pay-wish.ts';

/** An amount of money as she types it; the document keeps her text. */
export function AmountField({
  label,
  value,
  unit,
  problem,
  about,
  onChange,
  onDone,
}: {
  readonly label: string;
  readonly value: string | number | undefined;
  readonly unit: string;
  readonly problem?: string | null;
  readonly about?: ReactNode;
  readonly onChange: (text: string | undefined) => void;
  readonly onDone?: () => void;
}): ReactNode {
  const shown = value === undefined ? '' : String(value);
  return (
    <KeyedField
      label={label}
      shown={shown}
      toType={shown}
      fractions={null}
      unit={unit}
      longest={24}
      problem={problem ?? null}
      {...(about === undefined ? {} : { about })}
      doneByEnter
      onType={(text) => onChange(text.trim() === '' ? undefined : text)}
      {...(onDone === undefined ? {} : { onDone })}
    />
  );
}

/** How it stands with the reckoning: under way, or why it can't be. */
export function ReckonState({
  busy,
  wrong,
}: {
  readonly busy: boolean;
  readonly wrong: string | null;
}): ReactNode {
  const units = useUnits();
  if (wrong !== null)
    return (
      <p role="alert" className="wrong">
        {wrong}
      </p>
    );
  return (
    <p role="status" className="quiet small pay-state">
      {busy ? say('page.pay.reckoning', {}, units) : ''}
    </p>
  );
}

/** Makes a paper and hands it to her; says what came of it. */
export function MakeButton({
  grounds,
  paper,
  look = 'plain',
  name,
  children,
}: {
  readonly grounds: PayGrounds;
  readonly paper: PayPaper;
  readonly look?: 'main' | 'plain' | 'quiet';
  readonly name?: string;
  readonly children: ReactNode;
}): ReactNode {
  const { make, told } = useMakePay();
  return (
    <>
      <Button look={look} {...(name === undefined ? {} : { name })} onPress={() => void make(grounds, paper)}>
        {children}
      </Button>
      {told !== null && (
        <p role="status" className={told.ok ? 'small' : 'small wrong'}>
          {told.text}
        </p>
      )}
    </>
  );
}

interface Told {
  readonly ok: boolean;
  readonly text: string;
}

export function useMakePay(): {
  readonly make: (grounds: PayGrounds, paper: PayPaper) => Promise<void>;
  readonly told: Told | null;
} {
  const units = useUnits();
  const tellIt = useTell();
  const [told, setTold] = useState<Told | null>(null);
  const make = async (grounds: PayGrounds, paper: PayPaper): Promise<void> => {
    setTold(null);
    const end = await makePay(grounds, paper);
    const refused = (why: string): void =>
      setTold({ ok: false, text: say('page.pay.not-made', { why }, units) });
    if (!end.ok) return refused(end.code === 'failed' ? end.why : end.code);
    if (!end.value.ok) {
      const { value } = end;
      if (value.code === 'refused') return refused(tell(value.why, units));
      const [first] = value.problems;
      return refused(first === undefined ? '' : fieldSentence(first, tellIt));
    }
    const { fileName, content } = end.value.value;
    download(fileName, content, content.type);
    setTold({ ok: true, text: say('page.pay.made', { file: fileName }, units) });
  };
  return { make, told };
}

/** A list that she adds to and takes from, each entry with its own fields. */
export function EntryList<T>({
  entries,
  nameOf,
  onTakeOut,
  add,
  onAdd,
  children,
}: {
  readonly entries: readonly T[];
  readonly nameOf: (entry: T, index: number) => string;
  readonly onTakeOut: (index: number) => void;
  /** What the button says that adds an entry. */
  readonly add: string;
  readonly onAdd: () => void;
  readonly children: (entry: T, index: number) => ReactNode;
}): ReactNode {
  const units = useUnits();
  return (
    <>
      <ul className="pay-entries">
        {entries.map((entry, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an entry is known by its place in the list.
          <li key={i} className="pay-entry">
            <div className="fields">{children(entry, i)}</div>
            <Button
              look="wrong"
              name={say('page.pay.take-out.what', { what: nameOf(entry, i) }, units)}
              onPress={() => onTakeOut(i)}
            >
              {say('page.pay.take-out', {}, units)}
            </Button>
          </li>
        ))}
      </ul>
      <div>
        <Button onPress={onAdd}>{add}</Button>
      </div>
    </>
  );
}
