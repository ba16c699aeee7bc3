import { type ReactNode, useMemo } from 'react';
import type { Check } from '../../engine/check/index.ts';
import type { ChildDrawing, Finding } from '../../engine/order/index.ts';
import { finestRuler } from '../../engine/units/index.ts';
import { useChild, useSessionState, useUnits } from '../session/use-session.ts';
import { DraftingTable, type TableDress, type TableMark } from '../table/index.ts';
import { findingId, useLook, useLooking } from './looking.ts';

/** The dress of the child that is shown, on the drafting table, with the other children to be laid over it. */
export function Drawing(): ReactNode {
  const { index, work } = useChild();
  const children = useSessionState((state) => state.work.children);
  const ruler = useSessionState((state) => state.work.order?.ruler);
  const units = useUnits();
  const looking = useLooking((state) => state);
  const look = useLook();
  const { drawing, report } = work;
  const dress = useMemo(() => (drawing === null ? null : tableDress(drawing)), [drawing]);
  const marks = useMemo(() => (report === null ? [] : marksOf(report.findings)), [report]);
  const others = useMemo(
    () =>
      children.flatMap((child, i) =>
        i === index || child.drawing === null
          ? []
          : [{ name: child.name, garment: child.drawing.drawn.garment }],
      ),
    [children, index],
  );
  return (
    <DraftingTable
      dress={dress}
      others={others}
      units={units}
      ruler={ruler ?? finestRuler(units)}
      look={looking.look}
      onLook={(chosen) => look({ look: chosen })}
      picked={looking.picked}
      onPick={(picked) => look({ picked })}
      marks={marks}
      markShown={looking.markShown}
      onMark={(markShown) => look({ markShown })}
      governed={looking.governed}
      liveParam={looking.liveParam}
      {...(looking.onDragParam === null ? {} : { onDragParam: looking.onDragParam })}
    />
  );
}

const tableDress = ({ name, drawn, pieces }: ChildDrawing): TableDress => ({
  name,
  garment: drawn.garment,
  pieces,
  draft: drawn.draft,
});

function marksOf(findings: readonly Finding[]): readonly TableMark[] {
  return findings.flatMap((finding, index): TableMark[] => {
    const { level } = finding;
    const where = 'where' in finding ? (finding as Check).where : null;
    if (where === null || (level !== 'stop' && level !== 'warn')) return [];
    return [{ id: findingId(index), level, where }];
  });
}
