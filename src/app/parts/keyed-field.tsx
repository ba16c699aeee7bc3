import { type ReactNode, useEffect, useRef, useState } from 'react';
import { Input, TextField } from 'react-aria-components';
import type { UnitSystem } from '../../engine/units/index.ts';
import { FieldFoot, FieldHead } from './field-frame.tsx';
import { closeKeypad, openKeypad, usesThumb } from './keypad.tsx';

interface KeyedFieldProps {
  readonly label: string;
  /** What stands in the field while she is elsewhere. */
  readonly shown: string;
  /** What she finds in it to type over. */
  readonly toType: string;
  /** In whose fractions the keypad writes; null: a plain number. */
  readonly fractions: UnitSystem | null;
  readonly unit?: string;
  readonly byRule?: string;
  readonly about?: ReactNode;
  /** What is wrong with the value of the document; shown while she is not typing. */
  readonly problem?: string | null;
  /** Why what she types can't be taken; shown at once. */
  readonly refused?: string | null;
  readonly doubt?: string | null;
  readonly longest: number;
  /** Enter leaves the field. */
  readonly doneByEnter?: boolean;
  readonly onType: (text: string) => void;
  readonly onDone?: () => void;
  readonly aside?: ReactNode;
}

/** A field of numbers: on a phone our own keypad writes it. Its text is hers while she types, and then that of the document. */
export function KeyedField(props: KeyedFieldProps): ReactNode {
  const { toType, fractions, unit, problem = null, refused = null, doubt = null, onType } = props;
  const [isIn, setIn] = useState(false);
  const [draft, setDraft] = useState<string | null>(null);
  /** The next change of the document is the one that she typed. */
  const typed = useRef(false);
  const input = useRef<HTMLInputElement>(null);
  const wrong = refused ?? (isIn ? null : problem);
  const write = (text: string): void => {
    typed.current = true;
    setDraft(text);
    onType(text);
  };
  // A point that she drags, or undo, changes the number while she is in its field: then the field follows.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it follows a change of the document.
  useEffect(() => {
    if (!typed.current) setDraft(null);
    typed.current = false;
  }, [toType]);
  return (
    <TextField
      className="field"
      value={draft ?? (isIn ? toType : props.shown)}
      onChange={write}
      isInvalid={wrong !== null}
      onFocus={() => {
        setIn(true);
        const { current } = input;
        if (current === null) return;
        requestAnimationFrame(() => current.select());
        if (usesThumb()) openKeypad({ input: current, units: fractions, write });
      }}
      onBlur={() => {
        setDraft(null);
        typed.current = false;
        const { current } = input;
        // The page moves when the keypad goes and a sentence comes; the touch by which she left is heard first.
        setTimeout(() => {
          if (document.activeElement === current) return;
          setIn(false);
          if (current !== null) closeKeypad(current);
        });
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
          maxLength={props.longest}
          placeholder={props.byRule ?? ''}
          onKeyDown={(event) => {
            if (props.doneByEnter === true && event.key === 'Enter') event.currentTarget.blur();
          }}
        />
        {unit !== undefined && (
          <span className="field-unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
      <FieldFoot about={props.about} wrong={wrong} doubt={isIn ? null : doubt} />
    </TextField>
  );
}
