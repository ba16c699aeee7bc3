import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BlockChoice } from '../../src/engine/block/index.ts';
import { completeBody } from '../../src/engine/body/index.ts';
import { type CheckCode, checkGarment } from '../../src/engine/check/index.ts';
import { type CutPiece, makeCutPieces } from '../../src/engine/cut/index.ts';
import { type DressResult, designDress, tell } from '../../src/engine/design/index.ts';
import {
  outlineArea,
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  pathAt,
  pathLength,
} from '../../src/engine/geometry/index.ts';
import { outlineOf } from '../../src/engine/piece/index.ts';
import { randomBody } from './random-body.ts';
import { randomDress } from './random-dress.ts';

const CASES = Number(process.env.FROCKWRIGHT_CASES ?? 2000);
const SEED = 20261125;

const block: fc.Arbitrary<BlockChoice> = fc
  .record(
    {
      method: fc.constantFrom('sixth-of-neck', 'eighth-of-chest'),
      chestEase: fc.integer({ min: 40, max: 120 }).map((mm) => `${mm} mm`),
      waistEase: fc.integer({ min: 25, max: 80 }).map((mm) => `${mm} mm`),
      tummy: fc.integer({ min: 0, max: 15 }).map((mm) => `${mm} mm`),
      frontShoulderFall: fc.integer({ min: 15, max: 32 }).map((mm) => `${mm} mm`),
      backShoulderFall: fc.integer({ min: 15, max: 32 }).map((mm) => `${mm} mm`),
    },
    { requiredKeys: [] },
  )
  .map((given) => ({ kind: 'drafted', given }));

const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };

/** What must hold for every dress that can be drawn at all, to the width of a pencil line. */
const NEVER_WARNS: readonly CheckCode[] = [
  'outline-closed',
  'outline-simple',
  'seam-lengths',
  'notches-meet',
];
/** The lining's allowed difference is a first-order sum over its corners, so odd shapes may come a hair over it; shallow pleats are worth a warning. */
const NEVER_STOPS: readonly CheckCode[] = [...NEVER_WARNS, 'pleats-whole', 'lining-fits'];

describe(`random plausible bodies x designs, ${CASES} cases, seed ${SEED}`, () => {
  it('every dress fits together, and every refusal says why', () => {
    const tally = { drawn: 0, refused: new Map<string, number>() };
    fc.assert(
      fc.property(randomBody, block, randomDress, (input, chosenBlock, steps) => {
        const completed = completeBody(input);
        if (!completed.ok) return;
        const { body } = completed;
        const dress = designDress({ body, block: chosenBlock, steps, clothWidth, units: 'cm', ruler: null });
        if (!dress.ok) {
          const reason = reasonOf(dress);
          tally.refused.set(reason, (tally.refused.get(reason) ?? 0) + 1);
          return;
        }
        tally.drawn++;
        for (const piece of dress.garment.pieces) {
          const outline = outlineOf(piece);
          expect(outlineIsClosed(outline), piece.id).toBe(true);
          expect(outlineSelfCrossings(outline), piece.id).toEqual([]);
          expect(outlineArea(outline), piece.id).toBeGreaterThan(0);
        }
        for (const cut of makeCutPieces(dress.garment, { label: () => LABEL })) everythingInside(cut);
        const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
        const spoiled = checkGarment({ garment: dress.garment, body, bounds }).filter((check) =>
          check.level === 'stop'
            ? NEVER_STOPS.includes(check.code)
            : check.level === 'warn' && NEVER_WARNS.includes(check.code),
        );
        expect(spoiled.map((check) => tell(check.say, 'cm'))).toEqual([]);
      }),
      { numRuns: Math.ceil(CASES * 1.45), seed: SEED },
    );
    console.log(`${tally.drawn} dresses drawn; refused:`, Object.fromEntries(tally.refused));
    expect(tally.drawn).toBeGreaterThanOrEqual(CASES);
  });
});

function reasonOf(dress: Extract<DressResult, { ok: false }>): string {
  const [problem] = dress.problems;
  if (problem === undefined) throw new Error('A refusal must give a reason.');
  switch (problem.of) {
    case 'body':
      expect(tell(problem.problem, 'in').length).toBeGreaterThan(20);
      return problem.problem.key;
    case 'param':
      return `${problem.step} ${problem.problem.param} ${problem.problem.code}`;
    case 'block':
      return `block ${problem.problem.of}`;
    case 'unknown-step':
    case 'two-of-a-kind':
      return problem.of;
  }
}

const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '', date: '' };

/** A cutting line is closed and simple, and no place of the stitching line lies outside it. */
function everythingInside({ piece, cuttingLine, allowances }: CutPiece): void {
  expect(outlineIsClosed(cuttingLine), piece.id).toBe(true);
  expect(outlineSelfCrossings(cuttingLine), piece.id).toEqual([]);
  for (const edge of piece.edges) {
    if ((allowances[edge.name] ?? 0) < 1) continue;
    const middle = pathAt(edge.path, pathLength(edge.path) / 2).point;
    expect(outlineContains(cuttingLine, middle), `${piece.id} ${edge.name}`).toBe(true);
  }
}
