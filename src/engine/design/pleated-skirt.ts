import { linePath } from '../geometry/index.ts';
import {
  type EdgeKind,
  type Garment,
  layPleats,
  type Marking,
  type Notch,
  opensBack,
  type Piece,
  type PleatedJoin,
  type PleatLayout,
  type PleatStyle,
  pleatClothAt,
  type Seam,
} from '../piece/index.ts';
import { closingEnd, skirtPanel } from './skirt-panel.ts';
import { skirtLength } from './skirt-params.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam, ratioParam } from './step.ts';
import { tellPanels } from './tell-panels.ts';
import { closingBelowWaist, JOIN_ROOM, notchWaist, type WaistRing, waistRing } from './waist-ring.ts';

const STYLES = ['knife', 'box', 'inverted'] as const;

/** Straight widths of cloth laid in whole pleats that come out even. */
export const pleatedSkirt = defineStep({
  id: 'pleated-skirt',
  stage: 'skirt',
  kind: 'skirt',
  params: {
    style: choiceParam(STYLES, 'knife', COMMON_PRACTICE),
    length: skirtLength,
    spacing: lengthParam(
      () => 40,
      () => [10, 300],
      'what shows of each pleat; taken near the wish so that whole pleats go round (common practice, no source)',
    ),
    fullness: ratioParam(
      () => 3,
      [1.2, 6.2],
      'full knife or box pleats take 3 times the finished width (pleat tutorial, 17 Sep 2014); less gives partial depth; 160 in laid into 26 is about the limit (a page on the algebra of pleats, Nov 2018)',
    ),
  },
  words: {
    title: 'Pleated skirt',
    about: 'Straight widths of cloth laid in whole pleats; joins hide under a pleat.',
    style: 'Pleats',
    'style.knife': 'Knife pleats, all one way',
    'style.box': 'Box pleats',
    'style.inverted': 'Inverted pleats',
    length: 'Finished length from the waist seam',
    spacing: 'Width of each pleat that shows, about',
    fullness: 'Times the waist',
    'no-waist': 'The bodice has no waist seam to sew a skirt to.',
    'too-few': 'Only {pleats} pleat goes round a waist of {waist}. Make each pleat narrower.',
    'too-wide':
      'One pleat takes {module} of cloth, and the cloth is {cloth} wide. Make the pleats narrower or shallower.',
    'piece.panel': 'Skirt width {number} of {count}',
    draw: 'Pleated skirt',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const ring = waistRing(garment);
    if (ring === null) return cannot('pleated-skirt.no-waist');
    const waist = 2 * (ring.frontHalf + ring.backHalf);
    const join = wholePleats(values.style, waist, values.spacing, values.fullness);
    if (join.pleats < 2)
      return cannot('pleated-skirt.too-few', { pleats: join.pleats, waist: { mm: waist } });
    const layout = layPleats(join);
    const cuts = joinPlaces(layout, clothWidth.skirt - JOIN_ROOM);
    if (cuts === null) {
      const module = join.spacing + join.takeUp;
      return cannot('pleated-skirt.too-wide', { module: { mm: module }, cloth: { mm: clothWidth.skirt } });
    }
    const panels = cutPanels(layout, cuts, bench.rounded(values.length), garment, waistNotches(ring, layout));
    tellPanels(bench, { key: 'pleated-skirt.draw', values: {} }, panels);
    const notched = notchWaist(garment, ring, 'skirt');
    return done({
      ...notched,
      pieces: [...notched.pieces, ...panels],
      seams: [
        ...notched.seams,
        ...panelJoins(panels, opensBack(garment.closing)),
        waistSeam(ring, panels, join),
      ],
    });
  },
});

/** Whole pleats near the wished spacing. Boxes and inverted pleats come in odd numbers, so that one lies at the centre front. */
function wholePleats(style: PleatStyle, waist: number, wish: number, fullness: number): PleatedJoin {
  const near = Math.max(1, Math.round(waist / wish));
  const pleats = style === 'knife' || near % 2 === 1 ? near : near + (near * wish < waist ? 1 : -1);
  const spacing = waist / pleats;
  return { kind: 'pleated', style, pleats, spacing, takeUp: spacing * (fullness - 1) };
}

/**
 * Where the cloth is joined: on inner folds, so that every join hides under a pleat, with as few widths as the
 * cloth allows and these as equal as the folds allow. Null when a single pleat is wider than the cloth.
 */
function joinPlaces(layout: PleatLayout, most: number): readonly number[] | null {
  const inner = layout.folds.filter((fold) => fold.kind === 'inner' && fold.at > 0.5).map((fold) => fold.at);
  for (let widths = Math.ceil(layout.width / most - 1e-9); widths <= inner.length + 1; widths++) {
    const wished = layout.width / widths;
    const cuts: number[] = [0];
    for (let i = 1; i < widths; i++) {
      const from = cuts[i - 1] ?? 0;
      const reachable = inner.filter((at) => at > from && at - from <= most);
      const nearest = reachable.toSorted((a, b) => Math.abs(a - i * wished) - Math.abs(b - i * wished))[0];
      if (nearest === undefined) break;
      cuts.push(nearest);
    }
    cuts.push(layout.width);
    if (cuts.length === widths + 1 && layout.width - (cuts.at(-2) ?? 0) <= most) return cuts;
  }
  return null;
}

function waistNotches(
  ring: WaistRing,
  layout: PleatLayout,
): readonly { at: number; half: 'front' | 'back' }[] {
  const { frontHalf, backHalf } = ring;
  const waist = 2 * (frontHalf + backHalf);
  const finished: readonly { at: number; half: 'front' | 'back' }[] = [
    { at: backHalf / 2, half: 'back' },
    { at: backHalf + frontHalf / 2, half: 'front' },
    { at: waist - backHalf - frontHalf / 2, half: 'front' },
    { at: waist - backHalf / 2, half: 'back' },
  ];
  return finished.map(({ at, half }) => ({ at: pleatClothAt(layout, at), half }));
}

function cutPanels(
  layout: PleatLayout,
  cuts: readonly number[],
  length: number,
  garment: Garment,
  notches: readonly { at: number; half: 'front' | 'back' }[],
): readonly Piece[] {
  const count = cuts.length - 1;
  const below = closingBelowWaist(garment);
  const atCentre: EdgeKind = opensBack(garment.closing) ? 'closing' : 'centre';
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [cuts[i] ?? 0, cuts[i + 1] ?? layout.width];
    const within = (at: number): boolean => at >= from && (at < to || (i === count - 1 && at <= to));
    const own: Notch[] = notches
      .filter(({ at }) => within(at))
      .map(({ at, half }) => ({
        edge: 'waist',
        at: at - from,
        style: half === 'front' ? 'single' : 'double',
        match: `skirt-waist-${half}`,
      }));
    const ends = below === null || below === 0 ? [] : closingEnds(i, count, to - from, below);
    return skirtPanel({
      id: `skirt-${i + 1}`,
      title: { key: 'pleated-skirt.piece.panel', values: { number: i + 1, count } },
      width: to - from,
      length,
      left: i === 0 ? atCentre : 'join',
      right: i === count - 1 ? atCentre : 'join',
      cutting: { as: 'single', copies: 1 },
      cloth: 'skirt',
      layer: 'shell',
      notches: own,
      markings: [...pleatLines(layout, from, to, length), ...ends],
    });
  });
}

const closingEnds = (panel: number, count: number, width: number, below: number): readonly Marking[] => [
  ...(panel === 0 ? [closingEnd(0, below)] : []),
  ...(panel === count - 1 ? [closingEnd(width, below)] : []),
];

function pleatLines(layout: PleatLayout, from: number, to: number, length: number): readonly Marking[] {
  return layout.folds
    .filter((fold) => fold.kind !== 'inner' && fold.at > from + 0.5 && fold.at < to - 0.5)
    .map((fold) => ({
      kind: fold.kind === 'fold' ? 'pleat-fold' : 'pleat-meet',
      ...(fold.kind === 'fold' ? { brought: fold.brought } : {}),
      path: linePath({ x: fold.at - from, y: 0 }, { x: fold.at - from, y: length }),
    }));
}

function panelJoins(panels: readonly Piece[], open: boolean): readonly Seam[] {
  const seam = (from: Piece, to: Piece, name: 'skirt-join' | 'closing'): Seam => ({
    id: `skirt-${from.id}-${to.id}`,
    name,
    a: [{ piece: from.id, edge: 'right', times: 1 }],
    b: [{ piece: to.id, edge: 'left', times: 1, reversed: true }],
    join: { kind: 'flat' },
    smoothStart: true,
    smoothEnd: true,
  });
  return panels.map((panel, i) => {
    const isLast = i === panels.length - 1;
    const next = panels[(i + 1) % panels.length] ?? panel;
    return seam(panel, next, isLast && open ? 'closing' : 'skirt-join');
  });
}

const waistSeam = (ring: WaistRing, panels: readonly Piece[], join: PleatedJoin): Seam => ({
  id: 'skirt-waist',
  name: 'skirt-waist',
  a: ring.side,
  b: panels.map((panel) => ({ piece: panel.id, edge: 'waist', times: 1 })),
  join,
  smoothStart: false,
  smoothEnd: false,
});
