export { BLOCK_PARAMS, type BlockContext, type BlockMethod } from './block-params.ts';
export type { Half } from './bodice-places.ts';
export {
  type Block,
  type BlockChoice,
  type BlockProblem,
  type BlockResult,
  draftBlock,
} from './draft-block.ts';
export type { OwnBlock, OwnBlockProblem, OwnHalf } from './own-block.ts';
export { draftSleeve, type SleeveDraft, type SleeveWish } from './sleeve-block.ts';
