import { withPiece } from '../piece/index.ts';
import { ownPiece, pieceParam } from './own-place.ts';
import { COMMON_PRACTICE, defineStep, done, textParam } from './step.ts';

/** Calls a piece as the maker calls it, wherever it is named. Its id, by which steps find it, stays. */
export const renamePiece = defineStep({
  id: 'rename-piece',
  stage: 'own',
  kind: null,
  params: { piece: pieceParam(), name: textParam('Front bodice', COMMON_PRACTICE) },
  words: {
    title: 'Rename a piece',
    about: 'Prints a name of your own on a piece. Other steps still find it by its old one.',
    piece: 'Piece',
    name: 'New name',
    'own-name': '{name}',
  },
  apply: ({ garment }, { piece: id, name }) => {
    const piece = ownPiece(garment, id);
    if (!piece.ok) return piece;
    return done(
      withPiece(garment, { ...piece.found, title: { key: 'rename-piece.own-name', values: { name } } }),
    );
  },
});
