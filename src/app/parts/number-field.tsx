import { type ReactNode, useRef, useState } from 'react';
import { Input, TextField } from 'react-aria-components';
import { closeKeypad, openKeypad, usesThumb } from './keypad.tsx';
import { FieldFoot, FieldHead } from './length-field.tsx';

/** A plain number: a count, a ratio, months. The document gets the number, or `undefined` when the field is emptied. */
export function NumberField(props: {
  readonly label: string;
  readonly value: number | undefined;
  readonly byRule?: string;
  readonly unit?: string;
  readonly about?: ReactNode;
  readonly problem?: string | null;
  /** Said when what she typed is no number; the document keeps the last one. */
  readonly notANumber: string;
  readonly onChange: (value: number | undefined) => void;
  readonly onDone?: () => void;
  readonly aside?: ReactNode;
}): ReactNode {
  const { value, onChange } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const [unread, setUnread] = useState(false);
  const input = useRef<HTMLInputElement>(null);
  const write = (text: string): void => {
    setDraft(text);
    const plain = text.trim().replace(',', '.');
    const number = Number(plain);
    const readable = plain === '' || (Number.isFinite(number) && !plain.endsWith('.'));
    setUnread(!readable);
    if (readable) onChange(plain === '' ? undefined : number);
  };
  const wrong = unread ? props.notANumber : draft === null ? (props.problem ?? null) : null;
  return (
    <TextField
      className="field"
      value={draft ?? (value === undefined ? '' : String(value))}
      onChange={write}
      isInvalid={wrong !== null}
      onFocus={() => {
        setDraft(value === undefined ? '' : String(value));
        const { current } = input;
        if (current === null) return;
        requestAnimationFrame(() => current.select());
        if (usesThumb()) openKeypad({ input: current, units: null, write });
      }}
      onBlur={() => {
        setDraft(null);
        setUnread(false);
        if (input.current !== null) closeKeypad(input.current);
        props.onDone?.();
      }}
    >
      <FieldHead label={props.label} aside={props.aside} />
      <span className="field-box">
        <Input
          ref={input}
          data-keypad
          inputMode={usesThumb() ? 'none' : 'decimal'}
          autoComplete="off"
          maxLength={12}
          placeholder={props.byRule ?? ''}
        />
        {props.unit !== undefined && (
          <span className="field-unit" aria-hidden="true">
            {props.unit}
          </span>
        )}
      </span>
      <FieldFoot about={props.about} wrong={wrong} />
    </TextField>
  );
}
