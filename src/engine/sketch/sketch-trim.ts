import {
  cubic,
  linePath,
  type Path,
  type Point,
  pathJoin,
  pathOf,
  pathTranslate,
} from '../geometry/index.ts';
import { edgeStart, findEdge, type Garment, type TrimPlace } from '../piece/index.ts';
import type { SketchLine, SketchSide } from './sketch.ts';
import { bodiceOf, bothHalves } from './sketch-bodice.ts';

/** A bow is drawn this large where it stands on the dress, mm: half its span, and the height of a loop. */
const BOW = { half: 62, height: 44, knot: 9 } as const;
/** Tails are drawn no longer than this, so that the sketch stays readable, mm. */
const LONGEST_TAIL = 260;

const SEEN_FROM: Readonly<Partial<Record<TrimPlace, SketchSide>>> = {
  neck: 'front',
  chest: 'front',
  'waist-front': 'front',
  nape: 'back',
  back: 'back',
  'waist-back': 'back',
};

/** Bows and sashes where they sit on the dress. */
export function sketchTrims(garment: Garment, side: SketchSide): readonly SketchLine[] {
  const waist = waistAt(garment, side);
  return garment.trims.flatMap((trim): readonly SketchLine[] => {
    if (!('tail' in trim) || trim.kind === 'lacing' || waist === null) return [];
    const band = trim.kind === 'sash' ? sashBand(waist) : [];
    if (SEEN_FROM[trim.place] !== side) return band;
    const at = placeOf(garment, side, trim.place, waist);
    return [...band, ...bow(at), ...tails(at, Math.min(trim.tail, LONGEST_TAIL))];
  });
}

function waistAt(garment: Garment, side: SketchSide): Point | null {
  const piece = bodiceOf(garment, side).find((p) => findEdge(p, 'waist') !== undefined);
  return piece === undefined ? null : edgeStart(piece, 'waist');
}

function placeOf(garment: Garment, side: SketchSide, place: TrimPlace, waist: Point): Point {
  const neck = bodiceOf(garment, side).find((p) => findEdge(p, 'neckline') !== undefined);
  const top = neck === undefined ? 0 : edgeStart(neck, 'neckline').y;
  if (place === 'neck' || place === 'nape') return { x: 0, y: top };
  return { x: 0, y: place === 'chest' ? (top + waist.y) / 2 : waist.y - BOW.knot };
}

/** A sash lies round the waist: a second line above the seam. */
const sashBand = (waist: Point): readonly SketchLine[] =>
  bothHalves('seam', linePath({ x: waist.x, y: waist.y - 26 }, { x: 0, y: waist.y - 26 }));

function bow(at: Point): readonly SketchLine[] {
  const { half, height, knot } = BOW;
  const loop: Path = pathJoin(
    pathOf(
      cubic(
        { x: knot, y: -knot / 2 },
        { x: half * 0.5, y: -height * 0.75 },
        { x: half, y: -height * 0.75 },
        { x: half, y: -height * 0.3 },
      ),
    ),
    pathOf(
      cubic(
        { x: half, y: -height * 0.3 },
        { x: half, y: height * 0.6 },
        { x: half * 0.5, y: height * 0.4 },
        { x: knot, y: knot / 2 },
      ),
    ),
  );
  const middle = linePath({ x: knot, y: -knot }, { x: knot, y: knot });
  return [
    ...bothHalves('outline', pathTranslate(loop, at)),
    ...bothHalves('outline', pathTranslate(middle, at)),
  ];
}

function tails(at: Point, length: number): readonly SketchLine[] {
  if (length < BOW.height) return [];
  const spread = length * 0.22;
  const tail = pathJoin(
    linePath({ x: BOW.knot * 0.4, y: BOW.knot }, { x: spread, y: length }),
    linePath({ x: spread, y: length }, { x: spread + 24, y: length - 14 }),
    linePath({ x: spread + 24, y: length - 14 }, { x: BOW.knot, y: BOW.knot }),
  );
  return bothHalves('outline', pathTranslate(tail, at));
}
