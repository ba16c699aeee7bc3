import { type ReactNode, useEffect, useState } from 'react';
import { createStore, useStore } from 'zustand';
import { say } from '../../engine/words/index.ts';
import { Button } from './button.tsx';

interface Note {
  readonly number: number;
  readonly text: string;
  /** What can be done about it. */
  readonly act: { readonly word: string; readonly run: () => void } | null;
}

const notes = createStore<{ readonly list: readonly Note[]; readonly next: number }>(() => ({
  list: [],
  next: 1,
}));

/** Says something in passing, with a button where something can be done about it. */
export function toast(text: string, act: Note['act'] = null): void {
  notes.setState(({ list, next }) => ({
    list: [...list, { number: next, text, act }].slice(-2),
    next: next + 1,
  }));
}

/** Says in passing what has been done, with a button that takes it back. */
export function toastDone(text: string, takeBack: () => void): void {
  toast(text, { word: say('page.undo', {}, 'in'), run: takeBack });
}

function drop(number: number): void {
  notes.setState(({ list }) => ({ list: list.filter((note) => note.number !== number) }));
}

/** How long a note stays: long enough to read it twice and reach the button. */
const STAYS = 9000;

/** Where notes appear; stands once, at the root of the page. */
export function Toasts(): ReactNode {
  const list = useStore(notes, (state) => state.list);
  return (
    <div className="toasts" role="status">
      {list.map((note) => (
        <OneToast key={note.number} note={note} />
      ))}
    </div>
  );
}

function OneToast({ note }: { readonly note: Note }): ReactNode {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    if (held) return;
    const end = setTimeout(() => drop(note.number), STAYS);
    return () => clearTimeout(end);
  }, [held, note.number]);
  const { act } = note;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: being pointed at only keeps the note a little longer.
    <div
      className="toast"
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <span>{note.text}</span>
      {act !== null && (
        <Button
          look="quiet"
          onPress={() => {
            drop(note.number);
            act.run();
          }}
        >
          {act.word}
        </Button>
      )}
    </div>
  );
}
