import { draftSleeve } from '../block/index.ts';
import type { Path } from '../geometry/index.ts';
import { edgeLength, type Piece } from '../piece/index.ts';
import { openArm } from './arm-opening.ts';
import { armEdgeLength } from './armhole-ring.ts';
import { cannot, lengthParam, type StepOutcome, type StepWork } from './step.ts';

/** Parameters that every sleeve drawn from a straight one has. */
export const sleeveWidthParams = {
  capEase: lengthParam(
    ({ body }) => ((body.ageMonths ?? 72) < 72 ? 6 : 12),
    () => [0, 25],
    'woven cloth: 0-1.5 cm in small sizes, up to 2 cm at 10-12 (common practice); 1 in or more is gathers',
  ),
  armEase: lengthParam(
    () => 40,
    () => [25, 80],
    'sleeve hem on the bare arm 2.5-4 cm (common practice); the adult rule of 2 in is the upper end for a child',
  ),
} as const;

/** Why a sleeve drawn from a straight one is refused, and how the straight one is drawn; said under each step's id. */
export const STRAIGHT_SLEEVE_WORDS = {
  'no-armhole':
    'A sleeve needs an open armhole, and a drop shoulder or a strip has taken it. Choose one of the two.',
  'too-wide':
    'A sleeve {width} wide is too wide for this armhole. {limit} is the most: give less ease at the arm.',
  'too-short': 'The sleeve is shorter than its cap. It must be longer than {limit}.',
  'piece.sleeve': 'Sleeve',
  draw: 'Sleeve',
  'draw.cap':
    'Rule a line {width} long for the foot of the cap and a line square to it. The top of the cap lies {cap} above the line.',
  'draw.curve':
    'Draw the cap level at its top and at its two ends. Measure it: {front} in front and {back} behind.',
  'draw.length': 'From the top of the cap measure down {length} and square the hem across.',
} as const;

type StraightSleeve =
  | { readonly ok: true; readonly piece: Piece; readonly width: number }
  | { readonly ok: false; readonly refusal: StepOutcome };

/** Draws the straight sleeve that fits the armholes of this dress and tells how. */
export function straightSleeve(
  { garment, body, bench }: StepWork,
  step: string,
  wish: {
    readonly armEase: number;
    readonly capEase: number;
    readonly length: number;
    /** How much longer the finished sleeve is than this piece: its band, less what blouses over. */
    readonly beyond?: number;
  },
): StraightSleeve {
  if (openArm(garment) !== 'armhole') return { ok: false, refusal: cannot(`${step}.no-armhole`) };
  const width = bench.rounded(body.values.upperArmGirth.mm + wish.armEase);
  const drafted = draftSleeve({
    frontArmhole: armEdgeLength(garment, 'front', 'armhole'),
    backArmhole: armEdgeLength(garment, 'back', 'armhole'),
    capEase: wish.capEase,
    width,
    length: wish.length,
  });
  if (!drafted.ok) {
    const values = {
      width: { mm: width },
      limit: { mm: drafted.limit + (drafted.code === 'too-short' ? (wish.beyond ?? 0) : 0) },
    };
    return { ok: false, refusal: cannot(`${step}.${drafted.code}`, values) };
  }
  const sleeve: Piece = { ...drafted.piece, title: { key: `${step}.piece.sleeve`, values: {} } };
  bench.part({ key: `${step}.draw`, values: {} });
  bench.tell(`${step}.draw.cap`, { width: { mm: width }, cap: { mm: drafted.capHeight } });
  const lines = (isCap: boolean): readonly Path[] =>
    sleeve.edges.filter((edge) => (edge.kind === 'cap') === isCap).map((edge) => edge.path);
  const lengths = {
    front: { mm: edgeLength(sleeve, 'cap-front') },
    back: { mm: edgeLength(sleeve, 'cap-back') },
  };
  bench.tell(`${step}.draw.curve`, lengths, { lines: lines(true) });
  bench.tell(`${step}.draw.length`, { length: { mm: wish.length } }, { lines: lines(false) });
  return { ok: true, piece: sleeve, width };
}
