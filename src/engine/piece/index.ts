export type * from './garment.ts';
export type * from './piece.ts';
export type * from './seam.ts';
