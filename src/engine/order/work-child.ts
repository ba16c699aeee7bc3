import { BLOCK_PARAMS } from '../block/index.ts';
import { type Body, problemSaying } from '../body/index.ts';
import { type Check, type CheckInput, checkGarment, type EaseBounds } from '../check/index.ts';
import type { DraftPart } from '../construct/index.ts';
import { type DressWish, designDress } from '../design/index.ts';
import type { ClothRole, Garment } from '../piece/index.ts';
import type { Ruler } from '../units/index.ts';
import { doubtContext } from './doubt-context.ts';
import { bodyProblem, dressProblem, skippedFinding } from './dress-problems.ts';
import type { Finding } from './finding.ts';
import { growthFindings } from './growth-findings.ts';
import type { Order, OrderChild } from './order.ts';
import type { OrderProblem } from './problem.ts';
import { clothOf } from './read-cloths.ts';
import { CLOTH_ROLES } from './schema.ts';
import { type KnownBody, knownBody, withPiecesOf } from './taken-over.ts';

/** A dress drawn exactly, not yet checked: all that is needed to show it. */
export interface DrawnDress {
  readonly child: OrderChild;
  readonly body: Body;
  readonly garment: Garment;
  /** How it was drawn, exactly, step by step. */
  readonly draft: readonly DraftPart[];
  /** What is worth a second look about her measurements, and changes of the maker's that her dress does without. */
  readonly doubts: readonly Finding[];
  /** How many of the maker's changes it does without. */
  readonly skipped: number;
  /** What the body rests on, so that the next drawing need not complete it again. */
  readonly known: KnownBody;
}

/** A child's dress drawn and checked, exactly and once more as a hand with the maker's ruler draws it. */
export interface ChildDress extends Omit<DrawnDress, 'skipped' | 'known'> {
  readonly checks: readonly Check[];
  /** Null where rounding alone makes the dress impossible: then it can't be drawn by hand with this ruler. */
  readonly byHand: DressByHand | null;
}

export interface DressByHand {
  readonly garment: Garment;
  readonly draft: readonly DraftPart[];
  /** Whether the rounded pieces still fit together. */
  readonly checks: readonly Check[];
}

export type ChildResult =
  | { readonly ok: true; readonly dress: ChildDress }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

type DrawnResult =
  | { readonly ok: true; readonly drawn: DrawnDress }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** The way of one child: her body, her dress, the checks. Refuses measures and designs that can't be. */
export function workChild(order: Order, child: OrderChild): ChildResult {
  const result = drawnDress(order, child);
  return result.ok ? { ok: true, dress: checkedDress(order, result.drawn) } : result;
}

/**
 * Her body and her dress. Refuses measures and designs that can't be. `before` is an earlier drawing of the same child:
 * what is equal in it is taken over as the same objects.
 */
export function drawnDress(order: Order, child: OrderChild, before: DrawnDress | null = null): DrawnResult {
  const known = knownBody(child.body, doubtContext(order, child), before?.known ?? null);
  const { completed } = known;
  if (!completed.ok) {
    const stops = completed.problems.filter(({ level }) => level === 'stop');
    return { ok: false, problems: stops.map((problem) => bodyProblem(child, problem)) };
  }
  const { body } = completed;
  const exact = drawDress(order, child, body, null);
  if (!exact.ok) {
    const problems = exact.problems.map((problem) => dressProblem(child, problem, order.units));
    return { ok: false, problems };
  }
  const doubts = [
    ...completed.warnings.map((problem) => ({
      code: problem.code,
      level: problem.level,
      say: problemSaying(problem, child.name),
      todo: null,
    })),
    ...growthFindings(child),
    ...exact.skipped.map((change) => skippedFinding(child, change)),
  ];
  const { draft, skipped } = exact;
  const garment = before === null ? exact.garment : withPiecesOf(before.garment, exact.garment);
  return { ok: true, drawn: { child, body, garment, draft, doubts, skipped: skipped.length, known } };
}

/** The same dress checked, and drawn and checked once more as a hand with the maker's ruler draws it. */
export function checkedDress(order: Order, drawn: DrawnDress): ChildDress {
  const { child, body, garment, draft, doubts } = drawn;
  const checks = checkGarment(checkInput(order, body, garment));
  const ruled = drawDress(order, child, body, order.ruler);
  const byHand =
    ruled.ok && ruled.skipped.length === drawn.skipped
      ? {
          garment: ruled.garment,
          draft: ruled.draft,
          checks: checkGarment(checkInput(order, body, ruled.garment)).filter(({ code }) =>
            FITS_TOGETHER.includes(code),
          ),
        }
      : null;
  return { child, body, garment, draft, checks, doubts, byHand };
}

export type ExactResult =
  | { readonly ok: true; readonly dress: Omit<ChildDress, 'byHand'>; readonly skipped: number }
  | { readonly ok: false; readonly problems: readonly OrderProblem[] };

/** Drawn and checked without the draft by hand: all that is needed to know whether a change would help. */
export function exactDress(order: Order, child: OrderChild): ExactResult {
  const result = drawnDress(order, child);
  if (!result.ok) return result;
  const { body, garment, draft, doubts, skipped } = result.drawn;
  const checks = checkGarment(checkInput(order, body, garment));
  return { ok: true, dress: { child, body, garment, draft, checks, doubts }, skipped };
}

/**
 * What rounding can spoil: whether the pieces fit each other. Whether they fit the child, the exact draft says; and a
 * lining is traced from the finished pieces, so it follows them.
 */
const FITS_TOGETHER: readonly Check['code'][] = [
  'outline-closed',
  'outline-simple',
  'seam-lengths',
  'notches-meet',
  'pleats-whole',
];

export const drawDress = (
  order: Order,
  child: OrderChild,
  body: Body,
  ruler: Ruler | null,
): ReturnType<typeof designDress> => designDress(dressWish(order, child, body, ruler));

/** All that the dress of a child is designed from. */
export function dressWish(order: Order, child: OrderChild, body: Body, ruler: Ruler | null): DressWish {
  const widths = CLOTH_ROLES.map((role) => [role, clothOf(order.cloths, role).usableWidth] as const);
  return {
    body,
    block: child.block.choice,
    steps: child.steps,
    clothWidth: Object.fromEntries(widths) as Record<ClothRole, number>,
    units: order.units,
    ruler,
  };
}

export function checkInput(order: Order, body: Body, garment: Garment): CheckInput {
  const clothKinds: CheckInput['clothKinds'] = Object.fromEntries(
    CLOTH_ROLES.map((role) => [role, clothOf(order.cloths, role).kind]),
  );
  return { garment, body, bounds: easeBounds(order, body), clothKinds };
}

/** The maker's own bounds, or all that the published methods and shops allow. */
function easeBounds(order: Order, body: Body): EaseBounds {
  const context = { body, method: 'sixth-of-neck' } as const;
  return {
    chestEase: order.fit.chestEase ?? BLOCK_PARAMS.chestEase.range(context),
    waistEase: order.fit.waistEase ?? BLOCK_PARAMS.waistEase.range(context),
  };
}
