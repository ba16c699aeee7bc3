import type { Bench } from '../construct/index.ts';
import { direction, distance, midpoint, outward, type Path, scale, type Vector } from '../geometry/index.ts';
import { type Edge, grainThrough, type Piece } from '../piece/index.ts';
import type { BodicePlaces, Half } from './bodice-places.ts';

const OUT: Vector = { x: 1, y: 0 };
const INWARD: Vector = { x: -1, y: 0 };

/** Bends smaller than this share of the run are drawn straight: no hand can draw or sew them. */
const STRAIGHT_ENOUGH = 0.002;

/**
 * Draws one half of the bodice through its places. Neckline and armhole leave the shoulder seam square, the
 * armhole and the waist meet the side seam square, neckline and waist meet the centre square: so front and back
 * run smoothly into each other whatever their two slopes are (Conover, A Complete Course in Dressmaking, lesson
 * IX: armholes laid shoulder to shoulder must run through as one line).
 */
export function drawBodice(bench: Bench, half: Half, places: BodicePlaces): Piece {
  const { neckCentre, neckPoint, shoulderTip, armholeMiddle, underarm, waistSide, waistCentre } = places;
  const alongShoulder = direction(neckPoint.at, shoulderTip.at);
  const offSide = outward(direction(underarm.at, waistSide.at));
  const shoulder = bench.straight(neckPoint, shoulderTip, 'edge.shoulder');
  const neckline = bench.curve(
    [neckCentre, neckPoint],
    {
      start: OUT,
      end: outward(alongShoulder),
      startWords: 'end.square-centre',
      endWords: 'end.square-shoulder',
    },
    'edge.neckline',
  );
  const armhole = bench.curve(
    [shoulderTip, armholeMiddle, underarm],
    {
      start: scale(outward(alongShoulder), -1),
      end: offSide,
      startWords: 'end.square-shoulder',
      endWords: 'end.square-side',
    },
    'edge.armhole',
  );
  const side = bench.straight(underarm, waistSide, 'edge.side');
  const waist = drawWaist(bench, places, offSide);
  const centre = bench.straight(waistCentre, neckCentre, `edge.centre-${half}`);
  const edges: readonly Edge[] = [
    { name: 'neckline', kind: 'neck', path: neckline },
    { name: 'shoulder', kind: 'shoulder', path: shoulder },
    { name: 'armhole', kind: 'armhole', path: armhole },
    { name: 'side', kind: 'side', path: side },
    { name: 'waist', kind: 'waist', path: waist },
    { name: 'centre', kind: 'fold', path: centre },
  ];
  return {
    id: half,
    title: { key: `piece.${half}`, values: {} },
    edges,
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'fold', copies: 1 },
    grain: grainThrough(midpoint(neckCentre.at, underarm.at), distance(neckCentre.at, waistCentre.at) * 0.5),
    notches: [],
    markings: [],
  };
}

function drawWaist(bench: Bench, places: BodicePlaces, offSide: Vector): Path {
  const { waistSide, waistCentre } = places;
  const run = distance(waistSide.at, waistCentre.at);
  const bend = Math.abs(waistSide.at.y - waistCentre.at.y) + run * Math.abs(offSide.y);
  if (bend < run * STRAIGHT_ENOUGH) return bench.straight(waistSide, waistCentre, 'edge.waist');
  return bench.curve(
    [waistSide, waistCentre],
    { start: scale(offSide, -1), end: INWARD, startWords: 'end.square-side', endWords: 'end.square-centre' },
    'edge.waist',
  );
}
