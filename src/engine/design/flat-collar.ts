import {
  add,
  curveBetween,
  direction,
  linePath,
  midpoint,
  outlineArea,
  outlineSelfCrossings,
  type Path,
  pathAt,
  pathCrossings,
  pathEnd,
  pathEndTangent,
  pathExtend,
  pathJoin,
  pathLength,
  pathOffset,
  pathReverse,
  pathSlice,
  pathStart,
  rotate,
  scale,
  type Vector,
} from '../geometry/index.ts';
import {
  type Cutting,
  type Edge,
  type EdgeKind,
  edgeLength,
  edgeOf,
  flatSeam,
  type Garment,
  type Notch,
  outlineOf,
  type Piece,
  partsNeckAtBack,
  pieceOf,
  type Seam,
  withPiece,
} from '../piece/index.ts';
import { HALVES } from './bodice.ts';
import { type LaidNeck, layNeck, mostOverlap } from './laid-neck.ts';
import { type NeckForCollar, neckForCollar } from './neck-ring.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam } from './step.ts';

const SHAPES = ['rounded', 'pointed', 'whole'] as const;
type Shape = (typeof SHAPES)[number];

/** A collar that lies on the dress all round the neck, in two layers; it parts where the back opens. */
export const flatCollar = defineStep({
  id: 'flat-collar',
  stage: 'finish',
  kind: 'collar',
  params: {
    shape: choiceParam(SHAPES, 'rounded', COMMON_PRACTICE),
    collarWidth: lengthParam(
      () => 50,
      () => [25, 90],
      'about 5 cm wide on a child (common practice, no source)',
    ),
    standAway: lengthParam(
      ({ garment }) => Math.min(15, mostOverlap(garment)),
      ({ garment }) => [0, mostOverlap(garment)],
      'shoulder tips overlapped by 1 to 2 cm; the more, the more the collar stands at the neck (common practice, no source)',
    ),
    neckEase: lengthParam(
      () => 6,
      () => [0, 12],
      'neck edge 3 to 6 mm shorter than the neck in all, so that the seam rolls under (common practice, no source)',
    ),
  },
  words: {
    title: 'Flat collar',
    about: 'A collar that lies on the dress round the neck, rolled a little at its seam. It has no ties.',
    shape: 'Shape in front',
    'shape.rounded': 'Two rounded ends',
    'shape.pointed': 'Two pointed ends',
    'shape.whole': 'Runs round the front in one',
    collarWidth: 'Width',
    standAway: 'Shoulder tips overlap, for standing away from the neck',
    neckEase: 'Neck edge shorter than the neck, in all',
    'open-shoulders':
      'A collar runs over the shoulders, and these open with press studs. Open the back instead.',
    'not-half': 'The bodice has no plain neck and shoulders that a collar could be drawn on.',
    'no-room': 'A collar {width} wide cannot be drawn round this neck. Make it narrower.',
    piece: 'Collar',
    draw: 'Flat collar',
    'draw.lay':
      'Lay the back to the front at the shoulder: neck points together, shoulder tips over each other by {overlap}. Trace the neck from centre front to centre back.',
    'draw.neck':
      'Draw it smoothly over the shoulder and bring half the neck edge to {length}: {shorter} shorter than half the neck.',
    'draw.outer': 'Draw the outer edge {width} away from it all along, square to the centre back.',
    'draw.rounded': 'Round the front end off.',
    'draw.pointed': 'Draw the front end out to a point.',
    'draw.whole': 'Carry the outer edge on to the centre front, which is a fold.',
    'draw.under':
      'Cut two layers. Trim the outer edge of the lower one by 2 mm, so that the seam rolls under.',
  },
  apply: ({ garment, bench }, values) => {
    if (garment.closing?.kind === 'shoulder-studs') return cannot('flat-collar.open-shoulders');
    const [width, overlap] = [bench.rounded(values.collarWidth), bench.rounded(values.standAway)];
    const shorter = bench.rounded(values.neckEase) / 2;
    const [laid, neck] = [layNeck(garment, overlap, shorter), neckForCollar(garment)];
    if (laid === null || neck === null) return cannot('flat-collar.not-half');
    const piece = drawCollar(laid, values.shape, width, partsNeckAtBack(garment.closing));
    const outline = outlineOf(piece);
    if (outlineArea(outline) <= 0 || outlineSelfCrossings(outline).length > 0)
      return cannot('flat-collar.no-room', { width: { mm: width } });

    bench.part({ key: 'flat-collar.draw', values: {} }, laid.lines);
    bench.tell('flat-collar.draw.lay', { overlap: { mm: overlap } });
    bench.tell(
      'flat-collar.draw.neck',
      { length: { mm: pathLength(laid.path) }, shorter: { mm: shorter } },
      { lines: [laid.path] },
    );
    bench.tell('flat-collar.draw.outer', { width: { mm: width } });
    bench.tell(`flat-collar.draw.${values.shape}`, {}, { lines: piece.edges.map((edge) => edge.path) });
    bench.tell('flat-collar.draw.under', {});
    return done(sewOn(garment, neck, piece));
  },
});

/** Half the collar: neck, back, outer edge, front. */
function drawCollar(laid: LaidNeck, shape: Shape, width: number, parts: boolean): Piece {
  const neck = laid.path;
  const outside = pathReverse(pathOffset(neck, -width));
  const { outer, front } = frontEnd(neck, outside, shape, width);
  const whole = shape === 'whole';
  const [atFront, atBack]: [EdgeKind, EdgeKind] = [
    whole ? 'fold' : 'free',
    parts ? 'free' : whole ? 'join' : 'fold',
  ];
  const edges: readonly Edge[] = [
    { name: 'neck', kind: 'attach', path: neck },
    { name: 'back', kind: atBack, path: linePath(pathEnd(neck), pathStart(outer)) },
    { name: 'outer', kind: 'free', path: outer },
    { name: 'front', kind: atFront, path: front },
  ];
  const onFold = atFront === 'fold' || atBack === 'fold';
  const cutting: Cutting = onFold ? { as: 'fold', copies: 2 } : { as: 'pair', copies: 4 };
  const down: Vector = whole ? { x: 0, y: 1 } : laid.downBack;
  // The grain runs along the fold, or along the centre back; it is drawn beside it.
  const middle = whole
    ? midpoint(pathAt(neck, 15).point, pathAt(outer, Math.max(0, pathLength(outer) - 15)).point)
    : midpoint(pathAt(neck, Math.max(0, pathLength(neck) - 15)).point, pathAt(outer, 15).point);
  const reach = scale(down, width * 0.3);
  return {
    id: 'collar',
    title: { key: 'flat-collar.piece', values: {} },
    edges,
    cloth: 'main',
    layer: 'shell',
    cutting,
    grain: {
      from: { x: middle.x + reach.x, y: middle.y + reach.y },
      to: { x: middle.x - reach.x, y: middle.y - reach.y },
    },
    notches: [],
    markings: [],
  };
}

/** How much of the width is rounded off, and how far and at which angle a point stands out (our own shapes). */
const ROUNDED = 0.75;
const POINT = { longer: 1.35, spread: Math.PI / 15, from: 1.2 };

/** The outer edge up to the front end, and the end itself up to the neck. */
function frontEnd(
  neck: Path,
  outside: Path,
  shape: Shape,
  width: number,
): { readonly outer: Path; readonly front: Path } {
  const top = pathStart(neck);
  const length = pathLength(outside);
  switch (shape) {
    case 'rounded': {
      const cut = Math.min(width * ROUNDED, length / 2);
      const straight = linePath(pathEnd(outside), top);
      const kept = pathSlice(outside, 0, length - cut);
      const { point, tangent } = pathAt(straight, Math.min(cut, pathLength(straight) * 0.9));
      return {
        outer: pathJoin(kept, curveBetween(pathEnd(kept), pathEndTangent(kept), point, tangent)),
        front: linePath(point, top),
      };
    }
    case 'pointed': {
      const kept = pathSlice(outside, 0, length - Math.min(width * POINT.from, length / 2));
      const way = rotate(direction(top, pathEnd(outside)), -POINT.spread);
      const tip = add(top, scale(way, width * POINT.longer));
      const arriving = direction(pathEnd(kept), tip);
      return {
        outer: pathJoin(kept, curveBetween(pathEnd(kept), pathEndTangent(kept), tip, arriving)),
        front: linePath(tip, top),
      };
    }
    case 'whole': {
      const longer = pathExtend(outside, { end: 3 * width });
      const centre = linePath(top, { x: top.x, y: top.y + 6 * width });
      const [hit] = pathCrossings(longer, centre);
      const outer = hit === undefined ? outside : pathSlice(longer, 0, hit.atA);
      return { outer, front: linePath(pathEnd(outer), top) };
    }
  }
}

/** Sews the collar to the neck from centre front to centre back, with a notch on each half. */
function sewOn(garment: Garment, neck: NeckForCollar, collar: Piece): Garment {
  const onCollar = edgeLength(collar, 'neck');
  const k = onCollar / neck.half;
  const notches: Notch[] = [];
  let dress = garment;
  for (const half of HALVES) {
    const at = neck.side.at(half === 'front' ? 0 : -1);
    if (at === undefined) continue;
    const piece = pieceOf(dress, at.piece);
    const from = half === 'front' ? 0 : neck.stand;
    const middle = (edgeLength(piece, at.edge) - from) / 2;
    const rest = { style: half === 'front' ? 'single' : 'double', match: `collar-${half}` } as const;
    const notch: Notch = { edge: at.edge, at: from + middle, ...rest };
    dress = withPiece(dress, { ...piece, notches: [...piece.notches, notch] });
    notches.push({ edge: 'neck', at: half === 'front' ? middle * k : onCollar - middle * k, ...rest });
  }
  const seam = (id: string, a: Seam['a'], b: Seam['b']): Seam => flatSeam(id, 'collar', a, b);
  const round: Seam = {
    ...seam('collar', neck.side, [{ piece: collar.id, edge: 'neck', times: 2 }]),
    join: { kind: 'eased', ease: 2 * (onCollar - neck.half) },
    ...neck.bare,
  };
  const end = [{ piece: collar.id, edge: 'back', times: 1 }];
  const joined = edgeOf(collar, 'back').kind === 'join';
  return {
    ...dress,
    pieces: [...dress.pieces, { ...collar, notches }],
    seams: [...dress.seams, round, ...(joined ? [seam('collar-back', end, end)] : [])],
  };
}
