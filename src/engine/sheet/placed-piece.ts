import type { CutPiece } from '../cut/index.ts';
import { type Bounds, type Point, pathMap } from '../geometry/index.ts';
import { homeOf } from './lettering.ts';
import { drawPiece } from './piece-drawing.ts';
import { fromSheet, onSheet, type Placement } from './placement.ts';
import { boxAround } from './runs.ts';
import { type Ink, turnedFrame } from './scene.ts';
import { FOOT_HEIGHT } from './tile-captions.ts';
import { type Tile, type TileGrid, tilesOfShape } from './tile-cover.ts';
import { type PlacedPiece, tileCorner } from './tile-pages.ts';
import { wordsBox } from './words-box.ts';

/** A piece with its number in the list of all pieces. */
export interface NumberedPiece {
  readonly piece: CutPiece;
  readonly number: number;
}

/** Draws a piece where the arrangement put it, its words fitted to the pages that show it. */
export function placedPiece(
  { piece, number }: NumberedPiece,
  shape: readonly Point[],
  placement: Placement,
  printed: readonly Tile[],
  grid: TileGrid,
  ink: Ink,
): PlacedPiece {
  const points = shape.map((p) => onSheet(placement, p));
  const tiles = tilesOfShape(points, grid, printed);
  const windows = tiles.map((tile) => windowOnPiece(tile, grid, placement));
  const clear = tiles.map((tile) => windowOnPiece(tile, grid, placement, FOOT_HEIGHT));
  const { marks, words } = drawPiece(piece, ink, { turns: placement.turns, windows, clear });
  const frame = turnedFrame(placement.turns, placement.shift);
  return {
    number,
    title: piece.label.title,
    frame,
    marks,
    words: words.map((lines) => {
      const box = wordsBox(lines, ink.measure);
      const home = homeOf(windows, box);
      return {
        lines,
        box: boxAround([
          onSheet(placement, { x: box.minX, y: box.minY }),
          onSheet(placement, { x: box.maxX, y: box.maxY }),
        ]),
        home: home === null ? null : (tiles[windows.indexOf(home)] ?? null),
      };
    }),
    outline: pathMap(piece.cuttingLine, frame),
    points,
    tiles,
  };
}

/** The window of a page in a piece's own coordinates, without a strip at its foot. */
function windowOnPiece(tile: Tile, grid: TileGrid, placement: Placement, foot = 0): Bounds {
  const { x, y } = tileCorner(tile, grid);
  return boxAround([
    fromSheet(placement, { x, y }),
    fromSheet(placement, { x: x + grid.width, y: y + grid.height - foot }),
  ]);
}
