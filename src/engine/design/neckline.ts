import { place } from '../construct/index.ts';
import {
  curveBetween,
  direction,
  lineCrossing,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathJoin,
  pathLength,
  pathSlice,
  pathStartTangent,
  rotate,
  type Vector,
} from '../geometry/index.ts';
import {
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  type Piece,
  pieceOf,
  reshape,
  withPiece,
} from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  lengthParam,
  type StepContext,
} from './step.ts';

/** The neckline stays at least this far above the level of the underarm at the centre, mm. */
const ABOVE_UNDERARM = 5;
/** Shoulder that must be left when the neck is widened, mm: a strap that can be sewn and turned. */
const LEAST_SHOULDER = 20;

const SHAPES = ['round', 'scoop', 'v', 'square', 'sweetheart', 'boat'] as const;
type Shape = (typeof SHAPES)[number];

/** Room to lower the neckline at the centre of one half. */
const roomBelow = ({ garment }: StepContext, half: 'front' | 'back'): number => {
  const piece = pieceOf(garment, half);
  return edgeStart(piece, 'side').y - ABOVE_UNDERARM - edgeEnd(piece, 'centre').y;
};

/** A boat neck takes at least this share of the shoulder on each side (common practice, no source). */
const BOAT_SHARE = 0.4;
/** The back of a boat neck lies at least this far below its neck points, so that its curve still dips, mm. */
const BOAT_DIP = 10;

/** Shapes the neckline: lower, wider, and round, scooped, pointed, square, heart-shaped or boat-shaped in front. */
export const neckline = defineStep({
  id: 'neckline',
  stage: 'neck',
  kind: 'neckline',
  params: {
    shape: choiceParam(SHAPES, 'round', COMMON_PRACTICE),
    frontDrop: lengthParam(
      () => 8,
      (c) => [0, roomBelow(c, 'front')],
      'front neck 0.5-1 cm lower: children find a true neck fit tight (neckline notes; amounts common practice)',
    ),
    backDrop: lengthParam(
      () => 0,
      (c) => [0, roomBelow(c, 'back')],
      COMMON_PRACTICE,
    ),
    widen: lengthParam(
      () => 5,
      (c) => [0, shoulderLength(c) - LEAST_SHOULDER],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Neckline',
    about: 'Lowers and widens the neckline and gives it its shape.',
    shape: 'Shape in front',
    'shape.round': 'Round',
    'shape.scoop': 'Scoop',
    'shape.v': 'V',
    'shape.square': 'Square',
    'shape.sweetheart': 'Sweetheart',
    'shape.boat': 'Boat: wide and shallow, at least 40 % of each shoulder',
    frontDrop: 'Lower at the centre front',
    backDrop: 'Lower at the centre back',
    widen: 'Wider along each shoulder',
    'too-deep':
      'The neckline would reach {depth} below the neck point, at or below the underarm. Lower it by {most} at most.',
    'draw.front': 'Neckline, front',
    'draw.back': 'Neckline, back',
    'place.neck-point': 'the new neck point',
    'place.neck-centre': 'the new neck at the centre',
    'draw.curve': 'Draw the neckline from {from} to {to}: {shape}, square to the shoulder line.',
    'way.round': 'a round curve, square to the centre',
    'way.scoop': 'a full, deep curve, square to the centre',
    'way.v': 'nearly straight, to a point',
    'way.square': 'straight across, then straight up',
    'way.sweetheart': 'up from a point at the centre and over in half a heart, then up',
    'way.boat': 'a wide, shallow curve, square to the centre',
  },
  apply: (work, { shape, frontDrop, backDrop, widen }) => {
    const { bench } = work;
    const wider = shape === 'boat' ? Math.max(widen, boatWidening(work)) : widen;
    let dress = work.garment;
    for (const half of HALVES) {
      const piece = pieceOf(dress, half);
      const wished = half === 'front' ? frontDrop : backDrop;
      const drop = shape === 'boat' ? Math.max(wished, boatDrop(piece, wider)) : wished;
      const most = roomBelow(work, half);
      if (drop > most) {
        const depth = edgeEnd(piece, 'centre').y + drop;
        return cannot('neckline.too-deep', { depth: { mm: depth }, most: { mm: most } });
      }
      bench.part(
        { key: `neckline.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      const shoulder = edgeOf(piece, 'shoulder').path;
      const tip = place('place.shoulder-tip', edgeEnd(piece, 'shoulder'));
      const neckPoint = bench
        .from(place('place.neck-point', edgeStart(piece, 'shoulder')))
        .toward(tip, wider, 'neckline.place.neck-point');
      const centre = bench
        .from(place(`place.neck-${half}`, edgeEnd(piece, 'centre')))
        .down(drop, 'neckline.place.neck-centre');
      const own: Shape = half === 'front' || shape === 'boat' ? shape : 'round';
      const path = drawNeck(own, centre.at, neckPoint.at, pathStartTangent(shoulder));
      bench.tell(
        'neckline.draw.curve',
        { from: { word: centre.name }, to: { word: neckPoint.name }, shape: { word: `neckline.way.${own}` } },
        { lines: [path] },
      );
      dress = withPiece(dress, setNeck(piece, path, centre.at, bench.rounded(wider)));
    }
    return done(dress);
  },
});

const shoulderLength = ({ garment }: StepContext): number =>
  edgeLength(pieceOf(garment, 'front'), 'shoulder');

const boatWidening = (work: StepContext): number =>
  Math.min(shoulderLength(work) * BOAT_SHARE, shoulderLength(work) - LEAST_SHOULDER);

/** How far the centre must come down so that it still lies below the neck points that have moved out and down. */
function boatDrop(piece: Piece, widen: number): number {
  const shoulder = edgeOf(piece, 'shoulder').path;
  return Math.max(0, pathAt(shoulder, widen).point.y + BOAT_DIP - edgeEnd(piece, 'centre').y);
}

const OUT: Vector = { x: 1, y: 0 };
const UP: Vector = { x: 0, y: -1 };
/** A scoop fills the corner more than the quarter ellipse of a round neck (0.5523). */
const SCOOP_FULLNESS = 0.75;

/** Every shape arrives square to the shoulder, so that front and back run through it without a corner. */
function drawNeck(shape: Shape, centre: Point, neckPoint: Point, alongShoulder: Vector): Path {
  const arriving = outward(alongShoulder);
  switch (shape) {
    case 'round':
    case 'boat':
      return curveBetween(centre, OUT, neckPoint, arriving);
    case 'scoop':
      return curveBetween(centre, OUT, neckPoint, arriving, SCOOP_FULLNESS);
    case 'v':
      return curveBetween(centre, direction(centre, neckPoint), neckPoint, arriving);
    case 'square':
      return drawSquare(centre, neckPoint, arriving);
    case 'sweetheart':
      return drawSweetheart(centre, neckPoint, arriving);
  }
}

/** Where half a heart ends: this share of the neck's width out, and of its depth up from the centre. */
const HEART_OUT = 0.8;
const HEART_UP = 0.35;
/** How much steeper than its chord half a heart leaves the centre, and flatter it arrives, radians (25 degrees). */
const HEART_BEND = (25 * Math.PI) / 180;

/** Half a heart: from a point at the centre up and over to a corner, and from there up to the shoulder. */
function drawSweetheart(centre: Point, neckPoint: Point, arriving: Vector): Path {
  const corner = {
    x: neckPoint.x * HEART_OUT,
    y: centre.y - (centre.y - neckPoint.y) * HEART_UP,
  };
  const chord = direction(centre, corner);
  return pathJoin(
    curveBetween(centre, rotate(chord, -HEART_BEND), corner, rotate(chord, HEART_BEND)),
    curveBetween(corner, UP, neckPoint, arriving),
  );
}

/** The corner of a square neck lies at least this share of the neck's width from the centre. */
const LEAST_SQUARE = 0.7;

/** Across and up; where a steep shoulder would pull the corner to the centre, the way up bends to it instead. */
function drawSquare(centre: Point, neckPoint: Point, arriving: Vector): Path {
  const straight = lineCrossing(centre, OUT, neckPoint, arriving);
  if (straight !== null && straight.x >= neckPoint.x * LEAST_SQUARE)
    return linePath(centre, straight, neckPoint);
  const corner = { x: neckPoint.x * LEAST_SQUARE, y: centre.y };
  return pathJoin(linePath(centre, corner), curveBetween(corner, UP, neckPoint, arriving));
}

function setNeck(piece: Piece, path: Path, centre: Point, widen: number): Piece {
  const shoulder = edgeOf(piece, 'shoulder').path;
  const foot = edgeStart(piece, 'centre');
  return reshape(piece, {
    neckline: path,
    shoulder: widen === 0 ? shoulder : pathSlice(shoulder, widen, pathLength(shoulder)),
    centre: linePath(foot, centre),
  });
}
