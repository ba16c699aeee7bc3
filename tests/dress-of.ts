import type { BlockChoice } from '../src/engine/block/index.ts';
import { completeBody, type MeasureId } from '../src/engine/body/index.ts';
import { type ChosenStep, type DressResult, designDress } from '../src/engine/design/index.ts';
import type { Garment, Piece } from '../src/engine/piece/index.ts';

export interface Wish {
  readonly ageMonths?: number;
  readonly measured?: Partial<Record<MeasureId, number>>;
  readonly block?: BlockChoice;
  readonly steps?: readonly (string | [step: string, given: ChosenStep['given'], as?: string])[];
  readonly clothWidth?: number;
}

/** Designs a dress for a test; bodies default to the middle girl of five. */
export function tryDress(wish: Wish): DressResult {
  const completed = completeBody({ ageMonths: wish.ageMonths ?? 60, measured: wish.measured ?? {} });
  if (!completed.ok) throw new Error(JSON.stringify(completed.problems));
  const width = wish.clothWidth ?? 1400;
  return designDress({
    body: completed.body,
    block: wish.block ?? { kind: 'drafted', given: {} },
    steps: (wish.steps ?? []).map((s) =>
      typeof s === 'string'
        ? { step: s, given: {} }
        : { step: s[0], given: s[1], ...(s[2] === undefined ? {} : { as: s[2] }) },
    ),
    clothWidth: { main: width, yoke: width, skirt: width, lining: width, net: width, trim: width },
    units: 'cm',
    ruler: null,
  });
}

/** What a step needs to work on, when a plain bodice has not got it. */
const NEEDS: Readonly<Record<string, NonNullable<Wish['steps']>>> = {
  'high-low-hem': ['circle-skirt'],
  'full-back-opening': ['back-zip', 'gathered-skirt'],
  'growth-hem': ['gathered-skirt'],
  'growth-tuck': ['gathered-skirt'],
  'sleeve-extension': [['drop-shoulder', { finish: 'straight' }]],
  'sleeve-band': ['set-in-sleeve'],
};

/** A step, after the others that it needs. */
export const withNeeds = (step: string): NonNullable<Wish['steps']> => [...(NEEDS[step] ?? []), step];

/** The garment of a wish that must be possible. */
export function dressOf(wish: Wish): Garment {
  const dress = tryDress(wish);
  if (!dress.ok) throw new Error(JSON.stringify(dress.problems));
  return dress.garment;
}

export function pieceNamed(garment: Garment, id: string): Piece {
  const piece = garment.pieces.find((p) => p.id === id);
  if (piece === undefined)
    throw new Error(`No piece ${id} among ${garment.pieces.map((p) => p.id).join(', ')}`);
  return piece;
}

/** The key of the sentence with which a design is refused on this body. */
export function refusalOf(wish: Wish): string {
  const dress = tryDress(wish);
  if (dress.ok) throw new Error('The design was expected to be refused.');
  const [problem] = dress.problems;
  if (problem === undefined) throw new Error('A refusal gives a reason.');
  switch (problem.of) {
    case 'body':
      return problem.problem.key;
    case 'param':
      return `${problem.step}.${problem.problem.param} ${problem.problem.code}`;
    default:
      return problem.of;
  }
}
