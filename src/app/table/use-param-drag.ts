import { useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Point } from '../../engine/geometry/index.ts';
import type { Ruler } from '../../engine/units/index.ts';
import { draggedNumber } from './drag-number.ts';
import { type Governed, type GovernedPoint, governedAt, governedKey } from './governed-places.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { applyTo, inverse } from './motion.ts';
import { type ParamRef, paramKey } from './param-now.ts';
import type { TableDress } from './table-types.ts';
import type { HandleDrag } from './use-gestures.ts';

/**
 * Told while a number is dragged, and once more when it is let go: one change, however many moves. Let go beyond what
 * can be drawn, it is the last number that could.
 */
export type OnDragParam = (ref: ParamRef, value: number, phase: 'move' | 'end') => void;

interface Held {
  readonly handle: string;
  readonly governed: Governed;
  readonly point: GovernedPoint;
  readonly sent: number;
  /** The drawing that was last seen to follow, and the number that it shows. */
  readonly drawn: TableDress;
  readonly shows: number;
}

interface ParamDrag {
  readonly drag: HandleDrag;
  readonly held: string | null;
  /** The number under the finger, to be shown beside it. */
  readonly value: number | null;
  readonly governed: Governed | null;
}

/** Turns the way of a finger into the number that a point follows. */
export function useParamDrag(
  dress: TableDress | null,
  laid: readonly LaidPiece[],
  governed: readonly Governed[],
  ruler: Ruler,
  onDragParam: OnDragParam | undefined,
): ParamDrag {
  const held = useRef<Held | null>(null);
  const [shown, setShown] = useState<{ readonly held: Held; readonly value: number } | null>(null);
  const pieceOf = (point: GovernedPoint): LaidPiece | undefined =>
    laid.find(({ cut }) => cut.piece.id === point.piece);

  const numberAt = (at: Point): number | null => {
    const now = held.current;
    const on = now === null ? undefined : pieceOf(now.point);
    if (now === null || on === undefined || dress === null) return null;
    const known = { ...now, drawn: dress, shows: shownBy(now, dress) };
    const stands = governedAt(on.cut.piece, now.point.edge, now.point.middle);
    if (stands === null) return null;
    const finger = applyTo(inverse(on.frame), at);
    const drawn = { ...now.governed.now, value: known.shows };
    const value = draggedNumber(drawn, now.point, stands, finger, ruler);
    held.current = { ...known, sent: value };
    return value;
  };

  return {
    held: shown?.held.handle ?? null,
    value: shown?.value ?? null,
    governed: shown?.held.governed ?? null,
    drag: {
      start: (event) => {
        const target = event.target instanceof Element ? event.target.closest('[data-handle]') : null;
        const handle = target?.getAttribute('data-handle') ?? null;
        if (handle === null || dress === null || onDragParam === undefined) return false;
        for (const one of governed) {
          const point = one.handles.find((p) => `${paramKey(one.ref)} ${governedKey(p)}` === handle);
          if (point === undefined) continue;
          const { value } = one.now;
          held.current = { handle, governed: one, point, sent: value, drawn: dress, shows: value };
          setShown({ held: held.current, value });
          return true;
        }
        return false;
      },
      move: (at) => {
        const before = held.current?.sent;
        const value = numberAt(at);
        if (value === null || value === before || held.current === null) return;
        const now = held.current;
        // The number and the drawing come from two places; together they are drawn once.
        flushSync(() => {
          setShown({ held: now, value });
          onDragParam?.(now.governed.ref, value, 'move');
        });
      },
      end: () => {
        const now = held.current;
        held.current = null;
        setShown(null);
        if (now !== null) onDragParam?.(now.governed.ref, shownBy(now, dress), 'end');
      },
    },
  };
}

/** The number that the dress on the table shows: a new drawing shows the one that was sent last. */
const shownBy = ({ drawn, shows, sent }: Held, dress: TableDress | null): number =>
  drawn === dress ? shows : sent;
