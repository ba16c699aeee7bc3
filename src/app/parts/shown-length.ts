import { formatLength, parseLength, type UnitSystem } from '../../engine/units/index.ts';

type Length = string | number;

/** What a field shows while she is not typing in it: in the units of the order, and without the unit's name. */
export function shownLength(given: Length | undefined, units: UnitSystem): string {
  if (given === undefined) return '';
  const read = parseLength(given, units);
  if (!read.ok) return String(given);
  return inUnits(read.mm, units);
}

/** A length as a field shows it. */
export const inUnits = (mm: number, units: UnitSystem): string =>
  formatLength(mm, units).replace(/ (in|cm)$/, '');

/** What a field holds when she begins to type: as she wrote it, unless that was in other units. */
export function typedLength(given: Length | undefined, units: UnitSystem): string {
  if (given === undefined) return '';
  const text = String(given);
  const [plain, said] = [text.replace(/\s*(in|cm|mm)$/, ''), /(in|cm|mm)$/.exec(text)?.[1]];
  if (said === units) return plain;
  return said === undefined ? text : shownLength(given, units);
}
