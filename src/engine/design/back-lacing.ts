import { linePath, pathAt, pathLength } from '../geometry/index.ts';
import { edgeOf, type Garment, type Marking, type Piece, type PieceId, type Seam } from '../piece/index.ts';
import { belowWaist, centreBackLength, centreBackPieces, openBack } from './back-opening.ts';
import { withPlacket } from './back-placket.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, flagParam, lengthParam } from './step.ts';
import { stripPiece } from './strip.ts';

/** The first and the last loop keep away from neck and waist by this, mm (common practice, no source). */
const FROM_ENDS = 10;
/** The panel stays under each edge by so much when the lacing is open, mm (common practice, no source). */
const PANEL_UNDER = 20;
/** Finished width of the strip that the loops are cut from, and what one loop takes of it, mm (common practice). */
const LOOP_WIDTH = 5;
const LOOP_TAKES = 40;

/** The centre back is laced through loops over a panel, crosswise, and tied at the waist. */
export const backLacing = defineStep({
  id: 'back-lacing',
  stage: 'closing',
  kind: 'closing',
  params: {
    loopSpacing: lengthParam(
      () => 25,
      () => [12, 60],
      'about 2.5 cm apart, spaced evenly (common practice, no source)',
    ),
    panelWidth: lengthParam(
      () => 100,
      () => [60, 200],
      'covers the gap and 2 cm under each edge (common practice, no source)',
    ),
    tieEnd: lengthParam(
      () => 140,
      () => [80, 400],
      'free ends at chest and waist 14 cm at most, by summaries of the 2007 edition of EN 14682',
    ),
    belowWaist,
    placket: flagParam(true, COMMON_PRACTICE),
  },
  words: {
    title: 'Back lacing',
    about: 'A cord laced crosswise through loops down the centre back, with a panel underneath.',
    loopSpacing: 'Loops apart, about',
    panelWidth: 'Width of the panel underneath',
    tieEnd: 'Cord left at each end for the bow, laced open',
    belowWaist: 'Opening below the waist',
    placket: 'Strip to bind the slit in the skirt',
    'too-short': 'A back of {length} has no room for two loops on each side. Take buttons or ties.',
    'piece.panel': 'Lacing panel',
    'piece.loops': 'Strip for the loops',
    draw: 'Back lacing',
    'draw.loops':
      'On the centre back edge mark {count} loops: the first {first} below the neck edge, then every {gap}. Both halves get them.',
    'draw.strip':
      'For all {all} loops rule a strip {length} long and {width} wide, cut on the straight or the bias, fold it lengthwise and cut it up.',
    'draw.panel':
      'Rule the panel {length} long and {width} wide; cut it double. Sew one long edge to the left back.',
    'draw.cord':
      'Buy {cord} of cord. It is laced from the neck down and tied at the waist; no knots or beads on its ends. Cords at a child’s back catch: tie it short, tuck the ends in, and follow the rules where you sell.',
  },
  apply: ({ garment, bench }, values) => {
    const length = centreBackLength(garment);
    const run = length - 2 * FROM_ENDS;
    if (run < values.loopSpacing / 2) return cannot('back-lacing.too-short', { length: { mm: length } });
    const loops = Math.max(2, Math.round(run / values.loopSpacing) + 1);
    const gap = run / (loops - 1);
    const panelWidth = bench.rounded(values.panelWidth);
    const below = bench.rounded(values.belowWaist);
    const cord = cordFor(loops, gap, panelWidth - 2 * PANEL_UNDER, values.tieEnd);
    const panel = panelPiece(length, panelWidth);
    const strip = loopStrip(2 * loops * LOOP_TAKES);
    const marks = loopMarks(centreBackPieces(garment), loops, gap);
    const open = openBack(garment);
    const dress: Garment = {
      ...open,
      pieces: [
        ...open.pieces.map((piece) => ({
          ...piece,
          markings: [...piece.markings, ...(marks.get(piece.id) ?? [])],
        })),
        panel,
        strip,
      ],
      seams: [...open.seams, panelSeam(centreBackPieces(open), panel.id)],
      closing: { kind: 'lacing', openingLength: length + below, loops, cordLength: cord.length },
      trims: [
        ...garment.trims,
        { kind: 'lacing', place: 'back', tail: cord.freeEnd, pieces: [...marks.keys()] },
      ],
    };
    const linesOf = (piece: Piece) => ({ lines: piece.edges.map((edge) => edge.path) });
    bench.part(
      { key: 'back-lacing.draw', values: {} },
      centreBackPieces(open).flatMap((piece) => piece.edges.map((edge) => edge.path)),
    );
    bench.tell(
      'back-lacing.draw.loops',
      { count: loops, first: { mm: FROM_ENDS }, gap: { mm: gap } },
      { lines: [...marks.values()].flat().map((mark) => mark.path) },
    );
    bench.tell('back-lacing.draw.cord', { cord: { mm: cord.length } });
    bench.part(strip.title);
    bench.tell(
      'back-lacing.draw.strip',
      { all: 2 * loops, length: { mm: 2 * loops * LOOP_TAKES }, width: { mm: 2 * LOOP_WIDTH } },
      linesOf(strip),
    );
    bench.part(panel.title);
    bench.tell(
      'back-lacing.draw.panel',
      { length: { mm: length }, width: { mm: panelWidth } },
      linesOf(panel),
    );
    return done(values.placket ? withPlacket(dress, bench, below) : dress);
  },
});

/**
 * Cord for a crosswise lacing that parts by `width`: once straight across at the top, two slanting ways from each
 * pair of loops to the next, and both ends. Pulled together, what the ways no longer need hangs at the ends.
 */
function cordFor(loops: number, gap: number, width: number, tieEnd: number) {
  const open = width + 2 * (loops - 1) * Math.hypot(width, gap);
  const closed = 2 * (loops - 1) * gap;
  return { length: open + 2 * tieEnd, freeEnd: tieEnd + (open - closed) / 2 };
}

/** Half-length of the tick that marks a loop, mm. */
const TICK = 6;

function loopMarks(
  back: readonly Piece[],
  loops: number,
  gap: number,
): ReadonlyMap<PieceId, readonly Marking[]> {
  const marks = new Map<PieceId, readonly Marking[]>();
  let above = 0;
  for (const piece of back) {
    const centre = edgeOf(piece, 'centre').path;
    const length = pathLength(centre);
    const on = Array.from({ length: loops }, (_, i) => FROM_ENDS + i * gap)
      .filter((at) => at >= above && at < above + length)
      .map((at) => pathAt(centre, length - (at - above)).point);
    if (on.length > 0)
      marks.set(
        piece.id,
        on.map((at) => ({ kind: 'loop', path: linePath(at, { x: at.x + TICK, y: at.y }) })),
      );
    above += length;
  }
  return marks;
}

const panelPiece = (length: number, width: number): Piece =>
  stripPiece({
    id: 'lacing-panel',
    title: { key: 'back-lacing.piece.panel', values: {} },
    length,
    width,
    upper: 'attach',
    lower: 'free',
    left: 'free',
    right: 'attach',
    cutting: { as: 'pair', copies: 2 },
    grain: 'along',
    cloth: 'main',
  });

const loopStrip = (length: number): Piece =>
  stripPiece({
    id: 'lacing-loops',
    title: { key: 'back-lacing.piece.loops', values: {} },
    length,
    width: LOOP_WIDTH,
    upper: 'fold',
    lower: 'free',
    left: 'attach',
    right: 'attach',
    cutting: { as: 'fold', copies: 1 },
    grain: 'along',
    cloth: 'main',
  });

const panelSeam = (back: readonly Piece[], panel: PieceId): Seam => ({
  id: 'lacing-panel',
  name: 'placket',
  a: back.map((piece) => ({ piece: piece.id, edge: 'centre', times: 1, reversed: true })),
  b: [{ piece: panel, edge: 'upper', times: 1 }],
  join: { kind: 'flat' },
  smoothStart: false,
  smoothEnd: false,
});
