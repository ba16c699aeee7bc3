const MOST_SHOWN = 40;

/** Marks that turn the direction of text around and so can hide what it says. */
const TURNS_TEXT = /[\u{202a}-\u{202e}\u{2066}-\u{2069}]/gu;

/** What was found, as it stands in the file, short enough for a sentence. */
export function shown(value: unknown): string {
  const text = (JSON.stringify(value) ?? 'nothing').replace(
    TURNS_TEXT,
    (sign) => `\\u${sign.charCodeAt(0).toString(16)}`,
  );
  const letters = [...text];
  return letters.length <= MOST_SHOWN ? text : `${letters.slice(0, MOST_SHOWN - 1).join('')}…`;
}
