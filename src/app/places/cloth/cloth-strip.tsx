import type { ReactNode } from 'react';
import { linePath, type Point } from '../../../engine/geometry/index.ts';
import { type LayPlan, obstaclesOn } from '../../../engine/lay/index.ts';
import { formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import { say } from '../../../engine/words/index.ts';
import { pathData } from '../../parts/path-data.ts';
import { AtSize } from '../../table/index.ts';
import type { SceneStretch } from './lay-scene.ts';

/** Of a selvedge as it is drawn, mm. */
const SELVEDGE = 12;
/** Between the marks of the scale, mm; wider apart by a round number where they would stand closer than so many px. */
const STEPS = { in: 254, cm: 250 } as const;
const APART = 56;

/** The cloth itself: its selvedges or folds, its cut end, a scale along it, and where it can't be used. */
export function ClothStrip({
  scene: { laid, cloth: end, stretch },
  plan,
  how,
  zoom,
  units,
}: {
  readonly scene: SceneStretch;
  readonly plan: LayPlan;
  readonly how: string;
  readonly zoom: number;
  readonly units: UnitSystem;
}): ReactNode {
  const { folding, depth, from } = laid;
  const { cloth, stretches } = plan;
  const isFolded = folding === 'lengthwise';
  const twoFolds = isFolded && cloth.selvedgesToMiddle === true;
  const planned = stretches[stretch];
  const blocked = planned === undefined ? [] : obstaclesOn(planned, cloth, from);
  return (
    <g className="lay-cloth">
      <rect className="lay-ground" width={end} height={depth} />
      <ClothEdge y={0} out={-SELVEDGE} end={end} isFold={isFolded} />
      <ClothEdge y={depth} out={SELVEDGE} end={end} isFold={twoFolds} />
      <path className={folding === 'crosswise' ? 'lay-fold' : 'lay-end'} d={`M0 0V${depth}`} />
      {laid.length < end - 1 && <path className="lay-used" d={`M${laid.length} 0V${depth}`} />}
      {blocked.map((ring) => (
        <path key={JSON.stringify(ring[0])} className="lay-blocked" d={ringData(ring)} />
      ))}
      <Scale end={end} depth={depth} zoom={zoom} units={units} />
      <EdgeWord at={{ x: 0, y: -SELVEDGE }} lift={-6}>
        {`${how}. ${say(isFolded ? 'page.cloth.fold' : 'page.cloth.selvedge', {}, units)}`}
      </EdgeWord>
      <EdgeWord at={{ x: 0, y: depth + SELVEDGE }} lift={32}>
        {say(twoFolds ? 'page.cloth.fold' : 'page.cloth.selvedge', {}, units)}
      </EdgeWord>
    </g>
  );
}

function ClothEdge({
  y,
  out,
  end,
  isFold,
}: {
  readonly y: number;
  readonly out: number;
  readonly end: number;
  readonly isFold: boolean;
}): ReactNode {
  if (isFold) return <path className="lay-fold" d={`M0 ${y}H${end}`} />;
  return (
    <>
      <rect className="lay-selvedge" y={Math.min(y, y + out)} width={end} height={Math.abs(out)} />
      <path className="lay-edge" d={`M0 ${y}H${end}M0 ${y + out}H${end}`} />
    </>
  );
}

function Scale({
  end,
  depth,
  zoom,
  units,
}: {
  readonly end: number;
  readonly depth: number;
  readonly zoom: number;
  readonly units: UnitSystem;
}): ReactNode {
  const step = STEPS[units] * ([1, 2, 4, 10].find((k) => STEPS[units] * k * zoom > APART) ?? 20);
  const marks = Array.from({ length: Math.floor(end / step) }, (_, i) => (i + 1) * step);
  return marks.map((x) => (
    <g key={x}>
      <path className="lay-edge" d={`M${x} ${depth}V${depth + SELVEDGE * 2}`} />
      <AtSize at={{ x, y: depth + SELVEDGE * 2 }}>
        <text className="lay-small" dy="1.1em">
          {formatLength(x, units)}
        </text>
      </AtSize>
    </g>
  ));
}

function EdgeWord({
  at,
  lift,
  children,
}: {
  readonly at: Point;
  readonly lift: number;
  readonly children: string;
}): ReactNode {
  return (
    <AtSize at={at}>
      <text className="lay-small lay-left" y={lift}>
        {children}
      </text>
    </AtSize>
  );
}

function ringData([first, second, ...rest]: readonly Point[]): string {
  return first === undefined || second === undefined ? '' : pathData(linePath(first, second, ...rest, first));
}
