import type { LayPin } from './cloth-rules.ts';
import type { LayItem, LayStretch } from './lay-items.ts';
import type { LayPlan } from './lay-plan.ts';
import type { PlacedItem, PlacedStretch } from './run-lay.ts';
import type { TurnDegrees } from './turns.ts';

/**
 * Where one placing lies, told by child, piece and copy, so that it is found again when the pieces have been drawn
 * anew. Least x and y of its cutting line on the stretch as it lies, mm; `pinned`: the maker wants it there.
 */
export interface KeptPlace {
  readonly child: string;
  readonly piece: string;
  /** The first copy that the placing gives. */
  readonly copy: number;
  readonly turn: TurnDegrees;
  readonly mirrored: boolean;
  readonly x: number;
  readonly y: number;
  readonly pinned: boolean;
}

/** A lay as it is kept: a place for everything that lies on it. `isPinned`: by stretch and item of the plan. */
export function keptPlaces(
  plan: LayPlan,
  placed: readonly PlacedStretch[],
  isPinned: (stretch: number, item: number) => boolean = () => false,
): readonly KeptPlace[] {
  return plan.stretches.flatMap(({ items }, s) =>
    items.flatMap((item, i): readonly KeptPlace[] => {
      const place = placed[s]?.places[i];
      const variant = place === undefined ? undefined : item.variants[place.variant];
      const piece = plan.pieces[item.piece];
      if (place === undefined || variant === undefined || piece === undefined) return [];
      const { degrees: turn, mirrored } = variant.posed.pose;
      const copy = item.copies[0] ?? 0;
      const { x, y } = place;
      const pinned = isPinned(s, i);
      return [{ child: piece.child, piece: piece.cut.piece.id, copy, turn, mirrored, x, y, pinned }];
    }),
  );
}

/** Kept places on the pieces as they are now. */
export interface PlacedAgain {
  readonly placed: readonly PlacedStretch[];
  /** Things that no kept place was for; they lie at the cut end, over others. */
  readonly lost: readonly { readonly stretch: number; readonly item: number }[];
}

/** Finds the kept places again. Whether they still hold, `placedFaults` judges. */
export function placedAgain(plan: LayPlan, kept: readonly KeptPlace[]): PlacedAgain {
  const lost: { readonly stretch: number; readonly item: number }[] = [];
  const placed: PlacedStretch[] = [];
  let from = 0;
  const byName = new Map(kept.map((place) => [nameOf(place), place]));
  for (const [s, stretch] of plan.stretches.entries()) {
    const places = stretch.items.map((item, i): PlacedItem => {
      const piece = plan.pieces[item.piece];
      const id = piece?.cut.piece.id ?? '';
      const found = byName.get(nameOf({ child: piece?.child ?? '', piece: id, copy: item.copies[0] ?? 0 }));
      const variant = found === undefined ? -1 : variantOf(item, found);
      if (found !== undefined && variant >= 0) return { variant, x: found.x, y: found.y };
      lost.push({ stretch: s, item: i });
      return { variant: 0, x: 0, y: item.variants[0]?.fromY ?? 0 };
    });
    const length = lengthOf(stretch, places);
    placed.push({ from, places, length });
    from += length * (stretch.folding === 'crosswise' ? 2 : 1) + plan.cloth.gap;
  }
  return { placed, lost };
}

/** The kept places that are pinned, as a plan wants them; a piece that is no longer there is left out. */
export function pinsOf({ pieces }: Pick<LayPlan, 'pieces'>, kept: readonly KeptPlace[]): readonly LayPin[] {
  return kept.flatMap(({ child, piece, copy, turn, mirrored, x, y, pinned }): readonly LayPin[] => {
    const index = pieces.findIndex((p) => p.child === child && p.cut.piece.id === piece);
    return pinned && index >= 0 ? [{ piece: index, copy, turn, mirrored, x, y }] : [];
  });
}

type Named = Pick<KeptPlace, 'child' | 'piece' | 'copy'>;
const nameOf = ({ child, piece, copy }: Named): string => JSON.stringify([child, piece, copy]);

/** Of variants in one pose, which lie in bands of the cloth, the one whose band the place is in; -1 for no such pose. */
function variantOf({ variants }: LayItem, { turn, mirrored, y }: KeptPlace): number {
  const off = variants.map(({ posed: { pose }, fromY, toY }) =>
    pose.degrees === turn && pose.mirrored === mirrored ? Math.max(0, fromY - y, y - toY) : Infinity,
  );
  const least = Math.min(...off);
  return least === Infinity ? -1 : off.indexOf(least);
}

/** As far along the stretch as anything reaches, mm. */
export function lengthOf({ items }: LayStretch, places: readonly PlacedItem[]): number {
  return Math.max(
    0,
    ...places.map(({ variant, x }, i) => {
      const box = items[i]?.variants[variant]?.posed.box;
      return box === undefined ? x : x + box.maxX - box.minX;
    }),
  );
}
