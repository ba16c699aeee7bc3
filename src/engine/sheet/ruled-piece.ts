import type { CutPiece } from '../cut/index.ts';
import {
  type Bounds,
  outlineArea,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathEnd,
  pathStart,
} from '../geometry/index.ts';
import { type Edge, type Marking, outlineOf } from '../piece/index.ts';
import type { Ruler } from '../units/index.ts';
import { type RuledMark, runningMeasures, type Side, type UnruledMark } from './running-measures.ts';

/** A straight piece told by measures: all that is needed to rule it on the cloth. Lengths in mm. */
export interface RuledPiece {
  readonly cut: CutPiece;
  /** The cutting line, and the stitching line within. */
  readonly box: Bounds;
  readonly stitched: Bounds;
  readonly edges: Readonly<Record<Side, Edge>>;
  /** As laid off with the ruler, allowances included, and unrounded. */
  readonly width: number;
  readonly length: number;
  readonly exactWidth: number;
  readonly exactLength: number;
  /** Running measures from the left edge and from the top edge, in order; the far edge is the last. */
  readonly across: readonly RuledMark[];
  readonly down: readonly RuledMark[];
  /** What shows along the waist when the pleats are laid, as ruled; null without pleats. */
  readonly faces: number | null;
  /** The edge by which the remainder lies. */
  readonly back: Side;
}

export const SIDES = ['top', 'right', 'bottom', 'left'] as const satisfies readonly Side[];

/** How far a straight line may be off, mm, and a length that is as good as none. */
const STRAIGHT = 0.01;

/**
 * Reads a piece as a rectangle with its sides along x and y, or gives null where measures along its edges would not
 * tell all of it: another shape, a mark that is no straight line from side to side or at an edge.
 */
export function ruledPiece(cut: CutPiece, ruler: Ruler): RuledPiece | null {
  const box = rectangleOf(cut.cuttingLine);
  const stitched = rectangleOf(outlineOf(cut.piece));
  if (box === null || stitched === null) return null;
  const edges = edgesBySide(cut.piece.edges, stitched);
  const marks = cut.piece.markings.map((marking) => readMarking(marking, stitched));
  if (edges === null || marks.includes(null)) return null;
  const notches = cut.piece.notches.map(({ edge: name, at, style }): AxisMark => {
    const edge = cut.piece.edges.find((e) => e.name === name);
    const place: Point = edge === undefined ? { x: box.minX, y: box.minY } : pathAt(edge.path, at).point;
    const sides = SIDES.filter((side) => edges[side] === edge);
    const onLevel = sides.includes('top') || sides.includes('bottom');
    const kind = style === 'single' ? 'notch' : 'double-notch';
    return { kind, brought: 0, sides, axis: onLevel ? 'x' : 'y', exact: onLevel ? place.x : place.y };
  });
  const all = merged([...marks.filter((mark) => mark !== null), ...notches]);
  const back = backOf(edges);
  const across = runningMeasures(
    all.filter(({ axis }) => axis === 'x'),
    { from: box.minX, seamFrom: stitched.minX, seamTo: stitched.maxX, to: box.maxX },
    ruler,
    back === 'left' ? 'start' : 'end',
  );
  const down = runningMeasures(
    all.filter(({ axis }) => axis === 'y'),
    { from: box.minY, seamFrom: stitched.minY, seamTo: stitched.maxY, to: box.maxY },
    ruler,
    'end',
  );
  return {
    cut,
    box,
    stitched,
    edges,
    width: across.total,
    length: down.total,
    exactWidth: box.maxX - box.minX,
    exactLength: box.maxY - box.minY,
    across: across.marks,
    down: down.marks,
    faces: across.faces,
    back,
  };
}

/** The box of a closed path of straight lines that fills its box, or null. */
function rectangleOf(outline: Path): Bounds | null {
  if (outline.segments.some(({ kind }) => kind !== 'line')) return null;
  const box = pathBounds(outline);
  const missing = (box.maxX - box.minX) * (box.maxY - box.minY) - Math.abs(outlineArea(outline));
  return missing < STRAIGHT * (box.maxX - box.minX + box.maxY - box.minY) ? box : null;
}

function edgesBySide(edges: readonly Edge[], box: Bounds): RuledPiece['edges'] | null {
  const along = (axis: 'x' | 'y', at: number): Edge | null => {
    const own = edges.filter(({ path }) =>
      [pathStart(path), pathEnd(path)].every((p) => Math.abs(p[axis] - at) < STRAIGHT),
    );
    const [edge] = own;
    return own.length === 1 && edge !== undefined ? edge : null;
  };
  const [top, right, bottom, left] = [
    along('y', box.minY),
    along('x', box.maxX),
    along('y', box.maxY),
    along('x', box.minX),
  ];
  return top === null || right === null || bottom === null || left === null
    ? null
    : { top, right, bottom, left };
}

/** The side of the centre back; a width between two others has its remainder by the right join. */
function backOf({ left, right }: RuledPiece['edges']): Side {
  const isCentre = ({ kind }: Edge): boolean => kind === 'closing' || kind === 'centre';
  return isCentre(left) && !isCentre(right) ? 'left' : 'right';
}

interface AxisMark extends UnruledMark {
  readonly axis: 'x' | 'y';
}

/** Marks of one kind on one level, at two edges, are measured once. */
function merged(marks: readonly AxisMark[]): readonly AxisMark[] {
  const kept: AxisMark[] = [];
  for (const mark of marks) {
    const same = kept.findIndex(
      ({ kind, axis, exact }) =>
        kind === mark.kind && axis === mark.axis && Math.abs(exact - mark.exact) < STRAIGHT,
    );
    const other = kept[same];
    if (other === undefined) kept.push(mark);
    else kept[same] = { ...other, sides: [...other.sides, ...mark.sides] };
  }
  return kept;
}

function readMarking({ kind, path, brought = 0 }: Marking, stitched: Bounds): AxisMark | null {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  const spans = (from: number, to: number, low: number, high: number): boolean =>
    Math.abs(from - low) < STRAIGHT && Math.abs(to - high) < STRAIGHT;
  const isUpright = maxX - minX < STRAIGHT && spans(minY, maxY, stitched.minY, stitched.maxY);
  if (isUpright) return { kind, brought, sides: [], axis: 'x', exact: minX };
  const isLevel = maxY - minY < STRAIGHT;
  const level: AxisMark = { kind, brought, sides: [], axis: 'y', exact: minY };
  if (isLevel && spans(minX, maxX, stitched.minX, stitched.maxX)) return level;
  const sides = (['left', 'right'] as const).filter((side) => {
    const at = side === 'left' ? stitched.minX : stitched.maxX;
    return minX <= at && at <= maxX;
  });
  return isLevel && kind === 'closing-end' && sides.length > 0 ? { ...level, sides } : null;
}
