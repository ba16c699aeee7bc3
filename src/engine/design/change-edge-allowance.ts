import { withPiece } from '../piece/index.ts';
import { edgeParam, ownEdge, pieceParam, refused } from './own-place.ts';
import { COMMON_PRACTICE, defineStep, done, lengthParam } from './step.ts';

/** Widest allowance that one edge is given, mm: a deep growth hem. */
const WIDEST = 250;

/** Gives one edge of one piece an allowance of its own. */
export const changeEdgeAllowance = defineStep({
  id: 'change-edge-allowance',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    edge: edgeParam('side'),
    allowance: lengthParam(
      () => 15,
      () => [0, WIDEST],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Allowance of one edge',
    about: 'Adds more or less than usual at one edge of one piece.',
    piece: 'Piece',
    edge: 'Edge',
    allowance: 'Allowance',
    draw: 'Allowance: {piece}',
    'draw.add': 'Add {allowance} outside "{edge}" when you cut.',
  },
  apply: ({ garment, bench }, { piece: id, edge: name, allowance: wished }) => {
    const on = ownEdge(garment, id, name);
    if (!on.ok) return on;
    const { piece, edge } = on.found;
    if (edge.kind === 'fold') return refused('own.on-fold', { piece: piece.title, edge: name });
    const allowance = bench.rounded(wished);
    bench.part(
      { key: 'change-edge-allowance.draw', values: { piece: piece.title } },
      piece.edges.map(({ path }) => path),
    );
    bench.tell(
      'change-edge-allowance.draw.add',
      { allowance: { mm: allowance }, edge: name },
      { lines: [edge.path] },
    );
    const edges = piece.edges.map((e) => (e.name === name ? { ...e, allowance } : e));
    return done(withPiece(garment, { ...piece, edges }));
  },
});
