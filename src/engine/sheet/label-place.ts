import type { Bounds, Point } from '../geometry/index.ts';
import { polygonContains, runMeetsBox } from './runs.ts';

/** A block of text as it will lie on the piece: size along and down, before it is turned. */
export interface BlockSize {
  readonly width: number;
  readonly height: number;
}

/** Where text must not go: the outline of the stitching line and the lines drawn inside it, as straight runs. */
export interface Ground {
  readonly outline: readonly Point[];
  readonly obstacles: readonly (readonly Point[])[];
}

/** Free room kept round a block, mm. */
const CLEARANCE = 2;

/** Least step of the search, mm, and the most steps in one direction: a skirt is searched more coarsely. */
const SEARCH_STEP = 4;
const SEARCH_STEPS = 40;

/**
 * The middle of a place for the block that lies inside the outline, touches no line and is allowed, nearest to the
 * wished place; null if there is none. `upright` blocks read along x, the others up the page (turned by -90 degrees).
 * It is looked for within `room`.
 */
export function freePlace(
  ground: Ground,
  block: BlockSize,
  upright: boolean,
  wished: Point,
  room: Bounds,
  isAllowed: (box: Bounds) => boolean,
): Point | null {
  const halfWidth = (upright ? block.width : block.height) / 2 + CLEARANCE;
  const halfHeight = (upright ? block.height : block.width) / 2 + CLEARANCE;
  const blockAt = (p: Point): Bounds => ({
    minX: p.x - halfWidth,
    minY: p.y - halfHeight,
    maxX: p.x + halfWidth,
    maxY: p.y + halfHeight,
  });
  const isGood = (p: Point): boolean => isAllowed(blockAt(p)) && isFree(ground, blockAt(p));
  if (isGood(wished)) return wished;
  const places: { readonly at: Point; readonly away: number }[] = [];
  const stepX = Math.max(SEARCH_STEP, (room.maxX - room.minX) / SEARCH_STEPS);
  const stepY = Math.max(SEARCH_STEP, (room.maxY - room.minY) / SEARCH_STEPS);
  for (let x = room.minX + halfWidth; x <= room.maxX - halfWidth; x += stepX) {
    for (let y = room.minY + halfHeight; y <= room.maxY - halfHeight; y += stepY) {
      places.push({ at: { x, y }, away: Math.hypot(x - wished.x, y - wished.y) });
    }
  }
  places.sort((p, q) => p.away - q.away);
  return places.find(({ at }) => isGood(at))?.at ?? null;
}

/** Whether a box lies wholly inside the outline and no obstacle runs through it. */
export function isFree(ground: Ground, box: Bounds): boolean {
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  return (
    polygonContains(ground.outline, middle) &&
    !runMeetsBox(ground.outline, box) &&
    ground.obstacles.every((run) => !runMeetsBox(run, box))
  );
}
