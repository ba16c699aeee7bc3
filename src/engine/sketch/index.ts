import type { Garment } from '../piece/index.ts';
import type { Sketch, SketchSide } from './sketch.ts';
import { sketchBodice } from './sketch-bodice.ts';
import { sketchSkirt } from './sketch-skirt.ts';
import { sketchSleeve } from './sketch-sleeve.ts';
import { sketchTrims } from './sketch-trim.ts';

export type { Sketch, SketchLine, SketchSide, SketchStroke } from './sketch.ts';

/**
 * A flat drawing of the dress, made from the pieces that will be cut: what the pieces are, the drawing shows.
 * Bodice pieces lie as drafted; sleeves and skirts, which are not flat on a body, are laid out by stated rules.
 */
export function sketchDress(garment: Garment, side: SketchSide): Sketch {
  return {
    side,
    lines: [
      ...sketchSkirt(garment, side),
      ...sketchSleeve(garment, side),
      ...sketchBodice(garment, side),
      ...sketchTrims(garment, side),
    ],
  };
}
