import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { say } from '../../engine/words/index.ts';
import { Confirm } from '../parts/sheet.tsx';
import { placeAddress } from '../places/registry.ts';
import { useSession, useSessionState } from '../session/use-session.ts';

/** Two windows changed one order: both states are on the device, and she says with which to go on. */
export function Clash(): ReactNode {
  const session = useSession();
  const keeping = useSessionState((state) => state.keeping);
  const [, go] = useLocation();
  if (keeping.kind !== 'clash') return null;
  const { theirs, copy } = keeping;
  const leave = (): void => session.goOnWith(theirs);
  return (
    <Confirm
      open
      title={say('page.clash.title', {}, 'in')}
      action={say('page.clash.mine', {}, 'in')}
      cancel={say('page.clash.theirs', {}, 'in')}
      onCancel={leave}
      onAction={() => {
        session.goOnWith(copy);
        go(placeAddress(copy.id, session.state.getState().child, 'order'), { replace: true });
      }}
    >
      <p>{say('page.clash.about', { title: theirs.file.title }, 'in')}</p>
    </Confirm>
  );
}
