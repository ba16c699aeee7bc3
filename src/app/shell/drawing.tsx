import { type ReactNode, useCallback, useMemo } from 'react';
import type { Check } from '../../engine/check/index.ts';
import type { ChildDrawing, Finding } from '../../engine/order/index.ts';
import { finestRuler } from '../../engine/units/index.ts';
import { useSessionNow, useUnits } from '../session/use-session.ts';
import { DraftingTable, type TableDress, type TableLook, type TableMark } from '../table/index.ts';
import { findingId, useLook, useLooking } from './looking.ts';

/** The dress of the child that is shown, on the drafting table, with the other children to be laid over it. */
export function Drawing(): ReactNode {
  const index = useSessionNow((state) => state.child);
  const children = useSessionNow((state) => state.work.children);
  const ruler = useSessionNow((state) => state.work.order?.ruler);
  const units = useUnits();
  const looking = useLooking((state) => state);
  const look = useLook();
  const onLook = useCallback((chosen: TableLook) => look({ look: chosen }), [look]);
  const { drawing = null, report = null } = children[index] ?? {};
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
      onLook={onLook}
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
