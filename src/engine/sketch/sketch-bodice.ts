import {
  linePath,
  midpoint,
  type Path,
  pathBounds,
  pathEnd,
  pathMirrorX,
  pathStart,
  pathTranslate,
  subtract,
} from '../geometry/index.ts';
import { type EdgeKind, findEdge, type Garment, type Piece } from '../piece/index.ts';
import type { SketchLine, SketchSide, SketchStroke } from './sketch.ts';
import { hiddenUnder } from './sketch-cover.ts';
import { takenApart } from './sketch-joined.ts';
import { closedShape } from './sketch-path.ts';

/** How an edge of a bodice piece looks in the sketch; what is not here is not seen. */
const STROKES: Partial<Record<EdgeKind, SketchStroke>> = {
  neck: 'outline',
  shoulder: 'outline',
  armhole: 'outline',
  'sleeve-hem': 'outline',
  'curved-sleeve-hem': 'outline',
  side: 'outline',
  waist: 'seam',
  // The mouth of a tuck in the waist.
  join: 'seam',
  'style-line': 'seam',
  closing: 'opening',
  // A keyhole, the edge of a wrap.
  free: 'outline',
};

/** A half that runs past the centre by more than this laps over the other, mm. */
const LAPS_FROM = 1;

/**
 * The bodice of one side: its pieces lie where they were drafted, and are mirrored at the centre. Where the halves
 * lap, the right one of the wearer lies on top, as girls' dresses are worn (common practice, no source).
 */
export function sketchBodice(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const pieces = bodiceOf(garment, side);
  const whole = pieces.filter((piece) => piece.cutting.as === 'single');
  const half = pieces.filter((piece) => piece.cutting.as !== 'single');
  const asDrawn = half.flatMap((piece) => seenEdges(garment, piece));
  const mirrored = asDrawn.map((line) => ({ ...line, path: pathMirrorX(line.path) }));
  const lapping = half.some((piece) => pathBounds(shapeOf(piece)).minX < -LAPS_FROM);
  const outlines = half.map(shapeOf);
  const [upper, lower, covers] =
    side === 'front' ? [mirrored, asDrawn, outlines.map(pathMirrorX)] : [asDrawn, mirrored, outlines];
  return [
    ...whole.flatMap((piece) => seenEdges(garment, piece)),
    ...upper,
    ...(lapping ? hiddenUnder(lower, covers) : lower),
    ...pieces.flatMap((piece) => [...lowerSide(piece, side), ...tuckFolds(piece)]),
    ...(side === 'front' ? neckBehind(garment) : []),
  ];
}

/** The fold of a tuck in the bodice. */
const tuckFolds = (piece: Piece): readonly SketchLine[] =>
  piece.markings.flatMap((mark) => (mark.kind === 'pleat-fold' ? bothHalves('pleat', mark.path) : []));

/** Along which line the lower shoulder is sewn; it holds on one side of the wearer only. */
const lowerSide = (piece: Piece, view: SketchSide): readonly SketchLine[] =>
  piece.markings
    .filter((mark) => mark.kind === 'lower-side')
    .map(({ path, side }) => ({
      stroke: 'seam',
      path: (side === 'left') === (view === 'front') ? path : pathMirrorX(path),
    }));

function seenEdges(garment: Garment, piece: Piece): readonly SketchLine[] {
  const studs = garment.closing?.kind === 'shoulder-studs';
  return piece.edges.flatMap((edge, i): readonly SketchLine[] => {
    if (edge.kind === 'dart') return sewnDart(piece, i);
    const stroke = edge.kind === 'shoulder' && studs ? 'opening' : STROKES[edge.kind];
    return stroke === undefined ? [] : [{ stroke, path: edge.path }];
  });
}

/** A dart is sewn: its legs are one line, and the edge runs on over its mouth. Drawn at the first of the two legs. */
function sewnDart(piece: Piece, first: number): readonly SketchLine[] {
  const [before, leg, other] = [piece.edges.at(first - 1), piece.edges[first], piece.edges[first + 1]];
  if (leg === undefined || other?.kind !== 'dart' || before?.kind === 'dart') return [];
  const [from, to] = [pathStart(leg.path), pathEnd(other.path)];
  const over = before === undefined ? undefined : STROKES[before.kind];
  return [
    { stroke: 'seam', path: linePath(midpoint(from, to), pathEnd(leg.path)) },
    ...(over === undefined ? [] : [{ stroke: over, path: linePath(from, to) }]),
  ];
}

/** The outline of a piece; where it was taken apart for the sketch it is closed straight. */
function shapeOf(piece: Piece): Path {
  const [first, ...rest] = piece.edges.map((edge) => edge.path);
  if (first === undefined) throw new Error(`Piece "${piece.id}" has no edges.`);
  return closedShape(first, ...rest);
}

/** What a bodice hides of that which lies behind it, as an arm held close. */
export function bodiceCovers(garment: Garment, side: SketchSide): readonly Path[] {
  const outlines = bodiceOf(garment, side).map(shapeOf);
  return [...outlines, ...outlines.map(pathMirrorX)];
}

export const bodiceOf = (garment: Garment, side: SketchSide): readonly Piece[] =>
  garment.pieces
    .filter((piece) => piece.layer === 'shell')
    .flatMap(takenApart)
    .filter((piece) => piece.id === side || piece.id.startsWith(`${side}-`));

export const bothHalves = (stroke: SketchStroke, path: Path): readonly SketchLine[] => [
  { stroke, path },
  { stroke, path: pathMirrorX(path) },
];

/** Seen from the front, the back of the neck stands behind the neckline: the neck points laid on each other. */
function neckBehind(garment: Garment): readonly SketchLine[] {
  const [front, back] = (['front', 'back'] as const).map((side) =>
    bodiceOf(garment, side).flatMap((piece) => {
      const [neckline, shoulder] = [findEdge(piece, 'neckline'), findEdge(piece, 'shoulder')];
      return neckline === undefined || shoulder === undefined
        ? []
        : [{ neckline: neckline.path, neckPoint: pathStart(shoulder.path) }];
    }),
  );
  const [to, from] = [front?.[0], back?.[0]];
  if (to === undefined || from === undefined) return [];
  return bothHalves('light', pathTranslate(from.neckline, subtract(to.neckPoint, from.neckPoint)));
}
