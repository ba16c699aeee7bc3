import type { Ruler } from '../units/index.ts';

/**
 * What a stretch of a straight piece is. `face` shows in the finished skirt and decides whether it fits the waist;
 * `under` lies under a pleat; `body` is cloth without pleats; `turning` is an allowance.
 */
export type StretchKind = 'face' | 'under' | 'body' | 'turning';

export interface Stretch {
  readonly kind: StretchKind;
  /** mm */
  readonly length: number;
}

/** Stretches whose lengths differ by less are meant to be equal, mm. */
const SAME = 0.05;

/**
 * The stretches as a hand lays them off with a ruler, in steps of it. Equal stretches stay equal, and what rounding
 * leaves over is given, a step each, to the last of them at the end where the centre back is, as the trade does
 * ("keep the pleats by the front even, put the remainder in the last": Conover, A Complete Course in Dressmaking, V,
 * New York 1921, p. 69). So the faces add up to what they should within half a step. If the whole is off by more than
 * a step then, the cloth under the pleats (or the body of an unpleated piece) makes up for it.
 */
export function ruledSteps(
  stretches: readonly Stretch[],
  { step }: Ruler,
  back: 'start' | 'end',
): readonly number[] {
  const order = stretches.map((_, i) => i);
  if (back === 'start') order.reverse();
  const steps = stretches.map(() => 0);
  for (const alike of groupsAlike(stretches, order)) {
    const [first] = alike;
    const length = (first === undefined ? 0 : (stretches[first]?.length ?? 0)) * alike.length;
    shareOut(steps, alike, Math.round(length / step + FLOAT_SLACK));
  }
  const exact = stretches.reduce((sum, { length }) => sum + length, 0);
  const laid = steps.reduce((sum, n) => sum + n, 0);
  if (Math.abs(laid * step - exact) > step) {
    const off = Math.round(exact / step) - laid;
    const given = (kind: StretchKind): readonly number[] => order.filter((i) => stretches[i]?.kind === kind);
    const takers = [given('under'), given('body'), given('turning')].find((indices) => indices.length > 0);
    for (let i = 0; i < Math.abs(off); i++) {
      const taker = takers?.[takers.length - 1 - (i % takers.length)];
      if (taker !== undefined) steps[taker] = (steps[taker] ?? 0) + Math.sign(off);
    }
  }
  return steps;
}

/** Lets a half step that sits a rounding error low still go up. */
const FLOAT_SLACK = 1e-9;

/** Stretches of one kind and length, each group in the order of laying off. */
function groupsAlike(
  stretches: readonly Stretch[],
  order: readonly number[],
): readonly (readonly number[])[] {
  const groups: { readonly like: Stretch; readonly members: number[] }[] = [];
  for (const i of order) {
    const own = stretches[i];
    if (own === undefined) continue;
    const group = groups.find(
      ({ like }) => like.kind === own.kind && Math.abs(like.length - own.length) < SAME,
    );
    if (group === undefined) groups.push({ like: own, members: [i] });
    else group.members.push(i);
  }
  return groups.map(({ members }) => members);
}

/** Gives every member the same number of steps, and what is left over one by one to the last. */
function shareOut(steps: number[], members: readonly number[], total: number): void {
  const each = Math.floor(total / members.length);
  const over = total - each * members.length;
  for (const [i, member] of members.entries()) {
    steps[member] = each + (i >= members.length - over ? 1 : 0);
  }
}
