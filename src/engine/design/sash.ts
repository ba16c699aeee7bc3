import type { Half } from '../block/index.ts';
import { edgeLength, type Garment, type Notch, type Piece, withPiece } from '../piece/index.ts';
import { bodicePieces, HALVES } from './bodice.ts';
import { ENDS, longStrip } from './long-strip.ts';
import { cannot, choiceParam, defineStep, done, lengthParam, type StepContext } from './step.ts';
import { tellStrip } from './strip.ts';
import { finishedWaist, sashMayHang } from './trim-params.ts';
import { JOIN_ROOM } from './waist-ring.ts';

/** Shares of what may hang that loop (laid double), knot and tail take; a slanted end takes its width as well. */
const SHARES = { loop: 0.22, knot: 0.12, tail: 0.42 } as const;

/** 6 cm, 4.5 for small children; half of a side seam that a low underarm has left short. */
function usualWidth({ body, garment }: StepContext): number {
  const usual = (body.ageMonths ?? 72) < 36 ? 45 : 60;
  const side = sideAboveWaist(garment, 'front')?.length ?? usual * 2;
  return Math.max(LEAST_WIDTH, Math.min(usual, side / 2));
}

const LEAST_WIDTH = 15;

/** Side seam that must be left above the sash, mm. */
const ABOVE_SASH = 10;

/** A doubled sash, sewn into the side seams or laid all round, tied in a bow behind or in front. */
export const sash = defineStep({
  id: 'sash',
  stage: 'trim',
  kind: 'sash',
  params: {
    sewn: choiceParam(
      ['side-seams', 'all-round'],
      'side-seams',
      'on a zipped dress stitch it in the side seams and tie it over the zip (maker’s page of 16 June 2014)',
    ),
    tied: choiceParam(
      ['back', 'front'],
      'back',
      'long sashes tied in front are advised against (Irish consumer office)',
    ),
    ends: choiceParam(
      ENDS,
      'slanted',
      'wide satin sash ends are cut at 45 degrees (worked out: they add the finished width)',
    ),
    sashWidth: lengthParam(
      usualWidth,
      () => [LEAST_WIDTH, 150],
      'sashes of 30 mm or wider are asked for by a retail rule; 4.5-6 cm is common practice, no source',
    ),
    sashLoop: lengthParam(
      (c) => sashMayHang(c) * SHARES.loop,
      () => [20, 300],
      'so that the sash, undone, hangs no further than 36 cm and not below the hem (summaries of EN 14682, 2007 edition)',
    ),
    sashKnot: lengthParam(
      (c) => sashMayHang(c) * SHARES.knot,
      () => [10, 150],
      'what the knot takes, as the loop',
    ),
    sashTail: lengthParam(
      (c) => Math.max(0, sashMayHang(c) * SHARES.tail - usualWidth(c)),
      () => [0, 900],
      'as the loop',
    ),
  },
  words: {
    title: 'Sash',
    about: 'A sash of doubled cloth, tied in a bow.',
    sewn: 'Sewn',
    'sewn.side-seams': 'Into the side seams, in two halves',
    'sewn.all-round': 'Not sewn in, one sash all round',
    tied: 'Tied',
    'tied.back': 'Behind',
    'tied.front': 'In front',
    ends: 'Ends',
    'ends.straight': 'Straight',
    'ends.slanted': 'Slanted at 45 degrees',
    sashWidth: 'Finished width',
    sashLoop: 'Length of a loop of the bow',
    sashKnot: 'For the knot',
    sashTail: 'Length of a tail',
    'no-waist': 'The bodice has no waist for a sash.',
    'too-wide':
      'A sash {width} wide cannot be sewn into a side seam of {side}. Make it narrower, or lay it all round.',
    'piece.end': 'Sash',
    'piece.middle': 'Sash, middle length',
    draw: 'Sash',
    'draw.length':
      'Length of each strip: {body} round the body, and {hang} for each end that hangs (twice the loop of {loop}, the knot {knot} and the tail {tail}): {length}.',
    'draw.slant': 'Slant the ends at 45 degrees, the point on the fold; this adds {width} to the fold.',
    'draw.joins': 'The cloth is too narrow: {lengths} lengths make up one strip.',
    'draw.side':
      'Baste the halves to the side seams between the waist and the notch, before the side seams are sewn.',
    'draw.caution':
      'No knots or beads on the ends. A sash can catch: keep it short and follow the rules where you sell.',
  },
  apply: ({ garment, bench, clothWidth }, values) => {
    const waist = finishedWaist(garment);
    if (waist === null) return cannot('sash.no-waist');
    const [width, loop, knot, tail] = [
      values.sashWidth,
      values.sashLoop,
      values.sashKnot,
      values.sashTail,
    ].map(bench.rounded) as [number, number, number, number];
    const hang = 2 * loop + knot + tail;
    const inSides = values.sewn === 'side-seams';
    const sewnIn = inSides ? notchSides(garment, width) : { ok: true as const, garment };
    if (!sewnIn.ok) {
      return cannot('sash.too-wide', { width: { mm: width }, side: { mm: sewnIn.side } });
    }
    const body = inSides ? waist[values.tied] : 2 * (waist.front + waist.back);
    const length = body + (inSides ? hang : 2 * hang);
    const strip = longStrip({
      id: 'sash',
      middleId: 'sash-middle',
      title: { key: 'sash.piece.end', values: {} },
      middleTitle: { key: 'sash.piece.middle', values: {} },
      length,
      width,
      ends: values.ends,
      strips: inSides ? 'two' : 'one',
      most: clothWidth.trim - JOIN_ROOM,
    });
    bench.part({ key: 'sash.draw', values: {} });
    const parts = { loop: { mm: loop }, knot: { mm: knot }, tail: { mm: tail }, hang: { mm: hang } };
    bench.tell('sash.draw.length', { ...parts, body: { mm: body }, length: { mm: length } });
    if (strip.lengths > 1) bench.tell('sash.draw.joins', { lengths: strip.lengths });
    for (const piece of strip.pieces) tellStrip(bench, piece, width);
    if (values.ends === 'slanted') bench.tell('sash.draw.slant', { width: { mm: width } });
    if (inSides) bench.tell('sash.draw.side', {});
    bench.tell('sash.draw.caution', {});
    return done({
      ...sewnIn.garment,
      pieces: [...sewnIn.garment.pieces, ...strip.pieces],
      seams: [...sewnIn.garment.seams, ...strip.seams],
      trims: [
        ...garment.trims,
        {
          kind: 'sash',
          place: values.tied === 'back' ? 'waist-back' : 'waist-front',
          tail: hang + (values.ends === 'slanted' ? width : 0),
          pieces: strip.pieces.map(({ id }) => id),
        },
      ],
    });
  },
});

type Notched =
  | { readonly ok: true; readonly garment: Garment }
  | { readonly ok: false; readonly side: number };

/** Notches on the side seams of front and back, as far above the waist as the sash is wide. */
function notchSides(garment: Garment, width: number): Notched {
  let dress = garment;
  for (const half of HALVES) {
    const found = sideAboveWaist(garment, half);
    if (found === undefined || found.length < width + ABOVE_SASH)
      return { ok: false, side: found?.length ?? 0 };
    const notch: Notch = {
      edge: found.side,
      at: found.length - width,
      style: half === 'front' ? 'single' : 'double',
      match: 'sash',
    };
    dress = withPiece(dress, { ...found.piece, notches: [...found.piece.notches, notch] });
  }
  return { ok: true, garment: dress };
}

/** The side edge that ends at the waist. */
function sideAboveWaist(
  garment: Garment,
  half: Half,
): { readonly piece: Piece; readonly side: string; readonly length: number } | undefined {
  return bodicePieces(garment, half).flatMap((piece) => {
    const waist = piece.edges.findIndex((edge) => edge.kind === 'waist');
    const side = waist < 0 ? undefined : piece.edges.at(waist - 1);
    return side?.kind === 'side' ? [{ piece, side: side.name, length: edgeLength(piece, side.name) }] : [];
  })[0];
}
