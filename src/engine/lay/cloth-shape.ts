import type { CutPiece } from '../cut/index.ts';
import {
  type Bounds,
  boundsUnion,
  type Path,
  pathBounds,
  pathEnd,
  pathMirrorLine,
  pathMirrorX,
  pathRotate,
  pathStart,
  pathTranslate,
  subtract,
} from '../geometry/index.ts';

/**
 * A whole piece as it is cut from single cloth: grain along y with the head at the top, its box at the origin.
 * A piece drawn as half on the fold consists of two outlines, opened out.
 */
export interface ClothShape {
  readonly outlines: readonly Path[];
  /** Across the cloth and along it, mm. */
  readonly width: number;
  readonly length: number;
}

export function clothShape(cut: CutPiece): ClothShape {
  const { from, to } = cut.piece.grain;
  const grain = subtract(to, from);
  const turn = -Math.PI / 2 - Math.atan2(grain.y, grain.x);
  return atOrigin(wholeOutlines(cut).map((path) => pathRotate(path, turn, from)));
}

/** The same shape cut from the other side of the cloth: the second piece of a pair. */
export function mirroredShape(shape: ClothShape): ClothShape {
  return atOrigin(shape.outlines.map(pathMirrorX));
}

function wholeOutlines(cut: CutPiece): readonly Path[] {
  const fold = cut.piece.edges.find((edge) => edge.kind === 'fold');
  if (cut.piece.cutting.as !== 'fold' || fold === undefined) return [cut.cuttingLine];
  return [cut.cuttingLine, pathMirrorLine(cut.cuttingLine, pathStart(fold.path), pathEnd(fold.path))];
}

function atOrigin(outlines: readonly Path[]): ClothShape {
  const box = outlines.map(pathBounds).reduce((a: Bounds, b) => boundsUnion(a, b));
  return {
    outlines: outlines.map((path) => pathTranslate(path, { x: -box.minX, y: -box.minY })),
    width: box.maxX - box.minX,
    length: box.maxY - box.minY,
  };
}
