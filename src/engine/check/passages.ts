import {
  edgeAt,
  type Notch,
  type Piece,
  type PieceId,
  pieceAt,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import type { Look } from './look.ts';

/** A notch as it is met when one side of a seam is walked: mm from the start of that side, flat. */
export interface MetNotch {
  readonly piece: Piece;
  readonly notch: Notch;
  readonly at: number;
}

export interface WalkedSide {
  readonly length: number;
  readonly notches: readonly MetNotch[];
}

/** One passage over an edge. */
interface Passage {
  readonly edge: SeamEdge;
  readonly backwards: boolean;
}

/**
 * Walks both sides of a seam from their common start. When every edge counts the same number of times, the seam is
 * sewn that often, each time alike: one of them is walked, and `share` says how many there are. Otherwise the
 * copies follow each other, mirrored in turn where the piece is cut on the fold or in pairs.
 */
export function walkSeam(look: Look, seam: Seam): { share: number; a: WalkedSide; b: WalkedSide } {
  const times = new Set([...seam.a, ...seam.b].map((at) => at.times));
  const [first] = times;
  const alike = times.size === 1 && first !== undefined;
  const walk = (side: readonly SeamEdge[]): WalkedSide =>
    walkSide(look, alike ? side.map(once) : side.flatMap((edge) => copies(look, edge)));
  return { share: alike ? first : 1, a: walk(seam.a), b: walk(seam.b) };
}

const once = (edge: SeamEdge): Passage => ({ edge, backwards: edge.reversed === true });

function copies(look: Look, edge: SeamEdge): Passage[] {
  const mirrored = pieceAt(look, edge).cutting.as !== 'single';
  return Array.from({ length: edge.times }, (_, i) => ({
    edge,
    backwards: (edge.reversed === true) !== (mirrored && i % 2 === 1),
  }));
}

function walkSide(look: Look, passages: readonly Passage[]): WalkedSide {
  let length = 0;
  const notches: MetNotch[] = [];
  for (const { edge, backwards } of passages) {
    const piece = pieceAt(look, edge);
    const run = look.lengthOf(edgeAt(look, edge).path);
    for (const notch of piece.notches) {
      if (notch.edge !== edge.edge) continue;
      notches.push({ piece, notch, at: length + (backwards ? run - notch.at : notch.at) });
    }
    length += run;
  }
  return { length, notches };
}

/** Names a notch of the garment, so that those can be told that no seam brings to a mate. */
export const notchKey = (piece: PieceId, notch: Notch): string =>
  `${piece} ${notch.edge} ${notch.match} ${notch.at}`;
