import * as v from 'valibot';
import { BLOCK_PARAMS, type OwnHalf } from '../block/index.ts';
import { MEASURE_IDS } from '../body/index.ts';
import { CLOTH_KINDS } from '../check/index.ts';
import { ALLOWANCES } from '../cut/index.ts';
import { GRAIN_RULES } from '../lay/index.ts';
import type { ClothRole } from '../piece/index.ts';
import { flag, length, list, name, number, range, scalar, table, tableOf, text } from './form-parts.ts';
import { VERSION_FIELD } from './migrate.ts';
import { PAY_FORM } from './pay/pay-form.ts';
import { SEWING_FORM } from './sew/sewing-form.ts';

/**
 * The form of an order file, newest version. Only the form: lengths are read, and numbers are held against each
 * other and against the child, in `read-order.ts`. The message of a schema is the code of what it wants, see
 * `form-problems.ts`; the message of a table is the list of its fields.
 */

export const CLOTH_ROLES = [
  'main',
  'yoke',
  'skirt',
  'lining',
  'net',
  'trim',
] as const satisfies readonly ClothRole[];

const cloth = table({
  name,
  use: list(v.picklist(CLOTH_ROLES, 'choice'), CLOTH_ROLES.length),
  width: length,
  usableWidth: v.optional(length),
  shrinkage: v.optional(number),
  soldBy: v.optional(v.picklist(['1/8 yd', '1/4 yd', '10 cm', '50 cm'], 'choice')),
  kind: v.optional(v.picklist(CLOTH_KINDS, 'choice')),
  /** Whether all heads must lie the same way; `child-one-way`: those of one child, though the next may lie the other. */
  way: v.optional(v.picklist(['one-way', 'child-one-way', 'both-ways'], 'choice')),
  /** Either face may be worn. */
  facesAlike: v.optional(flag),
  /** All pieces of one child come from the same length, as no two lengths are of quite the same shade. */
  oneLength: v.optional(flag),
  /** Pieces that may lie otherwise than along the cloth by their grain line. */
  grain: v.optional(list(table({ piece: name, lies: v.picklist(GRAIN_RULES, 'choice') }), 40)),
  folding: v.optional(v.picklist(['single', 'lengthwise', 'crosswise'], 'choice')),
  selvedgesToMiddle: v.optional(flag),
  /** Clear cloth between two cutting lines. */
  gap: v.optional(length),
  /** Bought on top because the cloth slips, in hundredths of its length. */
  extra: v.optional(number),
  /** Stripes or checks: after what length, and after what width, they come again. */
  repeat: v.optional(table({ along: v.optional(length), across: v.optional(length) })),
  /** Places that no piece may touch. */
  flaws: v.optional(
    list(table({ fromEnd: length, fromSelvedge: length, along: length, across: length }), 20),
  ),
  /** Lengths at hand, and leftovers of odd outline by their corners. */
  atHand: v.optional(
    list(
      table({
        length: v.optional(length),
        corners: v.optional(list(table({ along: length, across: length }), 60)),
      }),
      20,
    ),
  ),
});

const block = tableOf(Object.keys(BLOCK_PARAMS) as (keyof typeof BLOCK_PARAMS)[], scalar);

/** What is measured on one half of a paper block, in the order in which it is asked for. */
export const OWN_FIELDS = [
  'neckWidth',
  'neckDepth',
  'shoulder',
  'shoulderFall',
  'armholeDepth',
  'armholeHollow',
  'chestWidth',
  'waistWidth',
  'sideWaistLevel',
  'centreLength',
] as const satisfies readonly (keyof OwnHalf)[];

const ownHalf = table(
  Object.fromEntries(OWN_FIELDS.map((field) => [field, length])) as Record<
    (typeof OWN_FIELDS)[number],
    typeof length
  >,
);
const paperBlock = table({
  front: ownHalf,
  back: ownHalf,
  seamIncluded: v.optional(length),
  closingIncluded: v.optional(length),
  /** The child whom the paper fits: it is then graded to every other. */
  fits: v.optional(
    table({ ageMonths: v.optional(number), measures: v.optional(tableOf(MEASURE_IDS, length)) }),
  ),
});

/** A design step with its numbers; which numbers there are, the step itself says. `as` tells changes of one sort apart. */
const step = v.objectWithRest({ step: text, as: v.optional(name), off: v.optional(flag) }, scalar, 'table');
const MOST_STEPS = 40;

const measures = tableOf(MEASURE_IDS, length);

/** A measuring that a later one has taken the place of. It is kept as it was written and draws nothing. */
const earlier = table({ measured: v.optional(text), measures, weight: v.optional(text) });
const MOST_MEASURINGS = 40;

const child = table({
  name,
  born: v.optional(text),
  ageMonths: v.optional(number),
  sex: v.optional(v.picklist(['girl', 'boy'], 'choice')),
  /** The day on which the measures were taken. */
  measured: v.optional(text),
  measures: v.optional(measures),
  /** Weighed on that day, with its unit: `18.5 kg`, `41 lb`. */
  weight: v.optional(text),
  /** How many weeks before the due date the child was born. */
  weeksEarly: v.optional(number),
  /** The measurings before that, the newest first. */
  earlier: v.optional(list(earlier, MOST_MEASURINGS)),
  block: v.optional(block),
  paperBlock: v.optional(paperBlock),
  dress: v.optional(list(step, MOST_STEPS)),
  /** How far the dress is sewn. */
  sewing: v.optional(SEWING_FORM),
});

export const ALLOWANCE_KINDS = (Object.keys(ALLOWANCES) as (keyof typeof ALLOWANCES)[]).filter(
  (kind) => kind !== 'fold',
);
const allowances = tableOf(['all', ...CLOTH_ROLES], tableOf(ALLOWANCE_KINDS, length));

const paper = table({
  formats: list(v.picklist(['A4', 'Letter', 'A3', 'A0', '36 in roll'], 'choice'), 5),
  overlap: v.optional(length),
  rectangles: v.optional(v.picklist(['full', 'figures'], 'choice')),
  printerMeasured: v.optional(table({ across: length, down: length })),
});

/** Where a piece lies on its cloth: mm in any units, since no hand has written it. */
const laidPiece = table({
  child: name,
  piece: name,
  copy: number,
  turn: number,
  mirrored: v.optional(flag),
  pinned: v.optional(flag),
  x: number,
  y: number,
});

/** A lay that was found or made by hand: of one child, or of all. */
const lay = table({
  cloth: name,
  child: v.optional(name),
  /** The search that found it: which one, its seed, and how many places it tried. */
  engine: number,
  seed: number,
  evaluations: number,
  /** `at`: the length at hand, left out for cloth to be bought. `mark`: of pieces and cloth as they were. */
  lengths: list(table({ at: v.optional(number), mark: text, places: list(laidPiece, 5000) }), 21),
});

export const ORDER_SCHEMA = table({
  [VERSION_FIELD]: v.number(),
  title: name,
  /** For whom the order is made; told nowhere but to the maker herself. */
  customer: v.optional(text),
  dueDay: text,
  /** Whether children are grown from the day of measuring to the due day, or on to one size more; else `none`. */
  growth: v.optional(v.picklist(['to-the-day', 'one-size-more', 'none'], 'choice')),
  /** Which growth charts go first; `who` where it is not said. */
  growthCharts: v.optional(v.picklist(['who', 'us'], 'choice')),
  madeOn: v.optional(text),
  units: v.picklist(['in', 'cm'], 'choice'),
  ruler: v.optional(v.picklist(['1/16 in', '1/8 in', '1/4 in', '1 mm', '5 mm'], 'choice')),
  cloths: list(cloth, 12),
  /** `party`: all children on one lay of each cloth; `child`: one lay a child. */
  layTogether: v.optional(v.picklist(['party', 'child'], 'choice')),
  block: v.optional(block),
  paperBlock: v.optional(paperBlock),
  /** A dress of the library, over which the list goes. */
  startFrom: v.optional(text),
  dress: v.optional(list(step, MOST_STEPS)),
  children: list(child, 60),
  sizes: v.optional(
    table({ heights: v.optional(list(length, 12)), ageMonths: v.optional(list(number, 12)) }),
  ),
  fit: v.optional(tableOf(['chestEase', 'waistEase'], range)),
  allowances: v.optional(allowances),
  paper: v.optional(paper),
  lays: v.optional(list(lay, 800)),
  /** What is agreed, paid and planned; draws nothing. */
  pay: v.optional(PAY_FORM),
});

/** An order as it is written, with lengths still as the maker typed them. */
export type OrderFile = v.InferOutput<typeof ORDER_SCHEMA>;
export type ChildFile = OrderFile['children'][number];
/** A measuring of an earlier day, as it was written. */
export type EarlierFile = NonNullable<ChildFile['earlier']>[number];
export type ClothFile = OrderFile['cloths'][number];
export type LayFile = NonNullable<OrderFile['lays']>[number];
export type PaperBlockFile = NonNullable<OrderFile['paperBlock']>;
export type StepFile = NonNullable<OrderFile['dress']>[number];
