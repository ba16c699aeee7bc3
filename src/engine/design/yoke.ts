import type { Half } from '../block/index.ts';
import { type Bench, type ParamValues, place } from '../construct/index.ts';
import {
  angleBetween,
  curveBetween,
  direction,
  linePath,
  type Path,
  type Point,
  pathAt,
  pathCrossings,
  pathEndTangent,
  pathLength,
  pathNearest,
  pathStartTangent,
  type Vector,
} from '../geometry/index.ts';
import {
  edgeEnd,
  edgeLength,
  edgeOf,
  edgeStart,
  findEdge,
  type Garment,
  type OutlinePlace,
  type Piece,
  pieceOf,
  type Seam,
  splitPiece,
  withSplit,
} from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { HALVES } from './bodice.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  lengthParam,
  type StepOutcome,
} from './step.ts';

/** Least height of a yoke at the centre, mm: less can't be sewn and turned. */
const LEAST_YOKE = 20;

/** Shortest bit of side seam that may be left above or below the line, mm; it carries two allowances. */
const LEAST_SIDE = 10;

/** A yoke line that starts in the armhole's own level part would leave a sliver; this much below is clear of it, mm. */
const CLEAR_OF_ARMHOLE = 15;

/** True where the armhole or sleeve edge runs level into the side seam. */
function opensLevel(piece: Piece): boolean {
  const opening = findEdge(piece, 'armhole') ?? findEdge(piece, 'sleeve-edge');
  return opening !== undefined && Math.abs(pathEndTangent(opening.path).y) < 0.5;
}

const params = {
  halves: choiceParam(['both', 'front', 'back'], 'both', COMMON_PRACTICE),
  line: choiceParam(['straight', 'curved'], 'curved', COMMON_PRACTICE),
  backRise: lengthParam(
    () => 0,
    () => [0, 150],
    'straight across at the armhole line (common practice, no source)',
  ),
  rise: lengthParam(
    () => inches(1),
    () => [0, 150],
    '1 in; 1/2 and 3/4 in are usual too (common practice, no source)',
  ),
  above: lengthParam(
    () => 0,
    () => [0, 150],
    'starts at the armhole line (common practice, no source)',
  ),
  below: lengthParam(
    ({ garment }) => (opensLevel(pieceOf(garment, 'front')) ? CLEAR_OF_ARMHOLE : 0),
    () => [0, 150],
    'at the armhole line; a little below it where the armhole runs level into the side (common practice, no source)',
  ),
} as const;

/** Cuts the bodice across, so that the upper part can be made in a cloth of its own. */
export const yoke = defineStep({
  id: 'yoke',
  stage: 'style-line',
  kind: 'yoke',
  params,
  words: {
    title: 'Yoke',
    about: 'The upper bodice is cut apart, in net or another cloth of its own.',
    halves: 'Where',
    'halves.both': 'Front and back',
    'halves.front': 'Front only',
    'halves.back': 'Back only',
    line: 'Line',
    'line.straight': 'Straight, rising to a point',
    'line.curved': 'Curved, level at the centre',
    rise: 'Front line rises to the centre by',
    backRise: 'Back line rises to the centre by',
    above: 'Starts above the armhole line by',
    below: 'Starts below the armhole line by, unless above it',
    'above-neckline':
      'The yoke line would meet the centre {over} above where a yoke of {least} still fits under the neckline. Lower the line or its rise by that much.',
    'outside-armhole':
      'There is no edge {above} above the armhole line to start the yoke from. Start it lower.',
    sliver:
      'Starting {below} below the armhole line leaves a sliver of side seam. Start {least} to {most} below it, or above it.',
    'through-sleeve':
      'Starting {above} above the armhole line, the yoke line would cut through the sleeve. Start it at the armhole line or below.',
    'too-sharp':
      'The yoke line would meet the armhole in a point too sharp to sew. Start it higher, or below the armhole.',
    crosses:
      'The yoke line would cross the armhole, the neckline or a dart. Start it elsewhere, let it rise less, or end the dart lower.',
    'piece.front-yoke': 'Front yoke',
    'piece.back-yoke': 'Back yoke',
    'draw.front': 'Yoke, front',
    'draw.back': 'Yoke, back',
    'place.side': 'the start of the yoke line',
    'place.level': 'the yoke level at the centre',
    'place.centre': 'the yoke line at the centre',
    'edge.line': 'the yoke line',
    'draw.across': 'From {from} square a line across to the centre: this is {makes}.',
    'draw.curve': 'Draw the yoke line from {from} to {to}, level where it meets the centre.',
    'draw.apart': 'Trace both parts apart. Both edges of the yoke line get a seam allowance.',
  },
  apply: ({ garment, bench }, values) => {
    let dress = garment;
    for (const half of HALVES) {
      if (values.halves !== 'both' && values.halves !== half) continue;
      const cut = cutYoke(dress, bench, half, values);
      if (!cut.ok) return cut;
      dress = cut.garment;
    }
    return done(dress);
  },
});

function cutYoke(
  garment: Garment,
  bench: Bench,
  half: Half,
  values: ParamValues<typeof params>,
): StepOutcome {
  const piece = pieceOf(garment, half);
  bench.part(
    { key: `yoke.draw.${half}`, values: {} },
    piece.edges.map((edge) => edge.path),
  );
  const start = startOfLine(piece, bench.rounded(values.above), bench.rounded(values.below));
  if (start === null) return cannot('yoke.outside-armhole', { above: { mm: values.above } });
  if (start.edge === 'side') {
    const least = opensLevel(piece) ? LEAST_SIDE : 0;
    const most = edgeLength(piece, 'side') - LEAST_SIDE;
    const sliver = start.at > 0 ? start.at < LEAST_SIDE || start.at > most : least > 0;
    if (sliver) {
      return cannot('yoke.sliver', {
        below: { mm: start.at },
        least: { mm: LEAST_SIDE },
        most: { mm: most },
      });
    }
  }
  const centre = edgeOf(piece, 'centre').path;
  const side = bench.start('yoke.place.side', pathAt(edgeOf(piece, start.edge).path, start.at).point);
  const level = place('yoke.place.level', { x: 0, y: side.at.y });
  bench.tell(
    'yoke.draw.across',
    { from: { word: side.name }, makes: { word: level.name } },
    { places: [level], lines: [linePath(side.at, level.at)] },
  );
  const rise = half === 'front' ? values.rise : values.backRise;
  const end = rise === 0 ? level : bench.from(level).up(rise, 'yoke.place.centre');
  const over = edgeEnd(piece, 'centre').y + LEAST_YOKE - end.at.y;
  if (over > 0) return cannot('yoke.above-neckline', { over: { mm: over }, least: { mm: LEAST_YOKE } });

  const line = drawLine(side.at, end.at, values.line === 'curved' && rise > 0);
  if (crossesOutline(piece, line)) return cannot('yoke.crosses');
  if (start.edge !== 'side') {
    const opening = edgeOf(piece, start.edge).path;
    if (side.at.x > edgeStart(piece, 'side').x)
      return cannot('yoke.through-sleeve', { above: { mm: values.above } });
    const left = pathLength(opening) - start.at;
    if (left < LEAST_SIDE || startsTooSharp(opening, start.at, line)) return cannot('yoke.too-sharp');
  }
  bench.tell('yoke.draw.curve', { from: { word: side.name }, to: { word: end.name } }, { lines: [line] });
  bench.tell('yoke.draw.apart', {});
  const to: OutlinePlace = { edge: 'centre', at: pathNearest(centre, end.at).at };
  const split = splitPiece(piece, start, to, line, 'yoke-line', {
    id: `${half}-yoke`,
    title: { key: `yoke.piece.${half}-yoke`, values: {} },
    cloth: 'yoke',
  });
  const cut = withSplit(garment, piece, split);
  const startsAtCorner = start.edge === 'side' && start.at === 0;
  return done({ ...cut, seams: [...cut.seams, yokeSeam(half, !startsAtCorner)] });
}

/** Where the line starts: on the armhole (or sleeve edge) above the armhole line, or on the side seam below it. */
function startOfLine(piece: Piece, above: number, below: number): OutlinePlace | null {
  if (above === 0) return { edge: 'side', at: below };
  const name = findEdge(piece, 'armhole') === undefined ? 'sleeve-edge' : 'armhole';
  const path = edgeOf(piece, name).path;
  const y = edgeStart(piece, 'side').y - above;
  const length = pathLength(path);
  // Up from the underarm: the first place that lies at the wished height.
  let [low, high] = [0, length];
  if (pathAt(path, 0).point.y > y - 1) return null;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (pathAt(path, middle).point.y < y) low = middle;
    else high = middle;
  }
  return { edge: name, at: high };
}

/** True where the line meets the outline anywhere but near its own two ends. */
function crossesOutline(piece: Piece, line: Path): boolean {
  const length = pathLength(line);
  return piece.edges.some((edge) =>
    pathCrossings(line, edge.path).some(({ atA }) => atA > CLEAR_OF_ENDS && atA < length - CLEAR_OF_ENDS),
  );
}

/** Sharpest corner between the yoke line and the armhole, degrees, that can still be sewn and turned. */
const SHARPEST = 40;

function startsTooSharp(opening: Path, at: number, line: Path): boolean {
  const along = pathAt(opening, at).tangent;
  const turned = (angleBetween(along, pathStartTangent(line)) * 180) / Math.PI;
  return turned < SHARPEST || turned > 180 - SHARPEST;
}

/** A crossing closer than this to an end of the line is the end itself, mm. */
const CLEAR_OF_ENDS = 0.5;

const INWARD: Vector = { x: -1, y: 0 };

function drawLine(side: Point, centre: Point, curved: boolean): Path {
  if (!curved) return linePath(side, centre);
  return curveBetween(
    side,
    direction(side, { x: centre.x + (side.x - centre.x) * 0.45, y: centre.y }),
    centre,
    INWARD,
  );
}

const yokeSeam = (half: Half, runsThrough: boolean): Seam => ({
  id: `yoke-${half}`,
  name: 'yoke',
  a: [{ piece: `${half}-yoke`, edge: 'yoke-line', times: 2 }],
  b: [{ piece: half, edge: 'yoke-line', times: 2, reversed: true }],
  join: { kind: 'flat' },
  smoothStart: runsThrough,
  smoothEnd: true,
});
