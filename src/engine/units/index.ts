export { formatLength, lengthParts } from './format-length.ts';
export { parseLength } from './parse-length.ts';
export { finestRuler, RULERS, type Ruler, type RulerName, roundToRuler } from './ruler.ts';
export { centimetres, inches, MM_PER_INCH, type UnitSystem } from './system.ts';
