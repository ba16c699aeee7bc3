// Made by tools/make-fill-tables.mjs from data/*.csv; change those, not this. Sources: data/SOURCES.md.
import type { Curve } from './curve.ts';

/** Weight of girls by stature (mm), kg: below 860 mm WHO, from there a smooth curve through Snyder 1977. */
export const WEIGHT_BY_STATURE: Curve = [
  [560, 4.8],
  [620, 6.4],
  [680, 7.8],
  [740, 8.9],
  [800, 10.1],
  [860, 11.83],
  [920, 13.28],
  [980, 14.91],
  [1040, 16.75],
  [1100, 18.83],
  [1160, 21.17],
  [1220, 23.8],
  [1280, 26.78],
  [1340, 30.14],
  [1400, 33.93],
  [1460, 38.21],
  [1520, 43.05],
  [1580, 48.51],
  [1640, 54.69],
];

/** Standard deviation of a girl's weight among girls of her stature, as a share of it (Snyder 1977). */
export const WEIGHT_SPREAD_BY_STATURE: Curve = [
  [860, 0.0911],
  [920, 0.0854],
  [980, 0.0797],
  [1040, 0.087],
  [1100, 0.0964],
  [1160, 0.1039],
  [1220, 0.1171],
  [1280, 0.1271],
  [1340, 0.1474],
  [1400, 0.1484],
  [1460, 0.1568],
  [1520, 0.1514],
  [1580, 0.1526],
  [1640, 0.1475],
];

/** What hangs together among girls of one stature, in the order of the correlations. */
export const BUILD_IDS = [
  'weight',
  'chestGirth',
  'hipGirth',
  'headGirth',
  'upperArmGirth',
  'waistGirth',
  'neckGirth',
  'wristGirth',
] as const;

/**
 * Correlations of the logarithms among girls of one stature (Snyder 1977): first girls of 24-84 months, then of 84-168.
 * Waist, neck and wrist were never taken together: they go with the others by way of weight and chest.
 */
export const BUILD_CORRELATIONS: readonly [readonly (readonly number[])[], readonly (readonly number[])[]] = [
  [
    [1, 0.7749, 0.8567, 0.3035, 0.8182, 0.6769, 0.5505, 0.5849],
    [0.7749, 1, 0.7188, 0.3108, 0.7241, 0.6909, 0.5246, 0.5395],
    [0.8567, 0.7188, 1, 0.2543, 0.7788, 0.6028, 0.4851, 0.5129],
    [0.3035, 0.3108, 0.2543, 1, 0.2951, 0.2369, 0.1856, 0.1938],
    [0.8182, 0.7241, 0.7788, 0.2951, 1, 0.5913, 0.4725, 0.498],
    [0.6769, 0.6909, 0.6028, 0.2369, 0.5913, 1, 0.4135, 0.4318],
    [0.5505, 0.5246, 0.4851, 0.1856, 0.4725, 0.4135, 1, 0.3432],
    [0.5849, 0.5395, 0.5129, 0.1938, 0.498, 0.4318, 0.3432, 1],
  ],
  [
    [1, 0.8585, 0.9297, 0.3466, 0.8833, 0.8616, 0.6541, 0.5847],
    [0.8585, 1, 0.8214, 0.3026, 0.8239, 0.8448, 0.6706, 0.5991],
    [0.9297, 0.8214, 1, 0.3037, 0.8523, 0.8104, 0.6178, 0.5521],
    [0.3466, 0.3026, 0.3037, 1, 0.3426, 0.3006, 0.2288, 0.2045],
    [0.8833, 0.8239, 0.8523, 0.3426, 1, 0.7873, 0.605, 0.5407],
    [0.8616, 0.8448, 0.8104, 0.3006, 0.7873, 1, 0.6072, 0.5426],
    [0.6541, 0.6706, 0.6178, 0.2288, 0.605, 0.6072, 1, 0.4227],
    [0.5847, 0.5991, 0.5521, 0.2045, 0.5407, 0.5426, 0.4227, 1],
  ],
];
