import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { useSession, useUnits } from '../../session/use-session.ts';
import { changeDesk, useDesk } from './desk.ts';
import { itemsOf, pieceName, sameItem } from './piece-name.ts';
import type { SeenLay } from './seen-lay.ts';
import { useHand } from './use-hand.ts';

const NONE = 'none';

/** Choosing a piece without touching the drawing, and what concerns all pins at once. */
export function ByHandPart({ seen }: { readonly seen: SeenLay }): ReactNode {
  const session = useSession();
  const units = useUnits();
  const picked = useDesk((desk) => desk.picked);
  const hand = useHand(seen);
  const all = itemsOf(seen);
  const value = all.findIndex((at) => sameItem(picked, at));
  const pins = seen.lengths.reduce((sum, { pinned }) => sum + pinned.size, 0);
  return (
    <section className="part">
      <h3>{say('page.cloth.hand', {}, units)}</h3>
      <p className="quiet small">
        {say(hand === null ? 'page.cloth.hand.busy' : 'page.cloth.hand.about', {}, units)}
      </p>
      <Choice
        label={say('page.cloth.piece', {}, units)}
        value={value < 0 ? NONE : String(value)}
        options={[
          { id: NONE, text: say('page.cloth.piece.none', {}, units) },
          ...all.map((at, i) => ({ id: String(i), text: pieceName(seen, at, units) })),
        ]}
        onChange={(id) => {
          session.settle();
          changeDesk({ picked: all[Number(id)] ?? null, said: null });
        }}
      />
      <div className="row row-wrap">
        {pins > 0 && (
          <>
            <span className="small">{say('page.cloth.pinned', { count: pins }, units)}</span>
            <Button look="quiet" disabled={hand === null} onPress={() => hand?.unpinAll()}>
              {say('page.cloth.unpin-all', {}, units)}
            </Button>
          </>
        )}
        {seen.kept !== null && (
          <Button look="quiet" disabled={hand === null} onPress={() => hand?.startOver()}>
            {say('page.cloth.start-over', {}, units)}
          </Button>
        )}
      </div>
    </section>
  );
}
