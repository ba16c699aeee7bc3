import type { Garment } from '../piece/index.ts';
import type { Sketch, SketchSide } from './sketch.ts';
import { bodiceCovers, sketchBodice } from './sketch-bodice.ts';
import { sketchClosing } from './sketch-closing.ts';
import { sketchCollar } from './sketch-collar.ts';
import { hiddenUnder, layOver } from './sketch-cover.ts';
import { sketchBindings, sketchNeckFrill, sketchRuffles } from './sketch-frill.ts';
import { sketchSkirt, sketchSkirtRuffles } from './sketch-skirt.ts';
import { sketchSleeve, sketchSleeveRuffles } from './sketch-sleeve.ts';
import { sketchTrims } from './sketch-trim.ts';
import { uncut } from './sketch-uncut.ts';

export type { Sketch, SketchLine, SketchSide, SketchStroke } from './sketch.ts';

/**
 * A flat drawing of the dress, made from the pieces that will be cut: what the pieces are, the drawing shows.
 * Bodice pieces lie as drafted; sleeves and skirts, which are not flat on a body, are laid out by stated rules. What
 * is sewn on lies at its seam, and hides what is under it.
 */
export function sketchDress(designed: Garment, side: SketchSide): Sketch {
  const { garment, cuts } = uncut(designed);
  const dress = [
    ...sketchSkirt(garment, side, cuts),
    ...hiddenUnder(sketchSleeve(garment, side), bodiceCovers(garment, side)),
    ...sketchBodice(garment, side),
    ...sketchBindings(garment, side),
    ...sketchClosing(garment, side),
  ];
  const laidOn = [
    sketchSkirtRuffles(garment, side),
    sketchSleeveRuffles(garment, side),
    sketchRuffles(garment, side),
    sketchNeckFrill(garment, side),
    sketchCollar(garment, side),
    ...sketchTrims(garment, side),
  ];
  return { side, lines: laidOn.reduce(layOver, dress) };
}
