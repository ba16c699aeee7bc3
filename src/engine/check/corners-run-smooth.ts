import { type EdgeKind, type Piece, pieceAt, type Seam, type SeamEdge } from '../piece/index.ts';
import { type Check, type CheckPlace, NOWHERE, tell } from './check.ts';
import { type Corner, cornerAt, sewnCornerAt, walkedEnd } from './corner.ts';
import { kindWords, type Look, type Rule, seamWords, titleOf } from './look.ts';
import { SLACK } from './tolerance.ts';

/**
 * Laid edge to edge, the two sides of a seam must let the armhole, neck or hem run through as one line: with a peak
 * the sleeve will not set, with a hollow it rides up (Conover, A Complete Course in Dressmaking, lesson IX, p. 22).
 * How many degrees are forgiven: common practice, no source.
 */
const KINK_WARNS = 5;
const KINK_STOPS = 15;

/** Leaving a fold or a centre line, an outline is mirrored, so half the kink counts (common practice, no source). */
const FOLD_WARNS = 3;

/** A corner further from square than this is drawn on purpose, as the point of a V neck (our own limit). */
const MEANT_AS_POINT = 25;

const MIRROR_LINES: readonly EdgeKind[] = ['fold', 'centre', 'closing'];

/** Lines that may run straight to the centre and make a shallow point there, when the maker wants them so. */
const MAY_POINT: readonly EdgeKind[] = ['neck', 'style-line'];

/** Corners run smoothly through the ends of seams, and leave folds and centre lines square. */
export const cornersRunSmooth: Rule = (look) => {
  const seams = look.garment.seams.flatMap((seam) => seamCorners(look, seam));
  const folds = look.garment.pieces.flatMap(centreCorners);
  const findings = [...seams, ...folds].filter((check) => check !== null);
  if (seams.length + folds.length === 0) return [];
  if (findings.some((check) => check.level !== 'ok')) return findings;
  const say = tell('check.corners-run-smooth.all', { count: seams.length + folds.length });
  return [{ ...smooth(NOWHERE, 0), measured: null, say }, ...findings];
};

const smooth = (where: CheckPlace, kink: number) =>
  ({
    code: 'corners-run-smooth',
    level: 'ok',
    measured: { degrees: kink },
    allowed: { to: { degrees: KINK_WARNS } },
    where,
    todo: null,
  }) as const;

/** A finding for each end that should run through; null where it does. */
function seamCorners(look: Look, seam: Seam): (Check | null)[] {
  const found: (Check | null)[] = [];
  if (seam.smoothStart) found.push(seamCorner(look, seam, seam.a.at(0), seam.b.at(0), 'start'));
  if (seam.smoothEnd) found.push(seamCorner(look, seam, seam.a.at(-1), seam.b.at(-1), 'end'));
  return found;
}

function seamCorner(
  look: Look,
  seam: Seam,
  a: SeamEdge | undefined,
  b: SeamEdge | undefined,
  end: 'start' | 'end',
): Check | null {
  if (a === undefined || b === undefined) throw new Error(`Seam "${seam.id}" has an empty side.`);
  const [pieceA, pieceB] = [pieceAt(look, a), pieceAt(look, b)];
  const cornerA = sewnCornerAt(look, pieceA, a.edge, walkedEnd(a, end));
  const cornerB = sewnCornerAt(look, pieceB, b.edge, walkedEnd(b, end));
  // A sliver of cloth that has turned inside out counts as a full turn; crossed outlines are told elsewhere.
  const together = cornerA.degrees + cornerB.degrees;
  const over = together - 360 * Math.floor(together / 360) - 180;
  const kink = Math.abs(over);
  if (kink <= KINK_WARNS + SLACK) return null;
  return {
    ...smooth(placeAt([pieceA, a.edge, cornerA], [pieceB, b.edge, cornerB]), kink),
    level: kink > KINK_STOPS + SLACK ? 'stop' : 'warn',
    say: tell(over < 0 ? 'check.corners-run-smooth.peak' : 'check.corners-run-smooth.hollow', {
      line: kindWords(cornerA.neighbour.kind),
      seam: seamWords(seam),
      a: titleOf(pieceA),
      b: titleOf(pieceB),
      degrees: Math.round(kink),
    }),
    todo: tell('check.corners-run-smooth.todo', { line: kindWords(cornerA.neighbour.kind) }),
  };
}

/** A finding for each corner of a piece on its fold or centre line; null where it is square. */
function centreCorners(piece: Piece): (Check | null)[] {
  if (piece.cutting.as === 'single') return [];
  return piece.edges
    .filter((edge) => MIRROR_LINES.includes(edge.kind))
    .flatMap((edge) =>
      (['start', 'end'] as const).flatMap((end) => {
        const corner = cornerAt(piece, edge.name, end);
        return MIRROR_LINES.includes(corner.neighbour.kind) ? [] : [centreCorner(piece, edge.name, corner)];
      }),
    );
}

function centreCorner(piece: Piece, edge: string, corner: Corner): Check | null {
  const off = Math.abs(corner.degrees - 90);
  if (off <= FOLD_WARNS + SLACK) return null;
  const values = {
    line: kindWords(corner.neighbour.kind),
    piece: titleOf(piece),
    degrees: Math.round(corner.degrees),
  };
  const found = {
    ...smooth(placeAt([piece, edge, corner]), off),
    allowed: { to: { degrees: FOLD_WARNS } },
  };
  return off > MEANT_AS_POINT || runsStraight(corner)
    ? { ...found, say: tell('check.corners-run-smooth.point', values) }
    : {
        ...found,
        level: 'warn',
        say: tell('check.corners-run-smooth.centre', values),
        todo: tell('check.corners-run-smooth.square', values),
      };
}

/** Whether a neck or style line is a plain straight line up to its corner. */
const runsStraight = ({ neighbour, at }: Corner): boolean =>
  MAY_POINT.includes(neighbour.kind) &&
  neighbour.path.segments.some(
    (s) => s.kind === 'line' && [s.from, s.to].some((p) => Math.hypot(p.x - at.x, p.y - at.y) < 1e-6),
  );

function placeAt(...corners: readonly (readonly [Piece, string, Corner])[]): CheckPlace {
  const at = corners[0]?.[2].at;
  return {
    pieces: [...new Set(corners.map(([piece]) => piece.id))],
    edges: corners.flatMap(([piece, edge, corner]) => [
      { piece: piece.id, edge },
      { piece: piece.id, edge: corner.neighbour.name },
    ]),
    ...(at === undefined ? {} : { at }),
  };
}
