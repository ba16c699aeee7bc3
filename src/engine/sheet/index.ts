export { type ClothCutList, type CutListJob, cutListPages } from './cut-list.ts';
export {
  type Diagram,
  type HandPart,
  type HandSheetJob,
  type HandStep,
  handSheetPages,
} from './hand-sheet.ts';
export { hatchLines } from './hatch.ts';
export {
  PAPER_FORMATS,
  type Paper,
  type PaperFormat,
  type PaperName,
  paperOf,
  printableSize,
} from './paper-format.ts';
export { type PatternJob, type PatternSheets, patternSheets } from './pattern-sheets.ts';
export { drawPiece, type PieceDrawing } from './piece-drawing.ts';
export { type PrinterError, type PrinterProblem, printerProblem } from './printer.ts';
export type * from './scene.ts';
export { FILL_GREYS, LINE_STYLES, type LineName } from './styles.ts';
export { pageSvg, piecePage } from './svg.ts';
export { type FlowBlock, type FlowSettings, flowPages, type TableColumn } from './text-pages.ts';
