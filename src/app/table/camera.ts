import type { Bounds, Point } from '../../engine/geometry/index.ts';

/** How the table is seen: `zoom` screen px for each mm, `x` and `y` where the table's origin stands on the screen, px. */
export interface Camera {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

export interface Screen {
  readonly width: number;
  readonly height: number;
}

/** From a whole party of skirts on a phone to a stitch under the thumb, px for each mm. */
const LEAST_ZOOM = 0.02;
const MOST_ZOOM = 40;

const within = (zoom: number): number => Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, zoom));

/** Clear px round what is seen, for names beside pieces and for the buttons that lie over the sheet. */
const airOf = ({ width }: Screen): Screen =>
  width < 700 ? { width: 24, height: 76 } : { width: 64, height: 28 };

/** Everything in `box` in the middle of the screen, with `air` px beside it and above and below. */
export function cameraOn(box: Bounds, screen: Screen, air: Screen = airOf(screen)): Camera {
  const [across, down] = [Math.max(1, box.maxX - box.minX), Math.max(1, box.maxY - box.minY)];
  const room = (side: 'width' | 'height'): number =>
    Math.max(screen[side] * 0.4, screen[side] - 2 * air[side]);
  const zoom = within(Math.min(room('width') / across, room('height') / down));
  return {
    zoom,
    x: screen.width / 2 - ((box.minX + box.maxX) / 2) * zoom,
    y: screen.height / 2 - ((box.minY + box.maxY) / 2) * zoom,
  };
}

/** Nearer (`factor` > 1) or farther, while what lies under `at` stays there. */
export function zoomedAt(camera: Camera, factor: number, at: Point): Camera {
  const zoom = within(camera.zoom * factor);
  const k = zoom / camera.zoom;
  return { zoom, x: at.x - (at.x - camera.x) * k, y: at.y - (at.y - camera.y) * k };
}

export const panned = (camera: Camera, by: Point): Camera => ({
  ...camera,
  x: camera.x + by.x,
  y: camera.y + by.y,
});

type TwoFingers = readonly [Point, Point];

/** What lay under two fingers stays under them, as near as can be without turning the table. */
export function pinched(camera: Camera, from: TwoFingers, to: TwoFingers): Camera {
  const apart = ([a, b]: TwoFingers): number => Math.max(1, Math.hypot(a.x - b.x, a.y - b.y));
  const middle = ([a, b]: TwoFingers): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const [was, is] = [middle(from), middle(to)];
  return zoomedAt(panned(camera, { x: is.x - was.x, y: is.y - was.y }), apart(to) / apart(from), is);
}

export const toTable = (camera: Camera, { x, y }: Point): Point => ({
  x: (x - camera.x) / camera.zoom,
  y: (y - camera.y) / camera.zoom,
});

export const toScreen = (camera: Camera, { x, y }: Point): Point => ({
  x: x * camera.zoom + camera.x,
  y: y * camera.zoom + camera.y,
});

/** True where the whole box is seen, and large enough to read. */
export function seesWell(camera: Camera, box: Bounds, screen: Screen): boolean {
  const [a, b] = [
    toScreen(camera, { x: box.minX, y: box.minY }),
    toScreen(camera, { x: box.maxX, y: box.maxY }),
  ];
  const inside = a.x >= 0 && a.y >= 0 && b.x <= screen.width && b.y <= screen.height;
  return inside && Math.max(b.x - a.x, b.y - a.y) > Math.min(screen.width, screen.height) / 8;
}
