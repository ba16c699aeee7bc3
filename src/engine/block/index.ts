export { BLOCK_PARAMS } from './block-params.ts';
export type { Half } from './bodice-places.ts';
export {
  type Block,
  type BlockChoice,
  type BlockProblem,
  draftBlock,
} from './draft-block.ts';
export { measureHalf } from './measure-half.ts';
export type { OwnBlock, OwnBlockProblem, OwnHalf } from './own-block.ts';
export { draftSleeve } from './sleeve-block.ts';
