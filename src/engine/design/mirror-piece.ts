import {
  add,
  linePath,
  outward,
  type Path,
  pathAt,
  pathEnd,
  pathLength,
  pathMirrorLine,
  pathReverse,
  pathStart,
  scale,
  subtract,
} from '../geometry/index.ts';
import {
  type Edge,
  type EdgeName,
  edgeOf,
  type Garment,
  type Marking,
  type Notch,
  type Piece,
  type Seam,
  type SeamEdge,
  withPiece,
} from '../piece/index.ts';
import { freeName, ownPiece, pieceParam, unsound } from './own-place.ts';
import { cannot, defineStep, done } from './step.ts';

/** Opens a piece on the fold out to a whole one, so that its two halves can be changed apart from each other. */
export const mirrorPiece = defineStep({
  id: 'mirror-piece',
  stage: 'own',
  kind: null,
  params: { piece: pieceParam() },
  words: {
    title: 'Open a piece out',
    about:
      'Mirrors a piece in its fold, so that it is cut whole and its halves can differ. The edges of the new half begin with "other-".',
    piece: 'Piece',
    'no-fold': '{piece} is not cut on one fold, so there is nothing to mirror it in.',
    draw: 'Opened out: {piece}',
    'draw.mirror': 'Fold the paper along the fold line, trace the half through, and open it out.',
  },
  apply: ({ garment, bench }, { piece: id }) => {
    const found = ownPiece(garment, id);
    if (!found.ok) return found;
    const half = found.found;
    const folds = half.edges.filter((edge) => edge.kind === 'fold');
    const [fold] = folds;
    if (half.cutting.as !== 'fold' || fold === undefined || folds.length > 1)
      return cannot('mirror-piece.no-fold', { piece: half.title });
    const opened = openOut(half, fold);
    const problem = unsound(half, opened.piece);
    if (problem !== null) return problem;
    bench.part(
      { key: 'mirror-piece.draw', values: { piece: half.title } },
      half.edges.map(({ path }) => path),
    );
    bench.tell('mirror-piece.draw.mirror', {}, { lines: opened.piece.edges.map(({ path }) => path) });
    return done(sewOpened(garment, opened));
  },
});

interface Opened {
  readonly piece: Piece;
  /** What an edge is called on the new half. */
  readonly other: ReadonlyMap<EdgeName, EdgeName>;
}

function openOut(half: Piece, fold: Edge): Opened {
  const at = half.edges.indexOf(fold);
  const edges = [...half.edges.slice(at + 1), ...half.edges.slice(0, at)];
  const taken = edges.map((edge) => edge.name);
  const other = new Map(taken.map((name) => [name, freeName(taken, `other-${name}`)]));
  const over = (path: Path): Path => pathMirrorLine(path, pathStart(fold.path), pathEnd(fold.path));
  const mirrored = edges.toReversed().map(
    (edge): Edge => ({
      ...edge,
      name: other.get(edge.name) ?? edge.name,
      path: pathReverse(over(edge.path)),
    }),
  );
  // The fold is no edge any more: what was notched on it is marked across the centre line instead.
  const kept = half.notches.filter((notch) => notch.edge !== fold.name);
  const crossed = half.notches.filter((notch) => notch.edge === fold.name);
  const notches = kept.flatMap((notch): Notch[] => {
    const edge = other.get(notch.edge);
    if (edge === undefined) return [];
    return [{ ...notch, edge, at: pathLength(edgeOf(half, notch.edge).path) - notch.at }];
  });
  const markings = half.markings.map((marking) => ({
    ...marking,
    path: over(marking.path),
    ...(marking.brought === undefined ? {} : { brought: -marking.brought }),
  }));
  return {
    piece: {
      ...half,
      edges: [...edges, ...mirrored],
      cutting: { as: 'single', copies: half.cutting.copies },
      notches: [...kept, ...notches],
      markings: [
        ...half.markings,
        ...markings,
        { kind: 'centre', path: linePath(pathStart(fold.path), pathEnd(fold.path)) },
        ...crossed.map((notch): Marking => ({ kind: 'centre', path: across(fold.path, notch.at) })),
      ],
    },
    other,
  };
}

/** Half as long as the mark that crosses a centre line, mm. */
const HALF_MARK = 5;

function across(fold: Path, at: number): Path {
  const { point, tangent } = pathAt(fold, at);
  const out = scale(outward(tangent), HALF_MARK);
  return linePath(subtract(point, out), add(point, out));
}

/** Both halves are sewn where the one was: seams that stood for both sides of the body now stand for each. */
function sewOpened(garment: Garment, { piece, other }: Opened): Garment {
  const ids = garment.seams.map((seam) => seam.id);
  const isHalf = (use: SeamEdge): boolean => use.piece === piece.id && other.has(use.edge);
  const turned = (use: SeamEdge): SeamEdge => ({
    ...use,
    edge: other.get(use.edge) ?? use.edge,
    reversed: use.reversed !== true,
  });
  // Where a seam reached the fold there is no corner any more: it runs on into the other half.
  const [first, last] = [piece.edges[0]?.name, piece.edges[other.size - 1]?.name];
  const atFold = (use: SeamEdge | undefined, end: 'start' | 'end'): boolean => {
    if (use === undefined || use.piece !== piece.id) return false;
    const walkedOn = (end === 'end') !== (use.reversed === true);
    const [mine, its] = walkedOn ? [last, first] : [first, last];
    return use.edge === mine || (its !== undefined && use.edge === other.get(its));
  };
  const overTheFold = (seam: Seam): Seam => ({
    ...seam,
    smoothStart: seam.smoothStart && !atFold(seam.a[0], 'start') && !atFold(seam.b[0], 'start'),
    smoothEnd: seam.smoothEnd && !atFold(seam.a.at(-1), 'end') && !atFold(seam.b.at(-1), 'end'),
  });
  const seams = garment.seams.flatMap((seam): readonly Seam[] => {
    const uses = [...seam.a, ...seam.b];
    if (!uses.some(isHalf)) return [seam];
    const times = uses[0]?.times ?? 1;
    if (times % 2 === 0 && uses.every((use) => use.times === times)) {
      const share = (use: SeamEdge): SeamEdge => ({ ...use, times: times / 2 });
      const first = withSides(seam, (side) => side.map(share));
      const second = withSides(seam, (side) => side.map((use) => share(isHalf(use) ? turned(use) : use)));
      return [halved(first), { ...halved(second), id: freeName(ids, `${seam.id}-other`) }].map(overTheFold);
    }
    return [withSides(seam, (side) => ringSide(side, isHalf, turned))];
  });
  return { ...withPiece(garment, piece), seams };
}

const withSides = (seam: Seam, change: (side: readonly SeamEdge[]) => readonly SeamEdge[]): Seam => ({
  ...seam,
  a: change(seam.a),
  b: change(seam.b),
});

/** Along a ring the two halves take turns: where a half stood for the second time, the new one stands. */
function ringSide(
  side: readonly SeamEdge[],
  isHalf: (use: SeamEdge) => boolean,
  turned: (use: SeamEdge) => SeamEdge,
): readonly SeamEdge[] {
  const seen = new Map<EdgeName, number>();
  return side.flatMap((use) => {
    if (!isHalf(use)) return [use];
    return Array.from({ length: use.times }, (_, i) => {
      const before = seen.get(use.edge) ?? 0;
      seen.set(use.edge, before + 1);
      const once = { ...use, times: 1 };
      // Copies of one entry follow each other mirrored in turn.
      const walked = i % 2 === 0 ? once : { ...once, reversed: use.reversed !== true };
      return before % 2 === 0 ? walked : turned(walked);
    });
  });
}

/** The half of a seam that stood for both sides of the body; what a join counts over the whole counts half. */
function halved(seam: Seam): Seam {
  const { join } = seam;
  switch (join.kind) {
    case 'eased':
      return { ...seam, join: { ...join, ease: join.ease / 2 } };
    case 'pleated':
      return { ...seam, join: { ...join, pleats: join.pleats / 2 } };
    case 'flat':
    case 'gathered':
      return seam;
  }
}
