import { it } from 'vitest';
import { falseAlarms, plantBlunders } from '../tests/outside/blunders.ts';
import { fillGirls, type Known } from '../tests/outside/filling-in.ts';

/** How well filling in and doubting do, on girls of 33 to 84 months drawn from the published distribution. */
const GIRLS = 4000;
const share = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;

it('filling in', () => {
  const sets: readonly Known[] = [
    ['height'],
    ['height', 'weight'],
    ['height', 'chestGirth'],
    ['height', 'weight', 'chestGirth', 'waistGirth'],
  ];
  for (const known of sets) {
    const filled = fillGirls(91, GIRLS, known);
    console.log(`Known: ${known.join(', ')}`);
    console.table(
      filled.map(({ id, bias, miss, within }) => ({
        measure: id,
        'to one side (mm)': bias.toFixed(1),
        'miss, standard deviation (mm)': miss.toFixed(1),
        'within the band of 90 %': share(within, 1),
      })),
    );
    const mean = filled.reduce((sum, { within }) => sum + within, 0) / filled.length;
    console.log(`Within the bands over all: ${share(mean, 1)}`);
  }
});

it('planted blunders', () => {
  const kinds = plantBlunders(92, 500);
  console.table(kinds.map(({ kind, caught, count }) => ({ kind, caught: share(caught, count) })));
  const caught = kinds.reduce((sum, one) => sum + one.caught, 0);
  console.log(`Caught over all: ${share(caught, kinds.length * 500)}`);
  console.log(`False alarms: ${share(falseAlarms(93, GIRLS), GIRLS)} of girls without a blunder`);
  const heavier = falseAlarms(94, GIRLS, 2);
  console.log(`False alarms where weights scatter twice as far, as today: ${share(heavier, GIRLS)}`);
});
