import type { ReactNode } from 'react';
import { boundsUnion, pathBounds, pathMap } from '../../engine/geometry/index.ts';
import { say } from '../../engine/words/index.ts';
import { Figure, pathData } from '../parts/figure.tsx';
import { useChild } from '../session/use-session.ts';

/** The pieces of the child that is shown, side by side. */
export function Drawing(): ReactNode {
  const { work } = useChild();
  if (work.report === null) return <p className="waiting quiet">{say('page.no-drawing.plain', {}, 'in')}</p>;
  let x = 0;
  let y = 0;
  let deep = 0;
  const laid = work.report.pieces.map(({ piece, cuttingLine }) => {
    const bounds = pathBounds(cuttingLine);
    const width = bounds.maxX - bounds.minX;
    if (x > 0 && x + width > 1600) {
      x = 0;
      y += deep + 40;
      deep = 0;
    }
    const move = { a: 1, b: 0, c: 0, d: 1, e: x - bounds.minX, f: y - bounds.minY };
    x += width + 40;
    deep = Math.max(deep, bounds.maxY - bounds.minY);
    return {
      id: piece.id,
      cut: pathMap(cuttingLine, move),
      edges: piece.edges.map(({ name, path }) => ({ name, path: pathMap(path, move) })),
    };
  });
  const bounds = laid.map(({ cut }) => pathBounds(cut)).reduce(boundsUnion);
  return (
    <Figure bounds={bounds} label={say('page.drawing', { child: work.name }, 'in')}>
      {laid.map(({ id, cut, edges }) => (
        <g key={id}>
          <path className="line-cut" d={pathData(cut)} />
          {edges.map(({ name, path }) => (
            <path key={name} className="line-stitch" d={pathData(path)} />
          ))}
        </g>
      ))}
    </Figure>
  );
}
