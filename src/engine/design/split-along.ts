import { pathReverse } from '../geometry/index.ts';
import {
  type OutlinePlace,
  outlineOf,
  type Piece,
  type Seam,
  splitPiece,
  withSplit,
} from '../piece/index.ts';
import { markingsApart, ownLine } from './own-line.ts';
import { copiesOf, edgeParam, freeName, type OwnPlace, pieceParam, unsound } from './own-place.ts';
import {
  COMMON_PRACTICE,
  choiceParam,
  defineStep,
  done,
  lengthParam,
  ratioParam,
  textParam,
} from './step.ts';

const CLOTHS = ['as-before', 'main', 'yoke', 'skirt', 'lining', 'net', 'trim'] as const;

/** Cuts a piece in two along a line that she draws, and sews both parts together along it. */
export const splitAlong = defineStep({
  id: 'split-along',
  stage: 'own',
  kind: null,
  params: {
    piece: pieceParam(),
    from: edgeParam('shoulder'),
    fromShare: ratioParam(() => 0.5, [0, 1], COMMON_PRACTICE),
    to: edgeParam('waist'),
    toShare: ratioParam(() => 0.4, [0, 1], COMMON_PRACTICE),
    bow: lengthParam(
      () => 0,
      () => [0, 300],
      COMMON_PRACTICE,
    ),
    bows: choiceParam(['left', 'right'], 'left', COMMON_PRACTICE),
    name: textParam('second part', COMMON_PRACTICE),
    cloth: choiceParam(CLOTHS, 'as-before', COMMON_PRACTICE),
  },
  words: {
    title: 'Split a piece',
    about: 'Cuts a piece in two along a line of your own. The part without the fold is the new one.',
    piece: 'Piece',
    from: 'From this edge',
    fromShare: 'At this share of it from its start (0 to 1)',
    to: 'To this edge',
    toShare: 'At this share of that from its start (0 to 1)',
    bow: 'Curved out of the straight by',
    bows: 'Seen along the line, curved to the',
    'bows.left': 'Left',
    'bows.right': 'Right',
    name: 'Name of the new part',
    cloth: 'Cloth of the new part',
    'cloth.as-before': 'As before',
    'cloth.main': 'Main cloth',
    'cloth.yoke': 'Cloth of the yoke',
    'cloth.skirt': 'Cloth of the skirt',
    'cloth.lining': 'Lining',
    'cloth.net': 'Net',
    'cloth.trim': 'Cloth of the trimmings',
    part: '{piece}, {name}',
    draw: 'Split: {piece}',
    'draw.places':
      'Mark a place {fromAt} from the start of "{from}", and one {toAt} from the start of "{to}".',
    'draw.straight': 'Draw a straight line from the first to the second.',
    'draw.curve':
      'Draw a line from the first to the second that curves {bow} out of the straight in its middle.',
    'draw.apart': 'Trace both parts apart. Both edges of the line get a seam allowance.',
  },
  apply: ({ garment, bench }, values) => {
    const bow = bench.rounded(values.bow);
    const drawn = ownLine(garment, bench, values, values.bows === 'left' ? bow : -bow);
    if (!drawn.ok) return drawn;
    const { piece } = drawn.found;
    // What keeps the fold keeps the name: the line is walked so that the fold lies in the part that is left.
    const turned = foldIsCutOff(piece, drawn.found.from, drawn.found.to);
    const [from, to] = turned ? [drawn.found.to, drawn.found.from] : [drawn.found.from, drawn.found.to];
    const path = turned ? pathReverse(drawn.found.path) : drawn.found.path;
    const lineName = freeName(
      piece.edges.map((edge) => edge.name),
      'own-line',
    );
    const split = splitPiece(piece, place(from), place(to), path, lineName, {
      id: freeName(
        garment.pieces.map((p) => p.id),
        `${piece.id}-part`,
      ),
      title: { key: 'split-along.part', values: { piece: piece.title, name: values.name } },
      cloth: values.cloth === 'as-before' ? piece.cloth : values.cloth,
    });
    const [off, kept] = markingsApart(piece.markings, path, outlineOf(split.cutOff));
    const parts = {
      ...split,
      cutOff: offTheFold({ ...split.cutOff, markings: off }),
      rest: offTheFold({ ...split.rest, markings: kept }),
    };
    const problem = unsound(piece, parts.cutOff) ?? unsound(piece, parts.rest);
    if (problem !== null) return problem;
    const dress = withSplit(garment, piece, parts);
    const side = { edge: lineName, times: copiesOf(piece) };
    const seam: Seam = {
      id: freeName(
        garment.seams.map(({ id }) => id),
        'own-seam',
      ),
      name: 'own',
      a: [{ ...side, piece: parts.cutOff.id }],
      b: [{ ...side, piece: parts.rest.id, reversed: true }],
      join: { kind: 'flat' },
      smoothStart: isInsideEdge(from),
      smoothEnd: isInsideEdge(to),
    };
    bench.part(
      { key: 'split-along.draw', values: { piece: piece.title } },
      piece.edges.map((edge) => edge.path),
    );
    const { from: first, to: second } = drawn.found;
    bench.tell('split-along.draw.places', {
      from: first.edge.name,
      fromAt: { mm: first.at },
      to: second.edge.name,
      toAt: { mm: second.at },
    });
    const lines = { lines: [path] };
    if (bow === 0) bench.tell('split-along.draw.straight', {}, lines);
    else bench.tell('split-along.draw.curve', { bow: { mm: bow } }, lines);
    bench.tell('split-along.draw.apart', {});
    return done({ ...dress, seams: [...dress.seams, seam] });
  },
});

const place = ({ edge, at }: OwnPlace): OutlinePlace => ({ edge: edge.name, at });

const isInsideEdge = ({ at, length }: OwnPlace): boolean => at > 0 && at < length;

/** True where the way from the second place on round to the first leads over a fold, and the way between them over none. */
function foldIsCutOff(piece: Piece, from: OwnPlace, to: OwnPlace): boolean {
  const run = edgesBetween(piece, from, to);
  const isFold = (name: string): boolean => piece.edges.some((e) => e.name === name && e.kind === 'fold');
  return !run.some(isFold) && piece.edges.some((edge) => edge.kind === 'fold');
}

/** The edges that the outline runs over from one place forward to another. */
function edgesBetween(piece: Piece, from: OwnPlace, to: OwnPlace): readonly string[] {
  const names = piece.edges.map((edge) => edge.name);
  const [first, last] = [names.indexOf(from.edge.name), names.indexOf(to.edge.name)];
  const run =
    first <= last ? names.slice(first, last + 1) : [...names.slice(first), ...names.slice(0, last + 1)];
  return run.filter(
    (name) => !(name === from.edge.name && from.at >= from.length) && !(name === to.edge.name && to.at <= 0),
  );
}

/** A part that no longer lies on the fold is cut twice, mirrored. */
function offTheFold(piece: Piece): Piece {
  if (piece.cutting.as !== 'fold' || piece.edges.some((edge) => edge.kind === 'fold')) return piece;
  return { ...piece, cutting: { as: 'pair', copies: 2 * piece.cutting.copies } };
}
