import type { CutPiece } from '../cut/index.ts';
import type { Affine, Point, Vector } from '../geometry/index.ts';
import type { WordKey } from '../words/index.ts';
import type { LayCloth } from './cloth-rules.ts';
import type { LayStretch } from './lay-items.ts';
import { inFrame } from './stripe-phases.ts';
import { type Turn, turnPoint } from './turns.ts';

/** A point of a piece to be found on the cloth with a tape: an end of its grain line. Lengths in mm. */
export interface PinPoint {
  readonly name: WordKey;
  readonly at: Point;
  /** Across the cloth, and from which edge it is measured: the nearer one. */
  readonly across: number;
  readonly edge: WordKey;
  /** Along the cloth from where the stretch begins. */
  readonly along: number;
}

/** Both ends of the grain line: measured alike from one edge, they also set the piece straight. */
export function pinPoints(
  { piece: { grain } }: CutPiece,
  frame: Affine,
  turn: Turn,
  shift: Vector,
  stretch: LayStretch,
  cloth: LayCloth,
): readonly PinPoint[] {
  const onCloth = (p: Point): Point => {
    const turned = turnPoint(turn, inFrame(frame, p));
    return { x: turned.x + shift.x, y: turned.y + shift.y };
  };
  const [head, foot] = [onCloth(grain.to), onCloth(grain.from)];
  const { depth } = stretch;
  const far = head.y + foot.y > depth;
  const edge = edgeName(stretch.folding, far, cloth.selvedgesToMiddle === true);
  const pin = (name: WordKey, at: Point): PinPoint => ({
    name,
    at,
    across: far ? depth - at.y : at.y,
    edge,
    along: at.x,
  });
  return [pin('lay.point.head', head), pin('lay.point.foot', foot)];
}

function edgeName(folding: LayStretch['folding'], far: boolean, twoFolds: boolean): WordKey {
  if (folding !== 'lengthwise') return far ? 'lay.from.far-selvedge' : 'lay.from.selvedge';
  if (!far) return 'lay.from.fold';
  return twoFolds ? 'lay.from.second-fold' : 'lay.from.selvedge';
}
