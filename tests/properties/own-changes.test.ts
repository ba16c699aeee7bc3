import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeBody } from '../../src/engine/body/index.ts';
import { type Check, checkGarment } from '../../src/engine/check/index.ts';
import { makeCutPieces } from '../../src/engine/cut/index.ts';
import {
  type ChosenStep,
  DESIGN_STEPS,
  type DesignStep,
  designDress,
  findStep,
  tell,
} from '../../src/engine/design/index.ts';
import {
  outlineArea,
  outlineIsClosed,
  outlineSelfCrossings,
  pathLength,
} from '../../src/engine/geometry/index.ts';
import { findEdge, type Garment, outlineOf } from '../../src/engine/piece/index.ts';
import { sketchDress } from '../../src/engine/sketch/index.ts';
import { randomBody } from './random-body.ts';
import { randomDress } from './random-dress.ts';

/** A tenth of the cases of the other dresses: every change draws its dress once more. */
const CASES = Math.ceil(Number(process.env.FROCKWRIGHT_CASES ?? 2000) / 10);
const SEED = 20261126;

const OWN = DESIGN_STEPS.filter(({ stage }) => stage === 'own');
const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };
const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '', date: '' };

/** A change with its numbers; `where` picks pieces and edges of the dress that there is, once it is known. */
interface WishedChange {
  readonly step: string;
  readonly numbers: ChosenStep['given'];
  readonly where: readonly number[];
}

const change: fc.Arbitrary<WishedChange> = fc.constantFrom(...OWN).chain((step) =>
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

describe(`random changes of the maker's own x random dresses, ${CASES} cases, seed ${SEED}`, () => {
  it('never break a dress: outlines stay whole, seams hold edges that exist, what cannot be is told', () => {
    const tally = new Map<string, { made: number; leftOut: number }>();
    fc.assert(
      fc.property(
        randomBody,
        randomDress,
        fc.array(change, { minLength: 1, maxLength: 4 }),
        (input, steps, wished) => {
          const completed = completeBody(input);
          if (!completed.ok) return fc.pre(false);
          const { body } = completed;
          const wish = {
            body,
            block: { kind: 'drafted', given: {} },
            clothWidth,
            units: 'cm',
            ruler: null,
          } as const;
          const plain = designDress({ ...wish, steps });
          if (!plain.ok) return fc.pre(false);
          let before = plain.garment;
          const changes: ChosenStep[] = [];
          for (const [i, one] of wished.entries()) {
            changes.push(placed(one, before, `change ${i}`));
            const dress = designDress({ ...wish, steps: [...steps, ...changes] });
            if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
            const last = dress.skipped.find(({ as }) => as === `change ${i}`);
            const count = tally.get(one.step) ?? { made: 0, leftOut: 0 };
            tally.set(one.step, {
              made: count.made + (last === undefined ? 1 : 0),
              leftOut: count.leftOut + (last === undefined ? 0 : 1),
            });
            for (const { problem } of dress.skipped) expect(tell(problem, 'in')).toMatch(/^\S.{20,}\.$/);
            if (last !== undefined) expect(dress.garment).toEqual(before);
            holdsTogether(dress.garment);
            before = dress.garment;
          }
          const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
          const checks = checkGarment({ garment: before, body, bounds });
          for (const check of checks) expect(tell(check.say, 'in')).not.toBe('');
          if (changes.every(keepsSeams)) expect(seamFaults(checks)).toEqual([]);
          makeCutPieces(before, { label: () => LABEL });
          for (const side of ['front', 'back'] as const) sketchDress(before, side);
        },
      ),
      { numRuns: CASES, maxSkipsPerRun: 20, seed: SEED },
    );
    console.log('changes:', Object.fromEntries(tally));
    // Every change must have been made now and then, or nothing was tried.
    for (const { id } of OWN) expect(tally.get(id)?.made ?? 0, id).toBeGreaterThan(CASES / 100);
  });
});

/** Changes that must leave every seam as it fitted before. */
const KEEPS_SEAMS = new Set([
  'add-dart',
  'add-tuck',
  'change-edge-allowance',
  'join-pieces',
  'mirror-piece',
  'rename-piece',
  'split-along',
]);
const keepsSeams = ({ step, given }: ChosenStep): boolean => KEEPS_SEAMS.has(step) && given.letOut !== 'none';

const seamFaults = (checks: readonly Check[]): readonly string[] =>
  checks
    .filter(({ code, level }) => code === 'seam-lengths' && level !== 'ok')
    .map(({ say }) => tell(say, 'cm'));

function holdsTogether({ pieces, seams }: Garment): void {
  for (const piece of pieces) {
    const outline = outlineOf(piece);
    expect(outlineIsClosed(outline), piece.id).toBe(true);
    expect(outlineSelfCrossings(outline), piece.id).toEqual([]);
    expect(outlineArea(outline), piece.id).toBeGreaterThan(0);
    expect(new Set(piece.edges.map(({ name }) => name)).size, piece.id).toBe(piece.edges.length);
    for (const notch of piece.notches) {
      const edge = findEdge(piece, notch.edge);
      const length = edge === undefined ? -1 : pathLength(edge.path);
      expect(notch.at, `${piece.id} ${notch.edge}`).toBeGreaterThanOrEqual(0);
      expect(notch.at, `${piece.id} ${notch.edge}`).toBeLessThanOrEqual(length + 1e-6);
    }
  }
  expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
  expect(new Set(seams.map(({ id }) => id)).size).toBe(seams.length);
  for (const seam of seams) {
    expect(Math.min(seam.a.length, seam.b.length), seam.id).toBeGreaterThan(0);
    for (const use of [...seam.a, ...seam.b]) {
      const piece = pieces.find(({ id }) => id === use.piece);
      expect(piece && findEdge(piece, use.edge), `${seam.id}: ${use.piece} ${use.edge}`).toBeDefined();
    }
  }
}
