export * from './fonts.ts';
export { createTextMeasure, missingLetters } from './letters.ts';
export * from './write-pdf.ts';
