import type { ParamValues } from '../construct/index.ts';
import { edgeLength, edgeStart, pieceOf } from '../piece/index.ts';
import { inches } from '../units/index.ts';
import { armholeDepth, HALVES } from './bodice.ts';
import { COMMON_PRACTICE, choiceParam, lengthParam, type StepContext } from './step.ts';

/** The body for which the lengths at age one hold: straight armhole depth and upper arm girth, mm. */
const AT_AGE_ONE = { depth: inches(3.5), arm: 142 } as const;

/** A length that covers the arm grows with the arm's girth. */
const withArm =
  (atAgeOne: number) =>
  ({ body }: StepContext): number =>
    (body.values.upperArmGirth.mm * atAgeOne) / AT_AGE_ONE.arm;

/** A length along the armhole grows with its straight depth. */
const withDepth =
  (atAgeOne: number) =>
  ({ garment }: StepContext): number =>
    (armholeDepth(garment, 'front') * atAgeOne) / AT_AGE_ONE.depth;

/** What lowers the underarm stays as at age one, less for smaller ones: a low underarm drags the bodice up. */
const noMoreThan =
  (atAgeOne: number) =>
  (c: StepContext): number =>
    Math.min(atAgeOne, withDepth(atAgeOne)(c));

/** The drop, less where it would eat up a short side seam under a short sleeve. */
const dropRule = (c: StepContext): number => {
  const room =
    edgeLength(pieceOf(c.garment, 'front'), 'side') - SHORTEST_SIDE - noMoreThan(inches(0.5))(c) - 1;
  return Math.max(0, Math.min(noMoreThan(inches(1.5))(c), room));
};

/** Shortest side seam that may be left under the sleeve, mm. */
export const SHORTEST_SIDE = 25;

const armLength = ({ body }: StepContext): number => body.values.armLength.mm;

/** How far the underarm lies outside the shoulder tip; an extension has to reach beyond it. */
const leastExtension = ({ garment }: StepContext): number =>
  Math.max(
    ...HALVES.map((half) => {
      const piece = pieceOf(garment, half);
      return edgeStart(piece, 'side').x - edgeStart(piece, 'armhole').x;
    }),
  ) + 8;

const source = `${COMMON_PRACTICE}; given for age one, from there with the arm or the armhole`;

export const dropShoulderParams = {
  finish: choiceParam(['cap-pointed', 'cap-rounded', 'short', 'straight'], 'cap-rounded', COMMON_PRACTICE),
  drop: lengthParam(dropRule, (c) => [0, armholeDepth(c.garment, 'front')], source),
  capHeight: lengthParam(withArm(inches(2)), (c) => [leastExtension(c), armLength(c)], source),
  fall: lengthParam(withArm(inches(2)), (c) => [10, armLength(c)], source),
  shapeIn: lengthParam(noMoreThan(inches(0.5)), (c) => [1, armLength(c) / 4], source),
  shapeDown: lengthParam(noMoreThan(inches(0.5)), (c) => [1, armLength(c) / 4], source),
  hollow: lengthParam(withDepth(inches(0.75)), (c) => [0, armholeDepth(c.garment, 'front') / 2], source),
  lowerUnderarm: lengthParam(
    (c) => Math.min(22, edgeLength(pieceOf(c.garment, 'front'), 'side') - SHORTEST_SIDE),
    (c) => [0, edgeLength(pieceOf(c.garment, 'front'), 'side') - SHORTEST_SIDE],
    'a child 1.5-3 cm where the shoulder runs onto the arm (common practice); caps and straight edges only',
  ),
} as const;

export type DropShoulderValues = ParamValues<typeof dropShoulderParams>;
