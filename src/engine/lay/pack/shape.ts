import { convexParts } from './convex-parts.ts';
import { hullArea, outlineBox, signedArea } from './outline.ts';

/** All that the search knows of one outline. */
export interface Shape {
  /** Box at the origin, positive area, no plain points. */
  readonly outline: Float64Array;
  readonly parts: readonly Float64Array[];
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly hullArea: number;
}

/** The shape of a tidy outline that does not cross itself; null where it touches itself so that it has no parts. */
export function shapeOf(outline: Float64Array): Shape | null {
  const parts = convexParts(outline);
  if (parts === null) return null;
  const { maxX, maxY } = outlineBox(outline);
  return {
    outline,
    parts,
    width: maxX,
    height: maxY,
    area: signedArea(outline),
    hullArea: hullArea(outline),
  };
}
