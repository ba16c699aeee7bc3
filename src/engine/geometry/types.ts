/**
 * Plain shapes in millimetres. The y axis points down the body, the x axis away from the centre line.
 * Walking along a path, "outside" is the left hand: the direction (1, 0) has the outward normal (0, -1).
 * Closed outlines of pieces run so that the cloth lies on the right hand, the waste on the left.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A direction or a shift; same form as a point, different meaning. */
export type Vector = Point;

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A cubic curve with its two handles. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

export type Segment = Line | Cubic;

/** An open run of segments, each starting where the one before ended. Never empty. */
export interface Path {
  readonly segments: readonly [Segment, ...Segment[]];
}

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Where a path is told: every output and every measure is a sink. Coordinates in mm. */
export interface PathSink {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  curveTo(c1x: number, c1y: number, c2x: number, c2y: number, x: number, y: number): void;
  close(): void;
}
