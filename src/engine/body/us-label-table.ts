// Made by tools/make-growth-tables.mjs from data/*.csv; change those, not this. Sources: data/SOURCES.md.

/** Girths on the labels of US children's clothes, mm: the body that a size is sold for, 4 to 6 cm wider in the chest than measured children. */
export const US_LABELS = [
  { label: '1', height: 787, chestGirth: 508, waistGirth: 508, hipGirth: null },
  { label: '2', height: 864, chestGirth: 533, waistGirth: 521, hipGirth: null },
  { label: '3', height: 940, chestGirth: 559, waistGirth: 533, hipGirth: null },
  { label: '4', height: 1016, chestGirth: 584, waistGirth: 546, hipGirth: null },
  { label: '5', height: 1092, chestGirth: 610, waistGirth: 559, hipGirth: null },
  { label: '6', height: 1168, chestGirth: 635, waistGirth: 571, hipGirth: null },
  { label: '6X', height: 1219, chestGirth: 648, waistGirth: 584, hipGirth: null },
  { label: '7', height: 1270, chestGirth: 660, waistGirth: 584, hipGirth: 698 },
  { label: '8', height: 1321, chestGirth: 686, waistGirth: 597, hipGirth: 724 },
  { label: '10', height: 1422, chestGirth: 737, waistGirth: 622, hipGirth: 787 },
  { label: '12', height: 1486, chestGirth: 775, waistGirth: 648, hipGirth: 838 },
  { label: '14', height: 1549, chestGirth: 813, waistGirth: 673, hipGirth: 889 },
] as const;
