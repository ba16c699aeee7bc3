export { openStore } from './open-store.ts';
export type * from './types.ts';
export { NO_HISTORY } from './types.ts';
