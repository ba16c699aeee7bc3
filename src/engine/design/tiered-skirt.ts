import type { Notch, Piece } from '../piece/index.ts';
import { gatheredPanels, type PanelRing, type SkirtParts } from './gathered-panels.ts';
import { skirtLength } from './skirt-params.ts';
import {
  COMMON_PRACTICE,
  cannot,
  countParam,
  defineStep,
  done,
  ratioParam,
  type StepOutcome,
  type StepWork,
} from './step.ts';
import { tellPanels } from './tell-panels.ts';
import { matchWaist } from './waist-notches.ts';
import { closingBelowWaist, type WaistRing, waistRing } from './waist-ring.ts';

/** Widest last tier that is drafted, mm: 30 m of gathers are more than a child can carry (our own limit). */
const WIDEST = 30_000;
/** Lowest tier that can be gathered and hemmed, mm (common practice, no source). */
const LOWEST = 30;

/** Rows of straight cloth, each gathered to the one above. */
export const tieredSkirt = defineStep({
  id: 'tiered-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    length: skirtLength,
    tiers: countParam(() => 3, [2, 8], COMMON_PRACTICE),
    waistRatio: ratioParam(
      () => 1.5,
      [1.2, 4],
      'tier on tier 1.5 times in heavier cloth, 2 in light (two teaching pages on tiered skirts); the first tier alike',
    ),
    tierRatio: ratioParam(
      () => 1.5,
      [1.2, 3],
      'tier on tier 1.5 times in heavier cloth, 2 in light (two teaching pages on tiered skirts)',
    ),
    growth: ratioParam(() => 1, [1, 3], '1 gives equal tiers, as in published sums; more is common practice'),
  },
  words: {
    title: 'Tiered skirt',
    about: 'Rows of straight cloth, each gathered to the one above.',
    length: 'Finished length from the waist seam',
    tiers: 'Number of tiers',
    waistRatio: 'First tier, times the waist',
    tierRatio: 'Each further tier, times the one above',
    growth: 'Depth of each tier, times the one above',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'too-low':
      'The first of {tiers} tiers would be only {depth} deep; it needs {least}. Take fewer tiers, a longer skirt, or tiers that grow less.',
    'too-wide':
      'The last tier would measure {width} round, and {most} is the most. Take fewer tiers, or gather them less.',
    'piece.front': 'Skirt tier {tier} front',
    'piece.back': 'Skirt tier {tier} back',
    draw: 'Tiered skirt, tier {tier} of {tiers}',
  },
  apply: (work, values) => {
    const { garment, bench } = work;
    const ring = waistRing(garment);
    if (ring === null) return cannot('tiered-skirt.no-waist');
    const depths = tierDepths(bench.rounded(values.length), values.tiers, values.growth, bench.rounded);
    const [least] = depths.toSorted((a, b) => a - b);
    if (least === undefined || least < LOWEST) {
      return cannot('tiered-skirt.too-low', {
        tiers: values.tiers,
        depth: { mm: least ?? 0 },
        least: { mm: LOWEST },
      });
    }
    const waist = 2 * (ring.frontHalf + ring.backHalf);
    const last = waist * values.waistRatio * values.tierRatio ** (values.tiers - 1);
    if (last > WIDEST) return cannot('tiered-skirt.too-wide', { width: { mm: last }, most: { mm: WIDEST } });
    return sewTiers(work, ring, depths, values.waistRatio, values.tierRatio);
  },
});

/** Depths of the tiers from the waist down; rounding falls on the last, so that they sum to the length. */
function tierDepths(
  length: number,
  tiers: number,
  growth: number,
  rounded: (mm: number) => number,
): readonly number[] {
  const shares = Array.from({ length: tiers }, (_, i) => growth ** i);
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const upper = shares.slice(0, -1).map((share) => rounded((length * share) / whole));
  return [...upper, length - upper.reduce((sum, depth) => sum + depth, 0)];
}

function sewTiers(
  { garment, bench, clothWidth }: StepWork,
  waist: WaistRing,
  depths: readonly number[],
  waistRatio: number,
  tierRatio: number,
): StepOutcome {
  const below = closingBelowWaist(garment);
  const tiers: SkirtParts[] = [];
  let ring: PanelRing = waist;
  let top = 0;
  for (const [i, depth] of depths.entries()) {
    const tier = i + 1;
    // The opening runs on through as many tiers as it needs, and the last of them says where it ends.
    const open = below !== null && (i === 0 || below > top);
    const parts = gatheredPanels({
      ring,
      ratio: i === 0 ? waistRatio : tierRatio,
      length: depth,
      usableWidth: clothWidth.skirt,
      cloth: 'skirt',
      layer: 'shell',
      prefix: `skirt-tier-${tier}`,
      titles: {
        front: { key: 'tiered-skirt.piece.front', values: { tier } },
        back: { key: 'tiered-skirt.piece.back', values: { tier } },
      },
      closingBelow: !open ? null : below - top < depth ? below - top : 0,
      seamName: i === 0 ? 'skirt-waist' : 'tier',
      top: i === 0 ? 'waist' : 'join',
      foot: tier === depths.length ? 'hem' : 'join',
    });
    tellPanels(bench, { key: 'tiered-skirt.draw', values: { tier, tiers: depths.length } }, parts.pieces);
    tiers.push(parts);
    ring = parts.foot;
    top += depth;
  }
  const pieces = tiers.flatMap((tier, i) => tier.pieces.map((piece) => notchFoot(piece, tiers[i + 1])));
  const matched = matchWaist(garment, waist, 'skirt-tier-1', pieces);
  return done({
    ...matched.garment,
    pieces: [...matched.garment.pieces, ...matched.pieces],
    seams: [...matched.garment.seams, ...tiers.flatMap((tier) => tier.seams)],
  });
}

/** A notch half-way along the foot of a tier for each that the tier below has on its gathered edge. */
function notchFoot(piece: Piece, next: SkirtParts | undefined): Piece {
  const half = piece.id.endsWith('front') ? 'front' : 'back';
  const mate = next?.pieces.find((p) => p.id.endsWith(half))?.notches.find((n) => n.edge === 'waist');
  const [own] = piece.notches.filter((n) => n.edge === 'waist');
  if (mate === undefined || own === undefined) return piece;
  const foot: Notch = { ...own, edge: 'hem', match: mate.match };
  return { ...piece, notches: [...piece.notches, foot] };
}
