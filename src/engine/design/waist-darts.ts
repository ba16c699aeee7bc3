import type { Half } from '../block/index.ts';
import type { ParamValues } from '../construct/index.ts';
import type { Path } from '../geometry/index.ts';
import { edgeEnd, edgeOf, edgeStart, type Garment, type Piece, pieceOf, withPiece } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { HALVES } from './bodice.ts';
import { footMovedOut, moveFoot } from './bodice-foot.ts';
import { cutWaistDart, dartSeams } from './darts.ts';
import {
  COMMON_PRACTICE,
  cannot,
  defineStep,
  done,
  flagParam,
  lengthParam,
  type StepContext,
} from './step.ts';

/**
 * Chest less waist, and what it wants: 4 in one dart and a straight back, 5 in one dart and 1 in taken out at the
 * back, 7 in two darts and 1 in (A. van H. Wakeman, Scientific Sewing and Garment Cutting).
 */
const ONE_DART = inches(4);
const BACK_TOO = inches(5);
const TWO_DARTS = inches(7);
const WAKEMAN =
  'chest less waist of 4 in: one dart; 5 in: one, and 1 in at the back; 7 in: two (Wakeman); less: none';

/** Shortest dart that is worth sewing, mm. */
const SHORTEST_DART = 30;
/** Widest and narrowest dart by rule, mm: a wider one stands off at its tip (common practice, no source). */
const [NARROWEST, WIDEST] = [8, 25];

const COUNTS = ['none', 'one', 'two'] as const;
type Count = (typeof COUNTS)[number];

/** Where the darts lie between the centre and the side seam, as a share of the waist. */
const MIDDLES: Readonly<Record<Count, readonly number[]>> = { none: [], one: [0.48], two: [0.62, 0.34] };

const chestLessWaist = ({ body }: StepContext): number =>
  body.values.chestGirth.mm - body.values.waistGirth.mm;

/** From the underarm down to the waist at the side of the shallower half. */
const sideDepth = ({ garment }: StepContext): number =>
  Math.min(
    ...HALVES.map(
      (half) => edgeEnd(pieceOf(garment, half), 'side').y - edgeStart(pieceOf(garment, half), 'side').y,
    ),
  );

const byChestLessWaist = (c: StepContext): Count => {
  const difference = chestLessWaist(c);
  return difference >= TWO_DARTS ? 'two' : difference >= ONE_DART ? 'one' : 'none';
};

const params = {
  count: { kind: 'choice', choices: COUNTS, rule: byChestLessWaist, source: WAKEMAN },
  width: lengthParam(
    (c) => Math.min(WIDEST, Math.max(NARROWEST, chestLessWaist(c) / 8)),
    () => [4, 40],
    'half of what the side seam takes in, 8-25 mm (common practice, no source)',
  ),
  tip: lengthParam(
    (c) => Math.max(0, Math.min(30, sideDepth(c) - 2 * SHORTEST_DART)),
    (c) => [0, Math.max(0, sideDepth(c) - SHORTEST_DART)],
    'the tip stays below the fullest part of the chest; 3 cm below the underarm (common practice, no source)',
  ),
  back: { kind: 'flag', rule: (c: StepContext) => chestLessWaist(c) >= BACK_TOO, source: WAKEMAN },
  backWidth: lengthParam(
    () => inches(1 / 2),
    () => [4, 30],
    '1 in taken out at the back, half on each side (Wakeman)',
  ),
  keepWaist: flagParam(true, COMMON_PRACTICE),
} as const;

/** Shapes a developed figure's bodice with darts at the waist instead of at the side seams alone. */
export const waistDarts = defineStep({
  id: 'waist-darts',
  stage: 'fitting',
  kind: 'waist-darts',
  params,
  words: {
    title: 'Waist darts',
    about: 'Darts from the waist toward the chest, for figures that begin to develop.',
    count: 'Darts in each half of the front',
    'count.none': 'None',
    'count.one': 'One',
    'count.two': 'Two',
    width: 'Width of each front dart',
    tip: 'Tip below the level of the underarm',
    back: 'A dart in each half of the back',
    backWidth: 'Width of each back dart',
    keepWaist: 'Let the side seams out, so that the whole waist keeps its width',
    dropped:
      'A dropped waist lies below the place where darts shape the figure. Leave the darts out, or put the waist seam at the waist.',
    'side-leans':
      'Letting the short side seams out by {by}, for the darts, would make them lean too far. Make the darts narrower, or leave the side seams as they are.',
    'too-wide':
      'Darts that take {width} out of a half that is {waist} wide at the waist leave no room between them. Make them narrower.',
    'draw.front': 'Waist darts, front',
    'draw.back': 'Waist darts, back',
    'draw.none': 'This figure needs no dart here.',
    'draw.side':
      'Move the foot of the side seam out by {by}, keep the length of the seam, and draw it straight again.',
    'draw.dart':
      'On the waist mark the middle of the dart {middle} from the centre and its two sides {half} to the left and right. The tip lies straight above the middle, {tip} below the level of the underarm. Rule both legs; they must be equally long.',
    'draw.true': 'Fold the dart toward the centre and redraw the waist across it in one smooth line.',
  },
  apply: ({ garment, bench }, values) => {
    if (values.count === 'none' && !values.back) {
      bench.part({ key: 'waist-darts.draw.front', values: {} });
      bench.tell('waist-darts.draw.none', {});
      return done(garment);
    }
    if (isDropped(garment)) return cannot('waist-darts.dropped');
    const widthsOf = (half: Half): readonly number[] => dartWidths(half, values, bench.rounded);
    const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);
    // Both halves move alike, or their side seams would lean differently and no longer agree.
    const letOut = values.keepWaist ? bench.rounded((sum(widthsOf('front')) + sum(widthsOf('back'))) / 2) : 0;
    let dress = garment;
    for (const half of HALVES) {
      const plain = pieceOf(dress, half);
      const widths = widthsOf(half);
      const foot = footMovedOut(plain, letOut);
      if (foot === null) return cannot('waist-darts.side-leans', { by: { mm: letOut } });
      if (sum(widths) > foot.x * MOST_TAKEN)
        return cannot('waist-darts.too-wide', { width: { mm: sum(widths) }, waist: { mm: foot.x } });
      bench.part(
        { key: `waist-darts.draw.${half}`, values: {} },
        plain.edges.map((edge) => edge.path),
      );
      let piece = letOut === 0 ? plain : moveFoot(plain, foot);
      if (letOut > 0)
        bench.tell('waist-darts.draw.side', { by: { mm: letOut } }, { lines: waistLines(piece) });
      if (widths.length === 0) bench.tell('waist-darts.draw.none', {});
      const shares = MIDDLES[half === 'front' ? values.count : 'one'];
      const tip = bench.rounded(values.tip);
      for (const [i, width] of widths.entries()) {
        const middle = bench.rounded((shares[i] ?? 0.5) * foot.x);
        piece = cutWaistDart(piece, { middle, width, tipLevel: edgeStart(piece, 'side').y + tip });
        bench.tell(
          'waist-darts.draw.dart',
          { middle: { mm: middle }, half: { mm: width / 2 }, tip: { mm: tip } },
          { lines: waistLines(piece) },
        );
      }
      if (widths.length > 0) bench.tell('waist-darts.draw.true', {});
      dress = withPiece(dress, piece);
      dress = { ...dress, seams: [...dress.seams, ...dartSeams(piece)] };
    }
    return done(dress);
  },
});

/** A side seam that runs on below the waist is no straight line any more. */
const isDropped = (garment: Garment): boolean =>
  HALVES.some((half) => edgeOf(pieceOf(garment, half), 'side').path.segments.length > 1);

/** Most of a half's waist that darts may take out. */
const MOST_TAKEN = 0.35;

const waistLines = (piece: Piece): readonly Path[] =>
  piece.edges.filter((edge) => ['side', 'waist', 'dart'].includes(edge.kind)).map((edge) => edge.path);

/** The width of every dart in one half, from the side to the centre, mm. */
function dartWidths(
  half: Half,
  values: ParamValues<typeof params>,
  rounded: (mm: number) => number,
): readonly number[] {
  if (half === 'back') return values.back ? [rounded(values.backWidth)] : [];
  return MIDDLES[values.count].map(() => rounded(values.width));
}
