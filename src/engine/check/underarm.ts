import { type Point, pathEnd, pathStart } from '../geometry/index.ts';
import { edgeAt, type Piece, pieceAt, type SeamEdge, seamsNamed } from '../piece/index.ts';
import type { Look } from './look.ts';

/** The top of a bodice side seam on one half. */
export interface Underarm {
  readonly piece: Piece;
  readonly edge: string;
  /** `y` is its level below the neck points. */
  readonly at: Point;
}

/** The underarm of the front and of the back: where the side seams of the outer bodice begin. */
export function underarms(look: Look): readonly Underarm[] {
  const all = seamsNamed(look, 'side').flatMap((seam) =>
    [seam.a, seam.b].flatMap((side) => topOf(look, side)),
  );
  // A front that is cut whole has a seam on either side of the body.
  return all.filter((underarm, i) => all.findIndex(({ piece }) => piece === underarm.piece) === i);
}

function topOf(look: Look, side: readonly SeamEdge[]): Underarm[] {
  const shell = side.filter((at) => {
    const piece = pieceAt(look, at);
    return piece.layer === 'shell' && piece.cloth !== 'skirt';
  });
  const tops = shell.map((at) => {
    const path = edgeAt(look, at).path;
    const [start, end] = [pathStart(path), pathEnd(path)];
    return { piece: pieceAt(look, at), edge: at.edge, at: start.y <= end.y ? start : end };
  });
  return tops.sort((p, q) => p.at.y - q.at.y).slice(0, 1);
}
