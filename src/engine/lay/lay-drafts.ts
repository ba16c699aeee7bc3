import type { LayCloth, LayPiece } from './cloth-rules.ts';
import type { PieceShape } from './piece-shape.ts';
import { crosswiseHalfPose, halfPose, type Pose, type PosedShape, poseOf, type ShapeStore } from './poses.ts';
import type { TurnDegrees } from './turns.ts';

/** `double`: one placing on folded cloth gives two copies. `on-fold`: half of the piece, the fold gives the rest. */
export type LayLayer = 'single' | 'double' | 'on-fold';

/** A range of the least y of the cutting line's box, and a fixed x where a fold across the cloth holds the piece. */
export interface LayVariant {
  readonly posed: PosedShape;
  readonly fromY: number;
  readonly toY: number;
  readonly fixedX?: number;
}

/** An item before stripes are reckoned. `after`: on single cloth, after the folded stretch. */
export interface Draft {
  readonly stretch: 'first' | 'after';
  readonly piece: number;
  readonly copies: readonly number[];
  readonly layer: LayLayer;
  readonly shape: PieceShape;
  readonly variants: readonly LayVariant[];
  /** The first turn, in which stripes are reckoned. */
  readonly first: TurnDegrees;
}

/** Across the cloth as it lies, mm. */
export function depthOf(cloth: Pick<LayCloth, 'usableWidth'>, folding: LayCloth['folding']): number {
  return folding === 'lengthwise' ? cloth.usableWidth / 2 : cloth.usableWidth;
}

export interface Wish {
  readonly piece: LayPiece;
  readonly index: number;
  readonly copies: number;
  readonly cloth: LayCloth;
  readonly whole: PieceShape;
  readonly turns: readonly TurnDegrees[];
  readonly store: ShapeStore;
}

/** The items of one piece as the cloth is folded; one that the cloth cannot hold has no variants. */
export function draftsOf(wish: Wish): readonly Draft[] {
  if (wish.cloth.folding === 'single') return singleDrafts(wish, range(0, wish.copies), 'first');
  return foldedDrafts(wish, wish.cloth.folding);
}

/** One item a copy; of a pair every second one is mirrored. */
function singleDrafts(wish: Wish, copies: readonly number[], stretch: Draft['stretch']): readonly Draft[] {
  const { piece, cloth, whole, turns } = wish;
  const pair = piece.cut.piece.cutting.as === 'pair';
  const bands = [{ fromY: 0, toY: cloth.usableWidth }];
  return copies.map((copy) => {
    const mirrored = pair && copy % 2 === 1;
    const sides = cloth.facesAlike === true ? [mirrored, !mirrored] : [mirrored];
    const poses = turns.flatMap((degrees) => sides.map((side) => poseOf(degrees, side)));
    return draft(wish, [copy], 'single', whole, fitting(wish, whole, poses, bands), stretch);
  });
}

function foldedDrafts(wish: Wish, folding: 'lengthwise' | 'crosswise'): readonly Draft[] {
  const { piece, cloth, whole, turns, copies } = wish;
  const depth = depthOf(cloth, folding);
  const twoFolds = folding === 'lengthwise' && cloth.selvedgesToMiddle === true;
  const { as } = piece.cut.piece.cutting;
  const half = piece.grain === 'bias' ? null : onFold(wish, folding, depth, twoFolds);
  if (half !== null && half.variants.length > 0) {
    return range(0, copies).map((copy) => draft(wish, [copy], 'on-fold', half.shape, half.variants, 'first'));
  }
  const alike = whole.symmetric && (piece.matches?.length ?? 0) === 0;
  const doubled = as === 'pair' || alike ? Math.floor(copies / 2) : 0;
  const bands = twoFolds
    ? [
        { fromY: 0, toY: depth / 2 },
        { fromY: depth / 2, toY: depth },
      ]
    : [{ fromY: 0, toY: depth }];
  // Both layers give a piece and its mirror image, so either may lie on top.
  const poses = turns.flatMap((degrees) => [poseOf(degrees, false), poseOf(degrees, true)]);
  const variants = fitting(wish, whole, poses, bands);
  const onDouble = variants.length > 0 ? doubled : 0;
  return [
    ...range(0, onDouble).map((i) => draft(wish, [2 * i, 2 * i + 1], 'double', whole, variants, 'first')),
    ...singleDrafts(wish, range(2 * onDouble, copies), 'after'),
  ];
}

function onFold(
  wish: Wish,
  folding: 'lengthwise' | 'crosswise',
  depth: number,
  twoFolds: boolean,
): { readonly shape: PieceShape; readonly variants: readonly LayVariant[] } | null {
  const { piece, cloth, turns, store } = wish;
  const shape = store.half(piece.cut, cloth.gap, folding === 'lengthwise' ? 'y=0' : 'x=0');
  if (shape === null) return null;
  const ways = turns.flatMap((t) => (t === 0 ? [false] : t === 180 ? [true] : []));
  if (folding === 'crosswise') {
    const poses = ways.map(crosswiseHalfPose);
    const bands = [{ fromY: 0, toY: depth }];
    return { shape, variants: fitting(wish, shape, poses, bands).map((v) => ({ ...v, fixedX: 0 })) };
  }
  const room = twoFolds ? depth / 2 : depth;
  const variants = ways.flatMap((endForEnd) => {
    const posed = store.posed(shape, halfPose(endForEnd, false));
    const across = posed.box.maxY - posed.box.minY;
    if (across > room + EXACT || tooLong(posed, cloth)) return [];
    const first: LayVariant = { posed, fromY: 0, toY: 0 };
    if (!twoFolds) return [first];
    const other = store.posed(shape, halfPose(endForEnd, true));
    return [first, { posed: other, fromY: depth - across, toY: depth - across }];
  });
  return { shape, variants };
}

/** What is as wide as the cloth but for rounding fits, mm. */
const EXACT = 1e-6;

function fitting(
  { cloth, store }: Wish,
  shape: PieceShape,
  poses: readonly Pose[],
  bands: readonly { readonly fromY: number; readonly toY: number }[],
): readonly LayVariant[] {
  return poses.flatMap((pose) => {
    const posed = store.posed(shape, pose);
    const across = posed.box.maxY - posed.box.minY;
    if (tooLong(posed, cloth)) return [];
    return bands.flatMap(({ fromY, toY }): readonly LayVariant[] =>
      across > toY - fromY + EXACT ? [] : [{ posed, fromY, toY: Math.max(fromY, toY - across) }],
    );
  });
}

const tooLong = ({ box }: PosedShape, { longest, folding }: LayCloth): boolean =>
  longest !== undefined && box.maxX - box.minX > (folding === 'crosswise' ? longest / 2 : longest) + EXACT;

function draft(
  { index, turns }: Wish,
  copies: readonly number[],
  layer: LayLayer,
  shape: PieceShape,
  variants: readonly LayVariant[],
  stretch: Draft['stretch'],
): Draft {
  return { stretch, piece: index, copies, layer, shape, variants, first: turns[0] ?? 0 };
}

const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, i) => from + i);
