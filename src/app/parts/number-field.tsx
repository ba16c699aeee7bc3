import { type ReactNode, useState } from 'react';
import { KeyedField } from './keyed-field.tsx';

/** A plain number: a count, a ratio, months. The document gets the number, or `undefined` when the field is emptied. */
export function NumberField({
  value,
  notANumber,
  onChange,
  onDone,
  ...rest
}: {
  readonly label: string;
  readonly value: number | undefined;
  readonly byRule?: string;
  readonly unit?: string;
  readonly about?: ReactNode;
  readonly problem?: string | null;
  /** Worth a second look, but no mistake. */
  readonly doubt?: string | null;
  /** Said when what she typed is no number; the document keeps the last one. */
  readonly notANumber: string;
  readonly onChange: (value: number | undefined) => void;
  readonly onDone?: () => void;
  readonly aside?: ReactNode;
}): ReactNode {
  const [unread, setUnread] = useState(false);
  const shown = value === undefined ? '' : String(value);
  return (
    <KeyedField
      {...rest}
      shown={shown}
      toType={shown}
      fractions={null}
      longest={12}
      refused={unread ? notANumber : null}
      onType={(text) => {
        const plain = text.trim().replace(',', '.');
        const number = Number(plain);
        const readable = plain === '' || (Number.isFinite(number) && !plain.endsWith('.'));
        setUnread(!readable);
        if (readable) onChange(plain === '' ? undefined : number);
      }}
      onDone={() => {
        setUnread(false);
        onDone?.();
      }}
    />
  );
}
