import { type ReactNode, useRef, useState } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import type { UnitSystem } from '../../engine/units/index.ts';
import { closeKeypad, openKeypad, usesThumb } from './keypad.tsx';
import { shownLength, typedLength } from './shown-length.ts';

/** Letters of a text that an order takes; the engine refuses longer ones. */
export const LONGEST_TEXT = 80;

export interface LengthFieldProps {
  readonly label: string;
  /** As it stands in the order file; `undefined` leaves it to the rule. */
  readonly value: string | number | undefined;
  readonly units: UnitSystem;
  /** The length by the rule, shown while the field is empty (`inUnits`). */
  readonly byRule?: string;
  /** A quiet line under the field: where the value comes from. */
  readonly about?: ReactNode;
  /** What is wrong, from `useProblemAt`; shown when she has left the field, or at once if she has not touched it. */
  readonly problem?: string | null;
  /** Worth a second look, but no mistake. */
  readonly doubt?: string | null;
  /** The text as she types it; `undefined` when she empties the field. */
  readonly onChange: (text: string | undefined) => void;
  /** She has left the field: end the step of undo (`session.settle`). */
  readonly onDone?: () => void;
  /** Something small beside the label. */
  readonly aside?: ReactNode;
}

/**
 * A length in the maker's units: `20 1/2`, `52`, `52 cm`. On a phone our own keypad writes it. The document gets the
 * text as typed; while she is elsewhere the field shows it in the units of the order.
 */
export function LengthField(props: LengthFieldProps): ReactNode {
  const { label, value, units, byRule = '', about, problem = null, doubt = null, onChange, onDone } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const wrong = draft === null ? problem : null;
  const write = (text: string): void => {
    setDraft(text);
    onChange(text.trim() === '' ? undefined : text);
  };
  return (
    <TextField
      className="field"
      value={draft ?? shownLength(value, units)}
      onChange={write}
      isInvalid={wrong !== null}
      onFocus={() => {
        setDraft(typedLength(value, units));
        const { current } = input;
        if (current === null) return;
        requestAnimationFrame(() => current.select());
        if (usesThumb()) openKeypad({ input: current, units, write });
      }}
      onBlur={() => {
        setDraft(null);
        if (input.current !== null) closeKeypad(input.current);
        onDone?.();
      }}
    >
      <FieldHead label={label} aside={props.aside} />
      <span className="field-box">
        <Input
          ref={input}
          data-keypad
          inputMode={usesThumb() ? 'none' : 'decimal'}
          autoComplete="off"
          maxLength={LONGEST_TEXT}
          placeholder={byRule}
          onKeyDown={(event) => {
            if (event.key === 'Enter') event.currentTarget.blur();
          }}
        />
        <span className="field-unit" aria-hidden="true">
          {units}
        </span>
      </span>
      <FieldFoot about={about} wrong={wrong} doubt={draft === null ? doubt : null} />
    </TextField>
  );
}

export function FieldHead({
  label,
  aside,
}: {
  readonly label: string;
  readonly aside?: ReactNode;
}): ReactNode {
  return (
    <span className="field-head">
      <Label>{label}</Label>
      {aside}
    </span>
  );
}

/** What stands under a field: its mistake, or else its doubt, or else where the value comes from. */
export function FieldFoot({
  about,
  wrong,
  doubt = null,
}: {
  readonly about?: ReactNode;
  readonly wrong: string | null;
  readonly doubt?: string | null;
}): ReactNode {
  const said = wrong ?? doubt ?? about;
  if (said === undefined || said === null || said === '') return null;
  return (
    <Text
      slot={wrong === null ? 'description' : 'errorMessage'}
      className={
        wrong !== null ? 'field-foot wrong' : doubt !== null ? 'field-foot doubt' : 'field-foot quiet'
      }
    >
      {said}
    </Text>
  );
}
