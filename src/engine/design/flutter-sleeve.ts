import {
  add,
  curveOfLength,
  curveThrough,
  linePath,
  type Path,
  type Point,
  type Vector,
} from '../geometry/index.ts';
import { type Garment, grainThrough, type Piece, type Seam } from '../piece/index.ts';
import { openArm } from './arm-opening.ts';
import { armEdgeLength, armEdges, notchArmEdge, notchStyle } from './armhole-ring.ts';
import { HALVES } from './bodice.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam } from './step.ts';

/** Which part of a circle the wing is; the larger, the more it flutters. */
const PARTS = { quarter: 0.25, third: 1 / 3, half: 0.5 } as const;

/** A wing cut as part of a ring, sewn to the upper part of the armhole, open under the arm. */
export const flutterSleeve = defineStep({
  id: 'flutter-sleeve',
  stage: 'set-in',
  kind: 'sleeve',
  params: {
    part: choiceParam(['quarter', 'third', 'half'], 'half', COMMON_PRACTICE),
    depth: lengthParam(
      ({ body }) => Math.max(body.values.upperArmGirth.mm * 0.45, 60),
      ({ body }) => [30, body.values.armLength.mm / 2],
      COMMON_PRACTICE,
    ),
    endDepth: lengthParam(
      () => 15,
      () => [8, 80],
      COMMON_PRACTICE,
    ),
    clear: lengthParam(
      ({ garment }) => shorterArmhole(garment) * 0.3,
      ({ garment }) => [10, Math.max(10, shorterArmhole(garment) * 0.7)],
      'a cap ends at least 1 cm short of the underarm side seam (common practice, no source)',
    ),
  },
  words: {
    title: 'Flutter sleeve',
    about: 'A wing cut as part of a circle, sewn to the upper part of the armhole and open under the arm.',
    part: 'Part of a circle',
    'part.quarter': 'Quarter circle',
    'part.third': 'Third of a circle',
    'part.half': 'Half circle',
    depth: 'Depth over the arm',
    endDepth: 'Depth at its two ends',
    clear: 'Ends above the underarm by',
    'no-armhole':
      'A sleeve needs an open armhole, and a drop shoulder or a strip has taken it. Choose one of the two.',
    'deeper-ends':
      'The wing would be deeper at its ends than over the arm. Make the ends less deep than {depth}.',
    'piece.wing': 'Flutter sleeve',
    draw: 'Flutter sleeve',
    'draw.arc':
      'From one point draw an arc with the radius {radius}, along it {front} for the front and {back} for the back; between the two lies the shoulder. Rule both ends out from the same point.',
    'draw.edge':
      'Lay off {depth} outward at the shoulder and {ends} at both ends, and draw the outer edge through these points in one curve.',
  },
  apply: ({ garment, bench }, values) => {
    if (openArm(garment) !== 'armhole') return cannot('flutter-sleeve.no-armhole');
    const depth = bench.rounded(values.depth);
    const endDepth = bench.rounded(values.endDepth);
    if (endDepth > depth) return cannot('flutter-sleeve.deeper-ends', { depth: { mm: depth } });
    const clear = bench.rounded(values.clear);
    const front = armEdgeLength(garment, 'front', 'armhole') - clear;
    const back = armEdgeLength(garment, 'back', 'armhole') - clear;
    // An arc of length L that is the part f of a circle has r = L / (2 pi f).
    const radius = bench.rounded((front + back) / (2 * Math.PI * PARTS[values.part]));
    const wing = drawWing({ front, back, radius, depth, endDepth });
    bench.part({ key: 'flutter-sleeve.draw', values: {} });
    const lines = (...names: readonly string[]): readonly Path[] =>
      wing.edges.filter((edge) => names.includes(edge.name)).map((edge) => edge.path);
    bench.tell(
      'flutter-sleeve.draw.arc',
      { radius: { mm: radius }, front: { mm: front }, back: { mm: back } },
      { lines: lines('cap-front', 'cap-back', 'end-front', 'end-back') },
    );
    bench.tell(
      'flutter-sleeve.draw.edge',
      { depth: { mm: depth }, ends: { mm: endDepth } },
      { lines: lines('sleeve-edge') },
    );
    let dress = garment;
    const caps: Seam[] = [];
    for (const half of HALVES) {
      const match = `sleeve-end-${half}`;
      dress = notchArmEdge(dress, half, 'armhole', half === 'front' ? front : back, match);
      caps.push({
        id: `sleeve-cap-${half}`,
        name: 'sleeve-cap',
        a: armEdges(garment, half, 'armhole'),
        b: [{ piece: wing.id, edge: `cap-${half}`, times: 2, reversed: half === 'back' }],
        join: { kind: 'flat' },
        bareEnd: clear,
        smoothStart: false,
        smoothEnd: false,
      });
    }
    const notches = HALVES.map((half) => ({
      edge: `cap-${half}`,
      at: half === 'front' ? front : 0,
      style: notchStyle(half),
      match: `sleeve-end-${half}`,
    }));
    return done({
      ...dress,
      pieces: [...dress.pieces, { ...wing, notches }],
      seams: [...dress.seams, ...caps],
    });
  },
});

const shorterArmhole = (garment: Garment): number =>
  Math.min(...HALVES.map((half) => armEdgeLength(garment, half, 'armhole')));

interface Wing {
  readonly front: number;
  readonly back: number;
  readonly radius: number;
  readonly depth: number;
  readonly endDepth: number;
}

/** Points along half the outer edge, enough for a curve that follows its depth. */
const STEPS = 4;

/** The wing with the shoulder at the origin, back to the left; the cloth lies outside the ring's inner edge. */
function drawWing({ front, back, radius, depth, endDepth }: Wing): Piece {
  const hub: Point = { x: 0, y: -radius };
  const on = (r: number, turn: number): Point => add(hub, { x: r * Math.sin(turn), y: r * Math.cos(turn) });
  const along = (turn: number): Vector => ({ x: Math.cos(turn), y: -Math.sin(turn) });
  const [toFront, toBack] = [front / radius, -back / radius];
  const arc = (from: number, to: number): Path => {
    const points = Array.from({ length: 2 * STEPS + 1 }, (_, i) =>
      on(radius, from + ((to - from) * i) / (2 * STEPS)),
    );
    const drawn = curveThrough(points, { start: along(from), end: along(to) });
    return curveOfLength(drawn, radius * Math.abs(to - from)) ?? drawn;
  };
  const depthAt = (turn: number): number => {
    const share = turn / (turn > 0 ? toFront : -toBack);
    return endDepth + (depth - endDepth) * Math.cos((share * Math.PI) / 2) ** 2;
  };
  const outer = Array.from({ length: 2 * STEPS + 1 }, (_, i) => {
    const turn = i <= STEPS ? toFront * (1 - i / STEPS) : (toBack * (i - STEPS)) / STEPS;
    return on(radius + depthAt(turn), turn);
  });
  const [first, last] = [on(radius + endDepth, toFront), on(radius + endDepth, toBack)];
  const edge = curveThrough(outer, {
    start: { x: -along(toFront).x, y: -along(toFront).y },
    end: { x: -along(toBack).x, y: -along(toBack).y },
  });
  return {
    id: 'sleeve',
    title: { key: 'flutter-sleeve.piece.wing', values: {} },
    edges: [
      { name: 'cap-back', kind: 'cap', path: arc(toBack, 0) },
      { name: 'cap-front', kind: 'cap', path: arc(0, toFront) },
      { name: 'end-front', kind: 'free', path: linePath(on(radius, toFront), first) },
      { name: 'sleeve-edge', kind: 'curved-sleeve-hem', path: edge },
      { name: 'end-back', kind: 'free', path: linePath(last, on(radius, toBack)) },
    ],
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'pair', copies: 2 },
    grain: grainThrough({ x: 0, y: depth / 2 }, depth * 0.7),
    notches: [],
    markings: [],
  };
}
