import { useEffect, useMemo, useState } from 'react';
import type { TimedStep } from '../../engine/order/index.ts';
import type { OrderSummary } from '../../store/index.ts';
import { useDevice } from '../device/device.tsx';
import { useSession } from '../session/use-session.ts';

/** The other orders of the book, archived ones too, deleted ones not. */
export function useOtherOrders(): readonly OrderSummary[] {
  const { store } = useDevice();
  const { id } = useSession();
  const [others, setOthers] = useState<readonly OrderSummary[]>([]);
  useEffect(() => {
    let gone = false;
    const load = async (): Promise<void> => {
      const listed = await store.list();
      if (gone || !listed.ok) return;
      const orders = listed.value.filter((entry): entry is OrderSummary => entry.kind === 'order');
      setOthers(orders.filter((order) => order.id !== id && order.deletedAt === null));
    };
    void load();
    const end = store.subscribe((event) => {
      if (event.kind === 'orders') void load();
    });
    return () => {
      gone = true;
      end();
    };
  }, [store, id]);
  return others;
}

const NONE: readonly TimedStep[] = [];

/** The steps of sewing that she has timed in her other orders; the same list as long as nothing in it changes. */
export function useTimedElsewhere(): readonly TimedStep[] {
  const others = useOtherOrders();
  const timed = others.flatMap((order) => order.timed);
  const text = JSON.stringify(timed);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text stands for the list, which is new each time
  return useMemo(() => (timed.length === 0 ? NONE : timed), [text]);
}
