import {
  add,
  curveThrough,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathLength,
  pathStart,
  pathStartTangent,
  scale,
  unit,
} from '../geometry/index.ts';
import {
  type Edge,
  edgeOf,
  findEdge,
  type Garment,
  type Piece,
  skirtTops,
  tiersBelow,
  withPiece,
} from '../piece/index.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam, type StepContext } from './step.ts';

/** Least that is left of a skirt or a last tier at its centre front, mm (our own limit). */
const LEAST_LEFT = 40;
/** Parts into which a hem is cut to shift it; the curve through their ends keeps the sweep within a hair. */
const PARTS = 10;

/** How deep the part is that can be shaped: the skirt, or its last tier. */
const depthOf = ({ garment }: StepContext): number => {
  const pieces = (['front', 'back'] as const).map((half) => hemPiece(garment, half));
  return Math.min(...pieces.map((piece) => (piece === null ? 300 : shortest(piece))));
};

/** The hem rises to the centre front and falls to the centre back in one sweep. */
export const highLowHem = defineStep({
  id: 'high-low-hem',
  stage: 'hem-line',
  kind: 'hem-line',
  params: {
    frontUp: lengthParam(
      (c) => 0.2 * depthOf(c),
      (c) => [0, Math.max(0, depthOf(c) - LEAST_LEFT)],
      COMMON_PRACTICE,
    ),
    backDown: lengthParam(
      (c) => 0.15 * depthOf(c),
      () => [0, 400],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'High-low hem',
    about: 'The skirt is shorter in front and longer behind; the hem runs in one sweep over the side seams.',
    frontUp: 'Shorter at the centre front by',
    backDown: 'Longer at the centre back by',
    'no-skirt':
      'A high-low hem needs a skirt with one front and two halves of back: gathered from single widths, A-line, or circle. Choose one of these, or use wider cloth.',
    draw: 'High-low hem',
    'draw.shift':
      '{piece}: the hem moves by {side} at the side and by {centre} at the centre (upward where it says up). Draw it in a smooth sweep, square to the centre; front and back meet in one line at the side.',
    'draw.up': '{by} up',
    'draw.down': '{by} down',
  },
  apply: ({ garment, bench }, values) => {
    const [front, back] = [hemPiece(garment, 'front'), hemPiece(garment, 'back')];
    if (front === null || back === null) return cannot('high-low-hem.no-skirt');
    const [shorter, longer] = [bench.rounded(values.frontUp), bench.rounded(values.backDown)];
    const frontHem = pathLength(edgeOf(front, 'hem').path);
    const sweep = sweepOver(frontHem + pathLength(edgeOf(back, 'hem').path), shorter, longer);
    const shifted = [shiftHem(front, (s) => sweep(frontHem - s)), shiftHem(back, (s) => sweep(frontHem + s))];
    for (const [i, piece] of shifted.entries()) {
      bench.part(
        { key: 'high-low-hem.draw', values: {} },
        (i === 0 ? front : back).edges.map((edge) => edge.path),
      );
      bench.tell(
        'high-low-hem.draw.shift',
        {
          piece: piece.title,
          side: upOrDown(sweep(frontHem).by),
          centre: upOrDown(i === 0 ? -shorter : longer),
        },
        { lines: [edgeOf(piece, 'hem').path] },
      );
    }
    return done(shifted.reduce(withPiece, garment));
  },
});

const upOrDown = (mm: number): { key: string; values: { by: { mm: number } } } => ({
  key: mm < 0 ? 'high-low-hem.draw.up' : 'high-low-hem.draw.down',
  values: { by: { mm: Math.abs(mm) } },
});

/** The piece of a half that carries the hem, when it is one front on the fold or one pair of backs. */
function hemPiece(garment: Garment, half: 'front' | 'back'): Piece | null {
  const top = skirtTops(garment).find((piece) => piece.id.endsWith(half));
  if (top === undefined) return null;
  const piece = tiersBelow(garment, top).at(-1) ?? top;
  const whole = half === 'front' ? piece.cutting.as === 'fold' : piece.cutting.as === 'pair';
  const single = piece.cutting.copies === (half === 'front' ? 1 : 2);
  return whole && single && findEdge(piece, 'hem') !== undefined ? piece : null;
}

const beside = (piece: Piece): { readonly side: Edge; readonly centre: Edge } => {
  const hem = piece.edges.findIndex((edge) => edge.name === 'hem');
  const [side, centre] = [piece.edges.at(hem - 1), piece.edges.at((hem + 1) % piece.edges.length)];
  if (side === undefined || centre === undefined) throw new Error(`Piece "${piece.id}" has no edges.`);
  return { side, centre };
};

const shortest = (piece: Piece): number => {
  const { side, centre } = beside(piece);
  return Math.min(pathLength(side.path), pathLength(centre.path));
};

interface Shift {
  /** How far down the hem moves, mm. */
  readonly by: number;
  /** How fast that grows toward the centre back. */
  readonly slope: number;
}

/** Half a wave from the centre front to the centre back: level at both, so the hem meets both centres square. */
function sweepOver(whole: number, shorter: number, longer: number): (at: number) => Shift {
  const [middle, reach] = [(longer - shorter) / 2, (longer + shorter) / 2];
  return (at) => ({
    by: middle - reach * Math.cos((Math.PI * at) / whole),
    slope: ((reach * Math.PI) / whole) * Math.sin((Math.PI * at) / whole),
  });
}

/** Moves the hem square to itself; the side and the centre run on straight. `s` is walked from the side. */
function shiftHem(piece: Piece, sweep: (s: number) => Shift): Piece {
  const { side, centre } = beside(piece);
  const hem = edgeOf(piece, 'hem').path;
  const length = pathLength(hem);
  const moved = (s: number): Point => {
    const { point, tangent } = pathAt(hem, s);
    return add(point, scale(outward(tangent), sweep(s).by));
  };
  const points = Array.from({ length: PARTS + 1 }, (_, i) => moved((i * length) / PARTS));
  const start = pathStartTangent(hem);
  const isFront = piece.cutting.as === 'fold';
  // Walking the front from the side leads away from the back, where the hem falls.
  const slope = sweep(0).slope * (isFront ? -1 : 1);
  const path: Path = curveThrough(points, {
    start: unit(add(start, scale(outward(start), slope))),
    end: pathEndTangent(hem),
  });
  return {
    ...piece,
    edges: piece.edges.map((edge): Edge => {
      switch (edge.name) {
        case 'hem':
          // A swept hem takes a narrow turning, whatever it was before.
          return { name: 'hem', kind: 'curved-hem', path };
        case side.name:
          return { ...edge, path: linePath(pathStart(edge.path), pathStart(path)) };
        case centre.name:
          return { ...edge, path: linePath(pathEnd(path), pathEnd(edge.path)) };
        default:
          return edge;
      }
    }),
  };
}
