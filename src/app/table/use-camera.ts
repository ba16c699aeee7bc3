import { type RefObject, useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { Bounds } from '../../engine/geometry/index.ts';
import { type Camera, cameraOn, type Screen, seesWell, zoomedAt } from './camera.ts';

/** Before the table has been measured: enough to draw by. */
const UNMEASURED: Screen = { width: 800, height: 600 };
/** The names and lengths are placed anew when the zoom has rested this long, ms. */
const REST = 140;
const GLIDE = 220;
/** It comes near only where it gets so many times as large. */
const MUCH = 1.4;

export interface CameraWork {
  readonly group: RefObject<SVGGElement | null>;
  readonly camera: () => Camera;
  readonly screen: Screen;
  /** The zoom at which words are placed; follows the camera when it rests. */
  readonly zoom: number;
  /** Moves the camera at once, without drawing the table anew. */
  readonly move: (camera: Camera) => void;
  readonly nearer: (factor: number) => void;
  readonly all: () => void;
  /** Glides to a place, unless it is well seen already. */
  readonly show: (box: Bounds) => void;
  /** Comes near to a place where something is done, if it is much smaller on the screen than it could be. */
  readonly near: (box: Bounds) => void;
  /** Shows all again after `near`, unless she has moved the table herself since. */
  readonly back: () => void;
}

/**
 * The camera lives outside React: a gesture writes one transform and one custom property, so that sixty frames a
 * second are kept however much lies on the table. `viewKey` says when something else is looked at, and all is shown.
 */
export function useCamera(
  sheet: RefObject<HTMLElement | null>,
  box: Bounds,
  viewKey: string,
  air?: Screen,
): CameraWork {
  const group = useRef<SVGGElement | null>(null);
  const [screen, setScreen] = useState(UNMEASURED);
  const now = useRef<Camera>(cameraOn(box, UNMEASURED));
  const fitted = useRef(true);
  const boxNow = useRef(box);
  boxNow.current = box;
  const [zoom, setZoom] = useState(now.current.zoom);
  const rest = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const glide = useRef(0);

  const write = useCallback((camera: Camera, resting: boolean): void => {
    now.current = camera;
    group.current?.setAttribute('transform', transformOf(camera));
    group.current?.style.setProperty('--mm', String(1 / camera.zoom));
    clearTimeout(rest.current);
    if (resting) setZoom(camera.zoom);
    else rest.current = setTimeout(() => setZoom(camera.zoom), REST);
  }, []);

  const move = useCallback(
    (camera: Camera): void => {
      cancelAnimationFrame(glide.current);
      fitted.current = false;
      write(camera, false);
    },
    [write],
  );

  useLayoutEffect(() => {
    const element = sheet.current;
    if (element === null) return;
    const measure = (): void => {
      const { clientWidth: width, clientHeight: height } = element;
      if (width > 0 && height > 0)
        setScreen((was) => (was.width === width && was.height === height ? was : { width, height }));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [sheet]);

  // While she has not moved it herself the camera keeps all in view.
  const seen = `${viewKey} ${screen.width} ${screen.height}`;
  const lastSeen = useRef('');
  useLayoutEffect(() => {
    const other = !lastSeen.current.startsWith(`${viewKey} `);
    if (!other && (lastSeen.current === seen || !fitted.current)) return;
    lastSeen.current = seen;
    fitted.current = true;
    cancelAnimationFrame(glide.current);
    write(cameraOn(boxNow.current, screen, air), true);
  }, [seen, viewKey, screen, air, write]);

  const glideTo = useCallback(
    (goal: Camera): void => {
      cancelAnimationFrame(glide.current);
      const from = now.current;
      if (window.matchMedia('(prefers-reduced-motion: reduce)').matches) {
        write(goal, true);
        return;
      }
      const began = performance.now();
      const tick = (time: number): void => {
        const t = Math.min(1, Math.max(0, (time - began) / GLIDE));
        const share = 1 - (1 - t) ** 3;
        const mixed = (a: number, b: number): number => a + (b - a) * share;
        if (t === 1) {
          write(goal, true);
          return;
        }
        write(
          { zoom: mixed(from.zoom, goal.zoom), x: mixed(from.x, goal.x), y: mixed(from.y, goal.y) },
          false,
        );
        glide.current = requestAnimationFrame(tick);
      };
      glide.current = requestAnimationFrame(tick);
    },
    [write],
  );

  useEffect(
    () => () => {
      cancelAnimationFrame(glide.current);
      clearTimeout(rest.current);
    },
    [],
  );

  const nearer = useCallback(
    (factor: number): void => {
      fitted.current = false;
      glideTo(zoomedAt(now.current, factor, { x: screen.width / 2, y: screen.height / 2 }));
    },
    [glideTo, screen],
  );
  const all = useCallback((): void => {
    fitted.current = true;
    glideTo(cameraOn(boxNow.current, screen, air));
  }, [glideTo, screen, air]);
  const show = useCallback(
    (place: Bounds): void => {
      if (seesWell(now.current, place, screen)) return;
      fitted.current = false;
      glideTo(cameraOn(place, screen, { width: screen.width / 4, height: screen.height / 4 }));
    },
    [glideTo, screen],
  );

  const cameNear = useRef<Camera | null>(null);
  const near = useCallback(
    (place: Bounds): void => {
      const goal = cameraOn(place, screen, { width: screen.width / 8, height: screen.height / 8 });
      const begun = cameNear.current !== null && same(now.current, cameNear.current);
      if (!begun && goal.zoom < now.current.zoom * MUCH) return;
      fitted.current = false;
      cameNear.current = goal;
      glideTo(goal);
    },
    [glideTo, screen],
  );
  const back = useCallback((): void => {
    const { current } = cameNear;
    cameNear.current = null;
    if (current !== null && same(now.current, current)) all();
  }, [all]);

  return {
    group,
    camera: useCallback(() => now.current, []),
    screen,
    zoom,
    move,
    nearer,
    all,
    show,
    near,
    back,
  };
}

const same = (a: Camera, b: Camera): boolean => a.zoom === b.zoom && a.x === b.x && a.y === b.y;

export const transformOf = ({ zoom, x, y }: Camera): string => `translate(${x} ${y}) scale(${zoom})`;
