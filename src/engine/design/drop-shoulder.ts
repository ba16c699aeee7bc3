import type { Half } from '../block/index.ts';
import { type Bench, type Place, place } from '../construct/index.ts';
import {
  curveBetween,
  curveOfLength,
  direction,
  outward,
  type Path,
  pathEndTangent,
  pathLength,
  pathSlice,
  pathStart,
  rotate,
  type Vector,
} from '../geometry/index.ts';
import {
  edgeOf,
  edgeStart,
  extendSeam,
  type Garment,
  type Piece,
  pieceOf,
  replaceEdge,
  reshape,
  withPiece,
} from '../piece/index.ts';
import type { WordValues } from '../words/index.ts';
import { HALVES } from './bodice.ts';
import { clearOfSide, drawOuterEdge, LEAST_GAP, type OuterEdge } from './drop-shoulder-edge.ts';
import { type DropShoulderValues, dropShoulderParams, SHORTEST_SIDE } from './drop-shoulder-params.ts';
import { cannot, defineStep, done } from './step.ts';

/** Lets the shoulder run out over the arm, as a cap, a short sleeve, or a straight edge for something sewn on. */
export const dropShoulder = defineStep({
  id: 'drop-shoulder',
  stage: 'sleeve',
  kind: 'sleeve',
  params: dropShoulderParams,
  words: {
    title: 'Drop shoulder',
    about: 'The shoulder runs out over the arm in one piece with the bodice.',
    finish: 'Finish',
    'finish.cap-pointed': 'Cap, pointed',
    'finish.cap-rounded': 'Cap, rounded',
    'finish.short': 'Short sleeve',
    'finish.straight': 'Straight edge, for a strip, a sleeve extension or a bow',
    drop: 'Drop, down from the shoulder tip',
    capHeight: 'Cap height, outward from the dropped level',
    fall: 'Outer edge, down from its top',
    shapeIn: 'Short sleeve: outer edge shaped in',
    shapeDown: 'Short sleeve: outer edge shaped down',
    hollow: 'Short sleeve: armhole hollowed at its middle',
    lowerUnderarm: 'Cap or straight edge: underarm lowered',
    'no-side-left':
      'The sleeve opening would end {underarm} below the underarm and leave {left} of side seam. Take less drop, or do not raise the waist.',
    'cap-on-side':
      'The lower corner of the cap on {half} would lie against the side seam, with no room to cut between them. Let it end {higher} higher, by less fall or less drop, or let the sides out less.',
    'half.front': 'the front',
    'half.back': 'the back',
    'draw.front': 'Drop shoulder, front',
    'draw.back': 'Drop shoulder, back',
    'place.drop-level': 'the dropped level',
    'place.sleeve-top': 'the top of the outer edge',
    'place.sleeve-in': 'the point above the turn',
    'place.sleeve-turn': 'the turn of the outer edge',
    'place.sleeve-corner': 'the lower corner of the outer edge',
    'place.sleeve-underarm': 'the new underarm',
    'place.sleeve-foot': 'the foot of the sleeve opening',
    'place.sleeve-half': 'the half of the sleeve opening',
    'place.sleeve-hollow': 'the hollow of the sleeve opening',
    'draw.overarm':
      'Draw the overarm from the shoulder tip to the top of the outer edge: leave along the shoulder line, arrive square to the outer edge.',
    'draw.match-overarm':
      'Measure the overarm; it must be {length}, as in front. Make the curve flatter or fuller until it is.',
    'draw.edge.cap-pointed': 'Draw the outer edge down to its lower corner, then back to the underarm.',
    'draw.edge.cap-rounded':
      'Draw the outer edge down, round its lower corner off, and run back to the underarm.',
    'draw.edge.short': 'Draw the outer edge through its turn and its hollow to the new underarm.',
    'draw.edge.straight': 'Draw the outer edge straight to the underarm.',
  },
  apply: ({ garment, bench }, values) => {
    let dress = garment;
    const refused: HalfRefused[] = [];
    let overarmLength: number | null = null;
    let runsThrough = true;
    for (const half of HALVES) {
      const drawn = drawHalf(bench, pieceOf(dress, half), half, values, overarmLength);
      if (!drawn.ok) {
        refused.push(drawn);
        continue;
      }
      runsThrough = runsThrough && drawn.runsThrough;
      overarmLength ??= pathLength(drawn.overarm);
      dress = withPiece(dress, drawn.piece);
    }
    // What helps the half that lacks more helps the other too.
    const [worst] = refused.toSorted((a, b) => b.lacking - a.lacking);
    return worst === undefined
      ? done(withOverarmSeam(dress, runsThrough))
      : cannot(`drop-shoulder.${worst.why}`, worst.values);
  },
});

/** More than what is lost when a length is told in sixteenths or millimetres, mm. */
const READ_OFF = 2;

type HalfDrawn =
  | { readonly ok: true; readonly piece: Piece; readonly overarm: Path; readonly runsThrough: boolean }
  | HalfRefused;

interface HalfRefused {
  readonly ok: false;
  readonly why: 'no-side-left' | 'cap-on-side';
  /** By how much it can't be, mm. */
  readonly lacking: number;
  readonly values: WordValues;
}

function drawHalf(
  bench: Bench,
  piece: Piece,
  half: Half,
  values: DropShoulderValues,
  overarmLength: number | null,
): HalfDrawn {
  const tip = place('place.shoulder-tip', edgeStart(piece, 'armhole'));
  bench.part(
    { key: `drop-shoulder.draw.${half}`, values: {} },
    piece.edges.map((edge) => edge.path),
  );
  const dropLevel = bench.from(tip).down(values.drop, 'drop-shoulder.place.drop-level');
  const top = bench.from(dropLevel).out(values.capHeight, 'drop-shoulder.place.sleeve-top');
  const outer = drawOuterEdge(bench, piece, top, values);
  const side = edgeOf(piece, 'side').path;
  const left = pathLength(side) - outer.lowered;
  if (left < SHORTEST_SIDE - 0.5)
    return {
      ok: false,
      why: 'no-side-left',
      lacking: SHORTEST_SIDE - left,
      values: { underarm: { mm: outer.lowered }, left: { mm: left } },
    };
  const shorterSide = outer.lowered === 0 ? side : pathSlice(side, outer.lowered, pathLength(side));
  const below = outer.corner === null ? 0 : outer.corner.y - pathStart(shorterSide).y;
  if (outer.corner !== null && below > 0 && clearOfSide(shorterSide, outer.corner) < LEAST_GAP) {
    const values = { half: { word: `drop-shoulder.half.${half}` }, higher: { mm: below + READ_OFF } };
    return { ok: false, why: 'cap-on-side', lacking: below, values };
  }

  const along = pathEndTangent(edgeOf(piece, 'shoulder').path);
  const overarm = drawOverarm(bench, tip, top, along, outer, overarmLength);
  const sleeveEdge = outer.drawFrom(pathEndTangent(overarm));
  bench.tell(`drop-shoulder.draw.edge.${values.finish}`, {}, { lines: [sleeveEdge] });
  const opened = replaceEdge(piece, 'armhole', [
    { name: 'overarm', kind: 'shoulder', path: overarm },
    // A straight edge is no hem: a strip, an extension or a bow is sewn to it.
    {
      name: 'sleeve-edge',
      kind: values.finish === 'straight' ? 'armhole' : 'curved-sleeve-hem',
      path: sleeveEdge,
    },
  ]);
  return { ok: true, piece: reshape(opened, { side: shorterSide }), overarm, runsThrough: outer.runsThrough };
}

/** How much further than its chord the overarm bends at its end, as a share of its bend at the shoulder. */
const OVERARM_BEND = 0.4;

/**
 * The overarm leaves along the shoulder and arrives square to the outer edge. Where the outer edge has no
 * direction of its own, the overarm bends evenly over the arm and the outer edge takes the square.
 * Front and back slope differently, so the second half is brought to the length of the first.
 */
function drawOverarm(
  bench: Bench,
  tip: Place,
  top: Place,
  along: Vector,
  outer: OuterEdge,
  wished: number | null,
): Path {
  const chord = direction(tip.at, top.at);
  const arriving = outer.leaving === null ? bendOn(along, chord) : outward(outer.leaving);
  const drawn = curveBetween(tip.at, along, top.at, arriving);
  const overarm = wished === null ? drawn : (curveOfLength(drawn, wished) ?? drawn);
  bench.tell('drop-shoulder.draw.overarm', {}, { lines: [overarm] });
  if (wished !== null) bench.tell('drop-shoulder.draw.match-overarm', { length: { mm: wished } });
  return overarm;
}

function bendOn(along: Vector, chord: Vector): Vector {
  const turn = Math.atan2(along.x * chord.y - along.y * chord.x, along.x * chord.x + along.y * chord.y);
  return rotate(chord, turn * OVERARM_BEND);
}

/** Overarms are sewn on from the shoulder; at the underarm the opening runs through or makes a point. */
function withOverarmSeam(garment: Garment, smoothUnderarm: boolean): Garment {
  return {
    ...garment,
    seams: garment.seams.map((seam) => {
      if (seam.name === 'shoulder') return extendSeam(seam, 'shoulder', 'overarm');
      return seam.name === 'side' ? { ...seam, smoothStart: smoothUnderarm } : seam;
    }),
  };
}
