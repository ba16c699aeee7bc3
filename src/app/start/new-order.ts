import type { MeasureId } from '../../engine/body/index.ts';
import { findDress } from '../../engine/design/index.ts';
import type { OrderFile } from '../../engine/order/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';

/** The measures that are asked for at the start; with the age they are the five numbers. */
export const FIRST_MEASURES = [
  'height',
  'chestGirth',
  'waistGirth',
  'backNeckToWaist',
] as const satisfies readonly MeasureId[];
export type FirstMeasure = (typeof FIRST_MEASURES)[number];

/** What she has told so far. */
export interface Start {
  readonly name: string;
  readonly years: number | undefined;
  readonly months: number | undefined;
  readonly measures: Readonly<Partial<Record<FirstMeasure, string>>>;
  readonly dueDay: string;
  readonly dress: string;
}

/** Cloth as it is sold most: satin at 58-60 in, net at 54 in, lining cotton at 44-45 in (common practice, no source). */
const WIDTHS = {
  in: { main: '58', net: '54', lining: '44' },
  cm: { main: '148', net: '137', lining: '112' },
} as const;

const OUTSIDE = ['main', 'yoke', 'skirt', 'net', 'trim'] as const;

/** An order for one child and one dress of the library, ready to be drawn. */
export function newOrder(start: Start, units: UnitSystem, today: string): OrderFile {
  const { name, years, months, measures, dueDay, dress } = start;
  const ageMonths =
    years === undefined && months === undefined ? undefined : (years ?? 0) * 12 + (months ?? 0);
  const inNet = OUTSIDE.filter((role) => findDress(dress)?.inNet.includes(role) === true);
  const isMeasured = Object.keys(measures).length > 0;
  return {
    frockwright: 1,
    title: say('page.start.title', { child: name }, units),
    dueDay,
    units,
    cloths: [
      {
        name: say('page.start.cloth', {}, units),
        use: OUTSIDE.filter((role) => !inNet.includes(role)),
        width: WIDTHS[units].main,
      },
      ...(inNet.length === 0
        ? []
        : [
            {
              name: say('page.start.net', {}, units),
              use: inNet,
              kind: 'net' as const,
              width: WIDTHS[units].net,
            },
          ]),
      {
        name: say('page.start.lining', {}, units),
        use: ['lining'],
        kind: 'cotton',
        width: WIDTHS[units].lining,
      },
    ],
    startFrom: dress,
    children: [
      {
        name,
        ...(ageMonths === undefined ? {} : { ageMonths }),
        ...(isMeasured ? { measured: today, measures: { ...measures } } : {}),
      },
    ],
  };
}
