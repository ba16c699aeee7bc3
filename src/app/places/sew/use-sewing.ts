import { useMemo } from 'react';
import { type ChildSewingResult, childSewing, type SewingFile } from '../../../engine/order/index.ts';
import { useSessionState } from '../../session/use-session.ts';
import { useTimedElsewhere } from '../other-orders.ts';

const NOTHING: SewingFile = {};

/** The sewing of every child whose dress is drawn; null for the others. Made anew when dress, order, progress or her times change. */
export function useSewings(): readonly (ChildSewingResult | null)[] {
  const order = useSessionState(({ work }) => work.order);
  const children = useSessionState(({ work }) => work.children);
  const files = useSessionState(({ file }) => file.children);
  const timed = useTimedElsewhere();
  return useMemo(
    () =>
      children.map(({ drawing }, i) =>
        order === null || drawing === null
          ? null
          : childSewing(order, drawing, files[i]?.sewing ?? NOTHING, timed),
      ),
    [order, children, files, timed],
  );
}
