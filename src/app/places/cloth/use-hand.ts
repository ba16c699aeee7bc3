import { say, type WordKey } from '../../../engine/words/index.ts';
import { useSession, useUnits } from '../../session/use-session.ts';
import { type HandMove, movedTo, nothingPinned, pinnedOrNot, placeOf, turnedOn } from './by-hand.ts';
import { changeDesk, useDesk } from './desk.ts';
import { asKeptLay, dropLay, putLay } from './keep-lay.ts';
import { pieceName } from './piece-name.ts';
import { type ItemAt, keyOf, type SeenLay } from './seen-lay.ts';

/** All that she can do to a lay by hand. Every one of them is a change of the order, with a name for undo. */
export interface Hand {
  /** Puts a piece there and pins it; false where it can't lie there, which is said. */
  readonly move: (at: ItemAt, wanted: { readonly x: number; readonly y: number }) => boolean;
  readonly nudge: (at: ItemAt, by: { readonly x: number; readonly y: number }) => void;
  readonly turn: (at: ItemAt) => void;
  readonly pin: (at: ItemAt, isPinned: boolean) => void;
  readonly unpinAll: () => void;
  /** Forgets the lay that is kept. */
  readonly startOver: () => void;
}

export function useHand(seen: SeenLay | null): Hand | null {
  const session = useSession();
  const units = useUnits();
  const isBusy = useDesk((desk) => desk.search !== null);
  if (seen === null || isBusy) return null;
  const cloth = seen.cloth.name;
  const keep = (key: WordKey, at: ItemAt | null, after: SeenLay, cause = ''): void => {
    const lay = asKeptLay(after);
    const piece = at === null ? '' : pieceName(seen, at, units);
    session.change({ key, values: { cloth, piece } }, (file) => putLay(file, lay), { cause });
  };
  const put = (key: WordKey, at: ItemAt, done: HandMove, cause = ''): boolean => {
    const piece = pieceName(seen, at, units);
    if (!done.ok) {
      changeDesk({ said: { text: say(`page.cloth.refused.${done.why}`, { piece }, units), wrong: true } });
      return false;
    }
    keep(key, at, done.lay, cause);
    const along = { mm: Math.round(placeOf(done.lay, at)?.x ?? 0) };
    changeDesk({ said: { text: say('page.cloth.moved', { piece, along }, units), wrong: false } });
    return true;
  };
  return {
    move: (at, wanted) => put('page.did.lay-move', at, movedTo(seen, at, wanted)),
    nudge: (at, by) => {
      const place = placeOf(seen, at);
      if (place === undefined) return;
      const wanted = { x: place.x + by.x, y: place.y + by.y };
      put(
        'page.did.lay-move',
        at,
        movedTo(seen, at, wanted, undefined, 0.5),
        `lay ${keyOf(seen)} ${JSON.stringify(at)}`,
      );
    },
    turn: (at) => put('page.did.lay-turn', at, turnedOn(seen, at)),
    pin: (at, isPinned) =>
      keep(isPinned ? 'page.did.lay-pin' : 'page.did.lay-unpin', at, pinnedOrNot(seen, at, isPinned)),
    unpinAll: () => keep('page.did.lay-unpin-all', null, nothingPinned(seen)),
    startOver: () =>
      void session.change({ key: 'page.did.lay-drop', values: { cloth } }, (file) =>
        dropLay(file, keyOf(seen)),
      ),
  };
}
