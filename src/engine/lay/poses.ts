import type { CutPiece } from '../cut/index.ts';
import { type Bounds, pathBounds } from '../geometry/index.ts';
import type { GrainRule, LayCloth } from './cloth-rules.ts';
import type { FoldLine } from './grown-outline.ts';
import { halfShape, type PieceShape, wholeShape } from './piece-shape.ts';
import {
  cornersBounds,
  MIRROR_ACROSS,
  MIRROR_ALONG,
  type Turn,
  type TurnDegrees,
  turnBy,
  turnCorners,
  turnPath,
  turnsJoined,
} from './turns.ts';

/** One way in which a shape may lie: turned, then perhaps mirrored in the grain. */
export interface Pose {
  readonly degrees: TurnDegrees;
  readonly mirrored: boolean;
  readonly turn: Turn;
}

/** A shape in a pose: the outline to pack and the box of the cutting line, both before they are put anywhere. */
export interface PosedShape {
  readonly pose: Pose;
  readonly corners: Float64Array;
  /** Of `corners`. */
  readonly grownBox: Bounds;
  /** Of the cutting line. */
  readonly box: Bounds;
}

/**
 * Turns that cloth and grain rule allow, the drawn way first. On one-way cloth the head keeps its way: of the turns
 * that a rule allows, the one without a half turn stays.
 */
export function turnsAllowed(
  rule: GrainRule,
  { way, repeat }: Pick<LayCloth, 'way' | 'repeat'>,
  matched: boolean,
): readonly TurnDegrees[] {
  const turns = rule === 'any' ? EVERY_WAY : way === 'one-way' ? HEADS_ALIKE[rule] : BOTH_WAYS[rule];
  // A stripe that must meet others runs through pieces that all lie the same way.
  return matched && repeat !== undefined ? turns.slice(0, 1) : turns;
}

const EVERY_WAY: readonly TurnDegrees[] = [0, 45, 90, 135, 180, 225, 270, 315];
const HEADS_ALIKE = {
  lengthwise: [0],
  'cross-allowed': [0, 90],
  bias: [45],
} as const satisfies Record<Exclude<GrainRule, 'any'>, readonly TurnDegrees[]>;
const BOTH_WAYS = {
  lengthwise: [0, 180],
  'cross-allowed': [0, 90, 180, 270],
  bias: [45, 135, 225, 315],
} as const satisfies Record<Exclude<GrainRule, 'any'>, readonly TurnDegrees[]>;

/** A mirrored pose is the mirror image of the plain one: of a piece at 45 degrees it lies at 315. */
export function poseOf(degrees: TurnDegrees, mirrored: boolean): Pose {
  const turn = turnBy(degrees);
  return { degrees, mirrored, turn: mirrored ? turnsJoined(turn, MIRROR_ACROSS) : turn };
}

/**
 * Half on a fold along the cloth: turned end for end it is the mirror image along the fold. `second`: on the other of
 * two folds, reaching down from it.
 */
export function halfPose(endForEnd: boolean, second: boolean): Pose {
  const along = endForEnd ? MIRROR_ALONG : turnBy(0);
  const turn = second ? turnsJoined(along, MIRROR_ACROSS) : along;
  return { degrees: endForEnd ? 180 : 0, mirrored: endForEnd !== second, turn };
}

/** Half on a fold across the cloth; turned over along it, it is the whole piece turned end for end. */
export function crosswiseHalfPose(endForEnd: boolean): Pose {
  return {
    degrees: endForEnd ? 180 : 0,
    mirrored: endForEnd,
    turn: endForEnd ? MIRROR_ACROSS : turnBy(0),
  };
}

/**
 * Shapes of pieces, each worked out once, and in their poses; equal shapes in equal poses share one array, whichever
 * piece or child they belong to. Plans of the same pieces may share a store.
 */
export interface ShapeStore {
  readonly whole: (cut: CutPiece, gap: number) => PieceShape | null;
  readonly half: (cut: CutPiece, gap: number, line: FoldLine) => PieceShape | null;
  readonly posed: (shape: PieceShape, pose: Pose) => PosedShape;
}

export function shapeStore(): ShapeStore {
  const arrays = new Map<string, Float64Array>();
  const known = new WeakMap<PieceShape, Map<string, PosedShape>>();
  const shapes = new WeakMap<CutPiece, Map<string, PieceShape | null>>();
  const shapeOnce = (cut: CutPiece, key: string, make: () => PieceShape | null): PieceShape | null => {
    const own = shapes.get(cut) ?? new Map<string, PieceShape | null>();
    shapes.set(cut, own);
    const found = own.get(key);
    if (found !== undefined) return found;
    const made = make();
    own.set(key, made);
    return made;
  };
  return {
    whole: (cut, gap) => shapeOnce(cut, `${gap}`, () => wholeShape(cut, gap)),
    half: (cut, gap, line) => shapeOnce(cut, `${gap} ${line}`, () => halfShape(cut, gap, line)),
    posed: (shape, pose) => {
      const poses = known.get(shape) ?? new Map<string, PosedShape>();
      known.set(shape, poses);
      const { a, b, c, d } = pose.turn;
      const key = `${pose.degrees} ${pose.mirrored} ${a} ${b} ${c} ${d}`;
      const found = poses.get(key);
      if (found !== undefined) return found;
      const corners = shared(arrays, turnCorners(pose.turn, shape.grown.corners));
      const made = {
        pose,
        corners,
        grownBox: cornersBounds(corners),
        box: pathBounds(turnPath(pose.turn, shape.path)),
      };
      poses.set(key, made);
      return made;
    },
  };
}

function shared(arrays: Map<string, Float64Array>, corners: Float64Array): Float64Array {
  const key = corners.join(' ');
  const found = arrays.get(key);
  if (found !== undefined) return found;
  arrays.set(key, corners);
  return corners;
}
