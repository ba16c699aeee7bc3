import type { Half } from '../block/index.ts';
import type { Bench } from '../construct/index.ts';
import {
  curveBetween,
  distance,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathCrossings,
  pathEnd,
  pathLength,
  pathNearest,
  pathSlice,
  pathStart,
  scale,
} from '../geometry/index.ts';
import {
  edgeEnd,
  findEdge,
  type Garment,
  grainThrough,
  type Piece,
  pieceOf,
  type Seam,
} from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { neckSide } from './neck-ring.ts';
import { cannot, defineStep, done, lengthParam, type StepOutcome } from './step.ts';

/** Shoulder that the facing leaves free beside the armhole, mm, so that the two do not lie on top of each other. */
const CLEAR_OF_ARMHOLE = 10;
/** A facing narrower than this at the shoulder cannot be turned and flips out, mm (common practice, no source). */
const LEAST_WIDTH = 12;
/** A facing deeper than a keyhole by this holds it all round, mm (common practice, no source). */
const BELOW_KEYHOLE = 30;

/** A shaped facing for the neck, front and back, in the grain of the pieces that it faces. */
export const neckFacing = defineStep({
  id: 'neck-facing',
  stage: 'finish',
  kind: 'neck-finish',
  params: {
    facingDepth: lengthParam(
      () => 60,
      () => [40, 90],
      '6 cm at the centre front, narrowing to 4 cm at shoulder and centre back (teaching pages on facings)',
    ),
    facingWidth: lengthParam(
      () => 40,
      () => [20, 60],
      '6 cm at the centre front, narrowing to 4 cm at shoulder and centre back (teaching pages on facings)',
    ),
  },
  words: {
    title: 'Neck facing',
    about:
      'A shaped facing that finishes the neck. On a child a loose facing flips out: stitch it down at the shoulders, or take a bias strip or a full lining instead.',
    facingDepth: 'Depth at the centre front',
    facingWidth: 'Width at the shoulder and the centre back',
    'narrow-shoulder':
      'A shoulder of {shoulder} leaves no room for a facing beside the armhole. Finish the neck with a bias strip or a lining.',
    'no-room': 'A facing {depth} deep runs into another edge of {piece}. Make it less deep.',
    'not-half': '{piece} has no neck from centre to shoulder that a facing could be drawn on.',
    'piece.front': 'Front neck facing',
    'piece.back': 'Back neck facing',
    'draw.front': 'Front neck facing',
    'draw.back': 'Back neck facing',
    'draw.trace': 'Trace the neck, the shoulder and the centre of {piece}.',
    'draw.outer':
      'Mark {width} along the shoulder from the neck and {depth} down the centre. Join the marks in one curve, square to the shoulder and to the centre.',
    'draw.turn':
      'Sew it to the neck, clip, and stitch the allowance to the facing close to the seam, so that it rolls inside. Neaten the outer edge.',
  },
  apply: ({ garment, bench }, { facingDepth, facingWidth }) => {
    const facings: Piece[] = [];
    for (const half of HALVES) {
      const drawn = drawFacing(garment, bench, half, facingDepth, facingWidth);
      if ('ok' in drawn) return drawn;
      facings.push(drawn);
    }
    return done({
      ...garment,
      pieces: [...garment.pieces, ...facings],
      seams: [...garment.seams, ...facingSeams(garment)],
    });
  },
});

function drawFacing(
  garment: Garment,
  bench: Bench,
  half: Half,
  facingDepth: number,
  facingWidth: number,
): Piece | StepOutcome {
  // A facing is cut whole, without the lines of a yoke.
  const source = garment.whole[half] ?? pieceOf(garment, half);
  const [shoulder, neck, centre] = ['shoulder', 'neckline', 'centre'].map((name) => findEdge(source, name));
  if (shoulder === undefined || neck === undefined || centre === undefined)
    return cannot('neck-facing.not-half', { piece: source.title });

  const room = pathLength(shoulder.path) - CLEAR_OF_ARMHOLE;
  const width = bench.rounded(Math.min(facingWidth, room));
  if (width < LEAST_WIDTH)
    return cannot('neck-facing.narrow-shoulder', { shoulder: { mm: pathLength(shoulder.path) } });
  const keyhole = findEdge(source, 'keyhole');
  const depth =
    half === 'front'
      ? bench.rounded(facingDepth)
      : keyhole === undefined
        ? bench.rounded(facingWidth)
        : bench.rounded(BELOW_KEYHOLE);
  if (depth > pathLength(centre.path) - 1) return cannot('neck-facing.no-room', noRoom(source, depth));

  const foot = pathAt(centre.path, pathLength(centre.path) - depth).point;
  const outer = outerEdge(neck.path, shoulder.path, width, foot);
  const others = source.edges.filter((edge) => edge !== shoulder && edge !== centre);
  if (others.some((edge) => pathCrossings(outer, edge.path).length > 0))
    return cannot('neck-facing.no-room', noRoom(source, depth));

  const facing: Piece = {
    id: `facing-${half}`,
    title: { key: `neck-facing.piece.${half}`, values: {} },
    edges: [
      neck,
      { ...shoulder, path: pathSlice(shoulder.path, 0, width) },
      { name: 'outer', kind: 'free', path: outer },
      { ...centre, path: linePath(foot, pathEnd(centre.path)) },
      ...(keyhole === undefined ? [] : [keyhole]),
    ],
    cloth: 'main',
    layer: 'lining',
    cutting: source.cutting,
    grain: grainThrough({ x: foot.x + 8, y: (foot.y + edgeEnd(source, 'centre').y) / 2 }, depth * 0.6),
    notches: [],
    markings: [],
  };
  bench.part(
    { key: `neck-facing.draw.${half}`, values: {} },
    source.edges.map((edge) => edge.path),
  );
  bench.tell('neck-facing.draw.trace', { piece: source.title });
  bench.tell(
    'neck-facing.draw.outer',
    { width: { mm: width }, depth: { mm: depth } },
    { lines: facing.edges.map((edge) => edge.path) },
  );
  bench.tell('neck-facing.draw.turn', {});
  return facing;
}

const noRoom = (piece: Piece, depth: number) => ({ piece: piece.title, depth: { mm: depth } });

/** From flat to full; the curve that keeps the width of the facing most even is taken. */
const FULLNESSES = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9] as const;
/** Places along the neck at which the width of the facing is looked at. */
const PLACES = 6;

/**
 * The outer edge from the shoulder to the centre, square to both. Its width at the two ends is given; in between it
 * should lie as evenly between them as one curve can, whatever the shape of the neck.
 */
function outerEdge(neck: Path, shoulder: Path, width: number, foot: Point): Path {
  const { point, tangent } = pathAt(shoulder, width);
  const draw = (fullness: number): Path =>
    curveBetween(point, scale(outward(tangent), -1), foot, { x: -1, y: 0 }, fullness);
  const depth = distance(pathStart(neck), foot);
  const length = pathLength(neck);
  const looked = Array.from({ length: PLACES }, (_, i) => (i + 0.5) / PLACES).map((share) => ({
    at: pathAt(neck, length * share).point,
    wished: depth + (width - depth) * share,
  }));
  const unevenness = (path: Path): number =>
    looked.reduce((sum, { at, wished }) => sum + (pathNearest(path, at).distance - wished) ** 2, 0);
  const drawn = FULLNESSES.map((fullness) => {
    const path = draw(fullness);
    return { path, off: unevenness(path) };
  });
  return drawn.reduce((best, next) => (next.off < best.off ? next : best)).path;
}

function facingSeams(garment: Garment): readonly Seam[] {
  const twice = (half: Half, edge: string, reversed = false) => ({
    piece: `facing-${half}`,
    edge,
    times: 2,
    reversed,
  });
  const shoulders: Seam = {
    id: 'facing-shoulder',
    name: 'facing',
    a: [twice('front', 'shoulder')],
    b: [twice('back', 'shoulder')],
    join: { kind: 'flat' },
    smoothStart: true,
    smoothEnd: true,
  };
  const round: Seam = {
    id: 'facing-neck',
    name: 'facing',
    a: neckSide(garment),
    b: [twice('back', 'neckline'), twice('front', 'neckline', true)],
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  };
  // Shoulders that open with studs keep their facings apart.
  return garment.seams.some((seam) => seam.name === 'shoulder') ? [shoulders, round] : [round];
}
