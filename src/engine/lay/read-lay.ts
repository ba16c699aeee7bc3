import { outlineArea, type Path, type Point, pathReverse } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';
import { type LengthToBuy, layLengthToBuy } from './buy-length.ts';
import type { LayCloth } from './cloth-rules.ts';
import type { LayLayer } from './lay-drafts.ts';
import type { LayStretch } from './lay-items.ts';
import type { LayPlan } from './lay-plan.ts';
import { type PinPoint, pinPoints } from './pin-points.ts';
import type { PlacedStretch } from './run-lay.ts';
import { type TurnDegrees, turnPath } from './turns.ts';

/** A cloth with everything on it: what to cut, where to pin it, how much to buy. Lengths in mm. */
export interface Lay {
  readonly cloth: LayCloth;
  readonly stretches: readonly LaidStretch[];
  /** Used of the cloth, spread out single. */
  readonly length: number;
  readonly toBuy: LengthToBuy;
  /** Cut pieces by used cloth, 0 to 1. */
  readonly density: number;
  /** No lay of these pieces can be shorter. */
  readonly leastLength: number;
  readonly notes: readonly Saying[];
}

/** x from where the stretch begins, y from its edge: the near selvedge, or the fold. */
export interface LaidStretch {
  readonly folding: LayCloth['folding'];
  readonly from: number;
  /** As it lies. */
  readonly length: number;
  readonly depth: number;
  readonly pieces: readonly LaidOnCloth[];
}

export interface LaidOnCloth {
  /** Which of the pieces that were given, and which of its copies this placing gives. */
  readonly piece: number;
  readonly copies: readonly number[];
  readonly child: string;
  readonly title: string;
  readonly layer: LayLayer;
  /** The cutting line; of a piece on a fold only its half. */
  readonly outline: Path;
  readonly turn: TurnDegrees;
  readonly mirrored: boolean;
  /** Least x and y of the cutting line: with turn and `mirrored` what a pin says. */
  readonly at: Point;
  readonly pins: readonly PinPoint[];
}

/** Reads the places that a run has found back into a lay of true cutting lines. */
export function readLay(plan: LayPlan, placed: readonly PlacedStretch[]): Lay {
  const { cloth, stretches: planned } = plan;
  const stretches = planned.flatMap((stretch, i): LaidStretch[] => {
    const found = placed[i];
    return found === undefined ? [] : [laidStretch(plan, stretch, found)];
  });
  const last = stretches.at(-1);
  const length = last === undefined ? 0 : last.from + clothLength(last);
  const toBuy = layLengthToBuy(length, cloth);
  const area = planned
    .flatMap(({ items }) => items)
    .reduce((sum, { shape, layer }) => sum + shape.grown.area * (layer === 'single' ? 1 : 2), 0);
  return {
    cloth,
    stretches,
    length,
    toBuy,
    density: length === 0 ? 0 : area / (length * cloth.usableWidth),
    leastLength: plan.leastLength,
    notes: [...plan.notes, ...toBuy.notes],
  };
}

const clothLength = ({ folding, length }: LaidStretch): number => length * (folding === 'crosswise' ? 2 : 1);

function laidStretch({ pieces, cloth }: LayPlan, stretch: LayStretch, placed: PlacedStretch): LaidStretch {
  const laid = stretch.items.map((item, i): LaidOnCloth => {
    const place = placed.places[i];
    const variant = item.variants[place?.variant ?? -1];
    const piece = pieces[item.piece];
    if (place === undefined || variant === undefined || piece === undefined)
      throw new Error('A lay is read with the plan from which it was made.');
    const { pose, box } = variant.posed;
    const shift = { x: place.x - box.minX, y: place.y - box.minY };
    const outline = turnPath(pose.turn, item.shape.path, shift);
    return {
      piece: item.piece,
      copies: item.copies,
      child: piece.child,
      title: piece.cut.label.title,
      layer: item.layer,
      outline: outlineArea(outline) < 0 ? pathReverse(outline) : outline,
      turn: pose.degrees,
      mirrored: pose.mirrored,
      at: { x: place.x, y: place.y },
      pins: pinPoints(piece.cut, item.shape.frame, pose.turn, shift, stretch, cloth),
    };
  });
  const { from, length } = placed;
  return { folding: stretch.folding, from, length, depth: stretch.depth, pieces: laid };
}
