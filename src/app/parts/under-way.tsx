import type { ReactNode } from 'react';
import { Button } from './button.tsx';

/** Something that takes its time: what is being done, how far it is (null: not known yet), and a button that ends it. */
export function UnderWay({
  words,
  far,
  stop,
  onStop,
}: {
  readonly words: string;
  readonly far: { readonly value: number; readonly max: number } | null;
  readonly stop: string;
  readonly onStop: () => void;
}): ReactNode {
  return (
    <div className="stack">
      <p role="status">{words}</p>
      <progress className="under-way" aria-label={words} {...far} />
      <div>
        <Button onPress={onStop}>{stop}</Button>
      </div>
    </div>
  );
}
