import type { ReactNode } from 'react';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { useSession, useUnits } from '../../session/use-session.ts';
import { waysOf } from './by-hand.ts';
import { changeDesk } from './desk.ts';
import { clothText } from './lay-tape.tsx';
import { pieceName } from './piece-name.ts';
import { type ItemAt, isPinned, type SeenLay } from './seen-lay.ts';
import type { Hand } from './use-hand.ts';

/** The piece that she holds: where it is pinned down by the tape, and what can be done with it. */
export function HeldPiece({
  seen,
  at,
  hand,
}: {
  readonly seen: SeenLay;
  readonly at: ItemAt;
  readonly hand: Hand | null;
}): ReactNode {
  const session = useSession();
  const units = useUnits();
  const length = seen.lengths[at.length];
  const laid = length?.lay.stretches[at.stretch]?.pieces[at.item];
  if (length === undefined || laid === undefined) return null;
  const pinned = isPinned(length, at.stretch, at.item);
  const canTurn = waysOf(seen, at) > 1;
  const letGo = (): void => {
    session.settle();
    changeDesk({ picked: null });
  };
  return (
    <div className="t-card lay-held">
      <div className="t-reading">
        <p>
          <strong>{pieceName(seen, at, units)}</strong>
          {pinned && ` (${say('page.cloth.piece.pinned', {}, units)})`}
        </p>
        {laid.pins.map(({ name, along, across, edge }) => (
          <p key={name} className="small">
            {say(
              'page.cloth.measure',
              {
                name: say(name, {}, units),
                along: clothText(along, units),
                across: clothText(across, units),
                edge: say(edge, {}, units),
              },
              units,
            )}
          </p>
        ))}
        {!canTurn && <p className="small quiet">{say('page.cloth.turn.no', {}, units)}</p>}
      </div>
      <div className="row row-wrap">
        {canTurn && (
          <Button disabled={hand === null} onPress={() => hand?.turn(at)}>
            {say('page.cloth.turn', {}, units)}
          </Button>
        )}
        <Button disabled={hand === null} onPress={() => hand?.pin(at, !pinned)}>
          {say(pinned ? 'page.cloth.unpin' : 'page.cloth.pin', {}, units)}
        </Button>
        <Button look="quiet" onPress={letGo}>
          {say('page.cloth.let-go', {}, units)}
        </Button>
      </div>
    </div>
  );
}
