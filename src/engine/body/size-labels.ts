import type { Body, Sex } from './body.ts';
import { growthReference, referenceAges, referenceValue } from './growth-references.ts';
import type { MeasureId } from './measures.ts';
import { SURVEYED, surveyByBuild } from './survey.ts';
import { US_LABELS } from './us-label-table.ts';

/** Sizes of children's clothes are named by height in steps of 6 cm, from 50 cm (EN 13402-3, from memory). */
export const SIZE_STEP = 60;
const SMALLEST = 500;
const LARGEST = 1760;

/** A girth of a child against that of the label, mm: positive where the child is wider. */
export type LabelDifferences = Readonly<Partial<Record<MeasureId, number>>>;

/**
 * Nearest sizes. `height`: the label by height, mm, with the child's differences from the average of measured children
 * of that height (null beyond the survey). `ageMonths`: the age whose middle child has the label's height, null where
 * no child of the references is so tall. `us`: nearest labels of the tradition of CS 151-50 and PS 54-72; their girths
 * are those a size is sold for, 4 to 6 cm above measured children, so they stand apart and nothing is drafted from them.
 */
export interface SizeLabels {
  readonly height: number;
  readonly differences: LabelDifferences | null;
  readonly ageMonths: number | null;
  readonly us: { readonly byHeight: UsLabel; readonly byChest: UsLabel };
}

export interface UsLabel {
  readonly label: string;
  readonly differences: LabelDifferences;
}

/** The height of the size in whose middle a height lies; the smallest or largest beyond them, mm. */
export function sizeHeight(height: number): number {
  const size = SMALLEST + Math.round((height - SMALLEST) / SIZE_STEP) * SIZE_STEP;
  return Math.min(Math.max(size, SMALLEST), LARGEST);
}

/** The nearest sizes of a body, as drafted or as grown to the day. */
export function sizeLabels({ sex, values }: Body): SizeLabels {
  const height = sizeHeight(values.height.mm);
  const [least, most] = SURVEYED.statures;
  const isSurveyed = height >= least && height <= most;
  const differences = Object.fromEntries(
    (['chestGirth', 'waistGirth', 'hipGirth'] as const).map((id) => [
      id,
      values[id].mm - surveyByBuild(sex, id, height, null).mm,
    ]),
  );
  return {
    height,
    differences: isSurveyed ? differences : null,
    ageMonths: ageOfHeight(sex, height),
    us: {
      byHeight: usLabel(values, (label) => values.height.mm - label.height),
      byChest: usLabel(values, (label) => values.chestGirth.mm - label.chestGirth),
    },
  };
}

/** The age (months) at which the middle child has a height; null where none has. */
export function ageOfHeight(sex: Sex, height: number): number | null {
  const reference = growthReference('height', [0], 'who');
  if (reference === null) return null;
  const [youngest, oldest] = referenceAges(reference);
  const middle = (age: number): number => referenceValue(reference, sex, age, 0);
  if (height < middle(youngest) || height > middle(oldest)) return null;
  let [low, high] = [youngest, oldest];
  while (high - low > 0.01) {
    const age = (low + high) / 2;
    if (middle(age) < height) low = age;
    else high = age;
  }
  return (low + high) / 2;
}

type UsRow = (typeof US_LABELS)[number];

function usLabel(values: Body['values'], apart: (label: UsRow) => number): UsLabel {
  const nearest = US_LABELS.reduce((best, label) =>
    Math.abs(apart(label)) < Math.abs(apart(best)) ? label : best,
  );
  const { label, height, chestGirth, waistGirth, hipGirth } = nearest;
  return {
    label,
    differences: {
      height: values.height.mm - height,
      chestGirth: values.chestGirth.mm - chestGirth,
      waistGirth: values.waistGirth.mm - waistGirth,
      ...(hipGirth === null ? {} : { hipGirth: values.hipGirth.mm - hipGirth }),
    },
  };
}
