import { createContext, type ReactNode, use, useEffect, useState } from 'react';
import { say, speak } from '../../engine/words/index.ts';
import { openStore, type Settings, type Store } from '../../store/index.ts';
import { applyTheme } from './theme.ts';

/** What the page knows of this device: its order book, and how the maker has set it. */
interface DeviceState {
  readonly store: Store;
  readonly settings: Settings;
  /** Writes a setting and shows it at once. */
  readonly set: (change: Partial<Settings>) => void;
}

const DeviceContext = createContext<DeviceState | null>(null);

export function useDevice(): DeviceState {
  const device = use(DeviceContext);
  if (device === null) throw new Error('The page is shown inside its device.');
  return device;
}

/** Opens the order book of this device, and shows the page when it is open; or says why it can't be. */
export function Device({ children }: { readonly children: ReactNode }): ReactNode {
  const [state, setState] = useState<{ store: Store; settings: Settings } | { refusal: string } | null>(null);

  useEffect(() => {
    let open: Store | null = null;
    let gone = false;
    /** Another tab has changed them. */
    const takeOver = async (store: Store): Promise<void> => {
      const settings = await store.settings();
      if (gone || !settings.ok) return;
      applyTheme(settings.value.theme);
      setState({ store, settings: settings.value });
    };
    const start = async (): Promise<void> => {
      const opened = await openStore();
      if (!opened.ok) return setState({ refusal: speak(opened.problem.say, 'in') });
      open = opened.store;
      if (gone) return open.close();
      const settings = await open.settings();
      if (!settings.ok) return setState({ refusal: speak(settings.problem.say, 'in') });
      applyTheme(settings.value.theme);
      setState({ store: open, settings: settings.value });
      open.subscribe((event) => {
        if (event.kind === 'closed') setState({ refusal: speak(event.problem.say, 'in') });
        if (event.kind === 'settings') void takeOver(opened.store);
      });
    };
    void start();
    return () => {
      gone = true;
      open?.close();
    };
  }, []);

  if (state === null) return null;
  if ('refusal' in state) return <Refusal sentence={state.refusal} />;
  const set = (change: Partial<Settings>): void => {
    const settings = { ...state.settings, ...change };
    applyTheme(settings.theme);
    setState({ ...state, settings });
    void state.store.saveSettings(change);
  };
  return <DeviceContext value={{ ...state, set }}>{children}</DeviceContext>;
}

function Refusal({ sentence }: { readonly sentence: string }): ReactNode {
  return (
    <main className="refusal">
      <h1>{say('page.name', {}, 'in')}</h1>
      <p role="alert">{sentence}</p>
      <button type="button" className="button button-main" onClick={() => location.reload()}>
        {say('page.reload', {}, 'in')}
      </button>
    </main>
  );
}
