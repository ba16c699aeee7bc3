import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeBody } from '../../src/engine/body/index.ts';
import { type Check, checkGarment } from '../../src/engine/check/index.ts';
import { makeCutPieces } from '../../src/engine/cut/index.ts';
import { type ChosenStep, designDress, tell } from '../../src/engine/design/index.ts';
import { pathLength } from '../../src/engine/geometry/index.ts';
import { findEdge, type Garment } from '../../src/engine/piece/index.ts';
import { judgeOutline, LABEL } from './judge-dress.ts';
import { randomBody } from './random-body.ts';
import { changedInTurn, OWN, randomChange } from './random-change.ts';
import { randomDress } from './random-dress.ts';

/** Fewer cases than of whole dresses: every change draws its dress once more. */
const CASES = Math.ceil(Number(process.env.FROCKWRIGHT_CASES ?? 2000) / 10);
const SEED = 20261126;

const clothWidth = { main: 1400, yoke: 1400, skirt: 1120, lining: 1400, net: 1400, trim: 1400 };

describe(`random changes of the maker's own x random dresses, ${CASES} cases, seed ${SEED}`, () => {
  it('never break a dress: outlines stay whole, seams hold edges that exist, what cannot be is told', () => {
    const tally = new Map<string, { made: number; leftOut: number }>();
    fc.assert(
      fc.property(
        randomBody,
        randomDress,
        fc.array(randomChange, { minLength: 1, maxLength: 4 }),
        (input, steps, wished) => {
          const completed = completeBody(input);
          if (!completed.ok) return fc.pre(false);
          const { body } = completed;
          const wish = {
            body,
            block: { kind: 'drafted', given: {} },
            steps,
            clothWidth,
            units: 'cm',
            ruler: null,
          } as const;
          const plain = designDress(wish);
          if (!plain.ok) return fc.pre(false);
          let { garment } = plain;
          const changes: ChosenStep[] = [];
          for (const { change, before, dress, leftOut } of changedInTurn(wish, garment, wished)) {
            changes.push(change);
            const count = tally.get(change.step) ?? { made: 0, leftOut: 0 };
            tally.set(change.step, {
              made: count.made + (leftOut === undefined ? 1 : 0),
              leftOut: count.leftOut + (leftOut === undefined ? 0 : 1),
            });
            for (const { problem } of dress.skipped) expect(tell(problem, 'in')).toMatch(/^\S.{20,}\.$/);
            if (leftOut !== undefined) expect(dress.garment).toEqual(before);
            holdsTogether(dress.garment);
            garment = dress.garment;
          }
          const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
          const checks = checkGarment({ garment, body, bounds });
          for (const check of checks) expect(tell(check.say, 'in')).not.toBe('');
          if (changes.every(keepsSeams)) expect(seamFaults(checks)).toEqual([]);
          makeCutPieces(garment, { label: () => LABEL });
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
    judgeOutline(piece);
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
