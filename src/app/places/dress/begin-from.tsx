import { type ReactNode, useState } from 'react';
import { LIBRARY } from '../../../engine/design/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { Switch } from '../../parts/switch.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { startFrom } from './change-dress.ts';
import { useDesk } from './dress-desk.ts';
import { SketchCard, useLibrarySketches } from './sketch-card.tsx';

/** What the dress was begun from, and the way to begin from another. */
export function BeginFrom({ onBegun }: { readonly onBegun: () => void }): ReactNode {
  const { units, file, libraryName } = useDesk();
  const [open, setOpen] = useState(false);
  const begun =
    file.startFrom === undefined
      ? say('page.dress.begun.nothing', {}, units)
      : say('page.dress.begun', { dress: libraryName }, units);
  return (
    <div className="begun">
      <p>{begun}</p>
      <Button look="quiet" onPress={() => setOpen(true)}>
        {say('page.dress.begin', {}, units)}
      </Button>
      <Sheet
        open={open}
        title={say('page.dress.begin.title', {}, units)}
        close={say('page.close', {}, units)}
        onClose={() => setOpen(false)}
      >
        <Dresses
          onBegun={() => {
            setOpen(false);
            onBegun();
          }}
        />
      </Sheet>
    </div>
  );
}

const IDS = LIBRARY.map(({ id }) => id);

function Dresses({ onBegun }: { readonly onBegun: () => void }): ReactNode {
  const { units, file, session, wish, childName } = useDesk();
  const [keep, setKeep] = useState(false);
  const sketches = useLibrarySketches(wish, IDS);
  const isChanged = file.dress !== undefined || file.children.some(({ dress }) => dress !== undefined);

  const begin = (id: string | null): void => {
    const dress = id === null ? '' : nameOf(id, units);
    const run = session.change(
      id === null
        ? { key: 'page.did.start-from.nothing', values: {} }
        : { key: 'page.did.start-from', values: { dress } },
      (draft) => startFrom(draft, id, keep),
    );
    toastDone(
      id === null
        ? say('page.dress.begin.done.nothing', {}, units)
        : say('page.dress.begin.done', { dress }, units),
      run,
    );
    onBegun();
  };

  return (
    <>
      <p className="small quiet">{say('page.dress.begin.about', { child: childName }, units)}</p>
      {isChanged && (
        <Switch label={say('page.dress.begin.keep', {}, units)} value={keep} onChange={setKeep} />
      )}
      <ul className="dress-cards">
        {IDS.map((id) => {
          const sketch = sketches.get(id);
          const dress = nameOf(id, units);
          return (
            <li key={id}>
              <button type="button" className="dress-card" data-dress={id} onClick={() => begin(id)}>
                <span className="dress-figure">
                  {sketch !== undefined && (
                    <SketchCard sketch={sketch} label={say('page.dress.sketch', { dress }, units)} />
                  )}
                </span>
                <span className="dress-name">
                  {dress}
                  {file.startFrom === id && (
                    <span className="mark">{say('page.dress.begin.now', {}, units)}</span>
                  )}
                </span>
                <span className="small quiet">
                  {say(`dress.${id}.about` as 'dress.clover.about', {}, units)}
                </span>
              </button>
            </li>
          );
        })}
        <li>
          <button type="button" className="dress-card" data-dress="nothing" onClick={() => begin(null)}>
            <span className="dress-name">{say('page.dress.begin.nothing', {}, units)}</span>
            <span className="small quiet">{say('page.dress.begin.nothing.about', {}, units)}</span>
          </button>
        </li>
      </ul>
    </>
  );
}

const nameOf = (id: string, units: 'in' | 'cm'): string => say(`dress.${id}` as 'dress.clover', {}, units);
