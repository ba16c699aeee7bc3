import fc from 'fast-check';
import {
  type ChosenStep,
  DESIGN_STEPS,
  type DesignStep,
  designDress,
  findStep,
} from '../../src/engine/design/index.ts';
import type { Garment } from '../../src/engine/piece/index.ts';

/** The changes that a maker can make herself on a finished dress. */
export const OWN = DESIGN_STEPS.filter(({ stage }) => stage === 'own');

/** A change with its numbers; `where` picks pieces and edges of the dress that there is, once it is known. */
export interface WishedChange {
  readonly step: string;
  readonly numbers: ChosenStep['given'];
  readonly where: readonly number[];
}

/** Any change, with some of its numbers set at random. */
export const randomChange: fc.Arbitrary<WishedChange> = fc.constantFrom(...OWN).chain((step) =>
  fc.record({
    step: fc.constant(step.id),
    numbers: fc.record(numbersOf(step), { requiredKeys: [] }).map(withoutGaps),
    where: fc.array(fc.nat(997), { minLength: 3, maxLength: 3 }),
  }),
);

type Value = string | number | boolean;

/** What is tried for the lengths that can't be anything from 1 to 60 mm. */
const TRIED: Readonly<Record<string, readonly [number, number]>> = { length: [15, 90], width: [2, 40] };

function numbersOf(step: DesignStep): Record<string, fc.Arbitrary<Value>> {
  const values = Object.entries(step.params).flatMap(([name, param]) => {
    const value = randomValue(name, param);
    return value === null ? [] : [[name, value] as const];
  });
  return Object.fromEntries(values);
}

function randomValue(name: string, param: DesignStep['params'][string]): fc.Arbitrary<Value> | null {
  switch (param.kind) {
    case 'choice':
      return fc.constantFrom(...param.choices);
    case 'flag':
      return fc.boolean();
    case 'length': {
      const [min, max] = TRIED[name] ?? [1, 60];
      return fc.integer({ min, max }).map((mm) => `${mm} mm`);
    }
    case 'ratio':
      return fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100 + (name === 'reach' ? 0.5 : 0));
    case 'count':
    case 'text':
      return null;
  }
}

const withoutGaps = (
  given: Readonly<Record<string, string | number | boolean | undefined>>,
): ChosenStep['given'] =>
  Object.fromEntries(
    Object.entries(given).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );

/** Fills in which piece and which edges: mostly ones that the dress has. */
function placed({ step, numbers, where }: WishedChange, garment: Garment, as: string): ChosenStep {
  const [first = 0, second = 0, third = 0] = where;
  const joined = garment.seams.filter(({ a, b, join }) => join.kind === 'flat' && a.length + b.length === 2);
  const use = joined[first % Math.max(1, joined.length)]?.a[0];
  // Hardly an edge in twenty can be joined, so that change looks along the seams.
  const seamed = step === 'join-pieces' ? use : undefined;
  const piece =
    garment.pieces.find(({ id }) => id === seamed?.piece) ?? garment.pieces[first % garment.pieces.length];
  const edge = (n: number): string => seamed?.edge ?? piece?.edges[n % piece.edges.length]?.name ?? 'side';
  // A line across mostly leads to an edge on the other side.
  const across = (n: number): string =>
    edge(second + Math.floor((piece?.edges.length ?? 0) / 2) + (n % 3) - 1);
  const names: Record<string, string> = {
    piece: piece?.id ?? 'front',
    edge: edge(second),
    from: edge(second),
    to: across(third),
  };
  const texts = Object.entries(findStep(step)?.params ?? {}).flatMap(([name, param]) =>
    param.kind === 'text' && names[name] !== undefined ? [[name, names[name]]] : [],
  );
  return { step, as, given: { ...numbers, ...Object.fromEntries(texts) } };
}

type Wish = Parameters<typeof designDress>[0];
type Dress = Extract<ReturnType<typeof designDress>, { ok: true }>;

/** A dress with one change more; `leftOut`: why it could not be made, where it could not. */
interface ChangedDress {
  readonly change: ChosenStep;
  readonly before: Garment;
  readonly dress: Dress;
  readonly leftOut: Dress['skipped'][number] | undefined;
}

/** Puts changes on a drawn dress one after another, each where the dress of that moment lets it; throws on a refusal. */
export function* changedInTurn(
  wish: Wish,
  plain: Garment,
  wished: readonly WishedChange[],
): Generator<ChangedDress, void, undefined> {
  let before = plain;
  const changes: ChosenStep[] = [];
  for (const [i, one] of wished.entries()) {
    const as = `change ${i}`;
    const change = placed(one, before, as);
    changes.push(change);
    const dress = designDress({ ...wish, steps: [...wish.steps, ...changes] });
    if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
    yield { change, before, dress, leftOut: dress.skipped.find((skipped) => skipped.as === as) };
    before = dress.garment;
  }
}
