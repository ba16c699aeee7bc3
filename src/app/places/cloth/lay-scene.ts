import type { Bounds, Point } from '../../../engine/geometry/index.ts';
import type { LaidStretch } from '../../../engine/lay/index.ts';
import type { SeenLay } from './seen-lay.ts';

/** A stretch of cloth at its place on the drawing, mm. */
export interface SceneStretch {
  readonly length: number;
  readonly stretch: number;
  readonly origin: Point;
  readonly laid: LaidStretch;
  /** How far the cloth goes on the drawing: all that is bought, where this is its last stretch. */
  readonly cloth: number;
}

/** Between two stretches of one length, and between two lengths, where their words stand, mm. */
const BESIDE = 160;
const BELOW = 260;

/** Stretches of one length lie one after another, lengths one below the other. */
export function layScene({ lengths }: SeenLay): readonly SceneStretch[] {
  let y = 0;
  return lengths.flatMap(({ at, lay, plan }, length) => {
    let x = 0;
    const end = lengthEnd(at, lay);
    const scene = lay.stretches.map((laid, stretch): SceneStretch => {
      const origin = { x, y };
      const isLast = stretch === lay.stretches.length - 1;
      const left = plan.cloth.longest ?? end;
      const cloth =
        isLast && laid.folding !== 'crosswise' ? Math.max(laid.length, left - laid.from) : laid.length;
      x += cloth + BESIDE;
      return { length, stretch, origin, laid, cloth };
    });
    y += Math.max(0, ...scene.map(({ laid }) => laid.depth)) + BELOW;
    return scene;
  });
}

/** Where the cloth ends after it has shrunk: what is bought, or the lay itself. */
function lengthEnd(at: number | null, lay: SeenLay['lengths'][number]['lay']): number {
  const { bought } = lay.toBuy;
  return at !== null || bought === 0 ? lay.length : bought * (1 - lay.cloth.shrinkage);
}

/** Round everything, with room for the words at the edges, mm. */
export function sceneBox(scene: readonly SceneStretch[]): Bounds {
  const ends = scene.map(({ origin, laid, cloth }) => ({ x: origin.x + cloth, y: origin.y + laid.depth }));
  return {
    minX: -20,
    minY: -60,
    maxX: Math.max(100, ...ends.map(({ x }) => x)) + 20,
    maxY: Math.max(100, ...ends.map(({ y }) => y)) + 60,
  };
}
