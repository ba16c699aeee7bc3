import { between, type Point, pathLength, pathMirrorX, pathStart } from '../geometry/index.ts';
import { findEdge, type Garment, type HangingTrim, type TrimPlace } from '../piece/index.ts';
import type { SketchSide } from './sketch.ts';
import { sketchBelt, sketchSashBand } from './sketch-band.ts';
import { bodiceOf } from './sketch-bodice.ts';
import { BOW, bowAt } from './sketch-bow.ts';
import { bothOn, type LaidOn, NOTHING_ON } from './sketch-cover.ts';
import { skirtLayers, waistOf } from './sketch-skirt-shape.ts';
import { armEnd } from './sketch-sleeve.ts';
import { sketchButtonsForShow, sketchRosettes, sketchStraps } from './sketch-small-trims.ts';

/** What the knot of a tied bow takes of its strip, mm: 2 to 3 in (worked out; common practice). */
const KNOT_TAKES = 60;
/** A cord makes a smaller bow than a sash, mm. */
const CORD_BOW = 34;

const SEEN_FROM: Readonly<Record<TrimPlace, SketchSide | 'both'>> = {
  neck: 'front',
  chest: 'front',
  'waist-front': 'front',
  skirt: 'front',
  shoulder: 'both',
  sleeve: 'both',
  nape: 'back',
  back: 'back',
  'waist-back': 'back',
};

/** Trims where they sit on the dress, each over those before it. */
export function sketchTrims(garment: Garment, side: SketchSide): readonly LaidOn[] {
  return [
    sketchStraps(garment, side),
    sketchBelt(garment, side),
    sketchButtonsForShow(garment, side),
    sketchRosettes(garment, side),
    ...garment.trims.flatMap((trim): readonly LaidOn[] => {
      if (!('tail' in trim)) return [];
      const band = trim.kind === 'sash' ? [sketchSashBand(garment, side, trim)] : [];
      const seen = SEEN_FROM[trim.place];
      return seen === side || seen === 'both' ? [...band, bow(garment, side, trim)] : band;
    }),
  ];
}

/** One bow, or one on each arm where two are cut. One alone sits on the left of the wearer. */
function bow(garment: Garment, side: SketchSide, trim: HangingTrim): LaidOn {
  const place = placeOf(garment, side, trim.place);
  if (place === null) return NOTHING_ON;
  const right = bowAt(place, halfSpan(garment, trim), trim.tail);
  if (place.x === 0) return right;
  const left: LaidOn = {
    lines: right.lines.map((line) => ({ ...line, path: pathMirrorX(line.path) })),
    covers: right.covers.map(pathMirrorX),
  };
  const copies = garment.pieces.find((piece) => piece.id === trim.pieces[0])?.cutting.copies ?? 1;
  if (trim.place !== 'skirt' && copies > 1) return bothOn(right, left);
  return side === 'front' ? right : left;
}

/** Half of what a bow spans, from the strip that it is made of: loops lie double. */
function halfSpan(garment: Garment, trim: HangingTrim): number {
  if (trim.kind === 'lacing') return CORD_BOW;
  const strip = garment.pieces.find((piece) => piece.id === trim.pieces[0]);
  const made = trim.kind === 'sewn-bow' || (trim.kind === 'tied-bow' && trim.pieces.length === 1);
  const upper = strip === undefined ? undefined : findEdge(strip, 'upper');
  if (upper === undefined || !made) return BOW.half;
  const length = pathLength(upper.path);
  const loops = trim.kind === 'tied-bow' ? length - 2 * trim.tail - KNOT_TAKES : length;
  return Math.max(loops / 4, BOW.knot * 2);
}

function placeOf(garment: Garment, side: SketchSide, place: TrimPlace): Point | null {
  const waist = waistOf(garment, side)?.(0) ?? null;
  const [neckline] = bodiceOf(garment, side).flatMap((piece) => findEdge(piece, 'neckline') ?? []);
  const top = neckline === undefined ? 0 : pathStart(neckline.path).y;
  switch (place) {
    case 'neck':
    case 'nape':
      return { x: 0, y: top };
    case 'chest':
      return waist === null ? null : { x: 0, y: (top + waist.y) / 2 };
    case 'waist-front':
    case 'waist-back':
    case 'back':
      return waist === null ? null : { x: 0, y: waist.y - BOW.knot };
    case 'shoulder': {
      const [shoulder] = bodiceOf(garment, side).flatMap((piece) => findEdge(piece, 'shoulder') ?? []);
      if (shoulder === undefined) return null;
      const { from, to } = shoulder.path.segments[0];
      return between(from, to, 0.5);
    }
    case 'sleeve':
      return armEnd(garment, side);
    case 'skirt': {
      const [layer] = skirtLayers(garment, side);
      return layer === undefined ? null : between(layer.top(0.5), layer.foot(0.5), 0.5);
    }
  }
}
