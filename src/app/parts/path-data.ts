import { type Path, walkPath } from '../../engine/geometry/index.ts';

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
