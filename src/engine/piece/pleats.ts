import type { Join } from './seam.ts';

export type PleatedJoin = Extract<Join, { kind: 'pleated' }>;

/** Where the cloth is folded, measured along the flat cloth from the opening, mm. */
export interface PleatFold {
  readonly at: number;
  /**
   * `fold`: outer fold, seen. `meet`: the outer fold is brought here. `inner`: fold underneath, where a join hides.
   */
  readonly kind: 'fold' | 'meet' | 'inner';
  /** For an outer fold: how far it is brought to its meeting line, mm, signed; 0 for the others. */
  readonly brought: number;
}

/** A stretch of cloth that lies on top in the finished skirt. */
export interface PleatFace {
  readonly from: number;
  readonly to: number;
  /** Where `from` lies along the finished waist, mm. */
  readonly finishedFrom: number;
}

export interface PleatLayout {
  readonly width: number;
  readonly folds: readonly PleatFold[];
  readonly faces: readonly PleatFace[];
}

/**
 * Lays `pleats` whole pleats side by side: cloth = pleats x (spacing + take-up), as in the pleat-drafting lesson
 * of 23 June 2012 (20 pleats, spacing 1 1/2 in, take-up 1 1/4 in, waist 30 in: cloth 55 in).
 * Knife: every face has its under-fold before it, half the take-up deep. Box: a face with a quarter turned under
 * on each side. Inverted: the same cloth, begun in the middle of a face, so that two folds meet outside.
 */
export function layPleats(join: PleatedJoin): PleatLayout {
  const { style, pleats, spacing, takeUp } = join;
  const folds: PleatFold[] = [];
  const faces: PleatFace[] = [];
  const module = spacing + takeUp;
  for (let i = 0; i < pleats; i++) {
    const start = i * module;
    const finished = i * spacing;
    switch (style) {
      case 'knife': {
        const face = start + takeUp / 2;
        folds.push(inner(start), meet(face), fold(face + spacing, takeUp));
        faces.push({ from: face, to: face + spacing, finishedFrom: finished });
        break;
      }
      case 'box': {
        const face = start + takeUp / 2;
        folds.push(
          meet(start),
          inner(face - takeUp / 4),
          fold(face, -takeUp / 2),
          fold(face + spacing, takeUp / 2),
          inner(face + spacing + takeUp / 4),
        );
        faces.push({ from: face, to: face + spacing, finishedFrom: finished });
        break;
      }
      case 'inverted': {
        const half = spacing / 2;
        const first = start + half;
        folds.push(
          fold(first, takeUp / 2),
          inner(first + takeUp / 4),
          meet(first + takeUp / 2),
          inner(first + (takeUp * 3) / 4),
          fold(first + takeUp, -takeUp / 2),
        );
        faces.push({ from: start, to: first, finishedFrom: finished });
        faces.push({ from: first + takeUp, to: start + module, finishedFrom: finished + half });
        break;
      }
    }
  }
  return { width: pleats * module, folds, faces };
}

const fold = (at: number, brought: number): PleatFold => ({ at, kind: 'fold', brought });
const meet = (at: number): PleatFold => ({ at, kind: 'meet', brought: 0 });
const inner = (at: number): PleatFold => ({ at, kind: 'inner', brought: 0 });

/** Where a place of the finished waist lies on the flat cloth, mm from the opening. */
export function pleatClothAt(layout: PleatLayout, finished: number): number {
  const face = layout.faces.findLast((f) => f.finishedFrom <= finished + 1e-9) ?? layout.faces[0];
  if (face === undefined) throw new Error('A pleat layout has at least one face.');
  return Math.min(face.to, face.from + (finished - face.finishedFrom));
}

/** Where a place of the flat cloth lies along the finished waist; under-folds count as the edge above them. */
export function pleatFinishedAt(layout: PleatLayout, cloth: number): number {
  const face = layout.faces.findLast((f) => f.from <= cloth + 1e-9);
  if (face === undefined) return 0;
  return face.finishedFrom + Math.min(cloth, face.to) - face.from;
}
