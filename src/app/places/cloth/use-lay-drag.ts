import { type RefObject, useRef, useState } from 'react';
import type { Point } from '../../../engine/geometry/index.ts';
import { type PlacedItem, stretchJudge } from '../../../engine/lay/index.ts';
import { type HandleDrag, toTable } from '../../table/index.ts';
import { EDGE_SLACK, placeOf } from './by-hand.ts';
import { changeDesk, deskNow } from './desk.ts';
import { sameItem } from './piece-name.ts';
import type { ItemAt, SeenLay } from './seen-lay.ts';
import type { Hand } from './use-hand.ts';

/** A piece under her finger: how far it is from where it lay, and what it lies over. */
export interface DraggedPiece {
  readonly at: ItemAt;
  readonly by: Point;
  /** It overlaps something, or is off the cloth. */
  readonly isBad: boolean;
  /** Items of its stretch that it lies over. */
  readonly over: readonly number[];
}

interface Held {
  readonly at: ItemAt;
  readonly place: PlacedItem;
  readonly places: readonly PlacedItem[];
  readonly judge: ReturnType<typeof stretchJudge>;
  grab: Point | null;
  wanted: Point;
}

/** Which placing an element of the drawing belongs to. */
export function itemUnder(target: EventTarget | null): ItemAt | null {
  const id = target instanceof Element ? target.closest('[data-laid]')?.getAttribute('data-laid') : null;
  const [length, stretch, item] = (id ?? '').split('.').map(Number);
  return length === undefined || stretch === undefined || item === undefined
    ? null
    : { length, stretch, item };
}

/** A mouse drags any piece; a finger only the one that was touched before, so that it can move the drawing too. */
export function useLayDrag(
  seen: SeenLay | null,
  hand: Hand | null,
  camera: RefObject<(() => { zoom: number; x: number; y: number }) | null>,
): { readonly drag: HandleDrag; readonly dragged: DraggedPiece | null } {
  const held = useRef<Held | null>(null);
  const [dragged, setDragged] = useState<DraggedPiece | null>(null);
  const drag: HandleDrag = {
    start: (event) => {
      const at = itemUnder(event.target);
      if (seen === null || hand === null || at === null) return false;
      if (event.pointerType !== 'mouse' && !sameItem(deskNow().picked, at)) return false;
      const length = seen.lengths[at.length];
      const stretch = length?.placed[at.stretch];
      const place = placeOf(seen, at);
      if (length === undefined || stretch === undefined || place === undefined) return false;
      const judge = stretchJudge(length.plan, at.stretch, stretch.from);
      const box = event.currentTarget.getBoundingClientRect();
      const now = camera.current?.();
      const on = { x: event.clientX - box.left, y: event.clientY - box.top };
      const grab = now === undefined ? null : toTable(now, on);
      held.current = { at, place, places: stretch.places, judge, grab, wanted: place };
      return true;
    },
    move: (to) => {
      const now = held.current;
      if (now === null) return;
      now.grab ??= to;
      const { at, place, places, judge } = now;
      now.wanted = { x: place.x + to.x - now.grab.x, y: place.y + to.y - now.grab.y };
      const near = judge.nearest(at.item, place.variant, now.wanted);
      const isOff = near === null || near.off > EDGE_SLACK;
      const there = isOff ? now.wanted : near.place;
      const moved = places.map((other, i) => (i === at.item ? { ...place, ...there } : other));
      const faults = isOff ? [] : judge.faults(moved, at.item);
      const over = faults.flatMap((fault) => (fault.code === 'overlap' ? fault.items : []));
      setDragged({
        at,
        by: { x: there.x - place.x, y: there.y - place.y },
        isBad: isOff || faults.length > 0,
        over: over.filter((i) => i !== at.item),
      });
    },
    end: () => {
      const now = held.current;
      held.current = null;
      setDragged(null);
      if (now === null) return;
      changeDesk({ picked: now.at });
      const far = Math.hypot(now.wanted.x - now.place.x, now.wanted.y - now.place.y);
      // A hand that only touches shakes a little.
      if (far * (camera.current?.().zoom ?? 1) > 4) hand?.move(now.at, now.wanted);
    },
  };
  return { drag, dragged };
}
