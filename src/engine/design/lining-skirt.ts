import { type Garment, skirtDepth } from '../piece/index.ts';
import { gatheredPanels } from './gathered-panels.ts';
import type { StepWork } from './step.ts';
import { tellPanels } from './tell-panels.ts';
import { matchWaist } from './waist-notches.ts';
import { closingBelowWaist, waistRing } from './waist-ring.ts';

/** Shortest lining skirt that is made, mm; a shorter one would be no more than a frill. */
const LEAST_LENGTH = 50;

/** A plain gathered lining skirt under the skirt, when there is one; the garment as it is when there is none. */
export function liningSkirt(work: StepWork, garment: Garment, ratio: number, shorter: number): Garment {
  const depth = skirtDepth(garment);
  const ring = waistRing(garment, 'lining');
  if (depth === null || ring === null) return garment;
  const length = Math.max(LEAST_LENGTH, work.bench.rounded(depth - shorter));
  const parts = gatheredPanels({
    ring,
    ratio,
    length,
    usableWidth: work.clothWidth.lining,
    cloth: 'lining',
    layer: 'lining',
    prefix: 'lining-skirt',
    titles: {
      front: { key: 'lining.piece.skirt-front', values: {} },
      back: { key: 'lining.piece.skirt-back', values: {} },
    },
    closingBelow: closingBelowWaist(garment),
    seamName: 'skirt-waist',
  });
  tellPanels(work.bench, { key: 'lining.draw.skirt', values: {} }, parts.pieces);
  const matched = matchWaist(garment, ring, 'lining-skirt', parts.pieces);
  return {
    ...matched.garment,
    pieces: [...matched.garment.pieces, ...matched.pieces],
    seams: [...matched.garment.seams, ...parts.seams],
  };
}
