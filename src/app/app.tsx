import { lazy, type ReactNode, Suspense } from 'react';
import { I18nProvider } from 'react-aria-components';
import { Redirect, Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { say } from '../engine/words/index.ts';
import { Device } from './device/device.tsx';
import { Keypad } from './parts/keypad.tsx';
import { Mishap } from './parts/mishap.tsx';
import { Toasts } from './parts/toast.tsx';

const Book = lazy(async () => ({ default: (await import('./book/book.tsx')).Book }));
const Start = lazy(async () => ({ default: (await import('./start/start.tsx')).Start }));
const Guide = lazy(async () => ({ default: (await import('./guide/guide.tsx')).Guide }));
const Workroom = lazy(async () => ({ default: (await import('./shell/workroom.tsx')).Workroom }));

/** The whole page. Addresses lie behind `#`, so that it works from any folder of any host. */
export function App(): ReactNode {
  return (
    <I18nProvider locale="en-GB">
      <Device>
        <Router hook={useHashLocation}>
          <Mishap>
            <Suspense fallback={<Waiting />}>
              <Switch>
                <Route path="/">
                  <Book />
                </Route>
                <Route path="/start">
                  <Start />
                </Route>
                <Route path="/guide">
                  <Guide />
                </Route>
                <Route path="/o/:order/:child/:place">
                  {({ order, child, place }) => (
                    <Workroom order={order} child={Number(child) - 1} place={place} />
                  )}
                </Route>
                <Route>
                  <Redirect to="/" />
                </Route>
              </Switch>
            </Suspense>
          </Mishap>
        </Router>
        <Toasts />
        <Keypad />
      </Device>
    </I18nProvider>
  );
}

function Waiting(): ReactNode {
  return (
    <p className="waiting quiet" role="status">
      {say('page.waiting', {}, 'in')}
    </p>
  );
}
