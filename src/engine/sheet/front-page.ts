import { say } from '../words/index.ts';
import { type Drawn, shifted } from './drawn.ts';
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
/** Between the map and a list under it, mm. */
const UNDER_MAP = 6;

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
  const page = (marks: readonly Mark[]): Page => ({
    name: say('paper.front.name', {}, ink.units),
    width: paper.format.width,
    height: paper.format.height,
    marks: [shifted(marks, paper.margin, paper.margin)],
  });
  const mapWidth = placed.tiles.length > 0 ? width * MAP_SHARE : 0;
  const map = mapWidth > 0 ? captionedMap(placed, grid, mapWidth, room, ink) : null;
  const listX = map === null ? 0 : mapWidth + 8;
  const [printed, ...others] = facts.groups;
  // What is told by measures is listed under the map as far as there is room for it.
  const underMap = map === null ? 0 : room - map.height - UNDER_MAP;
  const [under, over] = groupsParted(others, piecesThatFit(underMap, others.length));
  const beside = printed === undefined ? over : [printed, ...over];
  const [first, rest] = groupsParted(beside, piecesThatFit(room, beside.length));
  const front = page([
    ...head.marks,
    shifted(map?.marks ?? [], 0, head.height),
    shifted(pieceList(under, mapWidth, underMap, ink).marks, 0, height - underMap),
    shifted(pieceList(first, width - listX - SIDE_ROOM, room, ink).marks, listX, head.height),
  ]);
  return rest.length === 0 ? [front] : [front, page(pieceList(rest, width, height, ink).marks)];
}

function captionedMap(placed: Placed, grid: TileGrid, width: number, height: number, { units }: Ink): Drawn {
  const map = pageMap(mapFacts(placed, grid), width, height - CAPTION_ROOM);
  const caption = textMark(
    say('paper.front.map', {}, units),
    { x: 0, y: 4.5 },
    { size: 4.5, weight: 'bold' },
  );
  return { marks: [caption, shifted(map.marks, 0, CAPTION_ROOM)], height: CAPTION_ROOM + map.height };
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
