import {
  between,
  linePath,
  type Path,
  type Point,
  pathLength,
  pathMirrorX,
  pathReverse,
} from '../geometry/index.ts';
import type { Garment, PieceId } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';
import { bothOn, hiddenUnder, type LaidOn } from './sketch-cover.ts';
import { closedShape, through } from './sketch-path.ts';
import { skirtCuts } from './sketch-skirt-cuts.ts';
import { skirtSeams } from './sketch-skirt-seams.ts';
import { type SkirtLayer, skirtLayers, tucksOf, waistOf } from './sketch-skirt-shape.ts';
import { ruffleOn } from './sketch-strip.ts';

/** Every layer of the skirt of one side, from the waist down, tier after tier; `cuts` are the maker's own. */
export function sketchSkirt(
  garment: Garment,
  side: SketchSide,
  cuts: ReadonlyMap<PieceId, readonly Path[]>,
): readonly SketchLine[] {
  const layers = skirtLayers(garment, side);
  const lines = layers.flatMap((layer) => [
    ...(layer.piece.cloth === 'net' ? [netShape(layer)] : silhouette(layer)),
    ...folds(layer),
    ...tucks(layer),
    ...skirtSeams(garment, side, layer),
    ...skirtCuts(layer, cuts.get(layer.piece.id) ?? []),
  ]);
  return side === 'front'
    ? [...lines, ...hemBehind(garment, layers)]
    : [...lines, ...closingBelow(garment, layers)];
}

/** Ruffles along the hem and the waist of the skirt. */
export const sketchSkirtRuffles = (garment: Garment, side: SketchSide): LaidOn =>
  bothOn(
    ...skirtLayers(garment, side).flatMap((layer) => {
      const top = topOf(layer);
      return [
        ruffleOn(garment, layer.piece, 'hem', pathReverse(layer.hem), 'right'),
        ...(top === null ? [] : [ruffleOn(garment, layer.piece, 'waist', top, 'right')]),
      ];
    }),
  );

/** What of the back's opening runs on below the waist. */
function closingBelow(garment: Garment, layers: readonly SkirtLayer[]): readonly SketchLine[] {
  const onBodice = bodiceOf(garment, 'back')
    .flatMap((piece) => piece.edges.filter((edge) => edge.kind === 'closing'))
    .reduce((sum, edge) => sum + pathLength(edge.path), 0);
  const below = (garment.closing?.openingLength ?? 0) - onBodice;
  const from = waistOf(garment, 'back')?.(0);
  if (onBodice === 0 || below <= 0 || from === undefined || layers.length === 0) return [];
  return [{ stroke: 'opening', path: linePath(from, { x: 0, y: from.y + below }) }];
}

/** A hem that is longer behind than in front is seen below the front, from within. */
function hemBehind(garment: Garment, front: readonly SkirtLayer[]): readonly SketchLine[] {
  const back = skirtLayers(garment, 'back');
  return front.flatMap((layer, i) => {
    const behind = back[i];
    const isLast = !layer.carries && layer.piece.cloth !== 'net' && behind !== undefined;
    if (!isLast || behind.foot(0).y <= layer.foot(0).y + LONGER_FROM) return [];
    const seen = [...bothHalves('light', behind.hem), ...bothHalves('light', sideLine(behind))];
    return hiddenUnder(seen, [wholeShape(layer)]);
  });
}

/** A back that is longer by less than this is level with the front for the eye, mm. */
const LONGER_FROM = 5;

const sideLine = ({ top, foot }: SkirtLayer): Path => linePath(top(1), foot(1));

const topOf = ({ top }: SkirtLayer): Path | null =>
  through(Array.from({ length: TOP_PLACES + 1 }, (_, i) => top(i / TOP_PLACES)));
const TOP_PLACES = 8;

/** The whole layer as a closed shape: along the top from the centre, down the side, along the hem, and up again. */
function wholeShape(layer: SkirtLayer): Path {
  const half = [topOf(layer) ?? linePath(layer.top(0), layer.top(1)), sideLine(layer), layer.hem] as const;
  const other = half.map((path) => pathReverse(pathMirrorX(path))).toReversed();
  return closedShape(...half, ...other);
}

/** Net is a light layer over what it covers: a closed shape to be hatched. */
const netShape = (layer: SkirtLayer): SketchLine => ({ stroke: 'light', path: wholeShape(layer), net: true });

/** The foot of a tier that carries another is a seam within the skirt. */
const silhouette = (layer: SkirtLayer): readonly SketchLine[] => [
  ...bothHalves('outline', sideLine(layer)),
  ...bothHalves(layer.carries ? 'seam' : 'outline', layer.hem),
];

const along =
  ({ top, foot }: SkirtLayer) =>
  (share: number, depth: number): Point =>
    between(top(share), foot(share), depth);

/** Gathers as short strokes that run out from the seam, pleats as folds from the seam to the hem. */
function folds(layer: SkirtLayer): readonly SketchLine[] {
  const { join } = layer.seam;
  const at = along(layer);
  if (join.kind === 'pleated') {
    const count = Math.max(1, Math.round(join.pleats / 4));
    return Array.from({ length: count }, (_, i) => (i + 0.5) / count).flatMap((share) =>
      bothHalves('pleat', linePath(at(share, 0), at(share, 1))),
    );
  }
  if (join.kind === 'gathered') {
    const count = Math.max(3, Math.round(join.ratio * 4));
    return Array.from({ length: count }, (_, i) => i).flatMap((i) =>
      bothHalves(
        'gather',
        linePath(at((i + 0.5) / count, 0.01), at((i + 0.5) / count, i % 2 === 0 ? 0.28 : 0.16)),
      ),
    );
  }
  return flares(layer);
}

/** A skirt that is as wide at its hem falls in folds of its own, mm round the hem for each mm at the top. */
const FALLS_IN_FOLDS = 2;

/** Folds of a flared skirt, from the hem up; the wider it is, the more. */
function flares(layer: SkirtLayer): readonly SketchLine[] {
  if (layer.fullness < FALLS_IN_FOLDS) return [];
  const at = along(layer);
  const count = Math.min(6, Math.round(layer.fullness));
  return Array.from({ length: count }, (_, i) => (i + 0.5) / count).flatMap((share, i) =>
    bothHalves('pleat', linePath(at(share, i % 2 === 0 ? 0.45 : 0.6), at(share, 1))),
  );
}

/** A tuck is seen as its stitching and, below it, its fold. */
function tucks(layer: SkirtLayer): readonly SketchLine[] {
  const at = along(layer);
  const length = layer.foot(1).y - layer.top(1).y;
  const across = (above: number): Path | null =>
    through(Array.from({ length: TOP_PLACES + 1 }, (_, i) => at(i / TOP_PLACES, 1 - above / length)));
  return tucksOf(layer.piece).flatMap(({ depth, above }) => {
    const [sewn, fold] = [across(above), across(above - depth)];
    return [
      ...(sewn === null ? [] : bothHalves('pleat', sewn)),
      ...(fold === null ? [] : bothHalves('seam', fold)),
    ];
  });
}
