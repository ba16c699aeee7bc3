/** The known word that a mistyped one is likely meant to be; null when none is near enough to be worth a guess. */
export function nearest(typed: string, known: readonly string[]): string | null {
  const plain = plainWord(typed);
  let best: { word: string; edits: number } | null = null;
  for (const word of known) {
    const edits = editsBetween(plain, plainWord(word));
    if (best === null || edits < best.edits) best = { word, edits };
  }
  if (best === null) return null;
  return best.edits <= Math.max(1, Math.floor(best.word.length / 3)) ? best.word : null;
}

/** Longer words than any field are cut, so that the comparison stays short. */
const LONGEST = 40;

const plainWord = (word: string): string =>
  word
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[\s_-]/g, '');

/** Levenshtein distance: how many letters must be added, dropped or changed. */
function editsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
