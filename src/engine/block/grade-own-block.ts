import type { Body, MeasureId } from '../body/index.ts';
import type { OwnBlock, OwnHalf } from './own-block.ts';

/**
 * Takes a paper block that fits one child to another child by the differences of their measurements.
 *
 * The rule of spread is that of the "sixth of the neck" draft (teaching blog on children's bodices, January 2017),
 * taken apart number by number: a quarter of the chest and waist differences goes to each quarter of the bodice, a
 * sixth of the neck's to its width and its front depth, half of the back length's to the level of the underarm and
 * all of it to the waist; the shoulder takes its own difference. The shoulder's fall, the back neck and the hollow
 * of the armhole stay: that draft gives them one figure for every size.
 */
export function gradeOwnBlock(own: OwnBlock, fits: Body, wearer: Body): OwnBlock {
  const by = (id: MeasureId): number => wearer.values[id].mm - fits.values[id].mm;
  const neck = by('neckBaseGirth') / 6;
  const back = by('backNeckToWaist');
  const grade = (half: OwnHalf, neckDeepens: number): OwnHalf => ({
    ...half,
    neckWidth: half.neckWidth + neck,
    neckDepth: half.neckDepth + neckDeepens,
    shoulder: half.shoulder + by('shoulderLength'),
    armholeDepth: half.armholeDepth + back / 2,
    chestWidth: half.chestWidth + by('chestGirth') / 4,
    waistWidth: half.waistWidth + by('waistGirth') / 4,
    sideWaistLevel: half.sideWaistLevel + back,
    centreLength: half.centreLength + back - neckDeepens,
  });
  return { ...own, front: grade(own.front, neck), back: grade(own.back, 0) };
}
