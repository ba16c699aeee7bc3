import {
  type Bounds,
  boundsUnion,
  linePath,
  type Path,
  type Point,
  pathAt,
  pathBounds,
  pathLength,
  pathMap,
  pathTranslate,
} from '../../engine/geometry/index.ts';
import { type LayPiece, type PlacedStretch, planLay, readLay, runLay } from '../../engine/lay/index.ts';
import { edgeEnd, findEdge, outlineOf, type Piece } from '../../engine/piece/index.ts';
import { paperOf } from '../../engine/sheet/index.ts';
import { sketchDress } from '../../engine/sketch/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { guideBlock, guideDress } from './guide-dress.ts';

export const GUIDE_PARTS = ['measure', 'block', 'drop-shoulder', 'yoke', 'lay', 'print', 'sew'] as const;
export type GuidePart = (typeof GUIDE_PARTS)[number];

/** How a line of a picture looks; `live` is what the words speak of. */
export type GuideLook = 'before' | 'line' | 'live' | 'fine' | 'cloth';

export interface GuidePicture {
  readonly lines: readonly { readonly look: GuideLook; readonly path: Path }[];
  readonly words: readonly { readonly text: string; readonly at: Point }[];
  readonly bounds: Bounds;
}

/** Clear paper between two things that lie beside each other, mm. */
const BESIDE = 60;
/** The lay of the picture need not be the shortest: so many tries take a moment. */
const TRIES = 120;
/** A piece on the cloth that is narrower than this has no room for its name, mm. */
const NAMED = 200;

/** The picture of one part of the guide, drawn from the engine on the invented child; mm. */
export function guidePicture(part: GuidePart, units: UnitSystem): GuidePicture {
  switch (part) {
    case 'measure':
      return measured(units);
    case 'block':
      return drafted('piece.front');
    case 'drop-shoulder':
      return drafted('drop-shoulder.draw.front');
    case 'yoke':
      return drafted('yoke.draw.front');
    case 'lay':
      return laid();
    case 'print':
      return printed();
    case 'sew':
      return sewn();
  }
}

function picture(lines: GuidePicture['lines'], words: GuidePicture['words'] = []): GuidePicture {
  return { lines, words, bounds: lines.map(({ path }) => pathBounds(path)).reduce(boundsUnion) };
}

/** Front and back side by side; on them the edges and levels that follow a measure, with its name. */
function measured(units: UnitSystem): GuidePicture {
  const { drawing } = guideBlock();
  const find = (id: string): Piece => {
    const piece = drawing.drawn.garment.pieces.find((one) => one.id === id);
    if (piece === undefined) throw new Error(`A block has a ${id}.`);
    return piece;
  };
  const [front, back] = [find('front'), find('back')];
  const aside = { x: pathBounds(outlineOf(front)).maxX + 2 * BESIDE, y: 0 };
  const places: { readonly path: Path; readonly measure: string }[] = [];
  const edge = (piece: Piece, name: string, by: Point, measure: string): void => {
    const found = findEdge(piece, name);
    if (found !== undefined) places.push({ path: pathTranslate(found.path, by), measure });
  };
  const none = { x: 0, y: 0 };
  const underarm = edgeEnd(front, 'armhole');
  places.push({ path: linePath({ x: 0, y: underarm.y }, underarm), measure: 'chestGirth' });
  edge(front, 'shoulder', none, 'shoulderLength');
  edge(front, 'waist', none, 'waistGirth');
  edge(back, 'centre', aside, 'backNeckToWaist');
  return picture(
    [
      { look: 'line', path: outlineOf(front) },
      { look: 'line', path: pathTranslate(outlineOf(back), aside) },
      ...places.map(({ path }) => ({ look: 'live' as const, path })),
    ],
    places.map(({ path, measure }) => ({
      text: say(`measure.${measure}` as 'measure.height', {}, units),
      at: pathAt(path, pathLength(path) / 2).point,
    })),
  );
}

/** One part of the drafting, all its lines drawn on what stood there before. */
function drafted(title: string): GuidePicture {
  const part = guideDress().drawing.drawn.draft.find((one) => one.title.key === title);
  if (part === undefined) throw new Error(`The dress of the guide has a part ${title}.`);
  return picture([
    ...part.before.map((path) => ({ look: 'before' as const, path })),
    ...part.steps.flatMap(({ lines }) =>
      lines.map((path) => ({ look: part.before.length > 0 ? ('live' as const) : ('line' as const), path })),
    ),
  ]);
}

function laid(): GuidePicture {
  const { order, drawing } = guideDress();
  const [cloth] = order.cloths;
  if (cloth === undefined) throw new Error('The dress of the guide has a cloth.');
  const pieces = drawing.pieces
    .filter(({ piece }) => cloth.roles.includes(piece.cloth))
    .map((cut): LayPiece => ({ cut, child: drawing.name, grain: 'lengthwise' }));
  const planned = planLay(pieces, cloth);
  if (!planned.ok) throw new Error('The satin of the guide holds its pieces.');
  let placed: readonly PlacedStretch[] | null = null;
  for (const { best } of runLay(planned.plan, { seed: 1, evaluations: TRIES })) placed = best ?? placed;
  if (placed === null) throw new Error('A cloth without an end holds a lay.');
  const lay = readLay(planned.plan, placed);
  return picture(
    lay.stretches.flatMap(({ from, length, depth, pieces: on }) => [
      { look: 'cloth' as const, path: box(from, 0, from + length, depth) },
      ...on.map(({ outline }) => ({
        look: 'line' as const,
        path: pathTranslate(outline, { x: from, y: 0 }),
      })),
    ]),
    lay.stretches.flatMap(({ from, pieces: on }) =>
      on
        .filter(({ outline }) => widthOf(outline) > NAMED)
        .map(({ title, outline }) => ({ text: title, at: middle(outline, from) })),
    ),
  );
}

/** A piece of the skirt on the sheets of A4 that carry it, numbered. */
function printed(): GuidePicture {
  const cut = guideDress().drawing.pieces.find(({ piece }) => piece.id === 'skirt-front');
  if (cut === undefined) throw new Error('The dress of the guide has a skirt.');
  const { format, margin, overlap } = paperOf('a4');
  const [across, down] = [format.width - 2 * margin - overlap, format.height - 2 * margin - overlap];
  const { minX, minY, maxX, maxY } = pathBounds(cut.cuttingLine);
  const columns = Math.ceil((maxX - minX) / across);
  const sheets = [...Array(columns * Math.ceil((maxY - minY) / down)).keys()].map((i) => {
    const [x, y] = [minX + (i % columns) * across, minY + Math.floor(i / columns) * down];
    return {
      path: box(x, y, x + across, y + down),
      at: { x: x + across / 2, y: y + down / 2 },
      text: `${i + 1}`,
    };
  });
  return picture(
    [...sheets.map(({ path }) => ({ look: 'fine' as const, path })), { look: 'line', path: cut.cuttingLine }],
    sheets,
  );
}

function sewn(): GuidePicture {
  const { garment } = guideDress().drawing.drawn;
  const sides = (['front', 'back'] as const).map((side) => sketchDress(garment, side).lines);
  const boxes = sides.map((lines) => lines.map(({ path }) => pathBounds(path)).reduce(boundsUnion));
  const across = Math.max(...boxes.map(({ minX, maxX }) => maxX - minX)) + BESIDE;
  return picture(
    sides.flatMap((lines, i) =>
      lines.map(({ stroke, path }) => ({
        look: stroke === 'outline' ? ('line' as const) : ('fine' as const),
        path: pathMap(path, { a: 1, b: 0, c: 0, d: 1, e: i * across, f: 0 }),
      })),
    ),
  );
}

const widthOf = (path: Path): number => pathBounds(path).maxX - pathBounds(path).minX;

const box = (x: number, y: number, right: number, bottom: number): Path =>
  linePath({ x, y }, { x: right, y }, { x: right, y: bottom }, { x, y: bottom }, { x, y });

function middle(path: Path, shift: number): Point {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  return { x: shift + (minX + maxX) / 2, y: (minY + maxY) / 2 };
}
