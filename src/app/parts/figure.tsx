import type { ReactNode } from 'react';
import { type Bounds, type Path, walkPath } from '../../engine/geometry/index.ts';

/** The `d` of an SVG path, to a hundredth of a mm. */
export function pathData(path: Path): string {
  const parts: string[] = [];
  const tell = (letter: string, ...numbers: readonly number[]): void => {
    parts.push(letter + numbers.map((n) => n.toFixed(2)).join(' '));
  };
  walkPath(path, {
    moveTo: (x, y) => tell('M', x, y),
    lineTo: (x, y) => tell('L', x, y),
    curveTo: (...numbers) => tell('C', ...numbers),
    close: () => tell('Z'),
  });
  return parts.join('');
}

/** A drawing in mm, fitted into the room that it is given. `label` tells it to those who cannot see it. */
export function Figure({
  bounds,
  label,
  margin = 10,
  children,
}: {
  readonly bounds: Bounds;
  readonly label: string;
  readonly margin?: number;
  readonly children: ReactNode;
}): ReactNode {
  const { minX, minY, maxX, maxY } = bounds;
  const box = [minX - margin, minY - margin, maxX - minX + 2 * margin, maxY - minY + 2 * margin];
  return (
    <svg className="figure" viewBox={box.join(' ')} role="img" aria-label={label}>
      {children}
    </svg>
  );
}
