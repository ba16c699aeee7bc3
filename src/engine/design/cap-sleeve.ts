import {
  curveThrough,
  linePath,
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathEndTangent,
  pathLength,
  pathSlice,
  pathStart,
  pathStartTangent,
  rotate,
} from '../geometry/index.ts';
import {
  type Edge,
  edgeLength,
  edgeOf,
  type Garment,
  grainThrough,
  type Notch,
  type Piece,
  reshape,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import { armEdgeLength, armEdges, notchArmEdge, notchStyle } from './armhole-ring.ts';
import { HALVES } from './bodice.ts';
import { plainBelowNotch, setSleeve } from './sleeve-seams.ts';
import { COMMON_PRACTICE, choiceParam, defineStep, done, lengthParam } from './step.ts';
import { STRAIGHT_SLEEVE_WORDS, sleeveWidthParams, straightSleeve } from './straight-sleeve.ts';

/** A cap over the top of the arm, set into the armhole; lined with itself, or hemmed where it runs right round. */
export const capSleeve = defineStep({
  id: 'cap-sleeve',
  stage: 'set-in',
  kind: 'sleeve',
  params: {
    reach: choiceParam(
      ['above-underarm', 'round'],
      'above-underarm',
      'a small child: line or face it in self cloth, end it 1 cm short of the side seam at least, or run it right round (common practice, no source)',
    ),
    clear: lengthParam(
      ({ garment }) => shorterArmhole(garment) * 0.25,
      ({ garment }) => [10, Math.max(10, shorterArmhole(garment) * 0.4)],
      'ends at least 1 cm short of the underarm side seam (common practice, no source)',
    ),
    over: lengthParam(
      () => 15,
      () => [10, 60],
      COMMON_PRACTICE,
    ),
    ...sleeveWidthParams,
  },
  words: {
    title: 'Cap sleeve',
    about: 'A short cap over the top of the arm, set into the armhole.',
    reach: 'Reaches',
    'reach.above-underarm': 'Ends above the underarm, lined with itself',
    'reach.round': 'Runs right round the arm',
    clear: 'Ends above the underarm by',
    over: 'Over the arm, longer than its ends by; right round: length of the underarm seam',
    capEase: 'Cap ease',
    armEase: 'Ease at the upper arm',
    ...STRAIGHT_SLEEVE_WORDS,
    'piece.cap': 'Cap sleeve',
    'draw.round': 'Square the hem across {over} below the foot of the cap instead.',
    'draw.cut':
      'Mark both ends of the cap, {front} from its top in front and {back} behind. From end to end draw the outer edge in one curve, square to the cap at both ends and {length} below its top in the middle. Cut it double and turn it.',
  },
  apply: (work, values) => {
    const { garment, bench } = work;
    const capEase = bench.rounded(values.capEase);
    const over = bench.rounded(values.over);
    // The cap decides how long the sleeve is, so it is drawn long first and cut to its cap.
    const drafted = straightSleeve(work, 'cap-sleeve', {
      armEase: values.armEase,
      capEase,
      length: bench.rounded(work.body.values.armLength.mm),
    });
    if (!drafted.ok) return drafted.refusal;
    if (values.reach === 'round') {
      const round = shortened(drafted.piece, over);
      bench.tell('cap-sleeve.draw.round', { over: { mm: over } }, { lines: round.edges.map((e) => e.path) });
      return done(setSleeve(garment, round, () => ({ kind: 'eased', ease: capEase })));
    }
    const clear = bench.rounded(values.clear);
    const cap = cutAbove(drafted.piece, clear, over);
    bench.tell(
      'cap-sleeve.draw.cut',
      {
        front: { mm: edgeLength(cap, 'cap-front') },
        back: { mm: edgeLength(cap, 'cap-back') },
        length: { mm: lowest(cap) },
      },
      { lines: cap.edges.map((edge) => edge.path) },
    );
    return done(setCap(garment, cap, clear, capEase));
  },
});

const shorterArmhole = (garment: Garment): number =>
  Math.min(...HALVES.map((half) => armEdgeLength(garment, half, 'armhole')));

const asCap = (piece: Piece): Piece => ({ ...piece, title: { key: 'cap-sleeve.piece.cap', values: {} } });

/** The sleeve with underarm seams of this length. */
function shortened(straight: Piece, underarm: number): Piece {
  const front = pathSlice(edgeOf(straight, 'underarm-front').path, 0, underarm);
  const whole = edgeOf(straight, 'underarm-back').path;
  const back = pathSlice(whole, pathLength(whole) - underarm, pathLength(whole));
  const foot = pathEnd(front);
  return {
    ...asCap(
      reshape(straight, {
        'underarm-front': front,
        'sleeve-edge': linePath(foot, pathStart(back)),
        'underarm-back': back,
      }),
    ),
    grain: grainThrough({ x: 0, y: foot.y / 2 }, foot.y * 0.6),
  };
}

/** The top of the sleeve's cap, cut off this far above the underarm on both sides, twice for its own lining. */
function cutAbove(straight: Piece, clear: number, over: number): Piece {
  const [whole, wholeBack] = [edgeOf(straight, 'cap-front').path, edgeOf(straight, 'cap-back').path];
  const front = pathSlice(whole, 0, pathLength(whole) - clear);
  const back = pathSlice(wholeBack, clear, pathLength(wholeBack));
  const [right, left] = [pathEnd(front), pathStart(back)];
  const middle: Point = { x: (right.x + left.x) / 2, y: Math.max(right.y, left.y) + over };
  const edge = curveThrough([right, middle, left], {
    start: rotate(pathEndTangent(front), Math.PI / 2),
    end: rotate(pathStartTangent(back), -Math.PI / 2),
  });
  const drawn = (name: string, kind: Edge['kind'], path: Path): Edge => ({ name, kind, path });
  return {
    ...asCap(straight),
    edges: [
      drawn('cap-back', 'cap', back),
      drawn('cap-front', 'cap', front),
      drawn('sleeve-edge', 'free', edge),
    ],
    cutting: { as: 'pair', copies: 4 },
    grain: grainThrough({ x: 0, y: middle.y / 2 }, middle.y * 0.6),
  };
}

/** How far the middle of the outer edge lies below the top of the cap. */
const lowest = (cap: Piece): number => {
  const edge = edgeOf(cap, 'sleeve-edge').path;
  return pathAt(edge, pathLength(edge) / 2).point.y;
};

/** Sews the cap to the upper part of both armholes; its two layers are sewn together along the outer edge. */
function setCap(garment: Garment, cap: Piece, clear: number, capEase: number): Garment {
  let dress = garment;
  const notches: Notch[] = [];
  const seams: Seam[] = [];
  for (const half of HALVES) {
    const armhole = armEdgeLength(garment, half, 'armhole');
    const plain = plainBelowNotch(armhole);
    const length = edgeLength(cap, `cap-${half}`);
    for (const [match, up] of [
      [`sleeve-${half}`, plain],
      [`sleeve-end-${half}`, clear],
    ] as const) {
      dress = notchArmEdge(dress, half, 'armhole', armhole - up, match);
      const at = half === 'front' ? length - (up - clear) : up - clear;
      notches.push({ edge: `cap-${half}`, at, style: notchStyle(half), match });
    }
    seams.push({
      id: `sleeve-cap-${half}`,
      name: 'sleeve-cap',
      a: armEdges(garment, half, 'armhole'),
      b: [{ piece: cap.id, edge: `cap-${half}`, times: 2, reversed: half === 'back' }],
      join: { kind: 'eased', ease: capEase },
      bareEnd: clear,
      smoothStart: false,
      smoothEnd: false,
    });
  }
  const edge: SeamEdge = { piece: cap.id, edge: 'sleeve-edge', times: 2 };
  seams.push({
    id: 'sleeve-facing',
    name: 'facing',
    a: [edge],
    b: [edge],
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  });
  return {
    ...dress,
    pieces: [...dress.pieces, { ...cap, notches }],
    seams: [...dress.seams, ...seams],
  };
}
