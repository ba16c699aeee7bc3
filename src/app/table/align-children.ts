import {
  type Affine,
  type Path,
  type Point,
  pathBounds,
  pathMap,
  pathStart,
} from '../../engine/geometry/index.ts';
import { findEdge, type Garment, outlineOf, type Piece } from '../../engine/piece/index.ts';
import { arrange } from './lay-pieces.ts';
import { HALVES, halfPieces, layerOf } from './layers.ts';
import { after, boundsOfAll, shift } from './motion.ts';

export interface ChildOutlines {
  /** Told apart from those of the other children. */
  readonly name: string;
  readonly lines: readonly { readonly key: string; readonly path: Path }[];
}

/** A part of the dress that is laid over the same part of the other children. */
interface Stack {
  readonly part: string;
  readonly lines: readonly { readonly child: number; readonly key: string; readonly path: Path }[];
}

/**
 * The outlines of several children over each other, as stitched: halves of the bodice on the centre line and the neck
 * point, other pieces on their upper inner corner. Parts lie side by side as pieces do, for a screen of this `shape`.
 */
export function alignChildren(
  children: readonly { readonly name: string; readonly garment: Garment }[],
  shape: number,
): readonly ChildOutlines[] {
  const parts = [...new Set(children.flatMap(({ garment }) => partsOf(garment).map(({ part }) => part)))];
  const stacks = parts.map(
    (part): Stack => ({
      part,
      lines: children.flatMap(({ garment }, child) =>
        partsOf(garment)
          .filter((own) => own.part === part)
          .flatMap(({ pieces, origin }) =>
            pieces.map((piece) => ({
              child,
              key: piece.id,
              path: pathMap(outlineOf(piece), shift(-origin.x, -origin.y)),
            })),
          ),
      ),
    }),
  );
  const boxes = stacks.map(({ lines }) => boundsOfAll(lines.map(({ path }) => pathBounds(path))));
  const spots = arrange(
    boxes.map((box) => ({ width: box.maxX - box.minX, height: box.maxY - box.minY })),
    shape,
  );
  const frames = stacks.map((_, i): Affine => {
    const [box, spot] = [boxes[i], spots[i]];
    return box === undefined || spot === undefined
      ? shift(0, 0)
      : after(shift(spot.x, spot.y), shift(-box.minX, -box.minY));
  });
  return children.map(({ name }, child) => ({
    name,
    lines: stacks.flatMap(({ lines }, i) =>
      lines
        .filter((line) => line.child === child)
        .map(({ key, path }) => ({ key, path: pathMap(path, frames[i] ?? shift(0, 0)) })),
    ),
  }));
}

interface Part {
  readonly part: string;
  readonly pieces: readonly Piece[];
  /** The place that is laid on the same place of the other children. */
  readonly origin: Point;
}

function partsOf(garment: Garment): readonly Part[] {
  const halves = HALVES.map((half): Part => {
    const pieces = halfPieces(garment, half);
    const neck = pieces.map((piece) => findEdge(piece, 'shoulder')).find((edge) => edge !== undefined);
    return {
      part: half,
      pieces,
      origin: { x: 0, y: neck === undefined ? 0 : pathStart(neck.path).y },
    };
  });
  const inHalves = new Set(halves.flatMap(({ pieces }) => pieces.map(({ id }) => id)));
  const others = garment.pieces
    .filter((piece) => !inHalves.has(piece.id) && layerOf(piece) === 'shell')
    .map((piece): Part => {
      const box = pathBounds(outlineOf(piece));
      const cap = findEdge(piece, 'cap-front');
      return {
        part: piece.id,
        pieces: [piece],
        origin: cap === undefined ? { x: box.minX, y: box.minY } : pathStart(cap.path),
      };
    });
  return [...halves.filter(({ pieces }) => pieces.length > 0), ...others];
}

/** Dashes in px, one for each child, so that they differ without colour; after the last they begin again. */
const CHILD_DASHES = ['', '9 4', '2 4', '14 4 2 4', '5 3', '14 3 2 3 2 3'] as const;

export const childDash = (child: number): string => CHILD_DASHES[child % CHILD_DASHES.length] ?? '';
