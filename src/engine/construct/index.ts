export { type Bench, createBench } from './bench.ts';
export type { DraftPart, DraftStep } from './draft-record.ts';
export type * from './params.ts';
export { type Place, place } from './place.ts';
export { type ParamProblem, resolveParams } from './resolve-params.ts';
