import { type ReactNode, useState } from 'react';
import { TextField as AriaTextField, Input } from 'react-aria-components';
import { FieldFoot, FieldHead, LONGEST_TEXT } from './field-frame.tsx';

/**
 * A line of text, or a day of the calendar (`2027-06-12`). With `needed`, an emptied field keeps the last text, since
 * an order must have it.
 */
export function TextField(props: {
  readonly label: string;
  readonly value: string | undefined;
  readonly kind?: 'text' | 'day';
  /** What holds while the field is empty. */
  readonly byRule?: string;
  readonly about?: ReactNode;
  readonly problem?: string | null;
  /** Worth a second look, but no mistake. */
  readonly doubt?: string | null;
  /** Said while the field is empty, where a text is needed. */
  readonly needed?: string;
  readonly onChange: (text: string) => void;
  readonly onDone?: () => void;
  readonly aside?: ReactNode;
  readonly autoFocus?: boolean;
}): ReactNode {
  const { value = '', onChange, kind = 'text', needed } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const missing = needed !== undefined && (draft ?? value).trim() === '';
  const wrong = missing ? needed : draft === null ? (props.problem ?? null) : null;
  return (
    <AriaTextField
      className="field"
      value={draft ?? value}
      onChange={(text) => {
        const plain = text.replace(/\p{Cc}/gu, ' ');
        setDraft(plain);
        if (needed === undefined || plain.trim() !== '') onChange(plain);
      }}
      isInvalid={wrong !== null}
      onFocus={() => setDraft(value)}
      onBlur={() => {
        setDraft(null);
        props.onDone?.();
      }}
    >
      <FieldHead label={props.label} aside={props.aside} />
      <span className="field-box">
        <Input
          type={kind === 'day' ? 'date' : 'text'}
          autoComplete="off"
          maxLength={LONGEST_TEXT}
          placeholder={props.byRule ?? ''}
          autoFocus={props.autoFocus ?? false}
        />
      </span>
      <FieldFoot about={props.about} wrong={wrong} doubt={draft === null ? (props.doubt ?? null) : null} />
    </AriaTextField>
  );
}
