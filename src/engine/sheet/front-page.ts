import { say } from '../words/index.ts';
import { shifted } from './drawn.ts';
import { type FrontFacts, frontHead, groupsParted, pieceList, piecesThatFit } from './front-block.ts';
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
  const hasMap = placed.tiles.length > 0;
  const listX = hasMap ? mapWidth + 8 : 0;
  const listWidth = width - listX - SIDE_ROOM;
  const [first, rest] = groupsParted(facts.groups, piecesThatFit(room, facts.groups.length));
  const list = pieceList(first, listWidth, room, ink);
  const page = (marks: readonly Mark[]): Page => ({
    name: say('paper.front.name', {}, ink.units),
    width: paper.format.width,
    height: paper.format.height,
    marks: [shifted(marks, paper.margin, paper.margin)],
  });
  const front = page([
    ...head.marks,
    ...(hasMap ? [shifted(captionedMap(placed, grid, mapWidth, room, ink), 0, head.height)] : []),
    shifted(list.marks, listX, head.height),
  ]);
  return rest.length === 0 ? [front] : [front, page(pieceList(rest, width, height, ink).marks)];
}

function captionedMap(
  placed: Placed,
  grid: TileGrid,
  width: number,
  height: number,
  { units }: Ink,
): readonly Mark[] {
  const map = pageMap(mapFacts(placed, grid), width, height - CAPTION_ROOM);
  return [
    textMark(say('paper.front.map', {}, units), { x: 0, y: 4.5 }, { size: 4.5, weight: 'bold' }),
    shifted(map.marks, 0, CAPTION_ROOM),
  ];
}

function mapFacts({ pieces, tiles }: Placed, grid: TileGrid): MapFacts {
  return {
    pages: tiles.map((tile) => ({ name: tileName(tile), ...tileCorner(tile, grid) })),
    pageWidth: stepX(grid),
    pageHeight: stepY(grid),
    pieces: pieces.map(({ number, outline, points }) => {
      const box = boxAround(points);
      return { number, outline, middle: { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 } };
    }),
  };
}
