export {
  type Cloth,
  type LaidPiece,
  type LayProblem,
  layInRows,
  lengthToBuy,
  type RowLay,
} from './row-layout.ts';
export { formatSellingLength, roundUpToUnit, SELLING_UNITS, type SellingUnit } from './selling-unit.ts';
