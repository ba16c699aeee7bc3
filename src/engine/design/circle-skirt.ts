import { add, cubic, linePath, type Path, type Point, pathOf, type Segment } from '../geometry/index.ts';
import {
  type EdgeKind,
  grainThrough,
  type Marking,
  opensBack,
  type Piece,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import { closingEnd } from './skirt-panel.ts';
import { skirtLength } from './skirt-params.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done } from './step.ts';
import { centreBack, closingBelowWaist, notchWaist, type WaistRing, waistRing } from './waist-ring.ts';

/** Which part of a full circle the whole skirt is. */
const PARTS = { full: 1, 'three-quarter': 0.75, half: 0.5, quarter: 0.25 } as const;
type Part = keyof typeof PARTS;
const PART_NAMES = ['full', 'three-quarter', 'half', 'quarter'] as const satisfies readonly Part[];

/** A skirt cut as part of a ring, flat at the waist. */
export const circleSkirt = defineStep({
  id: 'circle-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    part: choiceParam(PART_NAMES, 'half', COMMON_PRACTICE),
    length: skirtLength,
  },
  words: {
    title: 'Circle skirt',
    about: 'Cut as part of a circle; smooth at the waist, full at the hem.',
    part: 'Part of a circle',
    'part.full': 'Full circle',
    'part.three-quarter': 'Three quarters',
    'part.half': 'Half circle',
    'part.quarter': 'Quarter circle',
    length: 'Finished length from the waist seam',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'piece.front': 'Skirt front',
    'piece.back': 'Skirt back',
    draw: 'Circle skirt',
    'draw.arc':
      '{piece}: from one point draw an arc with the radius {radius}, along it {waist}; this is the waist. Rule both ends out from the same point.',
    'draw.hem': 'From the same point draw the hem with the radius {radius}.',
  },
  apply: ({ garment, bench }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('circle-skirt.no-waist');
    const waist = 2 * (ring.frontHalf + ring.backHalf);
    // A waist of W fits the part f of a circle at r = W / (2 pi f).
    const radius = bench.rounded(waist / (2 * Math.PI * PARTS[values.part]));
    const length = bench.rounded(values.length);
    const below = closingBelowWaist(garment);
    const pieces = [
      sector('front', radius, length, ring.frontHalf, 'fold', []),
      sector('back', radius, length, ring.backHalf, opensBack(garment.closing) ? 'closing' : 'centre', [
        ...(below === null || below === 0 ? [] : [closingEnd(0, below)]),
      ]),
    ];
    for (const piece of pieces) {
      bench.part({ key: 'circle-skirt.draw', values: {} });
      const arc = piece.id === 'skirt-front' ? ring.frontHalf : ring.backHalf;
      const [arcPath, side, hem, centre] = piece.edges.map((edge) => edge.path);
      bench.tell(
        'circle-skirt.draw.arc',
        { piece: piece.title, radius: { mm: radius }, waist: { mm: arc } },
        { lines: [arcPath, side, centre].filter((path) => path !== undefined) },
      );
      bench.tell(
        'circle-skirt.draw.hem',
        { radius: { mm: radius + length } },
        { lines: hem === undefined ? [] : [hem] },
      );
    }
    const notched = notchWaist(garment, ring, 'skirt');
    return done({
      ...notched,
      pieces: [...notched.pieces, ...pieces],
      seams: [...notched.seams, ...ringSeams(ring, opensBack(garment.closing))],
    });
  },
});

/** A quarter of the skirt: the centre straight down on x = 0, the waist arc from the centre to the side. */
function sector(
  half: 'front' | 'back',
  radius: number,
  length: number,
  waist: number,
  centre: EdgeKind,
  markings: readonly Marking[],
): Piece {
  const angle = waist / radius;
  const hub: Point = { x: 0, y: -radius };
  const at = (r: number, turned: number): Point =>
    add(hub, { x: r * Math.sin(turned), y: r * Math.cos(turned) });
  const outer = radius + length;
  return {
    id: `skirt-${half}`,
    title: { key: `circle-skirt.piece.${half}`, values: {} },
    edges: [
      { name: 'waist', kind: 'waist', path: arc(hub, radius, 0, angle) },
      { name: 'side', kind: 'side', path: linePath(at(radius, angle), at(outer, angle)) },
      { name: 'hem', kind: 'curved-hem', path: arc(hub, outer, angle, 0) },
      { name: 'centre', kind: centre, path: linePath(at(outer, 0), at(radius, 0)) },
    ],
    cloth: 'skirt',
    layer: 'shell',
    cutting: half === 'front' ? { as: 'fold', copies: 1 } : { as: 'pair', copies: 2 },
    grain: grainThrough(at((radius + outer) / 2, angle * 0.4), length * 0.6),
    notches: [
      {
        edge: 'waist',
        at: waist / 2,
        style: half === 'front' ? 'single' : 'double',
        match: `skirt-waist-${half}`,
      },
    ],
    markings,
  };
}

/** One cubic for at most this angle: the radius then errs by less than a ten-millionth of itself. */
const ARC_STEP = Math.PI / 12;

/** An arc about a hub; angles turn from straight down toward the side. */
function arc(hub: Point, radius: number, from: number, to: number): Path {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / ARC_STEP));
  const step = (to - from) / count;
  const handle = radius * (4 / 3) * Math.tan(step / 4);
  const on = (a: number): Point => add(hub, { x: radius * Math.sin(a), y: radius * Math.cos(a) });
  const pull = (a: number, by: number): Point => add(on(a), { x: by * Math.cos(a), y: -by * Math.sin(a) });
  const piece = (i: number): Segment => {
    const [a, b] = [from + i * step, i === count - 1 ? to : from + (i + 1) * step];
    return cubic(on(a), pull(a, handle), pull(b, -handle), on(b));
  };
  return pathOf(piece(0), ...Array.from({ length: count - 1 }, (_, i) => piece(i + 1)));
}

function ringSeams(ring: WaistRing, open: boolean): readonly Seam[] {
  const once = (piece: string, reversed: boolean): SeamEdge => ({ piece, edge: 'waist', times: 1, reversed });
  return [
    {
      id: 'skirt-side',
      name: 'skirt-join',
      a: [{ piece: 'skirt-front', edge: 'side', times: 2 }],
      b: [{ piece: 'skirt-back', edge: 'side', times: 2 }],
      join: { kind: 'flat' },
      smoothStart: true,
      smoothEnd: true,
    },
    centreBack('skirt-centre-back', { piece: 'skirt-back', edge: 'centre' }, open),
    {
      id: 'skirt-waist',
      name: 'skirt-waist',
      a: ring.side,
      b: [
        once('skirt-back', false),
        once('skirt-front', true),
        once('skirt-front', false),
        once('skirt-back', true),
      ],
      join: { kind: 'flat' },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}
