import same from 'fast-deep-equal';
import { type BodyInput, type CompletedBody, completeBody, type DoubtContext } from '../body/index.ts';
import type { Garment } from '../piece/index.ts';

// While a number is dragged, most of a dress stays as it is. What is the same as in the drawing before is taken over
// as the same object, so that nothing which rests on it alone (a body, a cutting line, lines on a screen) is done anew.

/** A body with all that it was completed from. */
export interface KnownBody {
  readonly input: BodyInput;
  readonly context: DoubtContext;
  readonly completed: CompletedBody;
}

/** The completed body, that of before where it rests on equal numbers. */
export function knownBody(input: BodyInput, context: DoubtContext, before: KnownBody | null): KnownBody {
  if (before !== null && same(before.input, input) && same(before.context, context)) return before;
  return { input, context, completed: completeBody(input, context) };
}

/** The garment with every piece that is equal to the one before of its id being that very piece. */
export function withPiecesOf(before: Garment, garment: Garment): Garment {
  const known = new Map(before.pieces.map((piece) => [piece.id, piece]));
  const pieces = garment.pieces.map((piece) => {
    const old = known.get(piece.id);
    return old !== undefined && same(old, piece) ? old : piece;
  });
  return { ...garment, pieces };
}
