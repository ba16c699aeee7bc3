import { edgeAt, type Piece, pieceOf } from '../piece/index.ts';
import type { Saying, WordKey, WordValue, WordValues } from '../words/index.ts';
import { keyOf, type SewLook } from './look.ts';
import type { EdgeRef } from './step.ts';

/** A sentence of the core catalogue; the key is checked by the compiler. */
export const tell = (key: WordKey, values: WordValues = {}): Saying => ({ key, values });

/** `Front, Back and Sleeve`: each named once, in the order in which they are handled. */
export function listed(items: readonly WordValue[]): WordValue {
  const [first, second, ...rest] = items;
  if (first === undefined) return '';
  if (second === undefined) return first;
  if (rest.length === 0) return tell('sew.list.and', { first, second });
  return tell('sew.list.comma', { first, rest: listed([second, ...rest]) });
}

const titlesOf = (pieces: readonly Piece[]): WordValue => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return listed([...byId.values()].map((piece) => piece.title));
};

/** The pieces of some edges, by their titles. */
export const piecesOf = (look: SewLook, at: readonly EdgeRef[]): WordValue =>
  titlesOf(at.map(({ piece }) => pieceOf(look.garment, piece)));

/** `the neckline of Front`, `the waist line of Skirt back`: edges by the names of the trade, each once. */
export function edgesOf(look: SewLook, at: readonly EdgeRef[]): WordValue {
  const byKind = new Map<string, EdgeRef[]>();
  for (const ref of at) {
    const { kind } = edgeAt(look, ref);
    byKind.set(kind, [...(byKind.get(kind) ?? []), ref]);
  }
  return listed(
    [...byKind].map(([kind, refs]) => {
      const once = [...new Map(refs.map((ref) => [keyOf(ref), ref])).values()];
      const values = {
        edge: { word: `check.edge.${kind}` },
        pieces: piecesOf(look, once),
      };
      return tell('sew.edge-of', values);
    }),
  );
}
