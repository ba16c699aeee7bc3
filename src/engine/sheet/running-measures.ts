import type { Marking } from '../piece/index.ts';
import type { Ruler } from '../units/index.ts';
import { ruledSteps, type StretchKind } from './ruled-steps.ts';

export type Side = 'top' | 'right' | 'bottom' | 'left';

export type MarkKind = Marking['kind'] | 'stitch' | 'notch' | 'double-notch' | 'edge';

/** A mark on a straight piece, in one direction. Lengths in mm. */
export interface UnruledMark {
  readonly kind: MarkKind;
  /** In the piece's own coordinates. */
  readonly exact: number;
  /** For a pleat fold: how far it is brought, signed. */
  readonly brought: number;
  /** At which edges a mark stands that is no line from side to side. */
  readonly sides: readonly Side[];
}

/** The same as it is laid off with a ruler. */
export interface RuledMark extends UnruledMark {
  /** From the edge where measuring begins. */
  readonly at: number;
}

/** Where a piece begins and ends in one direction, cutting lines outside, stitching lines inside. */
export interface Span {
  readonly from: number;
  readonly seamFrom: number;
  readonly seamTo: number;
  readonly to: number;
}

export interface Running {
  /** In order; the far edge is the last. */
  readonly marks: readonly RuledMark[];
  readonly total: number;
  /** What shows when the pleats are laid; null without pleats. */
  readonly faces: number | null;
}

/** A length that is as good as none, mm. */
const NONE = 0.01;

/**
 * Lays marks off from one edge with a ruler. Seams and pleats part the span into stretches that follow one another.
 * Any other mark keeps its place along the finished edge: on a pleated piece it is measured over the faces alone, so
 * that a notch still meets its partner when the pleats are laid.
 */
export function runningMeasures(
  marks: readonly UnruledMark[],
  span: Span,
  ruler: Ruler,
  back: 'start' | 'end',
): Running {
  const lines = [
    ...(span.seamFrom - span.from > NONE ? [stitchAt(span.seamFrom)] : []),
    ...marks.filter(isPleat),
    ...(span.to - span.seamTo > NONE ? [stitchAt(span.seamTo)] : []),
    { kind: 'edge', brought: 0, sides: [], exact: span.to } as const,
  ].sort((a, b) => a.exact - b.exact);
  const stretches = laidOff(lines, span, ruler, back);
  const faces = stretches.filter(({ kind }) => kind === 'face');
  return {
    marks: [
      ...marks
        .filter((mark) => !isPleat(mark))
        .map((mark) => ({ ...mark, at: placeOf(mark.exact, stretches, ruler) })),
      ...lines.map((line, i) => ({ ...line, at: stretches[i]?.to ?? 0 })),
    ].sort((a, b) => a.at - b.at),
    total: stretches.at(-1)?.to ?? 0,
    faces: faces.length === 0 ? null : faces.reduce((sum, { from, to }) => sum + to - from, 0),
  };
}

const isPleat = ({ kind }: UnruledMark): boolean => kind === 'pleat-fold' || kind === 'pleat-meet';
const stitchAt = (exact: number) => ({ kind: 'stitch', brought: 0, sides: [], exact }) as const;

/** A stretch that ends at a line, with where it lies as ruled. */
interface LaidStretch {
  readonly kind: StretchKind;
  readonly exactFrom: number;
  readonly length: number;
  readonly from: number;
  readonly to: number;
}

function laidOff(
  lines: readonly UnruledMark[],
  span: Span,
  ruler: Ruler,
  back: 'start' | 'end',
): readonly LaidStretch[] {
  const hasPleats = lines.some(({ kind }) => kind === 'pleat-fold');
  const exact = lines.map((line, i) => {
    const before = lines[i - 1];
    const exactFrom = before?.exact ?? span.from;
    const isTurning = line.exact <= span.seamFrom + NONE || line.exact > span.seamTo + NONE;
    // A fold that is brought to the right has its face on its left, and the other way round.
    const isFace = line.brought > 0 || (before?.brought ?? 0) < 0;
    const cloth = hasPleats ? (isFace ? 'face' : 'under') : 'body';
    const kind: StretchKind = isTurning ? 'turning' : cloth;
    return { kind, exactFrom, length: line.exact - exactFrom };
  });
  let to = 0;
  const steps = ruledSteps(exact, ruler, back);
  return exact.map((stretch, i) => {
    const from = to;
    to = from + (steps[i] ?? 0) * ruler.step;
    return { ...stretch, from, to };
  });
}

function placeOf(exact: number, stretches: readonly LaidStretch[], { step }: Ruler): number {
  const own = stretches.find(({ exactFrom, length }) => exact <= exactFrom + length + NONE);
  if (own === undefined) return stretches.at(-1)?.to ?? 0;
  const rounded = (mm: number): number => Math.round(mm / step) * step;
  if (own.kind !== 'face' && own.kind !== 'under') {
    return Math.min(own.to, own.from + rounded(exact - own.exactFrom));
  }
  // How much of the faces comes before it, and where as much comes before it as ruled.
  let finished = 0;
  for (const { kind, exactFrom, length } of stretches) {
    if (kind === 'face') finished += Math.min(length, Math.max(0, exact - exactFrom));
  }
  const faces = stretches.filter(({ kind }) => kind === 'face');
  for (const { from, to } of faces) {
    if (finished <= to - from + step / 2) return Math.min(to, from + rounded(finished));
    finished -= to - from;
  }
  return faces.at(-1)?.to ?? 0;
}
