import { memo, type ReactNode } from 'react';
import { atSize } from './at-size.tsx';
import type { TableLabel } from './measure-labels.ts';

/** Names and lengths, at the size of the page's own type however near she is. */
export const LabelsLayer = memo(function LabelsLayer(props: {
  readonly labels: readonly TableLabel[];
}): ReactNode {
  return (
    <g className="t-labels">
      {props.labels.map(({ key, text, at, turn, kind }) => (
        <text key={key} className={`t-${kind}`} style={atSize(at, turn)} dy="0.35em">
          {text}
        </text>
      ))}
    </g>
  );
});
