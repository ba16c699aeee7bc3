export { extendSeam, flatSeam, pieceOf, withPiece, withSplit } from './change-garment.ts';
export { type Closing, closingOverlap, opensBack, partsNeckAtBack, type ZipClosing } from './closing.ts';
export {
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  findEdge,
  outlineOf,
  replaceEdge,
  reshape,
} from './edges.ts';
export type * from './garment.ts';
export type * from './piece.ts';
export { layPleats, type PleatedJoin, type PleatLayout, pleatClothAt, pleatFinishedAt } from './pleats.ts';
export type * from './seam.ts';
export { edgeAt, pieceAt, seamsNamed } from './seams-of.ts';
export { skirtDepth, skirtTops, tiersBelow } from './skirt-depth.ts';
export { grainThrough, type OutlinePlace, splitPiece } from './split-piece.ts';
export type * from './trim.ts';
