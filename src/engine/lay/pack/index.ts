export { layoutFaults, type PackFault } from './layout-faults.ts';
export { startPacking } from './start-packing.ts';
export type {
  PackItem,
  PackLayout,
  PackPlace,
  PackProblem,
  PackProgress,
  PackRange,
  PackRefusal,
  PackSettings,
  PackStart,
  PackVariant,
} from './types.ts';
