export { layoutFaults } from './layout-faults.ts';
export { startPacking } from './start-packing.ts';
export {
  type HelperLink,
  helpingSearch,
  type LegReport,
  type LegRequest,
  packWithHelp,
} from './two-searches.ts';
export type {
  PackItem,
  PackPlace,
  PackProblem,
  PackProgress,
  PackRange,
  PackSettings,
  PackStart,
  PackVariant,
} from './types.ts';
