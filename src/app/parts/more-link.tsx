import type { ReactNode } from 'react';

/** A small word beside a label that opens or closes a line of help under the field. */
export function MoreLink({
  word,
  name,
  open,
  onChange,
}: {
  readonly word: string;
  /** For screen readers, where the word alone does not say what about. */
  readonly name: string;
  readonly open: boolean;
  readonly onChange: (open: boolean) => void;
}): ReactNode {
  return (
    <button
      type="button"
      className="link small"
      aria-expanded={open}
      aria-label={name}
      onClick={() => onChange(!open)}
    >
      {word}
    </button>
  );
}
