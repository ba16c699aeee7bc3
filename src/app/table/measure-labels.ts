import {
  type Affine,
  outlineContains,
  type Path,
  type Point,
  pathAt,
  pathFlatten,
  pathLength,
  pathMap,
} from '../../engine/geometry/index.ts';
import { type EdgeKind, outlineOf } from '../../engine/piece/index.ts';
import type { Ruler, UnitSystem } from '../../engine/units/index.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { lengthText } from './length-text.ts';
import { applyTo, inverse, isMirrored, movedBounds, STAY } from './motion.ts';
import { bracketPoints, stitchedNotches } from './piece-signs.ts';
import { type LabelPlace, type LabelWish, type Obstacle, placeLabels } from './place-labels.ts';

/** Words on the table in the place that was found for them: mm, and a turn in degrees. */
export interface TableLabel {
  readonly key: string;
  readonly text: string;
  readonly at: Point;
  readonly turn: number;
  readonly kind: 'measure' | 'name' | 'cutting';
}

export interface LabelsWanted {
  /** The pieces that are named and measured. */
  readonly laid: readonly LaidPiece[];
  /** Pieces that lie there too; words keep off their lines. */
  readonly beside: readonly LaidPiece[];
  /** Screen px for each mm. */
  readonly zoom: number;
  readonly units: UnitSystem;
  readonly ruler: Ruler;
  readonly measures: boolean;
  readonly names: boolean;
  /** Further lines on the table that words keep off. */
  readonly lines: readonly Path[];
  /** Cutting lines are drawn, so words must keep off them too. */
  readonly allowances: boolean;
  /** `piece edge` whose length is shown however small the drawing is. */
  readonly always: string | null;
}

/** Type sizes in px; the style sheet sets the same. */
const MEASURE_SIZE = 12;
const NAME_SIZE = 14;
/** Middle width of a letter or figure of the page's sans, as a share of its size; measured words must not run over. */
const LETTER = 0.58;
/** From the line to the middle of the words, px. */
const OFF = 11;
/** How closely straight runs follow a curve where words keep off it, px. */
const FLAT = 0.7;

export const textWidth = (text: string, size: number): number => [...text].length * size * LETTER;

/** What a dressmaker measures first stands first; of the rest, the longer edges. */
const RANK: Partial<Record<EdgeKind, number>> = {
  shoulder: 0,
  neck: 1,
  armhole: 1,
  'sleeve-hem': 1,
  'curved-sleeve-hem': 1,
  cap: 1,
  side: 2,
  waist: 2,
  fold: 3,
  closing: 3,
  centre: 3,
  hem: 3,
  'curved-hem': 3,
};

/** Names of pieces and lengths at their edges, placed so that nothing overlaps a line or other words. */
export function tableLabels(wanted: LabelsWanted): readonly TableLabel[] {
  const { laid, zoom } = wanted;
  const once = new Set<string>();
  const halves = laid.filter(({ cut }) => !once.has(cut.piece.id) && once.add(cut.piece.id));
  const named = wanted.names ? halves.flatMap((piece) => nameWishes(piece, zoom)) : [];
  const measured = wanted.measures ? measureWishes(halves, wanted) : [];
  const wishes = [...named, ...measured];
  const placed = placeLabels(wishes, [
    ...[...laid, ...wanted.beside].flatMap((piece) => linesOf(piece, wanted)),
    ...wanted.lines.flatMap((path) => runsOf(path, STAY, zoom)),
  ]);
  return wishes.flatMap(({ key, says }) => {
    const place = placed.get(key);
    if (place === undefined) return [];
    return says.map(({ text, kind, below }) => ({
      key: `${key} ${kind}`,
      text,
      kind,
      at: scaled({ x: place.at.x, y: place.at.y + below }, 1 / zoom),
      turn: (place.turn * 180) / Math.PI,
    }));
  });
}

/** Words that are placed together; `below` the middle of their box, px. */
type Words = LabelWish & {
  readonly says: readonly {
    readonly text: string;
    readonly kind: TableLabel['kind'];
    readonly below: number;
  }[];
};

/** The name with how it is cut, within the piece; else the name alone, within it or close above or below. */
function nameWishes({ key, cut, frame }: LaidPiece, zoom: number): readonly Words[] {
  const { title, cutting } = cut.label;
  const middle = scaled(applyTo(frame, cut.labelAt), zoom);
  const box = movedBounds(cut.cuttingLine, frame);
  const width = textWidth(title, NAME_SIZE);
  const room = { x: ((box.maxX - box.minX) * zoom) / 4, y: ((box.maxY - box.minY) * zoom) / 4 };
  const half = NAME_SIZE * 0.62;
  const back = inverse(frame);
  const outline = outlineOf(cut.piece);
  function* inside(): Generator<LabelPlace> {
    for (const place of around(middle, room))
      if (outlineContains(outline, applyTo(back, scaled(place.at, 1 / zoom)))) yield place;
  }
  function* beside(): Generator<LabelPlace> {
    yield* inside();
    for (const y of [box.minY * zoom - NAME_SIZE, box.maxY * zoom + NAME_SIZE])
      for (const x of [middle.x, ((box.minX + box.maxX) * zoom) / 2, box.minX * zoom + width / 2])
        yield { at: { x, y }, turn: 0 };
  }
  return [
    {
      key: `label ${key}`,
      width: Math.max(width, textWidth(cutting, MEASURE_SIZE)),
      height: NAME_SIZE * 2.4,
      places: inside(),
      says: [
        { text: title, kind: 'name', below: -half },
        { text: cutting, kind: 'cutting', below: half },
      ],
    },
    {
      key: `name ${key}`,
      width,
      height: NAME_SIZE,
      places: beside(),
      unless: `label ${key}`,
      says: [{ text: title, kind: 'name', below: 0 }],
    },
  ];
}

function measureWishes(laid: readonly LaidPiece[], wanted: LabelsWanted): readonly Words[] {
  const { zoom, units, ruler, always } = wanted;
  return edgesByRank(laid, always).flatMap((edge): readonly Words[] => {
    const text = lengthText(edge.length, units, ruler);
    const width = textWidth(text, MEASURE_SIZE);
    // Too short to carry its length at this size, and not what she is asking for.
    if (edge.key !== always && edge.length * zoom < width * 0.9) return [];
    return [
      {
        key: `measure ${edge.key}`,
        width,
        height: MEASURE_SIZE,
        places: placesAlong(edge, zoom, width),
        says: [{ text, kind: 'measure', below: 0 }],
      },
    ];
  });
}

interface LaidEdge {
  readonly key: string;
  readonly path: Path;
  readonly length: number;
  readonly laid: LaidPiece;
}

function edgesByRank(laid: readonly LaidPiece[], always: string | null): readonly LaidEdge[] {
  const edges = laid.flatMap((piece) =>
    piece.cut.piece.edges.flatMap((edge) => {
      const key = `${piece.cut.piece.id} ${edge.name}`;
      const rank = key === always ? -1 : (RANK[edge.kind] ?? 4);
      const length = pathLength(edge.path);
      // Where cloth is drawn in to its finished width its length can't stand at it.
      const trueToScale = Math.abs(pathLength(pathMap(edge.path, piece.frame)) - length) < length * 0.01;
      return trueToScale ? [{ key, path: edge.path, length, laid: piece, rank }] : [];
    }),
  );
  return edges.toSorted((a, b) => a.rank - b.rank || b.length - a.length);
}

const scaled = ({ x, y }: Point, k: number): Point => ({ x: x * k, y: y * k });

/** Along the edge from its middle outward, on the cloth first, then on the table beside it. */
function* placesAlong({ path, length, laid }: LaidEdge, zoom: number, width: number): Generator<LabelPlace> {
  const half = Math.min(length / 2, width / zoom / 2);
  const on = (distance: number): Point =>
    scaled(applyTo(laid.frame, pathAt(path, Math.max(0, Math.min(length, distance))).point), zoom);
  // The cloth lies on the right hand, on the left where the piece is mirrored.
  const cloth = isMirrored(laid.frame) ? -1 : 1;
  for (const share of [0.5, 0.38, 0.62, 0.26, 0.74]) {
    const at = length * share;
    const [from, to, middle] = [on(at - half), on(at + half), on(at)];
    const along = Math.atan2(to.y - from.y, to.x - from.x);
    for (const hand of [cloth, -cloth]) {
      for (const off of [OFF, OFF * 1.6]) {
        const stand = {
          x: middle.x - Math.sin(along) * off * hand,
          y: middle.y + Math.cos(along) * off * hand,
        };
        yield { at: stand, turn: upright(along) };
      }
    }
  }
}

/** Words are never upside down. */
function upright(turn: number): number {
  const within = Math.atan2(Math.sin(turn), Math.cos(turn));
  if (within > Math.PI / 2 + 0.01) return within - Math.PI;
  return within < -Math.PI / 2 + 0.01 ? within + Math.PI : within;
}

/** A place and some near it, level, no farther than there is room. */
function around(middle: Point, room: Point): readonly LabelPlace[] {
  const shares = [0, 0.35, -0.35, 0.7, -0.7, 1, -1];
  return [...shares, 1.2, -1.2, 1.4, -1.4, 1.6, -1.6].flatMap((down) =>
    shares.map((over) => ({
      at: { x: middle.x + over * room.x, y: middle.y + down * room.y },
      turn: 0,
    })),
  );
}

/** Every line that is drawn of a piece, as straight runs in px. */
function linesOf({ cut, frame }: LaidPiece, { zoom, allowances }: LabelsWanted): readonly Obstacle[] {
  const { piece } = cut;
  const paths = [
    ...piece.edges.map(({ path }) => path),
    ...piece.markings.map(({ path }) => path),
    ...(allowances ? [cut.cuttingLine] : []),
  ];
  const runs = paths.flatMap((path) => runsOf(path, frame, zoom));
  const brackets = piece.edges
    .filter(({ kind }) => kind === 'fold')
    .flatMap(({ path }) => {
      const points = bracketPoints(path);
      return points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
    });
  const straight = [piece.grain, ...brackets, ...(allowances ? cut.notches : stitchedNotches(piece))].map(
    ({ from, to }): Obstacle => [scaled(applyTo(frame, from), zoom), scaled(applyTo(frame, to), zoom)],
  );
  return [...runs, ...straight];
}

function runsOf(path: Path, frame: Affine, zoom: number): readonly Obstacle[] {
  const points = pathFlatten(path, FLAT / zoom).map((p) => scaled(applyTo(frame, p), zoom));
  return points.slice(1).map((to, i): Obstacle => [points[i] ?? to, to]);
}
