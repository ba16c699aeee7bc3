import type { UnitSystem } from '../units/index.ts';
import { type Catalogue, en, type Saying, speak } from '../words/index.ts';
import { DESIGN_STEPS } from './steps.ts';

/** Every sentence of the house: the core's, and each design step's own under its id. */
const catalogue: Catalogue = {
  ...en,
  ...Object.fromEntries(
    DESIGN_STEPS.flatMap((step) =>
      Object.entries(step.words).map(([key, text]) => [`${step.id}.${key}`, text]),
    ),
  ),
};

/** Speaks a saying, whichever room or design step it comes from. */
export const tell = (saying: Saying, units: UnitSystem): string => speak(saying, units, catalogue);

/** True when the catalogue has these words; a test asks it of every key that the steps use. */
export const hasWords = (key: string): boolean => key in catalogue;
