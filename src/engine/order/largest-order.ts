/** Largest order file that is taken, bytes: sixty children with all their measurements take about 60 kB. */
export const LARGEST_ORDER = 2_000_000;
