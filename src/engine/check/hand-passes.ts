import { pathBounds } from '../geometry/index.ts';
import { type Marking, pieceAt, type Seam, seamsNamed } from '../piece/index.ts';
import { type Check, type CheckPlace, tell } from './check.ts';
import { type Look, placeOfSeam, type Rule, sideLength } from './look.ts';
import { SLACK } from './tolerance.ts';

/**
 * The hand is not measured: with the thumb folded in it is taken as the wrist and 5 cm (common practice, no source;
 * to be tried on the child).
 */
const HAND_OVER_WRIST = 50;

const SLEEVES = 2;

/** The hand goes through every cuff, with its slit open, and through every sleeve end that elastic draws together. */
export const handPasses: Rule = (look) => {
  const cuffs = seamsNamed(look, 'cuff').filter((seam) => seam.join.kind === 'gathered');
  return [
    ...cuffs.map((seam) => passes(look, openCuff(look, seam), placeOfSeam(seam))),
    ...wristElastics(look),
  ];
};

/** Round a cuff and along both sides of the slit that it closes. */
function openCuff(look: Look, seam: Seam): number {
  const slits = seam.b
    .flatMap((at) => pieceAt(look, at).markings)
    .filter((marking) => marking.kind === 'closing-end');
  const slit = Math.max(0, ...slits.map(heightOf));
  return sideLength(look, seam.a) / SLEEVES + 2 * slit;
}

const heightOf = ({ path }: Marking): number => {
  const { minY, maxY } = pathBounds(path);
  return maxY - minY;
};

/** Elastic gives until the cloth of the sleeve end is flat. */
function wristElastics(look: Look): readonly Check[] {
  const least = look.body.values.upperArmGirth.mm;
  return look.garment.pieces.flatMap((piece) => {
    const hem = piece.edges.find((edge) => edge.name === 'sleeve-edge');
    const drawn = piece.markings.find((marking) => marking.drawnTo !== undefined)?.drawnTo;
    // Round the upper arm the opening is judged by the arm.
    if (hem === undefined || drawn === undefined || drawn >= least) return [];
    const where = { pieces: [piece.id], edges: [{ piece: piece.id, edge: hem.name }] };
    return [passes(look, look.lengthOf(hem.path), where)];
  });
}

function passes(look: Look, round: number, where: CheckPlace): Check {
  const hand = look.body.values.wristGirth.mm + HAND_OVER_WRIST;
  const level = round < hand - SLACK ? 'stop' : 'ok';
  const values = { round: { mm: round }, hand: { mm: hand }, short: { mm: hand - round } };
  return {
    code: 'hand-passes',
    level,
    measured: { mm: round },
    allowed: { from: { mm: hand } },
    where,
    say: tell(`check.hand-passes.${level}`, values),
    todo: level === 'ok' ? null : tell('check.hand-passes.todo', values),
  };
}
