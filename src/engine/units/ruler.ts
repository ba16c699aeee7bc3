import { inches, type UnitSystem } from './system.ts';

/** The finest mark the maker works to: `step` mm from mark to mark. An inch ruler divides the inch evenly. */
export interface Ruler {
  readonly system: UnitSystem;
  readonly step: number;
}

export const RULERS = {
  sixteenth: { system: 'in', step: inches(1 / 16) },
  eighth: { system: 'in', step: inches(1 / 8) },
  quarter: { system: 'in', step: inches(1 / 4) },
  millimetre: { system: 'cm', step: 1 },
  fiveMillimetres: { system: 'cm', step: 5 },
} as const satisfies Record<string, Ruler>;

export type RulerName = keyof typeof RULERS;

/** The ruler that is assumed when the maker has not named one: 1/16 in, or 1 mm. */
export function finestRuler(system: UnitSystem): Ruler {
  return system === 'in' ? RULERS.sixteenth : RULERS.millimetre;
}

/** The nearest mark of the ruler, in mm; half-way goes away from zero. */
export function roundToRuler(mm: number, ruler: Ruler): number {
  return marksOnRuler(mm, ruler) * ruler.step;
}

/** How many whole steps of the ruler come nearest to a length. Throws when the length is not a finite number. */
export function marksOnRuler(mm: number, ruler: Ruler): number {
  if (!Number.isFinite(mm)) throw new Error(`Not a length: ${mm}`);
  const marks = Math.sign(mm) * Math.round(Math.abs(mm) / ruler.step + FLOAT_SLACK);
  return marks === 0 ? 0 : marks;
}

/** Lets a half-way length that sits a rounding error low still go up, so that in and out agree. */
const FLOAT_SLACK = 1e-9;
