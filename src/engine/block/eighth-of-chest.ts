import type { Body } from '../body/index.ts';
import type { Bench, ParamValues } from '../construct/index.ts';
import { inches } from '../units/index.ts';
import type { BLOCK_PARAMS } from './block-params.ts';
import type { BodicePlaces, Half } from './bodice-places.ts';
import { markWaistSide } from './waist-side.ts';

/** How far the armhole comes in at its middle: 3/4 to 1 in, the front being more scooped. */
const ARMHOLE_COMES_IN = { front: inches(1), back: inches(3 / 4) } as const;

/**
 * The "eighth of the chest" method, in inches (teaching blog, bodice and sleeve; not limited to children):
 * scye depth = chest/8 + 2 1/2; half shoulder = shoulder width/2 + 1/4; neck width = chest/12 + 1/4; front neck
 * depth = chest/8; back neck 1 to 1 1/2; shoulder drops 1; armhole comes in 3/4 to 1 at the middle; length to
 * waist + 1/2. Its quarter (chest/4 + 1 1/2) holds 6 in of ease; here the maker's ease stands in its place.
 */
export function placesByEighthOfChest(
  bench: Bench,
  half: Half,
  body: Body,
  block: ParamValues<typeof BLOCK_PARAMS>,
): BodicePlaces {
  const isFront = half === 'front';
  const chest = body.values.chestGirth.mm;
  const width = (chest + block.chestEase) / 4;
  const height = body.values.backNeckToWaist.mm + inches(1 / 2);
  const scyeDepth = chest / 8 + inches(2.5);
  const fall = isFront ? block.frontShoulderFall : block.backShoulderFall;

  const top = bench.start('place.centre-top', { x: 0, y: 0 });
  const neckPoint = bench.from(top).out(chest / 12 + inches(1 / 4), 'place.neck-point');
  const neckCentre = bench.from(top).down(isFront ? chest / 8 : block.backNeckDepth, `place.neck-${half}`);
  const waistCentre = bench.from(top).down(height + (isFront ? block.tummy : 0), `place.waist-${half}`);
  const overTip = bench.from(top).out(body.values.shoulderWidth.mm / 2 + inches(1 / 4), 'place.shoulder-top');
  const aim = bench.from(overTip).down(fall, 'place.shoulder-aim');
  // Front and back take one shoulder length, the front's, so that two different slopes still sew together.
  const shoulder = Math.hypot(overTip.at.x - neckPoint.at.x, block.frontShoulderFall);
  const shoulderTip = bench.from(neckPoint).toward(aim, shoulder, 'place.shoulder-tip');
  const sideTop = bench.from(top).out(width, 'place.side-top');
  const underarm = bench.from(sideTop).down(scyeDepth, 'place.underarm');
  const waistLevel = bench.from(sideTop).down(height, 'place.waist-level');
  const waistSide = markWaistSide(bench, waistLevel, width, body, block);
  const straightDown = bench.from(shoulderTip).down((scyeDepth - fall) / 2, 'place.armhole-half');
  const armholeMiddle = bench.from(straightDown).inward(ARMHOLE_COMES_IN[half], 'place.armhole-middle');
  return { neckCentre, neckPoint, shoulderTip, armholeMiddle, underarm, waistSide, waistCentre };
}
