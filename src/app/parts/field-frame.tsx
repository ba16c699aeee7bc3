import type { ReactNode } from 'react';
import { Label, Text } from 'react-aria-components';

/** Letters of a text that an order takes; the engine refuses longer ones. */
export const LONGEST_TEXT = 80;

/** What a field is called, and something small beside it. */
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
