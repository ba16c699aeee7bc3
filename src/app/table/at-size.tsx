import type { CSSProperties, ReactNode } from 'react';
import type { Point } from '../../engine/geometry/index.ts';

/** Puts something at a place of the table and keeps its size on the screen; `--mm` is how many mm a px is. */
export const atSize = ({ x, y }: Point, turn = 0): CSSProperties => ({
  transform: `translate(${x}px, ${y}px) rotate(${turn}deg) scale(var(--mm))`,
});

export function AtSize(props: { readonly at: Point; readonly children: ReactNode }): ReactNode {
  return <g style={atSize(props.at)}>{props.children}</g>;
}
