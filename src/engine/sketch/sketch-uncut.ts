import { distance, type Path, pathEnd, pathLength, pathStart } from '../geometry/index.ts';
import {
  type Edge,
  type EdgeName,
  findEdge,
  type Garment,
  type Piece,
  type PieceId,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import { joinNear } from './sketch-path.ts';

/** A dress with its sleeves, skirts, collars and trims in one, and where the maker has cut them. */
interface Uncut {
  readonly garment: Garment;
  readonly cuts: ReadonlyMap<PieceId, readonly Path[]>;
}

/** Edges along which parts were cut from each other are the same line to so much, mm. */
const SAME = 1e-3;

/**
 * Puts together again what the maker has cut along lines of her own: a sleeve of two parts hangs as one sleeve. Pieces
 * of the bodice lie in the sketch as they are, and parts that she has reshaped at the cut stay apart.
 */
export function uncut(garment: Garment): Uncut {
  // The last cut first, so that a part that was cut again is whole when its own turn comes.
  const cuts = garment.seams.filter(({ name }) => name === 'own').toReversed();
  return cuts.reduce<Uncut>((dress, { id }) => sewnTogether(dress, id), { garment, cuts: new Map() });
}

function sewnTogether(dress: Uncut, id: string): Uncut {
  const { garment, cuts } = dress;
  const seam = garment.seams.find((s) => s.id === id);
  const [ofPart, ofRest] = [onlyUse(garment, seam?.a), onlyUse(garment, seam?.b)];
  if (ofPart === null || ofRest === null || !areParted(ofPart, ofRest)) return dress;
  const [part, rest] = [ofPart.piece, ofRest.piece];
  const whole: Piece = {
    ...rest,
    edges: runOn([...roundFrom(rest, ofRest.edge), ...roundFrom(part, ofPart.edge)]),
    notches: [...rest.notches, ...part.notches],
    markings: [...rest.markings, ...part.markings],
  };
  const ids = [part.id, rest.id];
  return {
    garment: {
      ...garment,
      pieces: garment.pieces.flatMap((p) => (p === part ? [] : [p === rest ? whole : p])),
      seams: garment.seams.flatMap((s) =>
        s === seam ? [] : [{ ...s, a: asOne(s.a, ids, rest.id), b: asOne(s.b, ids, rest.id) }],
      ),
    },
    cuts: new Map([
      ...cuts,
      [rest.id, [...(cuts.get(rest.id) ?? []), ...(cuts.get(part.id) ?? []), ofPart.edge.path]],
    ]),
  };
}

interface Use {
  readonly piece: Piece;
  readonly edge: Edge;
}

function onlyUse(garment: Garment, side: Seam['a'] | undefined): Use | null {
  const [use, more] = side ?? [];
  const piece = garment.pieces.find(({ id }) => id === use?.piece);
  const edge = piece === undefined || use === undefined ? undefined : findEdge(piece, use.edge);
  return piece === undefined || edge === undefined || more !== undefined ? null : { piece, edge };
}

/** Whether both are parts of one piece that lie as they were cut. */
function areParted(part: Use, rest: Use): boolean {
  const { id, layer } = rest.piece;
  if (layer !== 'shell' || /^(front|back)(-|$)/.test(id) || !part.piece.id.startsWith(`${id}-`)) return false;
  const [p, q] = [part.edge.path, rest.edge.path];
  return (
    distance(pathStart(p), pathEnd(q)) < SAME &&
    distance(pathEnd(p), pathStart(q)) < SAME &&
    Math.abs(pathLength(p) - pathLength(q)) < SAME
  );
}

/** The other edges of a piece, from the end of one round to its start. */
function roundFrom({ edges }: Piece, edge: Edge): readonly Edge[] {
  const at = edges.indexOf(edge);
  return [...edges.slice(at + 1), ...edges.slice(0, at)];
}

/** An edge that the cut has parted is one again, also where the list of edges begins. */
function runOn(edges: readonly Edge[]): readonly Edge[] {
  const joined: Edge[] = [];
  for (const edge of edges) {
    const last = joined.at(-1);
    if (last?.name === edge.name) joined[joined.length - 1] = together(last, edge);
    else joined.push(edge);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (first === undefined || last === undefined || first === last || first.name !== last.name) return joined;
  return [...joined.slice(1, -1), together(last, first)];
}

const together = (one: Edge, next: Edge): Edge => ({
  ...one,
  path: joinNear([one.path, next.path]) ?? one.path,
});

/** Uses of both parts become uses of the whole; where the two followed each other along an edge they are one. */
const asOne = (side: readonly SeamEdge[], parts: readonly PieceId[], whole: PieceId): readonly SeamEdge[] =>
  side.flatMap((use, i) => {
    if (!parts.includes(use.piece)) return [use];
    const before = side[i - 1];
    const runsOn =
      before !== undefined &&
      parts.includes(before.piece) &&
      before.piece !== use.piece &&
      isAlong(before, use.edge, use.reversed === true);
    return runsOn ? [] : [{ ...use, piece: whole }];
  });

const isAlong = (use: SeamEdge, edge: EdgeName, reversed: boolean): boolean =>
  use.edge === edge && (use.reversed === true) === reversed;
