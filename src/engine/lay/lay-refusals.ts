import { outlineArea, pathBounds, pathMap, subtract } from '../geometry/index.ts';
import type { LayCloth, LayPiece } from './cloth-rules.ts';
import { planLay } from './lay-plan.ts';
import type { LayRefusal } from './lay-refusal.ts';
import type { ShapeStore } from './poses.ts';
import { turnToGrain } from './turns.ts';

/**
 * What stands in the way of laying these pieces, without laying them. Where the box of every piece fits on plain
 * single cloth nothing can; only otherwise all is planned, which takes many times as long.
 */
export function clothRefusals(
  pieces: readonly LayPiece[],
  cloth: LayCloth,
  store: ShapeStore,
): readonly LayRefusal[] {
  if (isPlain(cloth) && pieces.every((piece) => surelyFits(piece, cloth))) return [];
  const planned = planLay(pieces, cloth, [], store);
  return planned.ok ? [] : planned.refusals;
}

/** No rule that could exclude a piece but the width between the selvedges. */
function isPlain(cloth: LayCloth): boolean {
  const { folding, repeat, flaws, remnant, longest, usableWidth, gap, shrinkage, extra } = cloth;
  const isNumber = [usableWidth, gap, shrinkage, extra].every(Number.isFinite) && usableWidth > 0;
  const inRange = gap >= 0 && shrinkage >= 0 && shrinkage < 1 && extra >= 0;
  const hasRule = [repeat, remnant, longest].some((rule) => rule !== undefined) || (flaws?.length ?? 0) > 0;
  return isNumber && inRange && folding === 'single' && !hasRule;
}

/** Less cannot be cut out, mm2. */
const SOME_AREA = 1;

function surelyFits({ cut, grain, copies }: LayPiece, { usableWidth }: LayCloth): boolean {
  if (grain === 'bias' || copies !== undefined) return false;
  const { piece, cuttingLine } = cut;
  const turn = turnToGrain(subtract(piece.grain.to, piece.grain.from));
  const box = pathBounds(pathMap(cuttingLine, { ...turn, e: 0, f: 0 }));
  // A half on the fold is opened out to no more than twice its width, whichever side its fold is on.
  const across = (box.maxY - box.minY) * (piece.cutting.as === 'fold' ? 2 : 1);
  return across <= usableWidth && Math.abs(outlineArea(cuttingLine)) > SOME_AREA;
}
