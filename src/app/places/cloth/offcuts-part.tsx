import { type ReactNode, useMemo, useState } from 'react';
import { layOffcuts } from '../../../engine/lay/index.ts';
import { say, speak } from '../../../engine/words/index.ts';
import { useUnits } from '../../session/use-session.ts';
import { clothText } from './lay-tape.tsx';
import type { SeenLay } from './seen-lay.ts';

/** The largest rectangles that the lay leaves, and what could be cut from each. Looked for when she opens it. */
export function OffcutsPart({ seen }: { readonly seen: SeenLay }): ReactNode {
  const units = useUnits();
  const [open, setOpen] = useState(false);
  return (
    <details className="part" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say('page.cloth.offcuts', {}, units)}</summary>
      {open && <Offcuts seen={seen} />}
    </details>
  );
}

function Offcuts({ seen }: { readonly seen: SeenLay }): ReactNode {
  const units = useUnits();
  const offcuts = useMemo(() => seen.lengths.flatMap(({ lay }) => layOffcuts(lay)), [seen]);
  if (offcuts.length === 0) return <p className="quiet">{say('page.cloth.offcuts.none', {}, units)}</p>;
  return (
    <ul className="stack">
      {offcuts.map(({ along, across, layers, uses, x, y, stretch }, i) => (
        <li key={`${stretch} ${x} ${y}`}>
          <strong>
            {say(
              layers === 2 ? 'page.cloth.offcut.twice' : 'page.cloth.offcut',
              {
                letter: String.fromCharCode(65 + i),
                along: clothText(along, units),
                across: clothText(across, units),
              },
              units,
            )}
          </strong>
          {uses.map((use) => (
            <p key={use.key} className="small">
              {speak(use, units)}
            </p>
          ))}
        </li>
      ))}
    </ul>
  );
}
