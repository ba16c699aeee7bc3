import {
  type Affine,
  type Bounds,
  type Path,
  type Point,
  pathBounds,
  pathMap,
} from '../../engine/geometry/index.ts';
import type { Garment } from '../../engine/piece/index.ts';
import { type Sketch, type SketchSide, sketchDress } from '../../engine/sketch/index.ts';
import { alignChildren, type ChildOutlines } from './align-children.ts';
import { type PlayPaper, type PlayPlace, paperAt } from './drafting-play.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { layerOf } from './layers.ts';
import { applyTo, boundsOfAll, movedBounds, shift } from './motion.ts';
import { type SewnLayer, sewOpen } from './sew-open.ts';
import { laidSteadily } from './steady-layout.ts';
import type { TableDress, TableLook } from './table-types.ts';

/** What lies on the table in the chosen view. `laid` are the pieces that can be touched and read. */
export type TableScene = { readonly box: Bounds; readonly laid: readonly LaidPiece[] } & (
  | { readonly view: 'pieces' }
  | { readonly view: 'sewn'; readonly layers: readonly SewnLayer[]; readonly lifted: readonly SewnLayer[] }
  | { readonly view: 'sketch'; readonly sketches: readonly LaidSketch[] }
  | { readonly view: 'children'; readonly children: readonly ChildOutlines[] }
  | { readonly view: 'drafting'; readonly paper: PlayPaper }
);

export interface LaidSketch {
  readonly side: SketchSide;
  readonly lines: Sketch['lines'];
  readonly frame: Affine;
  readonly caption: Point;
}

interface SceneWish {
  readonly dress: TableDress;
  readonly others: readonly { readonly name: string; readonly garment: Garment }[];
  readonly look: TableLook;
  readonly play: PlayPlace;
  /** Width of the screen for each px of height. */
  readonly shape: number;
  /** What lay there before, so that it need not move. */
  readonly before: readonly LaidPiece[];
}

export function tableScene({ dress, others, look, play, shape, before }: SceneWish): TableScene {
  const { shown, view } = look;
  const seen = dress.pieces.filter(({ piece }) => {
    const under = layerOf(piece) === 'lining';
    return (shown.lining || !under) && (shown.net || piece.cloth !== 'net');
  });
  switch (view) {
    case 'pieces': {
      const laid = laidSteadily(before, seen, shape, true);
      return { view, laid, box: boxOfPieces(laid, true) };
    }
    case 'sewn': {
      const layers = sewOpen(dress.garment, seen, look.joined);
      const lifted = layers.slice(0, Math.min(look.lifted, layers.length - 1));
      const lying = layers.slice(lifted.length);
      const laid = lying.flatMap(({ pieces }) => pieces);
      const widths = lying.flatMap((layer) =>
        layer.widths.map(({ outline, frame }) => movedBounds(outline, frame)),
      );
      // The topmost layer is touched first, so it stands last.
      return {
        view,
        layers: lying.toReversed(),
        lifted,
        laid: laid.toReversed(),
        box: boundsOfAll([...laid.map((one) => boxOf(one, false)), ...widths]),
      };
    }
    case 'sketch': {
      const sketches = laySketches(dress.garment, shape);
      const boxes = sketches.flatMap(({ lines, frame }) => lines.map(({ path }) => movedBounds(path, frame)));
      return { view, sketches, laid: [], box: boundsOfAll(boxes) };
    }
    case 'children': {
      const children = alignChildren([dress, ...others], shape);
      const boxes = children.flatMap(({ lines }) => lines.map(({ path }) => pathBounds(path)));
      return { view, children, laid: [], box: boundsOfAll(boxes) };
    }
    case 'drafting': {
      const paper = paperAt(dress.draft, play);
      return { view, paper, laid: [], box: paper.box };
    }
  }
}

const boxOf = ({ cut, frame }: LaidPiece, withAllowances: boolean): Bounds =>
  withAllowances
    ? movedBounds(cut.cuttingLine, frame)
    : boundsOfAll(cut.piece.edges.map(({ path }) => movedBounds(path, frame)));

const boxOfPieces = (laid: readonly LaidPiece[], withAllowances: boolean): Bounds =>
  boundsOfAll(laid.map((one) => boxOf(one, withAllowances)));

/** The lines of widths of skirt that hang from the waist. */
export const widthLines = (scene: Extract<TableScene, { view: 'sewn' }>): readonly Path[] =>
  scene.layers.flatMap(({ widths }) =>
    widths.flatMap(({ outline, folds, frame }) => [outline, ...folds].map((path) => pathMap(path, frame))),
  );

/** Clear table between the sketch of the front and that of the back, as a share of their size. */
const BETWEEN = 0.12;

/** Side by side; on a tall screen one below the other. */
function laySketches(garment: Garment, shape: number): readonly LaidSketch[] {
  const sides = ['front', 'back'] as const;
  const sketches = sides.map((side) => sketchDress(garment, side));
  const box = boundsOfAll(sketches.flatMap(({ lines }) => lines.map(({ path }) => pathBounds(path))));
  const reach = 2 * Math.max(-box.minX, box.maxX);
  return sketches.map(({ side, lines }, i) => {
    const frame =
      shape < 1 ? shift(0, i * (box.maxY - box.minY) * (1 + BETWEEN)) : shift(i * reach * (1 + BETWEEN), 0);
    return { side, lines, frame, caption: applyTo(frame, { x: 0, y: box.maxY }) };
  });
}
