import { linePath, type Path, pathBounds, pathEnd, pathStart, pathTranslate } from '../geometry/index.ts';
import {
  edgeEnd,
  edgeOf,
  edgeStart,
  type Marking,
  outlineOf,
  type Piece,
  reshape,
  withPiece,
} from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { cannot, countParam, defineStep, done, lengthParam, type StepContext } from './step.ts';
import { straightDepth, straightHemmed } from './straight-hems.ts';

/** The fold of a further tuck hangs this far above the stitching of the one below: 1 in (the same maker's page). */
const BETWEEN = inches(1);
/** Least of flat skirt that is left above the tucks, mm (our own limit). */
const LEAST_ABOVE = 15;
const USUAL_DEPTH = inches(0.5);
const SOURCE =
  "1/2 in tucks above a 4 in hem, the second fold 1 in from the first stitching; a tuck takes twice its depth (a maker's page on growth tucks, 2 March 2014)";

/** The hem below the tucks: as deep as it already is, or 4 in, and no more than half of a short skirt. */
function hemBelow({ garment }: StepContext): number {
  const given = straightHemmed(garment).map((piece) => edgeOf(piece, 'hem').allowance);
  return given[0] ?? Math.min(inches(4), 0.5 * straightDepth(garment));
}

/** Finished skirt that hem and tucks take up, from the hem line to the topmost stitching, mm. */
const reach = (hem: number, depth: number, tucks: number): number =>
  hem + depth + (tucks - 1) * (BETWEEN + depth);

/** Tucks sewn into a straight skirt, to be let out as the child grows; the skirt is as long as without them. */
export const growthTuck = defineStep({
  id: 'growth-tuck',
  stage: 'finish',
  kind: 'growth-tuck',
  params: {
    tucks: countParam(
      (c) => (straightDepth(c.garment) - reach(hemBelow(c), USUAL_DEPTH, 2) >= LEAST_ABOVE ? 2 : 1),
      [1, 5],
      SOURCE,
    ),
    tuckDepth: lengthParam(
      () => USUAL_DEPTH,
      () => [5, 40],
      SOURCE,
    ),
    above: lengthParam(hemBelow, (c) => [0, Math.max(inches(5), straightDepth(c.garment))], SOURCE),
  },
  words: {
    title: 'Growth tucks',
    about: 'Tucks sewn round a straight skirt, to be let out as the child grows.',
    tucks: 'Number of tucks',
    tuckDepth: 'Depth of each tuck',
    above: 'The lowest fold hangs so far above the hem line',
    'no-straight-hem':
      'Tucks need a straight skirt: gathered or tiered. A flared, circle or pleated skirt can not be tucked round.',
    'no-room':
      'Hem and tucks take up {reach} of a skirt (or last tier) of {length}. Take fewer or shallower tucks, or a lower hem.',
    draw: 'Growth tucks',
    'draw.longer':
      '{piece}: cut it {more} longer than the finished skirt, {takes} for each of {tucks} tucks.',
    'draw.line':
      'From the hem line measure up {first} and rule the first stitching line, {depth} above it the fold, {depth} above that the second stitching line. Further tucks begin {next} above the last line.',
    'draw.sew':
      'Fold on the fold line, sew both stitching lines together with a long stitch, press the fold down.',
  },
  apply: ({ garment, bench }, values) => {
    const pieces = straightHemmed(garment);
    const pleated = pieces.some((piece) => piece.markings.some((m) => m.kind === 'pleat-fold'));
    if (pieces.length === 0 || pleated) return cannot('growth-tuck.no-straight-hem');
    const [depth, above] = [bench.rounded(values.tuckDepth), bench.rounded(values.above)];
    const length = straightDepth(garment);
    const taken = reach(above, depth, values.tucks);
    if (length - taken < LEAST_ABOVE)
      return cannot('growth-tuck.no-room', { reach: { mm: taken }, length: { mm: length } });
    const tucked = pieces.map((piece) => tuck(piece, depth, above, values.tucks));
    for (const piece of tucked) {
      bench.part(
        { key: 'growth-tuck.draw', values: {} },
        piece.edges.map((edge) => edge.path),
      );
      bench.tell('growth-tuck.draw.longer', {
        piece: piece.title,
        more: { mm: 2 * depth * values.tucks },
        takes: { mm: 2 * depth },
        tucks: values.tucks,
      });
      bench.tell(
        'growth-tuck.draw.line',
        {
          first: { mm: above + depth },
          depth: { mm: depth },
          next: { mm: BETWEEN + depth },
        },
        { lines: piece.markings.filter((m) => m.kind !== 'closing-end').map((m) => m.path) },
      );
      bench.tell('growth-tuck.draw.sew', {});
    }
    return done(tucked.reduce(withPiece, garment));
  },
});

/** Lengthens a width of cloth by what its tucks take, and marks their lines from the hem upward. */
function tuck(piece: Piece, depth: number, above: number, tucks: number): Piece {
  const more = 2 * depth * tucks;
  const { minX, maxX, maxY } = pathBounds(outlineOf(piece));
  const foot = maxY + more;
  const across = (y: number): Path => linePath({ x: minX, y }, { x: maxX, y });
  const lines = Array.from({ length: tucks }, (_, i): readonly Marking[] => {
    const low = foot - above - depth - i * (BETWEEN + 3 * depth);
    return [
      { kind: 'pleat-meet', path: across(low) },
      { kind: 'pleat-fold', path: across(low - depth) },
      { kind: 'pleat-meet', path: across(low - 2 * depth) },
    ];
  }).flat();
  const hem = pathTranslate(edgeOf(piece, 'hem').path, { x: 0, y: more });
  return {
    ...reshape(piece, {
      right: linePath(edgeStart(piece, 'right'), pathStart(hem)),
      hem,
      left: linePath(pathEnd(hem), edgeEnd(piece, 'left')),
    }),
    markings: [...piece.markings, ...lines],
  };
}
