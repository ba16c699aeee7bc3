import { linePath, type Point } from '../geometry/index.ts';
import {
  type EdgeKind,
  edgeLength,
  edgeOf,
  grainThrough,
  opensBack,
  type Piece,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import { FLARED_HEM } from './a-line-skirt.ts';
import { arc } from './arc.ts';
import { closingEnd } from './skirt-panel.ts';
import { skirtLength } from './skirt-params.ts';
import {
  COMMON_PRACTICE,
  cannot,
  countParam,
  defineStep,
  done,
  lengthParam,
  type StepContext,
} from './step.ts';
import { centreBack, closingBelowWaist, type WaistRing, waistRing } from './waist-ring.ts';

/** Half a gore may turn this far from its middle to its seam, radians. */
const WIDEST_TURN = Math.PI / 4;
const USUAL_GORES = 6;

/** Equal gores with the straight grain in their middle, flared at every seam. */
export const goredSkirt = defineStep({
  id: 'gored-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    length: skirtLength,
    gores: countParam(() => USUAL_GORES, [3, 12], COMMON_PRACTICE),
    flare: lengthParam(
      usualFlare,
      () => [5, 400],
      'walking room at knee length is 1.2 to 1.5 times the hips (common practice, no source)',
    ),
  },
  words: {
    title: 'Gored skirt',
    about: 'Equal gores, each with the straight grain in its middle, flared at every seam.',
    length: 'Finished length from the waist seam',
    gores: 'Number of gores',
    flare: 'Flare on each side of a gore, at the hem',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'too-wide':
      'A flare of {flare} on each side is too much for a gore of this length. Take {most} or less, a longer skirt, or a circle skirt.',
    'piece.gore': 'Skirt gore',
    'piece.back-gore': 'Skirt gore at the centre back',
    draw: 'Gored skirt',
    'draw.gore':
      '{piece}: rule the straight grain. From a point on it draw an arc with the radius {radius}, half of {waist} along it on each side of the grain; this is the waist. Rule both ends out from the same point.',
    'draw.hem': 'From the same point draw the hem with the radius {radius}. Cut {copies}.',
    'draw.sew':
      'Sew the gores into a ring; the opening lies between the two gores at the centre back. The middle of the ring comes to the centre front.',
  },
  apply: ({ garment, bench }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('gored-skirt.no-waist');
    const length = bench.rounded(values.length);
    if (values.flare > WIDEST_TURN * length) {
      return cannot('gored-skirt.too-wide', {
        flare: { mm: values.flare },
        most: { mm: WIDEST_TURN * length },
      });
    }
    const waist = (2 * (ring.frontHalf + ring.backHalf)) / values.gores;
    const radius = bench.rounded(((waist / 2) * length) / values.flare);
    const gores = [
      gore('skirt-back-gore', opensBack(garment.closing) ? 'closing' : 'centre', radius, waist, length, 2),
      gore('skirt-gore', 'join', radius, waist, length, values.gores - 2),
    ];
    const below = closingBelowWaist(garment);
    const pieces = gores.map((piece) =>
      piece.id === 'skirt-back-gore' && below !== null && below > 0
        ? { ...piece, markings: [endOfClosing(piece, below)] }
        : piece,
    );
    for (const piece of pieces) {
      bench.part({ key: 'gored-skirt.draw', values: {} });
      const lines = (...names: string[]) => names.map((name) => edgeOf(piece, name).path);
      bench.tell(
        'gored-skirt.draw.gore',
        { piece: piece.title, radius: { mm: radius }, waist: { mm: waist } },
        { lines: lines('waist', 'right', 'left') },
      );
      bench.tell(
        'gored-skirt.draw.hem',
        { radius: { mm: radius + length }, copies: piece.cutting.copies },
        { lines: lines('hem') },
      );
    }
    bench.tell('gored-skirt.draw.sew', {});
    return done({
      ...garment,
      pieces: [...garment.pieces, ...pieces],
      seams: [...garment.seams, ...goreSeams(ring, values.gores, opensBack(garment.closing))],
    });
  },
});

/** So much flare that six gores make a hem of 1.5 times the hips. */
function usualFlare({ body, garment }: StepContext): number {
  const ring = waistRing(garment);
  const waist = ring === null ? 0 : 2 * (ring.frontHalf + ring.backHalf);
  return Math.max(25, (1.5 * body.values.hipGirth.mm - waist) / (2 * USUAL_GORES));
}

/** Waist and hem are arcs about one point on the grain, so they meet every seam square. */
function gore(
  id: 'skirt-gore' | 'skirt-back-gore',
  left: EdgeKind,
  radius: number,
  waist: number,
  length: number,
  copies: number,
): Piece {
  const half = waist / 2 / radius;
  const outer = radius + length;
  const hub: Point = { x: 0, y: -radius };
  const at = (r: number, turned: number): Point => ({
    x: r * Math.sin(turned),
    y: r * Math.cos(turned) - radius,
  });
  return {
    id,
    title: {
      key: id === 'skirt-gore' ? 'gored-skirt.piece.gore' : 'gored-skirt.piece.back-gore',
      values: {},
    },
    edges: [
      { name: 'waist', kind: 'waist', path: arc(hub, radius, -half, half) },
      { name: 'right', kind: 'join', path: linePath(at(radius, half), at(outer, half)) },
      { name: 'hem', kind: 'curved-hem', path: arc(hub, outer, half, -half), allowance: FLARED_HEM },
      { name: 'left', kind: left, path: linePath(at(outer, -half), at(radius, -half)) },
    ],
    cloth: 'skirt',
    layer: 'shell',
    cutting: id === 'skirt-gore' ? { as: 'single', copies } : { as: 'pair', copies },
    grain: grainThrough({ x: 0, y: length / 2 }, length * 0.6),
    notches: [],
    markings: [],
  };
}

/** A short stroke across the opening edge of a gore where the opening ends. */
function endOfClosing(piece: Piece, below: number): Piece['markings'][number] {
  const left = edgeOf(piece, 'left').path.segments[0];
  const share = Math.min(1, below / edgeLength(piece, 'left'));
  return closingEnd(
    left.to.x + (left.from.x - left.to.x) * share,
    left.to.y + (left.from.y - left.to.y) * share,
  );
}

function goreSeams(ring: WaistRing, gores: number, open: boolean): readonly Seam[] {
  const join = (id: string, a: SeamEdge, b: SeamEdge): Seam => ({
    id,
    name: 'skirt-join',
    a: [a],
    b: [b],
    join: { kind: 'flat' },
    smoothStart: true,
    smoothEnd: true,
  });
  const waist = (piece: string, reversed: boolean): SeamEdge => ({
    piece,
    edge: 'waist',
    times: 1,
    reversed,
  });
  const left = (times: number): SeamEdge => ({ piece: 'skirt-gore', edge: 'left', times, reversed: true });
  const right = (piece: string, times: number): SeamEdge => ({ piece, edge: 'right', times });
  return [
    // The last gore is sewn by its right edge, which is as long as its left.
    join('skirt-back-gores', right('skirt-back-gore', 2), left(2)),
    ...(gores > 3 ? [join('skirt-gores', right('skirt-gore', gores - 3), left(gores - 3))] : []),
    centreBack('skirt-centre-back', { piece: 'skirt-back-gore', edge: 'left' }, open),
    {
      id: 'skirt-waist',
      name: 'skirt-waist',
      a: ring.side,
      b: [
        waist('skirt-back-gore', false),
        ...Array.from({ length: gores - 2 }, () => waist('skirt-gore', false)),
        waist('skirt-back-gore', true),
      ],
      join: { kind: 'flat' },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}
