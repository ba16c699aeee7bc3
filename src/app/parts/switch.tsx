import type { ReactNode } from 'react';
import { Switch as AriaSwitch } from 'react-aria-components';

/** On or off; the whole line is the target. */
export function Switch({
  label,
  value,
  onChange,
}: {
  readonly label: string;
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
}): ReactNode {
  return (
    <AriaSwitch className="switch" isSelected={value} onChange={onChange}>
      <span className="switch-track" aria-hidden="true">
        <span className="switch-knob" />
      </span>
      {label}
    </AriaSwitch>
  );
}
