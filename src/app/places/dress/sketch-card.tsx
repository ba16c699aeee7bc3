import { type ReactNode, useEffect, useState } from 'react';
import { type DressWish, designDress, findDress } from '../../../engine/design/index.ts';
import { type Bounds, pathBounds, pathMap } from '../../../engine/geometry/index.ts';
import type { Garment } from '../../../engine/piece/index.ts';
import { type SketchLine, sketchDress } from '../../../engine/sketch/index.ts';
import { inTurns } from '../../device/in-turns.ts';
import { pathData } from '../../parts/path-data.ts';

/** A small drawing of a dress, front and back, made from its pieces. */
export interface DressSketch {
  readonly lines: readonly SketchLine[];
  readonly bounds: Bounds;
}

/** Front and back lie beside each other with this much of the width of one between them. */
const BETWEEN = 0.12;

export function sketchBoth(garment: Garment): DressSketch {
  const sides = (['front', 'back'] as const).map((side) => sketchDress(garment, side).lines);
  const [front = [], back = []] = sides;
  const width = ({ minX, maxX }: Bounds): number => maxX - minX;
  const across = Math.max(...sides.map((lines) => width(boundsOf(lines)))) * (1 + BETWEEN);
  const moved = back.map((line) => ({
    ...line,
    path: pathMap(line.path, { a: 1, b: 0, c: 0, d: 1, e: across, f: 0 }),
  }));
  const lines = [...front, ...moved];
  return { lines, bounds: boundsOf(lines) };
}

function boundsOf(lines: readonly SketchLine[]): Bounds {
  const all = lines.map(({ path }) => pathBounds(path));
  return {
    minX: Math.min(...all.map(({ minX }) => minX)),
    minY: Math.min(...all.map(({ minY }) => minY)),
    maxX: Math.max(...all.map(({ maxX }) => maxX)),
    maxY: Math.max(...all.map(({ maxY }) => maxY)),
  };
}

export function SketchCard({
  sketch,
  label,
}: {
  readonly sketch: DressSketch;
  readonly label: string;
}): ReactNode {
  const { minX, minY, maxX, maxY } = sketch.bounds;
  const margin = (maxX - minX) * 0.02;
  const box = [minX - margin, minY - margin, maxX - minX + 2 * margin, maxY - minY + 2 * margin];
  return (
    <svg className="dress-sketch" viewBox={box.join(' ')} role="img" aria-label={label}>
      {sketch.lines.map(({ stroke, path, net }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a sketch have no names, and keep their order.
        <path key={i} className={`sketch-${stroke}${net === true ? ' sketch-net' : ''}`} d={pathData(path)} />
      ))}
    </svg>
  );
}

/**
 * Draws the dresses of the library one after another, so that no frame waits for all of them. `wish` tells for whom;
 * null while nothing is known.
 */
export function useLibrarySketches(
  wish: DressWish | null,
  ids: readonly string[],
): ReadonlyMap<string, DressSketch> {
  const [drawn, setDrawn] = useState<ReadonlyMap<string, DressSketch>>(new Map());
  useEffect(() => {
    if (wish === null) return;
    const drawing = function* (): Generator<undefined, void> {
      for (const id of ids) {
        const begun = findDress(id);
        if (begun === undefined) return;
        const dress = designDress({ ...wish, steps: begun.steps });
        if (dress.ok) setDrawn((before) => new Map(before).set(id, sketchBoth(dress.garment)));
        yield;
      }
    };
    return inTurns(drawing());
  }, [wish, ids]);
  return drawn;
}
