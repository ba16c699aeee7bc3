import { walkPath } from '../geometry/index.ts';
import type { LayCloth } from './cloth-rules.ts';
import type { LayPlan } from './lay-plan.ts';

/**
 * A short text that is the same as long as the pieces, their ways to lie and the cloth they lie on are: 16 hexadecimal
 * digits. Lengths count to a hundredth of a millimetre, so that no rounding of another computer changes it. What only
 * changes the length to buy (shrinkage, extra, the shop's unit) and the names of pieces and cloth do not count.
 */
export function layMark({ pieces, stretches, cloth }: LayPlan): string {
  const mark = markMaker();
  // A child may be called something else without anything being laid anew.
  const children = [...new Set(pieces.map(({ child }) => child))];
  for (const { folding, depth, items } of stretches) {
    mark.text(folding);
    mark.length(depth);
    for (const { piece, copies, layer, shape, variants, anchor } of items) {
      const { child = '', cut } = pieces[piece] ?? {};
      mark.text(JSON.stringify([children.indexOf(child), cut?.piece.id, copies, layer]));
      const points = (...coordinates: readonly number[]): void => coordinates.forEach(mark.length);
      walkPath(shape.path, { moveTo: points, lineTo: points, curveTo: points, close: () => {} });
      for (const { posed, fromY, toY, fixedX } of variants) {
        mark.text(`${posed.pose.degrees} ${posed.pose.mirrored}`);
        points(fromY, toY, fixedX ?? -1);
      }
      if (anchor === null) continue;
      for (const { x, y } of [anchor.point, anchor.phase]) {
        mark.length(x);
        mark.length(y);
      }
    }
  }
  markCloth(cloth, mark);
  return mark.end();
}

function markCloth({ gap, longest, repeat, flaws, remnant }: LayCloth, mark: MarkMaker): void {
  mark.length(gap);
  mark.length(longest ?? -1);
  for (const along of [repeat?.along, repeat?.across]) {
    mark.length(along?.every ?? -1);
    mark.length(along?.first ?? -1);
  }
  for (const ring of [...(flaws ?? []).map(({ outline }) => outline), remnant ?? []]) {
    mark.text(`ring ${ring.length}`);
    for (const { x, y } of ring) {
      mark.length(x);
      mark.length(y);
    }
  }
}

interface MarkMaker {
  readonly text: (text: string) => void;
  /** mm */
  readonly length: (mm: number) => void;
  readonly end: () => string;
}

const STEPS_PER_MM = 100;
/** Eighths and sixteenths of an inch, and tenths of a millimetre, then fall on no edge between two steps. */
const OFF_EDGE = 0.2;

/** Two 32 bit FNV-1a sums (Fowler, Noll and Vo) with different beginnings. */
function markMaker(): MarkMaker {
  let a = 0x811c9dc5;
  let b = 0xc9dc5118;
  const take = (whole: number): void => {
    a = Math.imul(a ^ whole, 0x01000193);
    b = Math.imul(b ^ whole, 0x01000193);
    b ^= b >>> 15;
  };
  return {
    text: (text) => {
      for (let i = 0; i < text.length; i++) take(text.charCodeAt(i));
      take(-1);
    },
    length: (mm) => take(Math.round(mm * STEPS_PER_MM + OFF_EDGE)),
    end: () => [a, b].map((part) => (part >>> 0).toString(16).padStart(8, '0')).join(''),
  };
}
