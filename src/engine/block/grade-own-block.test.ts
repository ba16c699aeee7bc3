import { describe, expect, it } from 'vitest';
import { type Body, completeBody } from '../body/index.ts';
import { createBench } from '../construct/index.ts';
import { edgeEnd, edgeLength, edgeStart, type Piece } from '../piece/index.ts';
import { draftBlock } from './draft-block.ts';
import { gradeOwnBlock } from './grade-own-block.ts';
import type { OwnHalf } from './own-block.ts';

const bodyOf = (ageMonths: number): Body => {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('An average child has a body.');
  return completed.body;
};

const draftFor = (body: Body): { front: Piece; back: Piece } => {
  const given = { tummy: 0, chestEase: '5 cm', waistEase: '4 cm' };
  const drafted = draftBlock(createBench(), body, { kind: 'drafted', given }, 'cm');
  if (!drafted.ok) throw new Error(JSON.stringify(drafted.problems));
  return drafted.block;
};

/** What a maker would measure on the drafted paper. */
const measured = (piece: Piece): OwnHalf => ({
  neckWidth: edgeStart(piece, 'shoulder').x,
  neckDepth: edgeEnd(piece, 'centre').y,
  shoulder: edgeLength(piece, 'shoulder'),
  shoulderFall: edgeEnd(piece, 'shoulder').y,
  armholeDepth: edgeEnd(piece, 'armhole').y - edgeStart(piece, 'armhole').y,
  armholeHollow: 12,
  chestWidth: edgeStart(piece, 'side').x,
  waistWidth: edgeEnd(piece, 'side').x,
  sideWaistLevel: edgeEnd(piece, 'side').y,
  centreLength: edgeLength(piece, 'centre'),
});

describe('a paper block taken to another child', () => {
  for (const [from, to] of [
    [36, 60],
    [60, 36],
    [24, 96],
    [120, 72],
  ] as const) {
    it(`from ${from} to ${to} months it is the block drafted for that child`, () => {
      const [fits, wearer] = [bodyOf(from), bodyOf(to)];
      const [paper, wanted] = [draftFor(fits), draftFor(wearer)];
      const own = {
        front: measured(paper.front),
        back: measured(paper.back),
        seamIncluded: 0,
        closingIncluded: 0,
      };
      const graded = gradeOwnBlock(own, fits, wearer);
      for (const half of ['front', 'back'] as const) {
        const target = measured(wanted[half]);
        for (const [name, mm] of Object.entries(graded[half])) {
          // The draft aims the shoulder at the side, so its fall moves a little with the chest; a paper's own stays.
          const slack = name === 'shoulderFall' || name === 'armholeDepth' ? 3 : 0.01;
          expect(Math.abs(mm - target[name as keyof OwnHalf]), `${half} ${name}`).toBeLessThan(slack);
        }
      }
    });
  }

  it('stays as it is for the child that it fits', () => {
    const fits = bodyOf(60);
    const paper = draftFor(fits);
    const own = {
      front: measured(paper.front),
      back: measured(paper.back),
      seamIncluded: 10,
      closingIncluded: 20,
    };
    expect(gradeOwnBlock(own, fits, fits)).toEqual(own);
  });
});
