import {
  curveBetween,
  linePath,
  type Path,
  type Point,
  pathJoin,
  pathLength,
  pathStart,
  unit,
} from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, type Garment, type Piece, replaceEdge } from '../piece/index.ts';
import { centreBackPieces } from './back-opening.ts';
import { biasStrip, bindingSeams, tellBiasStrip } from './bias-strip.ts';
import { neckLength } from './neck-ring.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam, type StepContext } from './step.ts';
import { stripPiece } from './strip.ts';

/** What is added to the least slit: for 11.5 cm, 13 to 15 cm are used (exam solution page on plackets), mm. */
const HEAD_EASE = 15;
/** A shorter one would look like a hole, mm (common practice, no source). */
const LEAST_LENGTH = 60;
/** Centre back that must be left below it, mm, so that the back holds together. */
const LEFT_BELOW = 25;
/** Finished width of the strip that binds the opening, and flat width of the loop's strip, mm. */
const BOUND = 8;
const LOOP_WIDTH = 10;
/** A loop is the button twice and this, so that it slips over the edge, mm (common practice, no source). */
const LOOP_ROOM = 6;

const room = (garment: Garment): number => {
  const [top] = centreBackPieces(garment);
  return top === undefined ? 0 : edgeLength(top, 'centre') - LEFT_BELOW;
};

const leastSlit = ({ garment, body }: StepContext): number =>
  Math.max(LEAST_LENGTH, (body.values.headGirth.mm - 2 * neckLength(garment)) / 2 + HEAD_EASE);

/** A drop-shaped opening below the neck at the centre back, held at the neck by one button and a loop. */
export const keyholeBack = defineStep({
  id: 'keyhole-back',
  stage: 'closing',
  kind: 'closing',
  params: {
    keyholeLength: lengthParam(
      leastSlit,
      ({ garment }) => [40, room(garment)],
      'slit at least (head - neckline) / 2: head 51, neckline 28, 11.5 cm; 13-15 used (exam solution page on plackets)',
    ),
    keyholeWidth: lengthParam(
      () => 25,
      () => [8, 60],
      COMMON_PRACTICE,
    ),
    diameter: lengthParam(
      () => 12,
      () => [6, 25],
      'a button of about 1 to 1.5 cm (common practice, no source)',
    ),
  },
  words: {
    title: 'Keyhole back',
    about:
      'An opening below the neck at the centre back, closed by a button and a loop, no ties. Sew the button on so that it cannot come off; it is a small part.',
    keyholeLength: 'Length',
    keyholeWidth: 'Width at its widest',
    diameter: 'Button, across',
    'no-room':
      'An opening {length} long does not fit: the back, or its yoke, has room for {most}. Widen the neckline, leave out the back yoke, or take a zip.',
    'piece.binding': 'Keyhole binding',
    'piece.loop': 'Keyhole loop',
    draw: 'Keyhole back',
    'draw.drop':
      'Mark {length} down the centre back from the neck. Draw half a drop from there: square to the centre, {half} wide at its widest, and up to the neck at the centre.',
    'draw.whole': 'Cut the back on the fold; bind the opening through all layers.',
    'draw.loop':
      'Rule a strip {length} long and {width} wide on the bias, fold it lengthwise to the middle and again, stitch. Sew it into the binding at the neck; sew the button opposite.',
  },
  apply: (work, values) => {
    const { garment, bench } = work;
    const [top] = centreBackPieces(garment);
    const length = bench.rounded(values.keyholeLength);
    if (top === undefined || length > room(garment) + 0.5)
      return cannot('keyhole-back.no-room', { length: { mm: length }, most: { mm: room(garment) } });
    const half = bench.rounded(values.keyholeWidth) / 2;
    const neck = edgeEnd(top, 'centre');
    const drop = dropPath({ x: neck.x, y: neck.y + length }, neck, half);
    bench.part(
      { key: 'keyhole-back.draw', values: {} },
      top.edges.map((edge) => edge.path),
    );
    bench.tell('keyhole-back.draw.drop', { length: { mm: length }, half: { mm: half } }, { lines: [drop] });
    bench.tell('keyhole-back.draw.whole', {});

    const { back } = garment.whole;
    const open: Garment = {
      ...garment,
      pieces: garment.pieces.map((piece) => (piece === top ? cutOut(piece, drop) : piece)),
      whole: back === undefined ? garment.whole : { ...garment.whole, back: cutOut(back, drop) },
      closing: { kind: 'keyhole', openingLength: length, diameter: values.diameter },
      trims: [
        ...garment.trims,
        { kind: 'buttons', place: 'nape', diameter: values.diameter, pieces: [top.id] },
      ],
    };
    const wish = {
      id: 'keyhole-binding',
      title: { key: 'keyhole-back.piece.binding', values: {} },
      length: 2 * pathLength(drop),
      finished: BOUND,
      copies: 1,
    };
    const binding = biasStrip(wish);
    tellBiasStrip(bench, binding, wish, 'inside');
    const loop = loopOf(2 * values.diameter + LOOP_ROOM);
    bench.part({ key: 'keyhole-back.piece.loop', values: {} });
    bench.tell(
      'keyhole-back.draw.loop',
      { length: { mm: 2 * values.diameter + LOOP_ROOM }, width: { mm: LOOP_WIDTH } },
      { lines: loop.edges.map((edge) => edge.path) },
    );
    const edge = { piece: top.id, edge: 'keyhole', times: 1 };
    return done({
      ...open,
      pieces: [...open.pieces, binding, loop],
      seams: [...open.seams, ...bindingSeams(binding, [{ ...edge, reversed: true }, edge], false)],
    });
  },
});

/** At the neck the drop slants inward by this many half widths over its upper part's height (our own shape). */
const NARROWS = 1.7;

/** Half a drop: out from the centre, round its widest place, and in a long line up to the neck. */
function dropPath(foot: Point, neck: Point, half: number): Path {
  const length = foot.y - neck.y;
  const widest = { x: foot.x + half, y: foot.y - Math.min(half * 1.2, length * 0.4) };
  const up = { x: 0, y: -1 };
  const arriving = unit({ x: -NARROWS * half, y: neck.y - widest.y });
  return pathJoin(curveBetween(foot, { x: 1, y: 0 }, widest, up), curveBetween(widest, up, neck, arriving));
}

function cutOut(piece: Piece, drop: Path): Piece {
  const centre = edgeOf(piece, 'centre');
  const shorter = { ...centre, path: linePath(pathStart(centre.path), pathStart(drop)) };
  return replaceEdge(piece, 'centre', [shorter, { name: 'keyhole', kind: 'free', path: drop }]);
}

/** The loop's strip stands without a seam: its two ends are caught in the binding. */
const loopOf = (length: number): Piece =>
  stripPiece({
    id: 'keyhole-loop',
    title: { key: 'keyhole-back.piece.loop', values: {} },
    length,
    width: LOOP_WIDTH,
    upper: 'free',
    lower: 'free',
    left: 'attach',
    right: 'attach',
    cutting: { as: 'single', copies: 1 },
    grain: 'across',
    cloth: 'main',
  });
