import type { DraftPart, DraftStep } from '../../engine/construct/index.ts';
import { type Bounds, boundsUnion, type Path, pathBounds } from '../../engine/geometry/index.ts';
import { boundsOfAll } from './motion.ts';

/** Where she is in the drawing: `step` counts the steps done in the part, 0 for the paper before the first. */
export interface PlayPlace {
  readonly part: number;
  readonly step: number;
}

export type PlayMove = 'on' | 'back' | 'all' | 'first' | 'next-part' | 'last-part';

/** One move on; from the last step of a part on to the next part, and back. Stays where there is no further way. */
export function played(draft: readonly DraftPart[], { part, step }: PlayPlace, move: PlayMove): PlayPlace {
  const steps = draft[part]?.steps.length ?? 0;
  switch (move) {
    case 'on':
      if (step < steps) return { part, step: step + 1 };
      return part + 1 < draft.length ? { part: part + 1, step: 1 } : { part, step };
    case 'back':
      if (step > 1) return { part, step: step - 1 };
      return part > 0 ? { part: part - 1, step: draft[part - 1]?.steps.length ?? 0 } : { part, step: 0 };
    case 'all':
      return { part, step: steps };
    case 'first':
      return { part, step: 0 };
    case 'next-part':
      return part + 1 < draft.length ? { part: part + 1, step: 1 } : { part, step: steps };
    case 'last-part':
      return part > 0 ? { part: part - 1, step: 1 } : { part, step: 0 };
  }
}

/** What stands on the paper at a place of the play. */
export interface PlayPaper {
  readonly before: readonly Path[];
  readonly drawn: readonly DraftStep[];
  /** The step that was drawn last; it stands out. */
  readonly live: DraftStep | null;
  /** Room that the whole part needs, so that the paper does not jump while the drawing grows. */
  readonly box: Bounds;
}

export function paperAt(draft: readonly DraftPart[], { part, step }: PlayPlace): PlayPaper {
  const here = draft[part];
  const steps = here?.steps ?? [];
  const boxes = [
    ...(here?.before ?? []).map(pathBounds),
    ...steps.flatMap(({ lines, places }) => [
      ...lines.map(pathBounds),
      ...places.map(({ at }): Bounds => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })),
    ]),
  ];
  const box = boundsOfAll(boxes);
  return {
    before: here?.before ?? [],
    drawn: steps.slice(0, Math.max(0, step - 1)),
    live: steps[step - 1] ?? null,
    box: boundsUnion(box, { minX: box.minX, minY: box.minY, maxX: box.minX + 60, maxY: box.minY + 60 }),
  };
}

/**
 * Construction lines that belong to a half of the bodice: of its block and of the steps that draw on it, which all
 * keep its coordinates.
 */
export function linesOfHalf(draft: readonly DraftPart[], half: 'front' | 'back'): readonly Path[] {
  return draft
    .filter(({ title: { key } }) => key === `piece.${half}` || key.endsWith(`.draw.${half}`))
    .flatMap(({ steps }) => steps.flatMap(({ lines }) => lines));
}
