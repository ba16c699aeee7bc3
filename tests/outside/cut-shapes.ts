/** Pieces for the tests of cutting: a skirt panel, and random bodice fronts. */
import fc from 'fast-check';
import type { CutOptions } from '../../src/engine/cut/index.ts';
import { curveBetween, linePath, type Path, point } from '../../src/engine/geometry/index.ts';
import type { Edge, EdgeKind, Piece } from '../../src/engine/piece/index.ts';
import { number } from './geometry-shapes.ts';

/** A label for pieces whose label is not what a test is about. */
export const label: CutOptions['label'] = (piece) => ({
  title: piece.id,
  cutting: '',
  child: 'Ama',
  size: '4 years',
  date: '',
});

export function pieceOf(edges: readonly Edge[], more: Partial<Piece> = {}): Piece {
  return {
    id: 'front',
    title: { key: 'any', values: {} },
    edges,
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'pair', copies: 2 },
    grain: { from: point(10, 100), to: point(10, 10) },
    notches: [],
    markings: [],
    ...more,
  };
}

export const edge = (name: string, kind: EdgeKind, path: Path): Edge => ({ name, kind, path });

export const panel = (width: number, height: number): Edge[] => [
  edge('waist', 'waist', linePath(point(0, 0), point(width, 0))),
  edge('right', 'join', linePath(point(width, 0), point(width, height))),
  edge('hem', 'hem', linePath(point(width, height), point(0, height))),
  edge('left', 'join', linePath(point(0, height), point(0, 0))),
];

/** Half of a front: neckline, shoulder, armhole, side, waist, centre on the fold. */
export interface Front {
  readonly neckWidth: number;
  readonly neckDepth: number;
  readonly shoulder: number;
  readonly slope: number;
  readonly depth: number;
  readonly chest: number;
  readonly length: number;
  readonly waist: number;
}

export const aFront: fc.Arbitrary<Front> = fc.record({
  neckWidth: number(45, 65),
  neckDepth: number(45, 80),
  shoulder: number(55, 95),
  slope: number(10, 30),
  depth: number(60, 80),
  chest: number(20, 40),
  length: number(70, 130),
  waist: number(-15, 5),
});

export function frontEdges(f: Front): Edge[] {
  const neckPoint = point(f.neckWidth, 0);
  const tip = point(f.neckWidth + f.shoulder, f.slope);
  const underarm = point(tip.x + f.chest, tip.y + f.depth + f.chest);
  const side = point(underarm.x + f.waist, underarm.y + f.length);
  const centre = point(0, side.y);
  return [
    edge('neckline', 'neck', curveBetween(point(0, f.neckDepth), point(1, 0), neckPoint, point(0.25, -1))),
    edge('shoulder', 'shoulder', linePath(neckPoint, tip)),
    edge('armhole', 'armhole', curveBetween(tip, point(-0.1, 1), underarm, point(1, 0.05))),
    edge('side', 'side', linePath(underarm, side)),
    edge('waist', 'waist', linePath(side, centre)),
    edge('centre', 'fold', linePath(centre, point(0, f.neckDepth))),
  ];
}
