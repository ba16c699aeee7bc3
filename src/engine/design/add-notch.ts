import { place } from '../construct/index.ts';
import { pathAt } from '../geometry/index.ts';
import { edgeOf, type Garment, type Notch, pieceOf, withPiece } from '../piece/index.ts';
import { edgeParam, freeName, ownPlace, pieceParam } from './own-place.ts';
import { sewnTo } from './own-sewn.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  flagParam,
  lengthParam,
  ratioParam,
} from './step.ts';

/** Adds a notch of the maker's, and the ones that it must meet when the edge is sewn. */
export const addNotch = defineStep({
  id: 'add-notch',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    edge: edgeParam('side'),
    share: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    further: lengthParam(
      () => 0,
      () => [0, 3000],
      COMMON_PRACTICE,
    ),
    style: choiceParam(['single', 'double'], 'single', COMMON_PRACTICE),
    alsoOnSeam: flagParam(true, COMMON_PRACTICE),
  },
  words: {
    title: 'A notch more',
    about: 'Marks a place of an edge, and the place that is sewn to it.',
    piece: 'Piece',
    edge: 'Edge',
    share: 'At this share of the edge from its start (0 to 1)',
    further: 'And so much further on',
    style: 'Notch',
    'style.single': 'Single',
    'style.double': 'Double',
    alsoOnSeam: 'Also on the edge that is sewn to it',
    corner:
      'A notch at the very end of "{edge}" of {piece} cannot be told from its corner. Place it further in.',
    'place.notch': 'the notch',
    draw: 'A notch: {piece}',
    'draw.mark': 'Mark a notch {at} from the start of "{edge}", measured along it.',
  },
  apply: ({ garment, bench }, { piece: id, edge, share, further, style, alsoOnSeam }) => {
    const on = ownPlace(garment, bench, [id, edge], share, further);
    if (!on.ok) return on;
    const { piece, length, at } = on.found;
    if (at <= 0 || at >= length) return cannot('add-notch.corner', { edge, piece: piece.title });
    const match = freeName(
      garment.pieces.flatMap(({ notches }) => notches.map((notch) => notch.match)),
      'own-notch',
    );
    const mates = alsoOnSeam ? sewnTo(garment, id, edge, at) : [];
    let dress = garment;
    for (const mark of [{ piece: id, edge, at }, ...mates]) {
      dress = withNotch(dress, mark.piece, { edge: mark.edge, at: mark.at, style, match });
      const marked = pieceOf(dress, mark.piece);
      const { point } = pathAt(edgeOf(marked, mark.edge).path, mark.at);
      bench.part(
        { key: 'add-notch.draw', values: { piece: marked.title } },
        marked.edges.map(({ path }) => path),
      );
      bench.tell(
        'add-notch.draw.mark',
        { at: { mm: mark.at }, edge: mark.edge },
        { places: [place('add-notch.place.notch', point)] },
      );
    }
    return done(dress);
  },
});

function withNotch(garment: Garment, id: string, notch: Notch): Garment {
  const piece = pieceOf(garment, id);
  return withPiece(garment, { ...piece, notches: [...piece.notches, notch] });
}
