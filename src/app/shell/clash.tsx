import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { say } from '../../engine/words/index.ts';
import { Confirm } from '../parts/sheet.tsx';
import { placeAddress } from '../places/address.ts';
import { useSession, useSessionState } from '../session/use-session.ts';

/** Two windows changed one order: both states are on the device, and she says with which to go on. */
export function Clash(): ReactNode {
  const session = useSession();
  const keeping = useSessionState((state) => state.keeping);
  const [, go] = useLocation();
  if (keeping.kind !== 'clash') return null;
  const { theirs } = keeping;
  const takeTheirs = (): void => {
    session.settleClash('theirs');
  };
  const keepMine = async (): Promise<void> => {
    const id = session.settleClash('mine');
    await session.saveNow();
    go(placeAddress(id, session.state.getState().child, 'order'), { replace: true });
  };
  return (
    <Confirm
      open
      title={say('page.clash.title', {}, 'in')}
      action={say('page.clash.mine', {}, 'in')}
      cancel={say('page.clash.theirs', {}, 'in')}
      onCancel={takeTheirs}
      onAction={() => void keepMine()}
    >
      <p>{say('page.clash.about', { title: theirs.file.title }, 'in')}</p>
    </Confirm>
  );
}
