import {
  cross,
  direction,
  dot,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathReverse,
  pathStart,
  subtract,
} from '../geometry/index.ts';
import { edgeAt, pieceAt, type Seam, type SeamEdge, seamsNamed } from '../piece/index.ts';
import { type Check, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, seamWords, titleOf } from './look.ts';
import { SEAM_AGREES, SLACK, TRADE_FORGIVES } from './tolerance.ts';

/** Places along an edge that are compared, as shares of its length. */
const SHARES = [0.2, 0.4, 0.6, 0.8, 1] as const;

/**
 * A facing has the very shape of the edge that it faces, not only its length: it is traced from it (New Mexico State
 * University, Guide C-233, Facings Made Easy, title read only). The two edges are laid on
 * each other, so it does not matter where the pieces are drawn. A further note where an edge is lined and faced.
 */
export const facingMatches: Rule = (look) =>
  seamsNamed(look, 'facing').flatMap((seam) => {
    const pairs = pairsOf(look, seam);
    const off = pairs.length === 0 ? null : Math.max(...pairs.map(([a, b]) => shapeDiffers(look, a, b)));
    return [...(off === null ? [] : [shape(look, seam, off)]), ...alsoLined(look, seam)];
  });

/** Edges that face each other one to one; where a style line has cut the edge, the seam's length must do. */
function pairsOf(look: Look, seam: Seam): readonly (readonly [Path, Path])[] {
  if (seam.a.length !== seam.b.length) return [];
  return seam.a.flatMap((at, i) => {
    const mate = seam.b[i];
    return mate === undefined ? [] : [[walked(look, at), walked(look, mate)] as const];
  });
}

const walked = (look: Look, at: SeamEdge): Path => {
  const { path } = edgeAt(look, at);
  return at.reversed === true ? pathReverse(path) : path;
};

/** How far the two edges lie apart when one is laid on the other, start on start and chord on chord, mm. */
function shapeDiffers(look: Look, a: Path, b: Path): number {
  const [onA, onB] = [alongChord(look, a), alongChord(look, b)];
  const apart = (turned: 1 | -1): number =>
    Math.max(
      ...onA.map((p, i) => {
        const q = onB[i] ?? p;
        return Math.hypot(p.x - q.x, p.y - turned * q.y);
      }),
    );
  // A facing may be drawn as the mirror image of its piece.
  return Math.min(apart(1), apart(-1));
}

/** Places along an edge, measured along its chord and off it. */
function alongChord(look: Look, path: Path): readonly Point[] {
  const start = pathStart(path);
  const along = direction(start, pathEnd(path));
  return SHARES.map((share) => {
    const from = subtract(pathAt(path, look.lengthOf(path) * share).point, start);
    return { x: dot(from, along), y: cross(along, from) };
  });
}

function shape(look: Look, seam: Seam, off: number): Check {
  const level = off <= SEAM_AGREES + SLACK ? 'ok' : off <= TRADE_FORGIVES + SLACK ? 'warn' : 'stop';
  const [facing] = seam.b;
  const values = {
    facing: facing === undefined ? seamWords(seam) : titleOf(pieceAt(look, facing)),
    off: { mm: off },
  };
  return {
    code: 'facing-matches',
    level,
    measured: { mm: off },
    allowed: { to: { mm: SEAM_AGREES } },
    where: placeOfSeam(seam),
    say: tell(level === 'ok' ? 'check.facing-matches.ok' : 'check.facing-matches.off', values),
    todo: level === 'ok' ? null : tell('check.facing-matches.todo', values),
  };
}

/** A full lining already finishes the edge. */
function alsoLined(look: Look, seam: Seam): readonly Check[] {
  const faced = (at: SeamEdge): boolean =>
    seam.a.some((edge) => edge.piece === at.piece && edge.edge === at.edge);
  const lined = seamsNamed(look, 'neck-lining', 'armhole-lining').find(({ a }) => a.some(faced));
  if (lined === undefined) return [];
  return [
    {
      code: 'facing-matches',
      level: 'note',
      measured: null,
      allowed: null,
      where: placeOfSeam(seam),
      say: tell('check.facing-matches.lined', { lining: seamWords(lined) }),
      todo: tell('check.facing-matches.lined.todo'),
    },
  ];
}
