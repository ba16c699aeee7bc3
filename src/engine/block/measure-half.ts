import { distance, type Path, pathFlatten, pathStart } from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Piece } from '../piece/index.ts';
import type { OwnHalf } from './own-block.ts';

/** Measures a plain half as a maker would measure it on paper, mm: what `OwnHalf` asks for. */
export function measureHalf(half: Piece): OwnHalf {
  const neckCentre = edgeStart(half, 'neckline');
  const neckPoint = edgeStart(half, 'shoulder');
  const tip = edgeEnd(half, 'shoulder');
  const underarm = edgeStart(half, 'side');
  const waistSide = edgeEnd(half, 'side');
  const waistCentre = edgeEnd(half, 'waist');
  const armhole = edgeOf(half, 'armhole').path;
  return {
    neckWidth: neckPoint.x,
    neckDepth: neckCentre.y - neckPoint.y,
    shoulder: distance(neckPoint, tip),
    shoulderFall: tip.y - neckPoint.y,
    armholeDepth: underarm.y - tip.y,
    armholeHollow: Math.max(tip.x - outAt(armhole, (tip.y + underarm.y) / 2), 0),
    chestWidth: underarm.x,
    waistWidth: waistSide.x,
    sideWaistLevel: waistSide.y - neckPoint.y,
    centreLength: waistCentre.y - neckCentre.y,
  };
}

/** How far from the centre a path lies where it first comes down to a level. */
function outAt(path: Path, level: number): number {
  const points = pathFlatten(path, 0.05);
  let before = pathStart(path);
  for (const point of points) {
    if (point.y >= level && point.y > before.y) {
      return before.x + ((point.x - before.x) * (level - before.y)) / (point.y - before.y);
    }
    before = point;
  }
  return before.x;
}
