import type { ReactNode } from 'react';
import type { ClothRole } from '../../engine/piece/index.ts';

/** How each cloth is told apart, by hatch as well as by tint: plain, net crossed, lining slanted, trim dotted. */
const HATCH_OF: Readonly<Record<ClothRole, 'net' | 'slant' | 'dots' | null>> = {
  main: null,
  skirt: null,
  yoke: 'net',
  net: 'net',
  lining: 'slant',
  trim: 'dots',
};

/** The fill of a cloth's hatch, or null for plain cloth. */
export function hatchFill(id: string, role: ClothRole): string | null {
  const hatch = HATCH_OF[role];
  return hatch === null ? null : `url(#${id}-${hatch})`;
}

/** Spacing of hatch lines on the screen, px, between this and twice as much. */
const SPACING = 9;

/** The hatches, spaced in steps of two so that they neither swim nor clot while she zooms. */
export function Hatches({ id, zoom }: { readonly id: string; readonly zoom: number }): ReactNode {
  const step = 2 ** Math.ceil(Math.log2(SPACING / zoom));
  const line = 1 / zoom;
  const box = { width: step, height: step, patternUnits: 'userSpaceOnUse' } as const;
  return (
    <defs>
      <pattern id={`${id}-net`} {...box} patternTransform="rotate(45)">
        <path className="t-hatch" d={`M0 0H${step}M0 0V${step}`} style={{ strokeWidth: line }} />
      </pattern>
      <pattern id={`${id}-slant`} {...box} patternTransform="rotate(30)">
        <path className="t-hatch" d={`M0 0V${step}`} style={{ strokeWidth: line }} />
      </pattern>
      <pattern id={`${id}-dots`} {...box}>
        <circle className="t-hatch-dot" cx={step / 2} cy={step / 2} r={line * 1.1} />
      </pattern>
    </defs>
  );
}
