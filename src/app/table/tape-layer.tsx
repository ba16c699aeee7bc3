import type { ReactNode } from 'react';
import { lineData } from '../parts/path-data.ts';
import { AtSize } from './at-size.tsx';
import type { TapeEnd } from './tape.ts';

/** The measuring tape between its two ends. */
export function TapeLayer({ ends }: { readonly ends: readonly TapeEnd[] }): ReactNode {
  const [from, to] = ends;
  return (
    <g className="t-tape">
      {from === undefined || to === undefined ? null : (
        <>
          <path className="t-tape-band" d={lineData(from.at, to.at)} />
          <path className="t-tape-ticks" d={lineData(from.at, to.at)} />
        </>
      )}
      {ends.map(({ at, caught }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a tape has a first and a second end.
        <AtSize key={i} at={at}>
          <circle className={caught === null ? 't-tape-end' : 't-tape-end t-tape-caught'} r={6} />
        </AtSize>
      ))}
    </g>
  );
}
