import fc from 'fast-check';
import { expect } from 'vitest';
import { type Body, type BodyInput, completeBody } from '../../src/engine/body/index.ts';
import { type CheckCode, checkGarment } from '../../src/engine/check/index.ts';
import { type CutPiece, makeCutPieces } from '../../src/engine/cut/index.ts';
import { type ChosenStep, type DressResult, designDress, tell } from '../../src/engine/design/index.ts';
import {
  outlineArea,
  outlineContains,
  outlineIsClosed,
  outlineSelfCrossings,
  pathAt,
  pathLength,
} from '../../src/engine/geometry/index.ts';
import { type Garment, outlineOf, type Piece } from '../../src/engine/piece/index.ts';
import { randomBlock } from './random-block.ts';

/** What must hold for every dress that can be drawn at all, to the width of a pencil line. */
const NEVER_WARNS: readonly CheckCode[] = [
  'outline-closed',
  'outline-simple',
  'seam-lengths',
  'notches-meet',
];
/** The lining's allowed difference is a first-order sum over its corners, so odd shapes may come a hair over it; shallow pleats are worth a warning. */
const NEVER_STOPS: readonly CheckCode[] = [...NEVER_WARNS, 'pleats-whole', 'lining-fits'];

/** How many dresses were drawn, and why the others were refused. */
interface Tally {
  drawn: number;
  readonly refused: Map<string, number>;
}

/** Random dresses of random children, and how many of them must come to be drawn. */
interface RandomDresses {
  readonly bodies: fc.Arbitrary<BodyInput>;
  readonly dresses: fc.Arbitrary<readonly ChosenStep[]>;
  readonly clothWidth: Parameters<typeof designDress>[0]['clothWidth'];
  readonly seed: number;
  /** So many must be drawn of so many tries. */
  readonly cases: number;
  readonly tries: number;
}

/** Judges every dress that is tried, on random blocks, and tells why the refused ones were refused. */
export function judgeDresses({ bodies, dresses, clothWidth, seed, cases, tries }: RandomDresses): void {
  const tally: Tally = { drawn: 0, refused: new Map() };
  fc.assert(
    fc.property(bodies, randomBlock, dresses, (input, block, steps) => {
      const completed = completeBody(input);
      if (!completed.ok) return;
      const { body } = completed;
      judgeDress(body, designDress({ body, block, steps, clothWidth, units: 'cm', ruler: null }), tally);
    }),
    { numRuns: tries, seed },
  );
  console.log(`${tally.drawn} dresses drawn; refused:`, Object.fromEntries(tally.refused));
  expect(tally.drawn).toBeGreaterThanOrEqual(cases);
}

/** Judges what came of a wish: a dress in which all fits, or a refusal with a sentence. */
function judgeDress(body: Body, dress: DressResult, tally: Tally): void {
  if (!dress.ok) {
    const reason = reasonOf(dress);
    tally.refused.set(reason, (tally.refused.get(reason) ?? 0) + 1);
    return;
  }
  tally.drawn++;
  judgePieces(dress.garment);
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  const spoiled = checkGarment({ garment: dress.garment, body, bounds }).filter((check) =>
    check.level === 'stop'
      ? NEVER_STOPS.includes(check.code)
      : check.level === 'warn' && NEVER_WARNS.includes(check.code),
  );
  expect(spoiled.map((check) => tell(check.say, 'cm'))).toEqual([]);
}

function judgePieces(garment: Garment): void {
  for (const piece of garment.pieces) judgeOutline(piece);
  for (const cut of makeCutPieces(garment, { label: () => LABEL })) everythingInside(cut);
}

/** Closed, simple, and walked round the right way. */
export function judgeOutline(piece: Piece): void {
  const outline = outlineOf(piece);
  expect(outlineIsClosed(outline), piece.id).toBe(true);
  expect(outlineSelfCrossings(outline), piece.id).toEqual([]);
  expect(outlineArea(outline), piece.id).toBeGreaterThan(0);
}

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

export const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '', date: '' };

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
