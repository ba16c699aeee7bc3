import { type EdgeKind, edgeAt, type Seam } from '../piece/index.ts';
import { keyOf, neighboursOf, type SewLook } from './look.ts';
import type { EdgeRef, SewStep } from './step.ts';

/**
 * The seams that a step's own seams run across: wherever one side passes from one piece to another, the seam that
 * joins the two at that corner. An opening joins nothing, so nothing runs across it.
 */
export function crossings(look: SewLook, step: SewStep): readonly Seam[] {
  const own = look.garment.seams.filter(({ id }) => step.sews.includes(id));
  const found = own.flatMap((seam) => [seam.a, seam.b]).flatMap((side) => acrossSide(look, side));
  return found.filter(({ id }) => !step.sews.includes(id));
}

function acrossSide(look: SewLook, side: readonly EdgeRef[]): readonly Seam[] {
  return side.flatMap((at, i) => {
    const next = side[i + 1];
    return next === undefined || next.piece === at.piece ? [] : joiningAt(look, at, next);
  });
}

/**
 * Seams that hold an edge beside the one to an edge beside the other. An armhole runs over the shoulder and ends at the
 * side on either hand, so the side is none of them.
 */
function joiningAt(look: SewLook, one: EdgeRef, other: EdgeRef): readonly Seam[] {
  const keys = (at: EdgeRef): ReadonlySet<string> => new Set(neighboursOf(look, at).map(keyOf));
  const [ours, theirs] = [keys(one), keys(other)];
  const on = (side: readonly EdgeRef[], beside: ReadonlySet<string>): boolean =>
    side.some((at) => beside.has(keyOf(at)));
  const armhole = ROUND_THE_ARM.includes(edgeAt(look, one).kind);
  return neighboursOf(look, one)
    .flatMap((at) => look.seamsAt(at))
    .filter(({ name }) => name !== 'closing' && !(armhole && name === 'side'))
    .filter(({ a, b }) => (on(a, ours) && on(b, theirs)) || (on(b, ours) && on(a, theirs)));
}

const ROUND_THE_ARM: readonly EdgeKind[] = ['armhole', 'sleeve-hem', 'curved-sleeve-hem'];
