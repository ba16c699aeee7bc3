export {
  ALLOWANCE_RANGE,
  ALLOWANCES,
  type AllowanceTable,
  type OwnAllowances,
} from './allowances.ts';
export { type CutOptions, makeCutPiece, makeCutPieces } from './cut-piece.ts';
export { cuttingSaying } from './cutting-saying.ts';
export type * from './types.ts';
