export { AtSize } from './at-size.tsx';
export { panned, toTable } from './camera.ts';
export { DraftingTable } from './drafting-table.tsx';
export { edgeTitle, pieceTitle } from './edge-title.ts';
export type { Governed } from './governed-places.ts';
export { Hatches, hatchFill } from './hatches.tsx';
export { lengthText } from './length-text.ts';
export { type ParamNow, type ParamRef, paramNow } from './param-now.ts';
export {
  FIRST_LOOK,
  type TableDress,
  type TableLook,
  type TableMark,
  type TablePlace,
} from './table-types.ts';
export { transformOf, useCamera } from './use-camera.ts';
export { type HandleDrag, useGestures } from './use-gestures.ts';
export { useGoverned } from './use-governed.ts';
export type { OnDragParam } from './use-param-drag.ts';
export { ZoomButtons } from './zoom-buttons.tsx';
