/**
 * Does a long piece of work turn by turn, each up to the next `yield`, and lets the page go on between them; the first
 * after `wait` ms. Answers the function that breaks it off.
 */
export function inTurns(work: Generator<unknown, void>, wait = 0): () => void {
  let soon: ReturnType<typeof setTimeout> | undefined;
  const turn = (): void => {
    if (work.next().done !== true) soon = setTimeout(turn, 0);
  };
  soon = setTimeout(turn, wait);
  return () => clearTimeout(soon);
}
