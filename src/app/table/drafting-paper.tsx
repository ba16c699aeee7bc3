import type { ReactNode } from 'react';
import { tell } from '../../engine/design/index.ts';
import {
  type Path,
  type Point,
  pathAt,
  pathEnd,
  pathLength,
  pathStart,
} from '../../engine/geometry/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';
import { pathData } from '../parts/path-data.ts';
import { atSize } from './at-size.tsx';
import type { PlayPaper } from './drafting-play.ts';
import { lengthText } from './length-text.ts';

interface DraftingPaperProps {
  readonly paper: PlayPaper;
  readonly units: UnitSystem;
}

/** The paper of the play: what stood there, what has been drawn, and the step that was drawn last. */
export function DraftingPaper({ paper, units }: DraftingPaperProps): ReactNode {
  const { before, drawn, live } = paper;
  const places = drawn.flatMap((step) => step.places);
  return (
    <>
      <path className="t-pencil-before" d={before.map(pathData).join('')} />
      <path className="t-pencil" d={drawn.flatMap(({ lines }) => lines.map(pathData)).join('')} />
      {places.map(({ name, at }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a place may be set again under its name; they keep their order.
        <circle key={i} className="t-pencil-place" r={2.5} style={atSize(at)} data-place={name} />
      ))}
      {live === null ? null : (
        <g className="t-live-step">
          <path className="t-pencil-live" d={live.lines.map(pathData).join('')} />
          {live.places.map(({ name, at }) => (
            <g key={name} style={atSize(at)}>
              <circle className="t-place-live" r={4} />
              <text className="t-place-name" x={9} y={-7}>
                {bare(tell({ key: name, values: {} }, units))}
              </text>
            </g>
          ))}
          {live.lines.map((path, i) => {
            const { at, turn } = besideMiddle(path);
            return isMeasured(live.saying.values) ? (
              // biome-ignore lint/suspicious/noArrayIndexKey: lines of one step keep their order.
              <text key={i} className="t-measure t-measure-live" style={atSize(at, turn)} y={-6}>
                {lengthText(pathLength(path), units)}
              </text>
            ) : null;
          })}
        </g>
      )}
    </>
  );
}

/** A step that lays off a length says it; a curve drawn between places has none to set. */
const isMeasured = (values: Readonly<Record<string, unknown>>): boolean => 'length' in values;

/** 'the neck point' is for sentences; beside the point stands 'neck point'. */
const bare = (name: string): string => name.replace(/^the /, '');

function besideMiddle(path: Path): { readonly at: Point; readonly turn: number } {
  const { point } = pathAt(path, pathLength(path) / 2);
  const [a, b] = [pathStart(path), pathEnd(path)];
  const turn = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  return { at: point, turn: turn > 90.5 ? turn - 180 : turn <= -89.5 ? turn + 180 : turn };
}
