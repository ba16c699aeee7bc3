import { pathEnd, pathStart } from './path.ts';
import { distance } from './points.ts';
import { segmentPoint } from './segment.ts';
import type { Cubic, Path, PathSink, Point } from './types.ts';

/** Tells a path to a sink; a path whose end meets its start within 1e-6 mm is closed. */
export function walkPath(p: Path, sink: PathSink): void {
  const start = pathStart(p);
  sink.moveTo(start.x, start.y);
  for (const s of p.segments) {
    if (s.kind === 'line') sink.lineTo(s.to.x, s.to.y);
    else sink.curveTo(s.c1.x, s.c1.y, s.c2.x, s.c2.y, s.to.x, s.to.y);
  }
  if (p.segments.length > 1 && distance(start, pathEnd(p)) <= 1e-6) sink.close();
}

/** Points whose straight connection stays within `tolerance` mm of the path; first and last are its ends. */
export function pathFlatten(p: Path, tolerance: number): Point[] {
  if (!(tolerance > 0)) throw new Error('A tolerance must be positive.');
  const points: Point[] = [pathStart(p)];
  for (const s of p.segments) {
    const steps = s.kind === 'line' ? 1 : stepsFor(s, tolerance);
    for (let i = 1; i <= steps; i++) points.push(segmentPoint(s, i / steps));
  }
  return points;
}

/** A chord over a parameter step h strays by at most h2/8 times the largest second derivative. */
function stepsFor(s: Cubic, tolerance: number): number {
  const bend = Math.max(
    Math.hypot(s.from.x - 2 * s.c1.x + s.c2.x, s.from.y - 2 * s.c1.y + s.c2.y),
    Math.hypot(s.c1.x - 2 * s.c2.x + s.to.x, s.c1.y - 2 * s.c2.y + s.to.y),
  );
  return Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * tolerance))));
}
