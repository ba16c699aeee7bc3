import { type ReactNode, Suspense, useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { say, speak } from '../../engine/words/index.ts';
import { useDevice } from '../device/device.tsx';
import { today } from '../device/today.ts';
import { Button } from '../parts/button.tsx';
import { Mishap } from '../parts/mishap.tsx';
import { placeAddress } from '../places/address.ts';
import { PLACES } from '../places/registry.ts';
import { openSession, type Session } from '../session/session.ts';
import { savePutBy } from '../session/stash.ts';
import { SessionContext, useOrderFile } from '../session/use-session.ts';
import { Clash } from './clash.tsx';
import { createLooking, LookingContext } from './looking.ts';
import { NameTags } from './name-tags.tsx';
import { PlacesLine } from './places-line.tsx';
import { PullUp } from './pull-up.tsx';
import { TableSide } from './table-side.tsx';
import { TopBar } from './top-bar.tsx';
import { useKeys } from './use-keys.ts';

interface Address {
  readonly order: string;
  /** Index of the child. */
  readonly child: number;
  readonly place: string;
}

/** One open order: loads it, keeps its session for as long as she is in it, and shows the place of the address. */
export function Workroom({ order, child, place }: Address): ReactNode {
  const { store } = useDevice();
  const [session, setSession] = useState<Session | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const [looking] = useState(createLooking);

  useEffect(() => {
    let open: Session | null = null;
    let gone = false;
    const start = async (): Promise<void> => {
      await savePutBy(store, order);
      const stored = await store.load(order);
      if (gone) return;
      if (!stored.ok) return setRefusal(speak(stored.problem.say, 'in'));
      open = openSession(stored.value, store, today());
      setSession(open);
    };
    void start();
    const saveNow = (): void => void open?.saveNow();
    document.addEventListener('visibilitychange', saveNow);
    const leave = (): void => open?.leave();
    window.addEventListener('pagehide', leave);
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', saveNow);
      window.removeEventListener('pagehide', leave);
      void open?.close();
    };
  }, [order, store]);

  if (refusal !== null) return <NotHere sentence={refusal} />;
  if (session === null) return <p className="waiting quiet">{say('page.waiting', {}, 'in')}</p>;
  return (
    <SessionContext value={session}>
      <LookingContext value={looking}>
        <Mishap again={[order]} also={(again) => <WayOut session={session} again={again} />}>
          <Room order={order} child={child} place={place} session={session} />
        </Mishap>
      </LookingContext>
    </SessionContext>
  );
}

function Room({ order, child, place, session }: Address & { readonly session: Session }): ReactNode {
  const [, go] = useLocation();
  const children = useOrderFile((file) => file.children.length);
  const title = useOrderFile((file) => file.title);
  const found = PLACES.find(({ path }) => path === place) ?? PLACES[0];
  useKeys(session);
  useEffect(() => session.choose(child), [session, child]);
  useEffect(() => {
    document.title = `${title} - ${say('page.name', {}, 'in')}`;
  }, [title]);
  const isThere = Number.isInteger(child) && child >= 0 && child < children;
  useEffect(() => {
    if (!isThere || found?.path !== place) {
      go(placeAddress(order, isThere ? child : Math.max(children - 1, 0), found?.path ?? 'order'), {
        replace: true,
      });
    }
  }, [isThere, found, place, go, order, child, children]);
  if (found === undefined || !isThere) return null;
  const { panel: Panel } = found;
  const panel = (
    <Mishap again={[found, child]}>
      <Suspense fallback={<p className="waiting quiet">{say('page.waiting', {}, 'in')}</p>}>
        <Panel />
      </Suspense>
    </Mishap>
  );
  return (
    <div className={found.table === 'none' ? 'room room-plain' : 'room'}>
      <TopBar />
      <NameTags order={order} place={found.path} />
      <PlacesLine order={order} place={found.path} />
      <main className="room-main">
        {found.table === 'none' ? (
          <div className="panel-page">{panel}</div>
        ) : (
          <>
            <Mishap again={[found, child]}>
              <TableSide table={found.table} />
            </Mishap>
            <PullUp title={say(found.word, {}, 'in')}>{panel}</PullUp>
          </>
        )}
      </main>
      <Clash />
    </div>
  );
}

/** When the whole room can't be shown, the last change may be what it stumbles over. */
function WayOut({ session, again }: { readonly session: Session; readonly again: () => void }): ReactNode {
  const [, go] = useLocation();
  const undo = (): void => {
    session.undo();
    again();
  };
  return (
    <>
      <Button onPress={undo}>{say('page.mishap.undo', {}, 'in')}</Button>
      <Button onPress={() => go('/')}>{say('page.to-book', {}, 'in')}</Button>
    </>
  );
}

function NotHere({ sentence }: { readonly sentence: string }): ReactNode {
  const [, go] = useLocation();
  return (
    <main className="refusal">
      <h1>{say('page.no-order', {}, 'in')}</h1>
      <p role="alert">{sentence}</p>
      <button type="button" className="button button-main" onClick={() => go('/')}>
        {say('page.to-book', {}, 'in')}
      </button>
    </main>
  );
}
