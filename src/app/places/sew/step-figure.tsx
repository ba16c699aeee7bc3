import { memo, type ReactNode } from 'react';
import { figureOf } from '../../../engine/order/index.ts';
import type { Garment } from '../../../engine/piece/index.ts';
import type { PlannedStep } from '../../../engine/sew/index.ts';
import type { Ink, TextMeasure } from '../../../engine/sheet/index.ts';
import type { UnitSystem } from '../../../engine/units/index.ts';
import { PageMarks } from '../paper/page-drawing.tsx';

/** Names below the pieces are cut off by it; an average letter is enough for that. */
const ABOUT: TextMeasure = { width: (text, size) => text.length * size * 0.55 };

/** The drawing of a step from the pieces of this dress, the same that is printed. */
export const StepFigure = memo(function StepFigure({
  garment,
  step,
  units,
  name,
}: {
  readonly garment: Garment;
  readonly step: PlannedStep;
  readonly units: UnitSystem;
  readonly name: string;
}): ReactNode {
  const ink: Ink = { units, measure: ABOUT };
  const figure = figureOf(garment, step, ink);
  if (figure === null) return null;
  const { width, height, marks } = figure;
  return (
    <svg className="step-figure" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      <PageMarks page={{ name, width, height, marks }} />
    </svg>
  );
});
