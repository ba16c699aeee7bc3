import type { ReactNode } from 'react';
import type { UnitSystem } from '../../engine/units/index.ts';
import { LONGEST_TEXT } from './field-frame.tsx';
import { KeyedField } from './keyed-field.tsx';
import { shownLength, typedLength } from './shown-length.ts';

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
 * A length in the maker's units: `20 1/2`, `52`, `52 cm`. The document gets the text as typed; while she is elsewhere
 * the field shows it in the units of the order.
 */
export function LengthField({ value, units, onChange, ...rest }: LengthFieldProps): ReactNode {
  return (
    <KeyedField
      {...rest}
      shown={shownLength(value, units)}
      toType={typedLength(value, units)}
      fractions={units}
      unit={units}
      longest={LONGEST_TEXT}
      doneByEnter
      onType={(text) => onChange(text.trim() === '' ? undefined : text)}
    />
  );
}
