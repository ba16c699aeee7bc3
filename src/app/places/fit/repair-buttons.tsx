import { type ReactNode, useMemo } from 'react';
import { dressWish } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { Button } from '../../parts/button.tsx';
import { toastDone } from '../../parts/toast.tsx';
import { useChild, useOrderFile, useSession, useSessionState, useTell } from '../../session/use-session.ts';
import type { Fault, FaultyDress } from './candidate.ts';
import { useRepairs } from './use-repairs.ts';

/** Buttons that mend a fault: each was tried before it is offered. */
export function RepairButtons({
  fault,
  onMended,
}: {
  readonly fault: Fault;
  readonly onMended: () => void;
}): ReactNode {
  const session = useSession();
  const tell = useTell();
  const file = useOrderFile((whole) => whole);
  const { index: child, work } = useChild();
  const order = useSessionState((state) => state.work.order);
  const { report } = work;
  const dress = useMemo((): FaultyDress | null => {
    if (order === null || report === null) return null;
    const wish = dressWish(order, order.children[child] ?? report.dress.child, report.dress.body, null);
    return { file, child, wish, fault };
  }, [order, report, file, child, fault]);
  const found = useRepairs(dress);
  if (dress === null) return null;
  if (found === null) return <p className="small quiet">{say('page.fit.repair.looking', {}, file.units)}</p>;
  if (found.length === 0) return null;
  return (
    <div className="row row-wrap">
      {found.map(({ label, change }) => {
        const what = tell(label);
        return (
          <Button
            key={what}
            onPress={() => {
              const run = session.change({ key: 'page.did.repair', values: { what: label } }, change);
              toastDone(say('page.fit.repaired', { what }, file.units), run);
              onMended();
            }}
          >
            {what}
          </Button>
        );
      })}
    </div>
  );
}
