import type { ReactNode, Ref } from 'react';
import { Button as AriaButton } from 'react-aria-components';

/**
 * A button. `main`: the one action of a place. `plain`: framed. `quiet`: text only. `wrong`: takes something away.
 * `name` for screen readers where the text alone does not say what is acted on ("Copy": "Copy the garden party").
 */
export function Button({
  look = 'plain',
  name,
  disabled = false,
  onPress,
  children,
  ref,
}: {
  readonly look?: 'main' | 'plain' | 'quiet' | 'wrong';
  readonly name?: string;
  readonly disabled?: boolean;
  readonly onPress?: () => void;
  readonly children: ReactNode;
  readonly ref?: Ref<HTMLButtonElement>;
}): ReactNode {
  return (
    <AriaButton
      {...(ref === undefined ? {} : { ref })}
      {...(name === undefined ? {} : { 'aria-label': name })}
      className={`button button-${look}`}
      isDisabled={disabled}
      {...(onPress === undefined ? {} : { onPress })}
    >
      {children}
    </AriaButton>
  );
}
