import type { ReactNode } from 'react';
import type { LaidOnCloth, LaidStretch } from '../../../engine/lay/index.ts';
import { RULERS, type UnitSystem } from '../../../engine/units/index.ts';
import { lineData } from '../../parts/path-data.ts';
import { AtSize, lengthText } from '../../table/index.ts';

/** A length on cloth: to an eighth of an inch or a millimetre. */
export const clothText = (mm: number, units: UnitSystem): string =>
  lengthText(Math.max(0, mm), units, units === 'in' ? RULERS.eighth : RULERS.millimetre);

/** Tapes to both ends of the grain line of the piece that she holds: along from the cut end, across from the edge. */
export function LayTape({
  laid,
  stretch,
  units,
}: {
  readonly laid: LaidOnCloth;
  readonly stretch: LaidStretch;
  readonly units: UnitSystem;
}): ReactNode {
  return laid.pins.map((pin, i) => {
    const { at, along, across } = pin;
    const isFar = Math.abs(at.y - across) > 0.5;
    const edge = { x: at.x, y: isFar ? stretch.depth : 0 };
    const low = { x: 0, y: at.y };
    return (
      <g key={pin.name} className="lay-tape">
        <path d={lineData(low, at) + lineData(edge, at)} />
        <circle cx={at.x} cy={at.y} r={3} />
        <AtSize at={at}>
          <text className="lay-measure lay-right" x={-6} y={i === 0 ? -6 : 16}>
            {clothText(along, units)}
          </text>
        </AtSize>
        <AtSize at={{ x: at.x, y: (at.y + edge.y) / 2 }}>
          <text className={i === 0 ? 'lay-measure lay-right' : 'lay-measure lay-left'} x={i === 0 ? -6 : 6}>
            {clothText(across, units)}
          </text>
        </AtSize>
      </g>
    );
  });
}
