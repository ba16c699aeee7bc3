import { useEffect, useMemo } from 'react';
import { createStore, useStore } from 'zustand';
import { tell } from '../../../engine/design/index.ts';
import type { PayFile, PayWork, WorkroomFile } from '../../../engine/order/index.ts';
import { say, type WordKey } from '../../../engine/words/index.ts';
import type { OrderSummary } from '../../../store/index.ts';
import { useDevice } from '../../device/device.tsx';
import { today } from '../../device/today.ts';
import { fieldSentence, useOrderFile, useSession, useTell, useUnits } from '../../session/use-session.ts';
import { reckonPay } from '../../work/pay.ts';
import type { PayGrounds } from '../../work/pay-wish.ts';
import { useOtherOrders, useTimedElsewhere } from '../other-orders.ts';

/** What the places of shopping, days and bill show; the last of this order while it is reckoned anew. */
interface Reckoned {
  readonly order: string;
  readonly work: PayWork | null;
  /** Why there is nothing new, as a sentence. */
  readonly wrong: string | null;
  readonly busy: boolean;
}

const reckoned = createStore<Reckoned>(() => ({ order: '', work: null, wrong: null, busy: true }));

/** The maker's own part, from the settings of the device. */
export function useWorkroom(): WorkroomFile {
  const { settings } = useDevice();
  const { maker, rates, week, times, prices, stash } = settings;
  return useMemo(
    () => ({ maker, rates, week, times, prices, stash }),
    [maker, rates, week, times, prices, stash],
  );
}

/** The other orders on the open shelf, for the days that they keep. */
export function useOpenOrders(): readonly OrderSummary[] {
  const others = useOtherOrders();
  return useMemo(() => others.filter(({ archived }) => !archived), [others]);
}

const keptBy = (orders: readonly OrderSummary[]): PayGrounds['taken'] => {
  const minutes = new Map<string, number>();
  for (const { kept } of orders)
    for (const { day, minutes: more } of kept) minutes.set(day, (minutes.get(day) ?? 0) + more);
  return [...minutes];
};

export function usePayGrounds(): PayGrounds {
  const file = useOrderFile((order) => order);
  const workroom = useWorkroom();
  const open = useOpenOrders();
  const timed = useTimedElsewhere();
  return useMemo(
    () => ({ file, workroom, today: today(), taken: keptBy(open), timed }),
    [file, workroom, open, timed],
  );
}

/** A pause in typing, ms. */
const PAUSE = 250;

/** Reckons the order that is open, a moment after each change. */
export function usePay(): Reckoned & { readonly grounds: PayGrounds } {
  const { id } = useSession();
  const grounds = usePayGrounds();
  const units = useUnits();
  const tellIt = useTell();
  const now = useStore(reckoned);
  useEffect(() => {
    let gone = false;
    reckoned.setState((before) =>
      before.order === id ? { ...before, busy: true } : { order: id, work: null, wrong: null, busy: true },
    );
    const wait = setTimeout(async () => {
      const end = await reckonPay(grounds);
      if (gone) return;
      if (!end.ok) {
        const why = end.code === 'failed' ? end.why : end.code;
        return reckoned.setState({ busy: false, wrong: say('page.pay.failed', { why }, units) });
      }
      if (end.value.ok) return reckoned.setState({ busy: false, wrong: null, work: end.value.value });
      const what =
        end.value.code === 'refused'
          ? tell(end.value.why, units)
          : end.value.problems[0] === undefined
            ? ''
            : fieldSentence(end.value.problems[0], tellIt);
      reckoned.setState({ busy: false, wrong: say('page.pay.problem', { what }, units) });
    }, PAUSE);
    return () => {
      gone = true;
      clearTimeout(wait);
    };
  }, [id, grounds, units, tellIt]);
  const fresh: Reckoned = now.order === id ? now : { order: id, work: null, wrong: null, busy: true };
  return { ...fresh, grounds };
}

/** What is wrong with a field of money or days; null when it is fine. */
export function usePayProblem(work: PayWork | null, path: string): string | null {
  const tellIt = useTell();
  const found = work?.problems.find((problem) => problem.path === path);
  if (found === undefined) return null;
  const [head = '', ...rest] = tellIt(found.say);
  return `${head.toUpperCase()}${rest.join('')}`;
}

export type ChangePay = (what: string, recipe: (pay: Mutable<PayFile>) => void, cause?: string) => void;

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** Changes what the order says of money and days; `what` names the field for undo. */
export function useChangePay(
  word: Extract<WordKey, 'page.did.pay' | 'page.did.days'> = 'page.did.pay',
): ChangePay {
  const session = useSession();
  return (what, recipe, cause) =>
    session.change(
      { key: word, values: { what } },
      (file) => {
        file.pay ??= {};
        recipe(file.pay);
      },
      cause === undefined ? {} : { cause: `pay.${cause}` },
    );
}

/** Writes a part of the maker's own. */
export function useChangeWorkroom(): <P extends keyof WorkroomFile>(
  part: P,
  value: NonNullable<WorkroomFile[P]>,
) => void {
  const { set } = useDevice();
  return (part, value) => set({ [part]: value });
}
