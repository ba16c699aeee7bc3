import { pathStart } from '../geometry/index.ts';
import {
  edgeLength,
  type Garment,
  opensBack,
  type Piece,
  type Seam,
  type SeamEdge,
  skirtDepth,
} from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { gatheredPanels, type PanelRing } from './gathered-panels.ts';
import { netLayers } from './net-layers.ts';
import { skirtLength } from './skirt-params.ts';
import { quarterSeams, skirtQuarter, tellQuarters } from './skirt-quarter.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  countParam,
  defineStep,
  done,
  lengthParam,
  ratioParam,
  type StepContext,
  type StepWork,
} from './step.ts';
import { tellPanels } from './tell-panels.ts';
import { matchWaist } from './waist-notches.ts';
import { closingBelowWaist, type WaistRing, waistRing } from './waist-ring.ts';

/** Shortest layer of net that is made, mm. */
const LEAST_NET = 50;
/** A yoke is this much wider at its foot than the hips, so that the child can sit (common practice, no source). */
const SEAT_ROOM = 1.15;
/** Least flare of a quarter of the yoke, mm, so that it can be drawn as part of a ring. */
const LEAST_FLARE = 10;

const depthOf = (c: StepContext): number => skirtDepth(c.garment) ?? skirtLength.rule(c);

/** Layers of gathered net under the skirt, from the waist or from a smooth yoke of lining. */
export const petticoat = defineStep({
  id: 'petticoat',
  stage: 'over-skirt',
  kind: 'petticoat',
  params: {
    from: choiceParam(['yoke', 'waist'], 'yoke', COMMON_PRACTICE),
    layers: countParam(
      () => 2,
      [1, 8],
      "2 layers, soft over stiff, for bridesmaids (a maker's page on petticoats)",
    ),
    ratio: ratioParam(
      () => 2.5,
      [1.2, 4],
      'stiff net 2-3, soft tulle 3 and more (common practice, no source)',
    ),
    shorter: lengthParam(
      () => 25,
      () => [0, 150],
      '1 in shorter than the dress, as a lining (common practice, no source)',
    ),
    yokeDepth: lengthParam(
      (c) => Math.max(60, 0.35 * depthOf(c)),
      (c) => [60, Math.max(60, 0.7 * depthOf(c))],
      COMMON_PRACTICE,
    ),
  },
  words: {
    title: 'Petticoat',
    about: 'Layers of gathered net under the skirt, from the waist or from a smooth yoke of lining.',
    from: 'Gathered to',
    'from.yoke': 'A yoke of lining',
    'from.waist': 'The waist',
    layers: 'Layers of net',
    ratio: 'Times the edge above',
    shorter: 'Shorter than the skirt by',
    yokeDepth: 'Depth of the yoke',
    'no-waist': 'The bodice has no waist seam to sew a petticoat to.',
    'too-short':
      'Only {net} would be left for the net; it needs {least}. Make the yoke shallower, the petticoat longer, or gather it to the waist.',
    'piece.yoke-front': 'Petticoat yoke front',
    'piece.yoke-back': 'Petticoat yoke back',
    'piece.front': 'Petticoat front',
    'piece.back': 'Petticoat back',
    'draw.yoke': 'Petticoat yoke',
    draw: 'Petticoat',
    'draw.layers':
      'Cut for {layers} layers in all. Stiff net scratches: put soft net or a lining next to the leg. Sew each layer in a pass of its own.',
    'draw.fire':
      'Light net burns fast: keep it away from candles and open fire, and follow your local rules.',
  },
  apply: (work, values) => {
    const { garment, bench, clothWidth } = work;
    const waist = waistRing(garment);
    if (waist === null) return cannot('petticoat.no-waist');
    const below = closingBelowWaist(garment);
    const yokeDepth = values.from === 'yoke' ? bench.rounded(values.yokeDepth) : 0;
    const length = bench.rounded(depthOf(work) - values.shorter) - yokeDepth;
    if (length < LEAST_NET) {
      return cannot('petticoat.too-short', { net: { mm: Math.max(0, length) }, least: { mm: LEAST_NET } });
    }
    const yoke = values.from === 'yoke' ? yokeUnder(work, waist, yokeDepth) : null;
    const gathered = gatheredPanels({
      ring: yoke?.foot ?? waist,
      ratio: values.ratio,
      length,
      usableWidth: clothWidth.net,
      cloth: 'net',
      layer: 'lining',
      prefix: 'petticoat',
      titles: {
        front: { key: 'petticoat.piece.front', values: {} },
        back: { key: 'petticoat.piece.back', values: {} },
      },
      closingBelow: below === null || (yoke !== null && below <= yokeDepth) ? null : below - yokeDepth,
      seamName: yoke === null ? 'skirt-waist' : 'tier',
      top: yoke === null ? 'waist' : 'join',
    });
    const net = netLayers(gathered, values.layers);
    tellPanels(bench, { key: 'petticoat.draw', values: {} }, net.pieces);
    bench.tell('petticoat.draw.layers', { layers: values.layers });
    bench.tell('petticoat.draw.fire', {});
    if (yoke === null) {
      const matched = matchWaist(garment, waist, 'petticoat', net.pieces);
      return done(withParts(matched.garment, matched.pieces, net.seams));
    }
    const matched = matchWaist(garment, waist, 'petticoat-yoke', yoke.pieces);
    const notched = matched.pieces.map((piece) => notchFoot(piece, net.pieces));
    return done(withParts(matched.garment, [...notched, ...net.pieces], [...yoke.seams, ...net.seams]));
  },
});

const withParts = (garment: Garment, pieces: readonly Piece[], seams: readonly Seam[]): Garment => ({
  ...garment,
  pieces: [...garment.pieces, ...pieces],
  seams: [...garment.seams, ...seams],
});

/** A smooth yoke of lining from the waist to the hips, wide enough there to sit in. */
function yokeUnder(
  { garment, bench, body }: StepWork,
  ring: WaistRing,
  depth: number,
): { readonly pieces: readonly Piece[]; readonly seams: readonly Seam[]; readonly foot: PanelRing } {
  const waist = 2 * (ring.frontHalf + ring.backHalf);
  const flare = Math.max(LEAST_FLARE, (SEAT_ROOM * body.values.hipGirth.mm - waist) / 4);
  const quarters = HALVES.map((half) => {
    const arc = ring[`${half}Half`];
    const radius = bench.rounded((arc * depth) / flare);
    const quarter = skirtQuarter(garment, {
      half,
      id: `petticoat-yoke-${half}`,
      title: { key: `petticoat.piece.yoke-${half}`, values: {} },
      radius,
      waist: arc,
      length: depth,
    });
    const piece: Piece = {
      ...quarter,
      cloth: 'lining',
      layer: 'lining',
      edges: quarter.edges.map((edge) => (edge.name === 'hem' ? { ...edge, kind: 'join' } : edge)),
      notches: quarter.notches.map((notch) => ({ ...notch, match: `petticoat-yoke-waist-${half}` })),
      markings: quarter.markings.filter((marking) => pathStart(marking.path).y < depth),
    };
    return { piece, radius };
  });
  tellQuarters(bench, { key: 'petticoat.draw.yoke', values: {} }, quarters, depth);
  const pieces = quarters.map(({ piece }) => piece);
  const [frontHalf, backHalf] = pieces.map((piece) => edgeLength(piece, 'hem'));
  const pass = (half: 'front' | 'back', reversed: boolean): SeamEdge => ({
    piece: `petticoat-yoke-${half}`,
    edge: 'hem',
    times: 1,
    reversed,
  });
  return {
    pieces,
    seams: quarterSeams(ring, opensBack(garment.closing), 'petticoat-yoke'),
    foot: {
      frontHalf: frontHalf ?? 0,
      backHalf: backHalf ?? 0,
      side: [pass('back', true), pass('front', false), pass('front', true), pass('back', false)],
    },
  };
}

/** A notch half-way along the foot of the yoke, where the net has one. */
function notchFoot(yoke: Piece, net: readonly Piece[]): Piece {
  const half = yoke.id.endsWith('front') ? 'front' : 'back';
  const mate = net
    .flatMap((piece) => piece.notches)
    .find((notch) => notch.match === `petticoat-waist-${half}`);
  return mate === undefined
    ? yoke
    : { ...yoke, notches: [...yoke.notches, { ...mate, edge: 'hem', at: edgeLength(yoke, 'hem') / 2 }] };
}
