import { linePath, type Path, type Point, pathAt, pathLength } from '../geometry/index.ts';
import { edgeOf, type Garment, type Marking, type Piece, type PieceId } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { belowWaist, centreBackLength, centreBackPieces, openBack } from './back-opening.ts';
import { withPlacket } from './back-placket.ts';
import { buttonMark } from './button-mark.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, flagParam, lengthParam } from './step.ts';

/** A horizontal buttonhole begins this far beyond the centre line (published buttonhole lesson). */
const BEYOND_CENTRE = inches(1 / 8);
/** The first button lies its diameter and this below the neck edge (teaching page on button stands). */
const BELOW_NECK = 6;
/** The last one keeps its edge this far above the waist seam (common practice, no source). */
const ABOVE_WAIST = 6;
const HOLE_ALLOWANCE = 3;

/** Buttons down the centre back on a stand that runs past the centre line; the right back laps over the left. */
export const backButtons = defineStep({
  id: 'back-buttons',
  stage: 'closing',
  kind: 'closing',
  params: {
    diameter: lengthParam(
      () => 12,
      () => [4, 30],
      'buttons of children’s dresses are about 1 to 1.5 cm across (common practice, no source)',
    ),
    thickness: lengthParam(
      () => 3,
      () => [1, 10],
      'measure the button; flat ones are about 3 mm thick (common practice, no source)',
    ),
    stand: choiceParam(
      ['diameter', 'half-and-quarter'],
      'diameter',
      'the stand past the centre line equals the button (two teaching pages), or half of it and 1/4 in (common practice)',
    ),
    hole: choiceParam(
      ['thickness', 'three-mm'],
      'thickness',
      'flat button: diameter and thickness, or diameter and 1/8 in (3 mm) (teaching pages on buttonholes)',
    ),
    buttonSpacing: lengthParam(
      () => 50,
      () => [20, 120],
      'about 5 cm apart, spaced evenly (common practice, no source)',
    ),
    belowWaist,
    placket: flagParam(true, COMMON_PRACTICE),
  },
  words: {
    title: 'Back buttons',
    about: 'Buttons and buttonholes down the centre back; the right back laps over the left.',
    diameter: 'Button, across',
    thickness: 'Button, thickness',
    stand: 'Stand past the centre line',
    'stand.diameter': 'As wide as the button',
    'stand.half-and-quarter': 'Half the button and 1/4 in (6 mm)',
    hole: 'Buttonhole',
    'hole.thickness': 'Diameter and thickness',
    'hole.three-mm': 'Diameter and 1/8 in (3 mm)',
    buttonSpacing: 'Buttons apart, about',
    belowWaist: 'Opening below the waist',
    placket: 'Strip to bind the slit in the skirt',
    'too-short':
      'A back of {length} has no room for two buttons of {diameter}. Take smaller buttons or a zip.',
    draw: 'Back buttons',
    'draw.stand':
      'Draw the closing edge {stand} past the centre line, straight on from neck and waist. Both halves get it; line it or face it.',
    'draw.buttons':
      'Mark {count} buttons on the centre line: the first {first} below the neck edge, then every {gap}.',
    'draw.skirt':
      'The skirt is sewn to the whole edge with its stand. Below the slit of {slit} its back edges are seamed; at the foot of the slit the right lies over the left in a small pleat.',
    'draw.holes':
      'On the right back draw a buttonhole {hole} long at each mark, square to the centre line, from {beyond} beyond it inwards. On the left back sew the buttons.',
  },
  apply: ({ garment, bench }, values) => {
    const { diameter } = values;
    const stand = bench.rounded(values.stand === 'diameter' ? diameter : diameter / 2 + inches(1 / 4));
    const holeLength = diameter + (values.hole === 'thickness' ? values.thickness : HOLE_ALLOWANCE);
    const length = centreBackLength(garment);
    const first = bench.rounded(diameter + BELOW_NECK);
    const run = length - first - (diameter / 2 + ABOVE_WAIST);
    if (run < diameter + ABOVE_WAIST)
      return cannot('back-buttons.too-short', { length: { mm: length }, diameter: { mm: diameter } });
    const count = Math.max(2, Math.round(run / values.buttonSpacing) + 1);
    const gap = run / (count - 1);
    const below = bench.rounded(values.belowWaist);
    const places = Array.from({ length: count }, (_, i) => first + i * gap);
    const marks = buttonMarks(centreBackPieces(garment), places, diameter, holeLength);
    const open = openBack(garment, stand);
    const dress: Garment = {
      ...open,
      pieces: open.pieces.map((piece) => ({
        ...piece,
        markings: [...piece.markings, ...(marks.get(piece.id) ?? [])],
      })),
      closing: { kind: 'buttons', openingLength: length + below, count, diameter, holeLength, stand },
      trims: [...garment.trims, { kind: 'buttons', place: 'back', diameter, pieces: [...marks.keys()] }],
    };
    const back = centreBackPieces(dress);
    bench.part(
      { key: 'back-buttons.draw', values: {} },
      back.flatMap((piece) => piece.edges.filter((e) => e.kind !== 'closing').map((e) => e.path)),
    );
    const edges = back.map((piece) => edgeOf(piece, 'centre').path);
    bench.tell('back-buttons.draw.stand', { stand: { mm: stand } }, { lines: edges });
    const drawn = (kind: Marking['kind']): readonly Path[] =>
      [...marks.values()].flat().flatMap((mark) => (mark.kind === kind ? [mark.path] : []));
    bench.tell(
      'back-buttons.draw.buttons',
      { count, first: { mm: first }, gap: { mm: gap } },
      { lines: drawn('button') },
    );
    bench.tell(
      'back-buttons.draw.holes',
      { hole: { mm: holeLength }, beyond: { mm: BEYOND_CENTRE } },
      { lines: drawn('buttonhole') },
    );
    if (below > 0) bench.tell('back-buttons.draw.skirt', { slit: { mm: below } });
    return done(values.placket ? withPlacket(dress, bench, below) : dress);
  },
});

/** Buttons and holes at distances down the centre back from the neck, on the pieces that carry them. */
function buttonMarks(
  back: readonly Piece[],
  places: readonly number[],
  diameter: number,
  holeLength: number,
): ReadonlyMap<PieceId, readonly Marking[]> {
  const marks = new Map<PieceId, readonly Marking[]>();
  let above = 0;
  for (const piece of back) {
    const centre = edgeOf(piece, 'centre').path;
    const length = pathLength(centre);
    const here = places.filter((at) => at >= above && at < above + length);
    // The edge is walked upwards.
    const on = here.map((at) => pathAt(centre, length - (at - above)).point);
    if (on.length > 0)
      marks.set(
        piece.id,
        on.flatMap((at) => buttonAt(at, diameter, holeLength)),
      );
    above += length;
  }
  return marks;
}

const buttonAt = (at: Point, diameter: number, holeLength: number): readonly Marking[] => [
  buttonMark(at, diameter),
  {
    kind: 'buttonhole',
    path: linePath({ x: at.x - BEYOND_CENTRE, y: at.y }, { x: at.x - BEYOND_CENTRE + holeLength, y: at.y }),
  },
];
