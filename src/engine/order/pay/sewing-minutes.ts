import type { ChildReport } from '../check-order.ts';

/** How long sewing takes, min, for dresses whose sewing plan is not known. */
export function sewingMinutes({ dress: { garment } }: ChildReport): number {
  const has = (pattern: RegExp): boolean => garment.pieces.some(({ id }) => pattern.test(id));
  const lined = garment.pieces.some(({ layer }) => layer === 'lining');
  return (
    (lined ? 90 : 60) +
    (has(/sleeve/) ? 40 : 0) +
    (has(/yoke/) ? 45 : 0) +
    (has(/skirt/) ? 90 : 0) +
    (garment.closing === null ? 0 : 30) +
    (garment.pieces.some(({ cloth }) => cloth === 'net') ? 60 : 0) +
    (has(/bow|sash/) ? 30 : 0) +
    80
  );
}
