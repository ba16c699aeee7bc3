import type { Body } from '../body/index.ts';
import type { Bench, ParamValues, Place } from '../construct/index.ts';
import type { BLOCK_PARAMS } from './block-params.ts';

/** Takes the side in (or, for a round tummy, lets it out) so that the waist gets its ease. */
export function markWaistSide(
  bench: Bench,
  waistLevel: Place,
  chestQuarter: number,
  body: Body,
  block: ParamValues<typeof BLOCK_PARAMS>,
): Place {
  const waistQuarter = (body.values.waistGirth.mm + block.waistEase) / 4;
  const takeIn = chestQuarter - waistQuarter;
  return takeIn >= 0
    ? bench.from(waistLevel).inward(takeIn, 'place.waist-side')
    : bench.from(waistLevel).out(-takeIn, 'place.waist-side');
}
