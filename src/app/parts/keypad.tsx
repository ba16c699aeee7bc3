import { type ReactNode, useEffect, useState } from 'react';
import { createStore, useStore } from 'zustand';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { pressKey, TAKE_BACK } from './keypad-text.ts';

/** The field for which the keypad writes. */
interface KeypadField {
  readonly input: HTMLInputElement;
  /** Null: a plain number without fractions. */
  readonly units: UnitSystem | null;
  /** Writes the field anew. */
  readonly write: (text: string) => void;
}

const field = createStore<{ readonly now: KeypadField | null; readonly fresh: boolean }>(() => ({
  now: null,
  fresh: true,
}));

/** Whether this device is worked with a thumb, and so gets our keypad rather than its own keyboard. */
export const usesThumb = (): boolean => matchMedia('(pointer: coarse)').matches;

export function openKeypad(now: KeypadField): void {
  field.setState({ now, fresh: true });
}

export function closeKeypad(input: HTMLInputElement): void {
  if (field.getState().now?.input === input) field.setState({ now: null });
}

const EIGHTHS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
const SIXTEENTHS = ['1/16', '3/16', '5/16', '7/16', '9/16', '11/16', '13/16', '15/16'];

/**
 * The keypad at the foot of a phone: digits, fractions of an inch, take back, next. Stands once, at the root of the
 * page, and writes for the length or number field that has the focus.
 */
export function Keypad(): ReactNode {
  const now = useStore(field, (state) => state.now);
  const [fine, setFine] = useState(false);
  useEffect(() => {
    document.documentElement.toggleAttribute('data-keypad', now !== null);
    now?.input.scrollIntoView({ block: 'center' });
  }, [now]);
  if (now === null) return null;

  const press = (key: string): void => {
    const { fresh } = field.getState();
    now.write(pressKey(fresh && key !== TAKE_BACK && !key.includes('/') ? '' : now.input.value, key));
    field.setState({ fresh: false });
  };
  const digit = (key: string): ReactNode => <Key key={key} name={key} text={key} press={() => press(key)} />;
  const keys = (list: readonly string[], className: string): ReactNode => (
    <div className={className}>
      {list.map((key) => (
        <Key key={key} name={key} text={key} press={() => press(key)} />
      ))}
    </div>
  );
  return (
    <fieldset className="keypad" aria-label={say('page.keypad', {}, 'in')}>
      {now.units === 'in' && keys(fine ? SIXTEENTHS : EIGHTHS, 'keypad-fractions')}
      <div className="keypad-digits">
        {['7', '8', '9'].map(digit)}
        <Key
          name={say('page.keypad.back', {}, 'in')}
          text="⌫"
          shape={now.units === 'in' ? '' : 'key-tall'}
          press={() => press(TAKE_BACK)}
        />
        {['4', '5', '6'].map(digit)}
        {now.units === 'in' && (
          <Key
            name={say(fine ? 'page.keypad.eighths' : 'page.keypad.sixteenths', {}, 'in')}
            text={fine ? '1/8' : '1/16'}
            press={() => setFine(!fine)}
          />
        )}
        {['1', '2', '3'].map(digit)}
        <Key name={say('page.keypad.next', {}, 'in')} shape="key-main" press={() => nextField(now.input)} />
        <Key name={say('page.keypad.point', {}, 'in')} text="." press={() => press('.')} />
        <Key name="0" text="0" shape="key-wide" press={() => press('0')} />
      </div>
    </fieldset>
  );
}

/** Pressing a key must not take the focus from the field that it writes for. */
function Key({
  name,
  text,
  press,
  shape = '',
}: {
  readonly name: string;
  readonly text?: string;
  readonly press: () => void;
  readonly shape?: string;
}): ReactNode {
  return (
    <button
      type="button"
      tabIndex={-1}
      aria-label={name}
      className={`key ${shape} ${text?.includes('/') === true ? 'fraction' : ''}`}
      onPointerDown={(event) => event.preventDefault()}
      onMouseDown={(event) => event.preventDefault()}
      onClick={press}
    >
      {text ?? name}
    </button>
  );
}

/** Goes to the next length or number of the page; leaves the field after the last. */
function nextField(input: HTMLInputElement): void {
  const fields = [...document.querySelectorAll<HTMLInputElement>('input[data-keypad]:not(:disabled)')];
  const next = fields[fields.indexOf(input) + 1];
  if (next === undefined) input.blur();
  else next.focus();
}
