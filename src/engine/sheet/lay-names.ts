import type { LaidOnCloth, Lay } from '../lay/index.ts';

/** `3`, or `3a` and `3b` where a piece is placed several times: the number of the cut list. */
export function placingName(piece: LaidOnCloth, { stretches }: Lay): string {
  const number = `${piece.piece + 1}`;
  const alike = stretches.flatMap(({ pieces }) => pieces.filter((other) => other.piece === piece.piece));
  return alike.length < 2 ? number : `${number}${letters(alike.indexOf(piece))}`;
}

/** a to z, then aa, ab, ... */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : `${letters(Math.floor(index / 26) - 1)}${last}`;
}
