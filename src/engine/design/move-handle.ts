import {
  add,
  between,
  cubic,
  distance,
  type Path,
  pathOf,
  pathReverse,
  pathStartTangent,
  rotate,
  type Segment,
  scale,
  subtract,
} from '../geometry/index.ts';
import { reshape } from '../piece/index.ts';
import { edgeParam, notchesKept, ownEdge, pieceParam, refused, withChanged } from './own-place.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, ratioParam } from './step.ts';

/** Changes how a curve sets out from a corner: how far it keeps its direction, and the direction itself. */
export const moveHandle = defineStep({
  id: 'move-handle',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    edge: edgeParam('neckline'),
    end: choiceParam(['start', 'end'], 'start', COMMON_PRACTICE),
    reach: ratioParam(() => 1.1, [0.1, 3], COMMON_PRACTICE),
    turn: ratioParam(() => 0, [-60, 60], COMMON_PRACTICE),
  },
  words: {
    title: 'Bend a curve',
    about: 'Changes how a curve sets out from one of its ends. A straight edge becomes a curve.',
    piece: 'Piece',
    edge: 'Edge',
    end: 'At which end of the edge',
    'end.start': 'Its start',
    'end.end': 'Its end',
    reach: 'Keeps its direction so many times as far',
    turn: 'Turned outward by so many degrees (less than 0: inward)',
    stays: 'The curve would stay as it is. Say how it changes.',
    draw: 'A curve bent: {piece}',
    'draw.turn':
      'At the {end} of "{edge}" turn the direction of the curve outward by {turn} degrees (less than 0: inward) and let it keep that direction {reach} times as far as before. The other end stays.',
    'word.start': 'start',
    'word.end': 'end',
  },
  apply: ({ garment, bench }, { piece: id, edge: name, end, reach, turn }) => {
    const on = ownEdge(garment, id, name);
    if (!on.ok) return on;
    const { piece, edge } = on.found;
    if (edge.kind === 'fold') return refused('own.on-fold', { piece: piece.title, edge: name });
    if (reach === 1 && turn === 0) return cannot('move-handle.stays');
    const bent = bendEnd(edge.path, end, reach, (turn * Math.PI) / 180);
    const changed = withChanged(garment, notchesKept(piece, reshape(piece, { [name]: bent })));
    if (!changed.ok) return changed;
    bench.part(
      { key: 'move-handle.draw', values: { piece: piece.title } },
      piece.edges.map(({ path }) => path),
    );
    bench.tell(
      'move-handle.draw.turn',
      { end: { word: `move-handle.word.${end}` }, edge: name, turn, reach },
      { lines: [bent] },
    );
    return done(changed.found);
  },
});

/** The path with the handle at one end drawn out or in and turned, radians, positive away from the cloth. */
function bendEnd(path: Path, end: 'start' | 'end', reach: number, outward: number): Path {
  // Walked backwards the cloth lies on the other hand.
  if (end === 'end') return pathReverse(bendStart(pathReverse(path), reach, outward));
  return bendStart(path, reach, -outward);
}

function bendStart(path: Path, reach: number, turned: number): Path {
  const [first, ...rest] = path.segments;
  const curve = asCubic(first);
  const handle = subtract(curve.c1, curve.from);
  const drawn =
    distance(curve.c1, curve.from) > 1e-6
      ? handle
      : scale(pathStartTangent(path), distance(curve.from, curve.to) / 3);
  return pathOf(
    cubic(curve.from, add(curve.from, scale(rotate(drawn, turned), reach)), curve.c2, curve.to),
    ...rest,
  );
}

const asCubic = (s: Segment) =>
  s.kind === 'cubic' ? s : cubic(s.from, between(s.from, s.to, 1 / 3), between(s.from, s.to, 2 / 3), s.to);
