import type { Body } from '../body/index.ts';
import { type Bench, type GivenParams, type ParamProblem, resolveParams } from '../construct/index.ts';
import type { Piece } from '../piece/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { BLOCK_PARAMS, type BlockMethod } from './block-params.ts';
import type { BodicePlaces, Half } from './bodice-places.ts';
import { drawBodice } from './draw-bodice.ts';
import { placesByEighthOfChest } from './eighth-of-chest.ts';
import { gradeOwnBlock } from './grade-own-block.ts';
import { checkOwnHalf, drawOwnHalf, type OwnBlock, type OwnBlockProblem } from './own-block.ts';
import { placesBySixthOfNeck } from './sixth-of-neck.ts';

/** The plain shape of one wearer: the two halves of a bodice, ready for design steps. */
export interface Block {
  readonly front: Piece;
  readonly back: Piece;
}

/** Where the block comes from: a published method with the maker's numbers over it, or her own paper. */
export type BlockChoice =
  | { readonly kind: 'drafted'; readonly given: GivenParams }
  /** `fits`: the child whom the paper fits; it is graded to the wearer. Null where it is drawn as it is. */
  | { readonly kind: 'own'; readonly own: OwnBlock; readonly fits: Body | null };

export type BlockProblem =
  | { readonly of: 'param'; readonly problem: ParamProblem }
  | { readonly of: 'own'; readonly problem: OwnBlockProblem }
  | { readonly of: 'body'; readonly code: 'tip-outside-chest' | 'armhole-too-shallow'; readonly half: Half };

export type BlockResult =
  | { readonly ok: true; readonly block: Block }
  | { readonly ok: false; readonly problems: readonly BlockProblem[] };

export function draftBlock(bench: Bench, body: Body, choice: BlockChoice, units: UnitSystem): BlockResult {
  switch (choice.kind) {
    case 'own':
      return layOutOwnBlock(
        bench,
        choice.fits === null ? choice.own : gradeOwnBlock(choice.own, choice.fits, body),
      );
    case 'drafted':
      return draftByMethod(bench, body, choice.given, units);
  }
}

function draftByMethod(bench: Bench, body: Body, given: GivenParams, units: UnitSystem): BlockResult {
  const method: BlockMethod = given.method === 'eighth-of-chest' ? 'eighth-of-chest' : 'sixth-of-neck';
  const resolved = resolveParams(BLOCK_PARAMS, given, { body, method }, units);
  if (!resolved.ok) {
    return { ok: false, problems: resolved.problems.map((problem) => ({ of: 'param', problem })) };
  }
  const problems: BlockProblem[] = [];
  const draw = (half: Half): Piece => {
    bench.part({ key: `piece.${half}`, values: {} });
    const places = PLACES_BY[method](bench, half, body, resolved.values);
    problems.push(...impossible(half, places));
    return drawBodice(bench, half, places);
  };
  const block = { front: draw('front'), back: draw('back') };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, block };
}

const PLACES_BY = {
  'sixth-of-neck': placesBySixthOfNeck,
  'eighth-of-chest': placesByEighthOfChest,
} as const;

/** Measurements that are each possible can still not fit together: a shoulder wider than the chest. */
function impossible(half: Half, places: BodicePlaces): readonly BlockProblem[] {
  const problems: BlockProblem[] = [];
  if (places.shoulderTip.at.x >= places.underarm.at.x)
    problems.push({ of: 'body', code: 'tip-outside-chest', half });
  if (
    places.underarm.at.y - places.shoulderTip.at.y < 40 ||
    places.underarm.at.y > places.waistSide.at.y - 10
  ) {
    problems.push({ of: 'body', code: 'armhole-too-shallow', half });
  }
  return problems;
}

function layOutOwnBlock(bench: Bench, own: OwnBlock): BlockResult {
  const problems = [...checkOwnHalf('front', own.front), ...checkOwnHalf('back', own.back)];
  if (problems.length > 0)
    return { ok: false, problems: problems.map((problem) => ({ of: 'own', problem })) };
  bench.part({ key: 'piece.front', values: {} });
  const front = drawOwnHalf(bench, 'front', own.front, own.seamIncluded, 0);
  bench.part({ key: 'piece.back', values: {} });
  const back = drawOwnHalf(bench, 'back', own.back, own.seamIncluded, own.closingIncluded);
  if (front !== null && back !== null) return { ok: true, block: { front, back } };
  const half: Half = front === null ? 'front' : 'back';
  const problem: OwnBlockProblem = { code: 'allowance-too-wide', half, allowance: own.seamIncluded };
  return { ok: false, problems: [{ of: 'own', problem }] };
}
