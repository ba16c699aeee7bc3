import type { Half } from '../block/index.ts';
import {
  curveBetween,
  linePath,
  outward,
  type Path,
  type Point,
  pathAt,
  pathCrossings,
  pathEnd,
  pathJoin,
  pathLength,
  pathMirrorLine,
  pathReverse,
  pathStart,
  pathStartTangent,
  type Vector,
} from '../geometry/index.ts';
import {
  type Edge,
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  findEdge,
  type Garment,
  type OutlinePlace,
  type Piece,
  pieceOf,
  reshape,
  type Seam,
  splitPiece,
  withPiece,
  withSplit,
} from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { cutWaistDart, dartLeg, type WaistDart } from './darts.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  lengthParam,
  type StepContext,
} from './step.ts';
import { waistRing } from './waist-ring.ts';

/** Ease that the waist keeps when seams take it in by rule, mm all round. */
const KEPT_EASE = 30;
/** Least and most that each seam takes out by rule, mm. */
const [LEAST_SHAPING, MOST_SHAPING] = [2, 10];
/** The seam crosses the waist this far from the centre to the side. */
const MIDDLE = 0.48;
/** Least armhole above and below the end of the seam, mm. */
const LEAST_ARMHOLE = 25;
/** Shortest way from the waist up to the fullest level, mm. */
const SHORTEST_LEG = 25;

const spareWaist = ({ body, garment }: StepContext): number => {
  const ring = waistRing(garment);
  const girth = ring === null ? 0 : 2 * (ring.frontHalf + ring.backHalf);
  return girth - body.values.waistGirth.mm - KEPT_EASE;
};

/** Parts each half from the waist to the armhole, with shaping in the seam. */
export const princessLine = defineStep({
  id: 'princess-line',
  stage: 'panel',
  kind: 'princess-line',
  params: {
    halves: choiceParam(['both', 'front', 'back'], 'both', COMMON_PRACTICE),
    shaping: lengthParam(
      (c) => Math.min(MOST_SHAPING, Math.max(LEAST_SHAPING, spareWaist(c) / 4)),
      () => [LEAST_SHAPING, 40],
      'what the ease of the waist can spare, 10 mm at most; where there is a waist dart, the seam takes the dart instead (common practice, no source)',
    ),
    tip: lengthParam(
      () => 20,
      () => [0, 60],
      'shaping ends below the fullest part of the chest (common practice, no source)',
    ),
    up: lengthParam(
      ({ body }) => body.values.scyeDepth.mm * 0.4,
      () => [15, 160],
      'enters the armhole about half-way up (common practice, no source)',
    ),
  },
  words: {
    title: 'Princess line',
    about: 'A seam from the waist to the armhole that shapes the bodice; it takes the place of a waist dart.',
    halves: 'Where',
    'halves.both': 'Front and back',
    'halves.front': 'Front only',
    'halves.back': 'Back only',
    shaping: 'Taken out at the waist in each seam',
    tip: 'Shaping ends below the underarm by',
    up: 'Enters the armhole above the underarm by, along the armhole',
    'no-armhole':
      'A princess line ends in the armhole or at a yoke, and this half has neither. Choose another sleeve, or add a yoke.',
    'no-room':
      'There is no room for a princess line in this half: it would meet another line. Take less shaping, or let it enter the armhole elsewhere.',
    'piece.front-side': 'Side front',
    'piece.back-side': 'Side back',
    'draw.front': 'Princess line, front',
    'draw.back': 'Princess line, back',
    'draw.shaping':
      'On the waist mark the middle of the seam {middle} from the centre and {half} to the left and right of it. Shaping ends straight above, {level} below the level of the underarm. Draw both lines up to there, upright where they meet.',
    'draw.dart':
      'The waist dart becomes part of the seam: draw its two legs up to the tip, upright where they meet.',
    'draw.line': 'Draw the seam on from there, upright at first, to the edge above, and meet it square.',
    'draw.apart':
      'Trace both parts apart and put a notch on each where shaping ends. Both edges get a seam allowance.',
  },
  apply: ({ garment, bench }, values) => {
    let dress = garment;
    for (const half of HALVES) {
      if (values.halves !== 'both' && values.halves !== half) continue;
      const piece = pieceOf(dress, half);
      bench.part(
        { key: `princess-line.draw.${half}`, values: {} },
        piece.edges.map((edge) => edge.path),
      );
      const width = bench.rounded(values.shaping);
      const tip = bench.rounded(values.tip);
      const up = bench.rounded(values.up);
      const middle = bench.rounded(edgeEnd(piece, 'side').x * MIDDLE);
      const dart: WaistDart = {
        middle,
        width,
        tipLevel: tipLevel(piece, middle, edgeStart(piece, 'side').y + tip, up),
      };
      const parted = partHalf(dress, half, dart, up);
      if (!('garment' in parted)) return cannot(parted.refused);
      if (findEdge(piece, dartLeg(1, 'outer')) === undefined)
        bench.tell('princess-line.draw.shaping', {
          middle: { mm: dart.middle },
          half: { mm: width / 2 },
          level: { mm: dart.tipLevel - edgeStart(piece, 'side').y },
        });
      else bench.tell('princess-line.draw.dart', {});
      bench.tell('princess-line.draw.line', {}, { lines: parted.lines });
      bench.tell('princess-line.draw.apart', {});
      dress = parted.garment;
    }
    return done(dress);
  },
});

/** As wished, but clear of where the seam ends above, and of the waist below. */
function tipLevel(piece: Piece, middle: number, wished: number, up: number): number {
  const foot = edgeEnd(piece, 'side').y;
  const end = endOfLine(piece, { x: middle, y: foot }, up);
  const lowest = end === null ? wished : pathAt(edgeOf(piece, end.edge).path, end.at).point.y + SHORTEST_LEG;
  return Math.min(Math.max(wished, lowest), foot - SHORTEST_LEG);
}

type Parted = { readonly garment: Garment; readonly lines: readonly Path[] };

function partHalf(
  garment: Garment,
  half: Half,
  dart: WaistDart,
  up: number,
): Parted | { readonly refused: string } {
  const plain = pieceOf(garment, half);
  const isDarted = findEdge(plain, dartLeg(1, 'outer')) !== undefined;
  const darted = isDarted ? plain : cutWaistDart(plain, dart);
  const shaped = roundLegs(darted);
  const tip = edgeEnd(shaped, dartLeg(1, 'outer'));
  const end = endOfLine(shaped, tip, up);
  if (end === null) return { refused: 'princess-line.no-armhole' };
  const at = pathAt(edgeOf(shaped, end.edge).path, end.at);
  const line = curveBetween(tip, UP, at.point, outward(at.tangent));
  if (at.point.y > tip.y - SHORTEST_LEG + 0.01 || crossesOutline(shaped, line))
    return { refused: 'princess-line.no-room' };
  const split = splitPiece(shaped, { edge: dartLeg(1, 'inner'), at: 0 }, end, line, LINE, {
    id: `${half}-side`,
    title: { key: `princess-line.piece.${half}-side`, values: {} },
    cloth: plain.cloth,
  });
  const open = { ...garment, seams: garment.seams.filter((seam) => seam.id !== `dart-${half}-1`) };
  const parted = withSplit(withPiece(open, darted), darted, split);
  const panel = notched(panelOf(split.cutOff), half, edgeLength(shaped, dartLeg(1, 'outer')));
  const rest = restOf(split.rest);
  const middle = notched(rest, half, edgeLength(rest, LINE) - edgeLength(shaped, dartLeg(1, 'inner')));
  return {
    garment: {
      ...parted,
      // From the top down and outward, as they are sewn round the armhole.
      pieces: parted.pieces.flatMap((piece) =>
        piece.id === panel.id ? [] : piece.id === half ? [middle, panel] : [piece],
      ),
      seams: [...parted.seams, princessSeam(half, end.edge)],
      whole: isDarted ? parted.whole : withDart(parted.whole, half, dart),
    },
    lines: [edgeOf(panel, LINE).path, edgeOf(middle, LINE).path],
  };
}

const LINE = 'princess-line';
const UP: Vector = { x: 0, y: -1 };

/** The legs of the first dart, drawn so that they arrive upright at the tip; one mirrors the other. */
function roundLegs(piece: Piece): Piece {
  const [outer, inner] = [dartLeg(1, 'outer'), dartLeg(1, 'inner')];
  const straight = edgeOf(piece, outer).path;
  const tip = pathEnd(straight);
  const leg = curveBetween(pathStart(straight), pathStartTangent(straight), tip, UP);
  const mirrored = pathReverse(pathMirrorLine(leg, tip, { x: tip.x, y: tip.y + 1 }));
  return reshape(piece, { [outer]: leg, [inner]: mirrored });
}

/** In the armhole, or the opening of a drop shoulder, where enough of it is left on this piece, else straight up in the yoke line. */
function endOfLine(piece: Piece, tip: Point, up: number): OutlinePlace | null {
  const armhole = findEdge(piece, 'armhole') ?? findEdge(piece, 'sleeve-edge');
  const length = armhole === undefined ? 0 : pathLength(armhole.path);
  if (length >= 2 * LEAST_ARMHOLE) {
    const above = Math.min(Math.max(up, LEAST_ARMHOLE), length - LEAST_ARMHOLE);
    return { edge: armhole?.name ?? 'armhole', at: length - above };
  }
  const yoke = findEdge(piece, 'yoke-line');
  if (yoke === undefined) return null;
  const [hit] = pathCrossings(linePath(tip, { x: tip.x, y: tip.y - 1000 }), yoke.path);
  return hit === undefined ? null : { edge: 'yoke-line', at: hit.atB };
}

/** True where the line meets the outline anywhere but at its own two ends. */
function crossesOutline(piece: Piece, line: Path): boolean {
  const length = pathLength(line);
  return piece.edges.some((edge) =>
    pathCrossings(line, edge.path).some(({ atA }) => atA > CLEAR_OF_ENDS && atA < length - CLEAR_OF_ENDS),
  );
}

/** A crossing closer than this to an end of the line is the end itself, mm. */
const CLEAR_OF_ENDS = 0.5;

/** The side panel: its leg of the dart and the line above are one edge, from the waist up. */
function panelOf(cutOff: Piece): Piece {
  const leg = edgeOf(cutOff, dartLeg(1, 'outer'));
  const line = edgeOf(cutOff, LINE);
  return {
    ...cutOff,
    cutting: { as: 'pair', copies: 2 },
    edges: cutOff.edges.flatMap((edge): readonly Edge[] => {
      if (edge === leg) return [];
      return edge === line ? [{ ...line, path: pathJoin(leg.path, line.path) }] : [edge];
    }),
  };
}

/** The middle part: one edge from the armhole down to the waist, and again a waist that is called so. */
function restOf(rest: Piece): Piece {
  const leg = edgeOf(rest, dartLeg(1, 'inner'));
  const line = edgeOf(rest, LINE);
  return {
    ...rest,
    edges: rest.edges.flatMap((edge): readonly Edge[] => {
      if (edge === leg) return [];
      if (edge === line) return [{ ...line, path: pathJoin(line.path, leg.path) }];
      return [edge.name === 'waist-2' ? { ...edge, name: 'waist' } : edge];
    }),
  };
}

const notched = (piece: Piece, half: Half, at: number): Piece => ({
  ...piece,
  notches: [
    ...piece.notches,
    { edge: LINE, at, style: half === 'front' ? 'single' : 'double', match: `princess-${half}` },
  ],
});

/** What the seam takes out of the shell is a dart in a lining cut whole. */
function withDart(whole: Garment['whole'], half: Half, dart: WaistDart): Garment['whole'] {
  const piece = whole[half];
  if (piece === undefined || findEdge(piece, dartLeg(1, 'outer')) !== undefined) return whole;
  return { ...whole, [half]: cutWaistDart(piece, dart) };
}

/** From the waist up; waist and armhole run through. A yoke line above is in one, and nothing runs through it. */
const princessSeam = (half: Half, endsOn: string): Seam => ({
  id: `princess-${half}`,
  name: 'princess',
  a: [{ piece: `${half}-side`, edge: LINE, times: 2 }],
  b: [{ piece: half, edge: LINE, times: 2, reversed: true }],
  join: { kind: 'flat' },
  smoothStart: true,
  smoothEnd: endsOn !== 'yoke-line',
});
