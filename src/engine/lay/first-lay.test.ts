import { expect, test } from 'vitest';
import { dressToLay, layFaults, PLAIN, planned } from '../../../tests/fixtures/laid.ts';
import { packAtOnce } from './first-lay.ts';
import { readLay, runLay } from './index.ts';

const party = ['Adaeze', 'Bisi', 'Chidi', 'Dayo'].flatMap((child, i) => dressToLay(0.8 + i / 10, child));
const striped = { ...PLAIN, repeat: { along: { every: 60, first: 0 } } };
const flawed = {
  ...PLAIN,
  flaws: [
    {
      outline: [
        { x: 200, y: 300 },
        { x: 260, y: 300 },
        { x: 260, y: 360 },
        { x: 200, y: 360 },
      ],
    },
  ],
};

test.each([
  ['single', PLAIN],
  ['folded lengthwise', { ...PLAIN, folding: 'lengthwise' as const }],
  ['striped', striped],
  ['with a flaw', flawed],
])('a lay that is there at once holds all pieces and no fault: %s', (_, cloth) => {
  const plan = planned(party, cloth);
  let best = null;
  for (const step of runLay(plan, { seed: 1, evaluations: 1 }, packAtOnce)) best = step.best;
  if (best === null) throw new Error('There is a lay.');
  const lay = readLay(plan, best);
  const copies = lay.stretches.flatMap(({ pieces }) => pieces.flatMap((piece) => piece.copies));
  expect(copies).toHaveLength(party.reduce((sum, { cut }) => sum + cut.piece.cutting.copies, 0));
  expect(layFaults(lay)).toEqual([]);
});
