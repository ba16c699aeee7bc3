export { layoutFaults } from './layout-faults.ts';
export { startPacking } from './start-packing.ts';
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
