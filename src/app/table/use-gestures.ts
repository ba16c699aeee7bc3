import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import type { Point } from '../../engine/geometry/index.ts';
import { panned, pinched, toTable, zoomedAt } from './camera.ts';
import type { CameraWork } from './use-camera.ts';

/** A finger that strays less than this while it is down has touched, not dragged, px. */
const STILL = 5;
/** How much nearer a notch of the wheel brings the table. */
const WHEEL = 0.0016;

export interface HandleDrag {
  /** Whether a handle lies under the finger. */
  readonly start: (event: PointerEvent<SVGSVGElement>) => boolean;
  readonly move: (at: Point) => void;
  readonly end: () => void;
}

interface Gestures {
  readonly onPointerDown: (event: PointerEvent<SVGSVGElement>) => void;
  readonly onPointerMove: (event: PointerEvent<SVGSVGElement>) => void;
  readonly onPointerUp: (event: PointerEvent<SVGSVGElement>) => void;
  readonly onPointerCancel: (event: PointerEvent<SVGSVGElement>) => void;
}

/** One finger moves the table or drags a handle, two come nearer, a still one touches; all places in mm of the table. */
export function useGestures(
  svg: RefObject<SVGSVGElement | null>,
  { camera, move }: CameraWork,
  drag: HandleDrag,
  onTouch: (at: Point) => void,
): Gestures {
  const fingers = useRef(new Map<number, Point>());
  const strayed = useRef(false);
  const began = useRef<Point>({ x: 0, y: 0 });
  const drags = useRef(false);

  useEffect(() => {
    const element = svg.current;
    if (element === null) return;
    const wheel = (event: WheelEvent): void => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      const by = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaY;
      const speed = event.ctrlKey ? WHEEL * 4 : WHEEL;
      const at = { x: event.clientX - box.left, y: event.clientY - box.top };
      move(zoomedAt(camera(), Math.exp(-by * speed), at));
    };
    // React's own wheel listener may not hold the page still.
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  }, [svg, camera, move]);

  const placeOf = (event: PointerEvent<SVGSVGElement>): Point => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };

  const lift = (event: PointerEvent<SVGSVGElement>, touches: boolean): void => {
    if (!fingers.current.delete(event.pointerId)) return;
    if (drags.current) {
      drag.end();
      drags.current = false;
    } else if (touches && !strayed.current && fingers.current.size === 0)
      onTouch(toTable(camera(), placeOf(event)));
  };

  return {
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = placeOf(event);
      if (fingers.current.size === 0) {
        strayed.current = false;
        began.current = at;
        drags.current = drag.start(event);
      } else strayed.current = true;
      fingers.current.set(event.pointerId, at);
    },
    onPointerMove: (event) => {
      const was = fingers.current.get(event.pointerId);
      if (was === undefined) return;
      const at = placeOf(event);
      if (Math.hypot(at.x - began.current.x, at.y - began.current.y) > STILL) strayed.current = true;
      const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
      fingers.current.set(event.pointerId, at);
      if (drags.current) drag.move(toTable(camera(), at));
      else if (other !== undefined) move(pinched(camera(), [was, other], [at, other]));
      else if (strayed.current) move(panned(camera(), { x: at.x - was.x, y: at.y - was.y }));
    },
    onPointerUp: (event) => lift(event, true),
    onPointerCancel: (event) => lift(event, false),
  };
}
