import type { Half } from '../block/index.ts';
import type { Bench } from '../construct/index.ts';
import {
  linePath,
  midpoint,
  offsetOutline,
  outlineSelfCrossings,
  pathAt,
  pathEnd,
  pathLength,
  pathNearest,
  pathReverse,
  pathSlice,
  pathStart,
  pathWithEnds,
} from '../geometry/index.ts';
import {
  edgeLength,
  edgeOf,
  findEdge,
  flatSeam,
  type Garment,
  grainThrough,
  outlineOf,
  type Piece,
  pieceOf,
  reshape,
  type Seam,
} from '../piece/index.ts';
import { armEdgesOf, type OpenArm, openArm } from './arm-opening.ts';
import { HALVES } from './bodice.ts';
import { cannot, defineStep, done, lengthParam, type StepOutcome } from './step.ts';

/** Shoulder and side must hold at least this much of the facing, and as much beyond it, mm. */
const LEAST_END = 5;

/** A shaped facing round each armhole, or round the edge of a cap, of a dress without sleeves. */
export const armholeFacing = defineStep({
  id: 'armhole-facing',
  stage: 'finish',
  kind: 'armhole-finish',
  params: {
    facingWidth: lengthParam(
      () => 40,
      () => [20, 60],
      'facings 4 to 6 cm wide (teaching pages on facings)',
    ),
  },
  words: {
    title: 'Armhole facing',
    about: 'A shaped facing that finishes the armholes of a dress without sleeves.',
    facingWidth: 'Width',
    sleeved: 'A sleeve is sewn into the armhole, so there is no edge left to face. Leave out one of the two.',
    'no-room':
      'A facing {width} wide does not fit between the armhole and the other edges of {piece}. Make it narrower, or take a bias strip.',
    'piece.front': 'Front armhole facing',
    'piece.back': 'Back armhole facing',
    'draw.front': 'Front armhole facing',
    'draw.back': 'Back armhole facing',
    'draw.outer':
      'Trace the armhole of {piece} with the ends of its neighbours. Draw the outer edge {width} inside the armhole, all along.',
    'draw.turn':
      'Sew it to the armhole, clip, and stitch the allowance to the facing close to the seam, so that it rolls inside. Neaten the outer edge.',
  },
  apply: ({ garment, bench }, { facingWidth }) => {
    const arm = openArm(garment);
    if (arm === null) return cannot('armhole-facing.sleeved');
    const facings: Piece[] = [];
    for (const half of HALVES) {
      const drawn = drawFacing(garment, bench, half, arm, bench.rounded(facingWidth));
      if ('ok' in drawn) return drawn;
      facings.push(drawn);
    }
    return done({
      ...garment,
      pieces: [...garment.pieces, ...trueTops(facings, arm)],
      seams: [...garment.seams, ...facingSeams(garment, arm)],
    });
  },
});

function drawFacing(
  garment: Garment,
  bench: Bench,
  half: Half,
  arm: OpenArm,
  width: number,
): Piece | StepOutcome {
  const source = garment.whole[half] ?? pieceOf(garment, half);
  const refused = cannot('armhole-facing.no-room', { piece: source.title, width: { mm: width } });
  const opening = findEdge(source, arm);
  const here = opening === undefined ? -1 : source.edges.indexOf(opening);
  const [before, after] = [source.edges.at(here - 1), source.edges[here + 1]];
  if (opening === undefined || before === undefined || after === undefined) return refused;

  // A ring of the opening and its neighbours is enough to let the moved edge meet them.
  const across = linePath(pathEnd(after.path), pathStart(before.path));
  const [, inner] = offsetOutline([before.path, opening.path, after.path, across], [0, -width, 0, 0]);
  if (inner === undefined) return refused;
  const [top, foot] = [pathNearest(before.path, pathStart(inner)), pathNearest(after.path, pathEnd(inner))];
  const length = pathLength(before.path);
  const leftOver = Math.min(top.at, pathLength(after.path) - foot.at);
  const ends = Math.min(length - top.at, foot.at);
  if (Math.max(top.distance, foot.distance) > 0.01 || Math.min(leftOver, ends) < LEAST_END) return refused;

  const middle = pathAt(opening.path, pathLength(opening.path) / 2).point;
  const facing: Piece = {
    id: `armhole-facing-${half}`,
    title: { key: `armhole-facing.piece.${half}`, values: {} },
    edges: [
      opening,
      { ...after, path: pathSlice(after.path, 0, foot.at) },
      { name: 'outer', kind: 'free', path: pathReverse(inner) },
      { ...before, path: pathSlice(before.path, top.at, length) },
    ],
    cloth: 'main',
    layer: 'lining',
    cutting: { as: 'pair', copies: 2 },
    grain: grainThrough(midpoint(middle, pathNearest(inner, middle).point), width * 0.5),
    notches: [],
    markings: [],
  };
  // The parallel of a hollow edge may run into the edge or, where it turns more sharply than it is wide, into itself.
  if (outlineSelfCrossings(outlineOf(facing)).length > 0) return refused;
  bench.part(
    { key: `armhole-facing.draw.${half}`, values: {} },
    source.edges.map((edge) => edge.path),
  );
  bench.tell(
    'armhole-facing.draw.outer',
    { piece: source.title, width: { mm: width } },
    { lines: facing.edges.map((edge) => edge.path) },
  );
  bench.tell('armhole-facing.draw.turn', {});
  return facing;
}

/**
 * Two shoulders of different slope meet the outer edge at different depths; the longer facing is cut back, so that
 * both end alike at the seam between them.
 */
function trueTops(facings: readonly Piece[], arm: OpenArm): readonly Piece[] {
  const top = topEdge(arm);
  const length = Math.min(...facings.map((facing) => edgeLength(facing, top)));
  return facings.map((facing) => {
    const path = edgeOf(facing, top).path;
    const over = pathLength(path) - length;
    if (over < 1e-6) return facing;
    const kept = pathSlice(path, over, pathLength(path));
    const outer = edgeOf(facing, 'outer').path;
    return reshape(facing, { [top]: kept, outer: pathWithEnds(outer, pathStart(outer), pathStart(kept)) });
  });
}

/** A drop shoulder runs on over the arm, and its facing ends on the overarm instead of the shoulder. */
const topEdge = (arm: OpenArm): 'shoulder' | 'overarm' => (arm === 'armhole' ? 'shoulder' : 'overarm');

function facingSeams(garment: Garment, arm: OpenArm): readonly Seam[] {
  const twice = (half: Half, edge: string, reversed = false) => ({
    piece: `armhole-facing-${half}`,
    edge,
    times: 2,
    reversed,
  });
  const seam = (id: string, a: Seam['a'], b: Seam['b']): Seam =>
    flatSeam(`armhole-facing-${id}`, 'facing', a, b);
  const shoulder = topEdge(arm);
  return [
    seam(
      'round',
      [...armEdgesOf(garment, 'front', arm), ...armEdgesOf(garment, 'back', arm, true)],
      [twice('front', arm), twice('back', arm, true)],
    ),
    seam('shoulder', [twice('front', shoulder)], [twice('back', shoulder)]),
    seam('side', [twice('front', 'side')], [twice('back', 'side')]),
  ];
}
