import { formatSellingLength, type Lay, lengthToBuy, SELLING_UNITS } from '../../../engine/lay/index.ts';
import type { UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { clothText } from './lay-tape.tsx';
import type { SeenLay } from './seen-lay.ts';

/** What is bought for a lay, mm: nothing where all of it lies on lengths at hand. */
export const boughtFor = ({ lengths }: Pick<SeenLay, 'lengths'>): number =>
  lengths.reduce((sum, { at, lay }) => sum + (at === null ? lay.toBuy.bought : 0), 0);

export const soldAs = (mm: number, { cloth }: Pick<SeenLay, 'cloth'>): string =>
  formatSellingLength(mm, cloth.unit);

/** How the length to buy comes about, line by line, in the order in which it is reckoned. */
export function reckoning(
  seen: SeenLay,
  units: UnitSystem,
): readonly { readonly what: string; readonly length: string }[] {
  const length = (mm: number): string => clothText(mm, units);
  const atHand = seen.lengths.flatMap(({ at, lay }) =>
    at === null
      ? []
      : [{ what: say('page.cloth.why.at-hand', { number: at + 1 }, units), length: length(lay.length) }],
  );
  const bought = seen.lengths.find(({ at }) => at === null)?.lay;
  return bought === undefined ? atHand : [...atHand, ...boughtLines(bought, units, length)];
}

function boughtLines({ length, cloth, toBuy }: Lay, units: UnitSystem, text: (mm: number) => string) {
  const { shrinkage, extra, unit, repeat } = cloth;
  const along = repeat?.along?.every ?? 0;
  const cut = length * (1 + extra) + along;
  const shrunk = cut / (1 - shrinkage) - cut;
  const step = SELLING_UNITS[unit].step;
  const hundredth = (share: number): number => Math.round(share * 1000) / 10;
  const line = (what: string, mm: number) => (mm > 0.05 ? [{ what, length: text(mm) }] : []);
  return [
    ...line(say('page.cloth.why.lay', {}, units), length),
    ...line(say('page.cloth.why.extra', { percent: hundredth(extra) }, units), length * extra),
    ...line(say('page.cloth.why.repeat', {}, units), along),
    ...line(say('page.cloth.why.shrinkage', { percent: hundredth(shrinkage) }, units), shrunk),
    ...line(
      say(
        'page.cloth.why.rounding',
        { step: formatSellingLength(lengthToBuy(step, { shrinkage: 0, unit }), unit) },
        units,
      ),
      toBuy.bought - cut - shrunk,
    ),
  ];
}

/** Cut pieces by cloth, in hundredths. */
export function coveredPercent({ lengths }: SeenLay): number {
  const used = lengths.reduce((sum, { lay }) => sum + lay.length, 0);
  const covered = lengths.reduce((sum, { lay }) => sum + lay.density * lay.length, 0);
  return used === 0 ? 0 : Math.round((100 * covered) / used);
}
