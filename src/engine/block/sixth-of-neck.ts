import type { Body } from '../body/index.ts';
import type { Bench, ParamValues } from '../construct/index.ts';
import type { BLOCK_PARAMS } from './block-params.ts';
import type { BodicePlaces, Half } from './bodice-places.ts';
import { markWaistSide } from './waist-side.ts';

/**
 * The "sixth of the neck" method, a closed rectangle with front and back side by side (teaching blog on
 * children's bodices, January 2017; the same scheme stands in Indonesian school texts, from memory).
 * Half width = chest/2 + 2 cm; height = back length + 1.5 cm; neck width = neck/6 + 0.5; front neck depth =
 * neck/6 + 1.5; back neck depth 1.5; shoulder aims 2.5 cm (2 cm is allowed) below the top of the side line;
 * underarm half-way between that point and the waist; armhole through half the chest or back width, half-way
 * between neck base and underarm.
 */
export function placesBySixthOfNeck(
  bench: Bench,
  half: Half,
  body: Body,
  block: ParamValues<typeof BLOCK_PARAMS>,
): BodicePlaces {
  const isFront = half === 'front';
  const sixth = body.values.neckBaseGirth.mm / 6;
  const height = body.values.backNeckToWaist.mm + 15;
  const width = (body.values.chestGirth.mm + block.chestEase) / 4;
  const across = (isFront ? body.values.frontChestWidth.mm : body.values.backWidth.mm) / 2;
  const fall = isFront ? block.frontShoulderFall : block.backShoulderFall;

  const top = bench.start('place.centre-top', { x: 0, y: 0 });
  const neckPoint = bench.from(top).out(sixth + 5, 'place.neck-point');
  const neckCentre = bench.from(top).down(isFront ? sixth + 15 : block.backNeckDepth, `place.neck-${half}`);
  const waistCentre = bench.from(top).down(height + (isFront ? block.tummy : 0), `place.waist-${half}`);
  const sideTop = bench.from(top).out(width, 'place.side-top');
  const aim = bench.from(sideTop).down(fall, 'place.shoulder-aim');
  const shoulderTip = bench.from(neckPoint).toward(aim, body.values.shoulderLength.mm, 'place.shoulder-tip');
  // Both halves take the level of the published 2.5 cm, so that their underarms meet whatever the slopes are.
  const underarm = bench.from(sideTop).down((25 + height) / 2, 'place.underarm');
  const waistLevel = bench.from(sideTop).down(height, 'place.waist-level');
  const waistSide = markWaistSide(bench, waistLevel, width, body, block);
  const middle = (neckCentre.at.y + underarm.at.y) / 2;
  const onCentre = bench.from(top).down(middle, 'place.across-level');
  const armholeMiddle = bench.from(onCentre).out(across, 'place.armhole-middle');
  return {
    neckCentre,
    neckPoint,
    shoulderTip,
    armholeMiddle,
    underarm,
    waistSide,
    waistCentre,
  };
}
