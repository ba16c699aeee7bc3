import { BLOCK_PARAMS } from '../../engine/block/index.ts';
import { type Param, resolveParams } from '../../engine/construct/index.ts';
import { designDress, findStep, stepsBefore } from '../../engine/design/index.ts';

/** All that a dress is designed from. */
export type Wish = Parameters<typeof designDress>[0];

/** Which number is meant: of the block, or of one step of the design. */
export type ParamRef =
  | { readonly of: 'block'; readonly param: string }
  | { readonly of: 'step'; readonly step: string; readonly as: string | null; readonly param: string };

export const sameParam = (a: ParamRef, b: ParamRef): boolean => paramKey(a) === paramKey(b);

/** One text for a parameter, for maps and for grouping changes. */
export const paramKey = (ref: ParamRef): string =>
  ref.of === 'block'
    ? `block.${ref.param}`
    : `${ref.step}${ref.as === null ? '' : `:${ref.as}`}.${ref.param}`;

/** A number as it stands: given, or by its rule; lengths in mm. */
export interface ParamNow {
  readonly value: number;
  readonly range: readonly [number, number];
  readonly kind: 'length' | 'ratio';
}

/** Every length and ratio of the block and of the steps, the ones that can be dragged on the table. */
export function draggableParams(wish: Wish): readonly ParamRef[] {
  const numbers = (table: Readonly<Record<string, { readonly kind: string }>>): readonly string[] =>
    Object.entries(table)
      .filter(([, { kind }]) => kind === 'length' || kind === 'ratio')
      .map(([name]) => name);
  const ofBlock = wish.block.kind === 'drafted' ? numbers(BLOCK_PARAMS) : [];
  return [
    ...ofBlock.map((param): ParamRef => ({ of: 'block', param })),
    ...wish.steps.flatMap(({ step, as = null }) =>
      numbers(findStep(step)?.params ?? {}).map((param): ParamRef => ({ of: 'step', step, as, param })),
    ),
  ];
}

/** How a number stands in this dress; null where the dress has no such number or can't be drawn up to there. */
export function paramNow(wish: Wish, ref: ParamRef): ParamNow | null {
  if (ref.of === 'block') {
    if (wish.block.kind !== 'drafted') return null;
    const method = wish.block.given.method === 'eighth-of-chest' ? 'eighth-of-chest' : 'sixth-of-neck';
    const context = { body: wish.body, method } as const;
    const table: Readonly<Record<string, Param<typeof context>>> = BLOCK_PARAMS;
    const resolved = resolveParams(table, wish.block.given, context, wish.units);
    return resolved.ok ? numberNow(table[ref.param], resolved.values[ref.param], context) : null;
  }
  const chosen = chosenStep(wish, ref);
  const known = findStep(ref.step);
  if (chosen === undefined || known === undefined) return null;
  const before = designDress({ ...wish, steps: stepsBefore(wish.steps, chosen) });
  if (!before.ok) return null;
  const context = { body: wish.body, garment: before.garment };
  const resolved = resolveParams(known.params, chosen.given, context, wish.units);
  return resolved.ok ? numberNow(known.params[ref.param], resolved.values[ref.param], context) : null;
}

function numberNow<C>(param: Param<C> | undefined, value: unknown, context: C): ParamNow | null {
  if (param === undefined || typeof value !== 'number') return null;
  if (param.kind !== 'length' && param.kind !== 'ratio') return null;
  return { value, range: param.range(context), kind: param.kind };
}

type Chosen = Wish['steps'][number];

const chosenStep = (wish: Wish, ref: Extract<ParamRef, { of: 'step' }>): Chosen | undefined =>
  wish.steps.find(({ step, as = null }) => step === ref.step && as === ref.as);

/** The same wish with one number changed; a length in mm. */
export function withParam(wish: Wish, ref: ParamRef, kind: ParamNow['kind'], value: number): Wish {
  const text = kind === 'length' ? `${value.toFixed(6)} mm` : value;
  if (ref.of === 'block') {
    if (wish.block.kind !== 'drafted') return wish;
    return { ...wish, block: { ...wish.block, given: { ...wish.block.given, [ref.param]: text } } };
  }
  const chosen = chosenStep(wish, ref);
  return {
    ...wish,
    steps: wish.steps.map((step) =>
      step === chosen ? { ...step, given: { ...step.given, [ref.param]: text } } : step,
    ),
  };
}
