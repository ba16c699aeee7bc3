export { hatchLines } from './hatch.ts';
export { drawPiece, type PieceDrawing } from './piece-drawing.ts';
export type * from './scene.ts';
export { FILL_GREYS, LINE_STYLES, type LineName } from './styles.ts';
