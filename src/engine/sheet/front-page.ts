import { say } from '../words/index.ts';
import { shifted } from './drawn.ts';
import { type FrontFacts, frontHead, pieceList, piecesThatFit } from './front-block.ts';
import { type MapFacts, pageMap } from './page-map.ts';
import type { Paper } from './paper-format.ts';
import { boxAround } from './runs.ts';
import type { Ink, Mark, Page } from './scene.ts';
import { textMark } from './text.ts';
import { stepX, stepY, type Tile, type TileGrid } from './tile-cover.ts';
import { type PlacedPiece, tileCorner, tileName } from './tile-pages.ts';

/** The large sheet with everything in its place. */
export interface Placed {
  readonly pieces: readonly PlacedPiece[];
  readonly tiles: readonly Tile[];
}

/** The front page: share of its width for the map, room for a caption and for the check line down the side, mm. */
const MAP_SHARE = 0.52;
const CAPTION_ROOM = 8;
const SIDE_ROOM = 12;

/** The page to print first; a second one if there are more pieces than its list can hold. */
export function frontPages(
  facts: FrontFacts,
  placed: Placed,
  grid: TileGrid,
  paper: Paper,
  ink: Ink,
): readonly Page[] {
  const { width, height } = grid;
  const head = frontHead(width, height, true, facts, ink);
  const room = height - head.height;
  const mapWidth = width * MAP_SHARE;
  const map = pageMap(mapFacts(placed, grid), mapWidth, room - CAPTION_ROOM);
  const listX = mapWidth + 8;
  const listWidth = width - listX - SIDE_ROOM;
  const count = piecesThatFit(room);
  const heading = say('paper.front.pages', { count: placed.tiles.length }, ink.units);
  const list = pieceList(facts.pieces.slice(0, count), 1, listWidth, room, heading, ink);
  const caption = textMark(
    say('paper.front.map', {}, ink.units),
    { x: 0, y: 4.5 },
    { size: 4.5, weight: 'bold' },
  );
  const page = (marks: readonly Mark[]): Page => ({
    name: say('paper.front.name', {}, ink.units),
    width: paper.format.width,
    height: paper.format.height,
    marks: [shifted(marks, paper.margin, paper.margin)],
  });
  const first = page([
    ...head.marks,
    shifted([caption], 0, head.height),
    shifted(map.marks, 0, head.height + CAPTION_ROOM),
    shifted(list.marks, listX, head.height),
  ]);
  if (count >= facts.pieces.length) return [first];
  const rest = pieceList(facts.pieces.slice(count), count + 1, width, height, heading, ink);
  return [first, page(rest.marks)];
}

function mapFacts({ pieces, tiles }: Placed, grid: TileGrid): MapFacts {
  return {
    pages: tiles.map((tile) => ({ name: tileName(tile), ...tileCorner(tile, grid) })),
    pageWidth: stepX(grid),
    pageHeight: stepY(grid),
    pieces: pieces.map(({ outline, points }) => {
      const box = boxAround(points);
      return { outline, middle: { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 } };
    }),
  };
}
