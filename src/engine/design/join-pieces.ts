import {
  distance,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathMirrorX,
  pathReverse,
  pathRotate,
  pathStart,
  pathTranslate,
  subtract,
} from '../geometry/index.ts';
import type { Edge, EdgeName, Garment, Notch, Piece, Seam, SeamEdge } from '../piece/index.ts';
import { copiesOf, edgeParam, freeName, ownEdge, pieceParam, unsound } from './own-place.ts';
import { seamsThrough } from './own-seams.ts';
import { pullEnd } from './pull-end.ts';
import { cannot, defineStep, done, type StepOutcome } from './step.ts';

/** Edges that lie this near to each other all along are one line, mm. */
const ONE_LINE = 0.5;

/** Lays two pieces together along a flat seam and cuts them as one. The piece on the fold keeps its name. */
export const joinPieces = defineStep({
  id: 'join-pieces',
  stage: 'own',
  kind: null,
  params: { piece: pieceParam(), edge: edgeParam('side') },
  words: {
    title: 'Join two pieces',
    about: 'Cuts two pieces in one, without the seam between them. The one on the fold keeps its name.',
    piece: 'Piece',
    edge: 'The edge at which it is joined',
    'no-seam':
      'The "{edge}" of {piece} is not sewn flat to one edge of another piece and to nothing else. Choose another edge.',
    'not-one-line': '"{edge}" of {piece} and {other} are shaped, so the two pieces cannot lie side by side.',
    'not-alike':
      '{piece} and {other} are not cut equally often from cloth lying the same way. They cannot be cut in one.',
    draw: 'Two pieces in one: {piece}',
    'draw.lay':
      'Lay {other} against {piece}, "{edge}" on "{otherEdge}", and trace both as one piece. The seam falls away.',
    'draw.turned': 'Turn {other} over before you lay it down.',
    'draw.second-fold': 'Only one fold is left: the other centre line becomes a seam.',
  },
  apply: ({ garment, bench }, { piece: id, edge: name }) => {
    const on = ownEdge(garment, id, name);
    if (!on.ok) return on;
    const sewn = soleSeam(garment, id, name);
    if (sewn === null) return cannot('join-pieces.no-seam', { piece: on.found.piece.title, edge: name });
    const mate = ownEdge(garment, sewn.mate.piece, sewn.mate.edge);
    if (!mate.ok) return mate;
    const swapped = on.found.piece.cutting.as !== 'fold' && mate.found.piece.cutting.as === 'fold';
    const [kept, other] = swapped ? [mate.found, on.found] : [on.found, mate.found];
    const facts = { piece: kept.piece.title, other: other.piece.title, edge: kept.edge.name };
    const mirrored = sewn.sameWay;
    if (!cutAlike(kept.piece, other.piece, mirrored)) return cannot('join-pieces.not-alike', facts);
    const laid = layAgainst(kept.edge.path, other.piece, other.edge.name, mirrored);
    if (laid === null) return cannot('join-pieces.not-one-line', facts);
    const joined = joinOutlines(kept.piece, kept.edge.name, laid);
    const problem = unsound(kept.piece, joined.piece);
    if (problem !== null) return problem;
    bench.part(
      { key: 'join-pieces.draw', values: { piece: kept.piece.title } },
      kept.piece.edges.map(({ path }) => path),
    );
    if (mirrored) bench.tell('join-pieces.draw.turned', facts);
    bench.tell(
      'join-pieces.draw.lay',
      { ...facts, otherEdge: other.edge.name },
      { lines: joined.piece.edges.map(({ path }) => path) },
    );
    if (joined.opened.length > 0) bench.tell('join-pieces.draw.second-fold', {});
    return sewJoined(garment, sewn.seam, kept.piece, other.piece, joined, mirrored);
  },
});

interface SoleSeam {
  readonly seam: Seam;
  readonly mate: SeamEdge;
  /** Whether both edges run the same way along the seam: then one piece must be turned over to lie beside the other. */
  readonly sameWay: boolean;
}

/** The flat seam that joins this edge, alone, to one edge of another piece; nothing else may be sewn to either. */
function soleSeam(garment: Garment, piece: string, edge: EdgeName): SoleSeam | null {
  for (const seam of garment.seams) {
    const [[a, a2], [b, b2]] = [seam.a, seam.b];
    if (a === undefined || b === undefined || a2 !== undefined || b2 !== undefined) continue;
    if (seam.join.kind !== 'flat' || a.piece === b.piece || a.times !== b.times) continue;
    const isOurs = (use: SeamEdge): boolean => use.piece === piece && use.edge === edge;
    if (!isOurs(a) && !isOurs(b)) continue;
    const others = garment.seams
      .filter((other) => other !== seam)
      .flatMap((other) => [...other.a, ...other.b]);
    const alsoSewn = [a, b].some(({ piece: p, edge: e }) =>
      others.some((use) => use.piece === p && use.edge === e),
    );
    if (alsoSewn) return null;
    const sameWay = (a.reversed === true) === (b.reversed === true);
    return { seam, mate: isOurs(a) ? b : a, sameWay };
  }
  return null;
}

/** Both are cut equally often; a piece that is cut the same way up each time can't be turned over. */
function cutAlike(a: Piece, b: Piece, mirrored: boolean): boolean {
  if (copiesOf(a) !== copiesOf(b) || a.layer !== b.layer) return false;
  const singles = [a, b].filter(({ cutting }) => cutting.as === 'single').length;
  return singles === 0 || (singles === 2 && !mirrored);
}

/** A piece moved so that it lies beside another, with its edges from the one after the join round to the one before it. */
interface Laid {
  readonly edges: readonly Edge[];
  readonly source: Piece;
  readonly move: (path: Path) => Path;
  readonly mirrored: boolean;
}

/** Moves a piece so that the named edge lies on `line`, from its end to its start; null where the two differ. */
function layAgainst(line: Path, piece: Piece, name: EdgeName, mirrored: boolean): Laid | null {
  const turned = mirrored
    ? piece.edges.map((edge) => ({ ...edge, path: pathReverse(pathMirrorX(edge.path)) })).reverse()
    : piece.edges;
  const index = turned.findIndex((edge) => edge.name === name);
  const join = turned[index];
  if (join === undefined) return null;
  const [start, end] = [pathEnd(join.path), pathStart(join.path)];
  const turn = angleOf(subtract(pathEnd(line), pathStart(line))) - angleOf(subtract(end, start));
  const shift = subtract(pathStart(line), start);
  const place = (path: Path): Path => pathRotate(pathTranslate(path, shift), turn, pathStart(line));
  const placed = place(join.path);
  const length = pathLength(line);
  const share = pathLength(placed) / length;
  const apart = [0.1, 0.25, 0.5, 0.75, 0.9, 1].map((t) =>
    distance(pathAt(line, t * length).point, pathAt(placed, (1 - t) * length * share).point),
  );
  if (Math.max(...apart) > ONE_LINE) return null;
  const edges = [...turned.slice(index + 1), ...turned.slice(0, index)].map((edge) => ({
    ...edge,
    path: place(edge.path),
  }));
  const last = edges.length - 1;
  const meets = (edge: Edge, i: number): Edge => {
    let { path } = edge;
    if (i === 0) path = pullEnd(path, 'start', subtract(pathStart(line), pathStart(path)));
    if (i === last) path = pullEnd(path, 'end', subtract(pathEnd(line), pathEnd(path)));
    return { ...edge, path };
  };
  return {
    edges: edges.map(meets),
    source: piece,
    move: (path) => place(mirrored ? pathMirrorX(path) : path),
    mirrored,
  };
}

const angleOf = ({ x, y }: Point): number => Math.atan2(y, x);

interface Joined {
  readonly piece: Piece;
  /** The names that the edges of the other piece have now. */
  readonly renamed: ReadonlyMap<EdgeName, EdgeName>;
  /** Edges that lay on a second fold and are now sewn. */
  readonly opened: readonly EdgeName[];
}

function joinOutlines(kept: Piece, name: EdgeName, laid: Laid): Joined {
  const { source, mirrored } = laid;
  const taken = kept.edges.filter((edge) => edge.name !== name).map((edge) => edge.name);
  const renamed = new Map<EdgeName, EdgeName>();
  for (const edge of laid.edges) {
    const clear = taken.includes(edge.name) ? freeName(taken, `${source.id}-${edge.name}`) : edge.name;
    taken.push(clear);
    renamed.set(edge.name, clear);
  }
  const nameOf = (edge: EdgeName): EdgeName => renamed.get(edge) ?? edge;
  const opened = laid.edges.filter((edge) => edge.kind === 'fold').map((edge) => nameOf(edge.name));
  const added = laid.edges.map(
    (edge): Edge => ({
      ...edge,
      name: nameOf(edge.name),
      kind: edge.kind === 'fold' ? 'centre' : edge.kind,
    }),
  );
  const notches = source.notches
    .filter((notch) => renamed.has(notch.edge))
    .map((notch): Notch => {
      const edge = added.find((e) => e.name === nameOf(notch.edge));
      const at = mirrored && edge !== undefined ? pathLength(edge.path) - notch.at : notch.at;
      return { ...notch, edge: nameOf(notch.edge), at };
    });
  const markings = source.markings.map((marking) => ({
    ...marking,
    path: laid.move(marking.path),
    ...(marking.brought === undefined ? {} : { brought: mirrored ? -marking.brought : marking.brought }),
  }));
  return {
    piece: {
      ...kept,
      edges: kept.edges.flatMap((edge) => (edge.name === name ? added : [edge])),
      notches: [...kept.notches.filter((notch) => notch.edge !== name), ...notches],
      markings: [...kept.markings, ...markings],
    },
    renamed,
    opened,
  };
}

function sewJoined(
  garment: Garment,
  gone: Seam,
  kept: Piece,
  other: Piece,
  joined: Joined,
  mirrored: boolean,
): StepOutcome {
  const pieces = garment.pieces.flatMap((piece) =>
    piece.id === kept.id ? [joined.piece] : piece.id === other.id ? [] : [piece],
  );
  const seams = seamsThrough(
    garment.seams.filter((seam) => seam.id !== gone.id),
    (use) =>
      use.piece === other.id
        ? [
            {
              ...use,
              piece: kept.id,
              edge: joined.renamed.get(use.edge) ?? use.edge,
              reversed: (use.reversed === true) !== mirrored,
            },
          ]
        : [use],
  );
  const ids = seams.map((seam) => seam.id);
  const centre = joined.opened.map((edge): Seam => {
    const side = [{ piece: kept.id, edge, times: kept.cutting.copies }];
    const id = freeName(ids, 'own-centre');
    return {
      id,
      name: 'own',
      a: side,
      b: side,
      join: { kind: 'flat' },
      smoothStart: false,
      smoothEnd: false,
    };
  });
  return done({ ...garment, pieces, seams: [...seams, ...centre] });
}
