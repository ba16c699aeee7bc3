export type * from './fonts.ts';
export { createTextMeasure, type MissingLetters, missingLetters } from './letters.ts';
export * from './write-pdf.ts';
