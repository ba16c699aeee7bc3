import { outlineArea } from '../geometry/index.ts';
import type { Saying } from '../words/index.ts';
import type { LayCloth, LayPiece } from './cloth-rules.ts';
import { type LayRefusal, refusal } from './lay-refusal.ts';
import type { PieceShape } from './piece-shape.ts';
import { poseOf, type ShapeStore } from './poses.ts';
import type { TurnDegrees } from './turns.ts';

/** A join in a piece takes a seam allowance on both sides, mm (5/8 in; common practice, no source). */
const JOIN_ALLOWANCE = 15.875;

/** The sentence for a piece that the cloth can hold in none of its turns, and what would help. */
export function sizeRefusal(
  piece: LayPiece,
  index: number,
  cloth: LayCloth,
  whole: PieceShape,
  turns: readonly TurnDegrees[],
  store: ShapeStore,
): LayRefusal {
  const sizes = turns.map((degrees) => {
    const { box } = store.posed(whole, poseOf(degrees, false));
    return { across: box.maxY - box.minY, along: box.maxX - box.minX };
  });
  const across = Math.min(...sizes.map((s) => s.across));
  const along = Math.min(...sizes.map((s) => s.along));
  const { usableWidth, longest, name } = cloth;
  const values = { piece: piece.cut.label.title, cloth: name };
  if (across <= usableWidth && longest !== undefined && along > longest) {
    const more = [{ key: 'lay.advice.more', values: { length: { mm: along } } }];
    const size = { size: { mm: along }, usable: { mm: longest } };
    return refusal('lay.too-long', { ...values, ...size }, [index], more);
  }
  const advice: Saying[] = [];
  if (cloth.remnant === undefined)
    advice.push({ key: 'lay.advice.wider', values: { width: { mm: across } } });
  const turned = piece.grain === 'lengthwise' && along <= usableWidth && across <= (longest ?? Infinity);
  if (turned) advice.push({ key: 'lay.advice.cross', values: {} });
  const room = usableWidth - 2 * JOIN_ALLOWANCE;
  if (isRectangle(whole) && room > 0) {
    advice.push({ key: 'lay.advice.join', values: { widths: Math.max(2, Math.ceil(across / room)) } });
  }
  const size = { size: { mm: across }, usable: { mm: usableWidth } };
  return refusal('lay.too-wide', { ...values, ...size }, [index], advice);
}

function isRectangle({ path, box }: PieceShape): boolean {
  const around = (box.maxX - box.minX) * (box.maxY - box.minY);
  return Math.abs(outlineArea(path)) > 0.995 * around;
}
