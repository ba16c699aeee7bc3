import { type ReactNode, useEffect, useMemo, useRef } from 'react';
import type { Check } from '../../../engine/check/index.ts';
import type { Finding } from '../../../engine/order/index.ts';
import { say } from '../../../engine/words/index.ts';
import { useTell, useUnits } from '../../session/use-session.ts';
import { findingId, useLook, useLooking } from '../../shell/looking.ts';
import { RepairButtons } from './repair-buttons.tsx';
import { isCaution, measuredText, withoutPath } from './told-check.ts';

/** A shape for each level, so that it is told by more than colour. */
const SIGNS: Readonly<Record<Finding['level'], string>> = {
  stop: 'M2 2l8 8M10 2l-8 8',
  warn: 'M6 1v6M6 10v1',
  note: 'M6 5v6M6 1v1',
  ok: 'M1 6l4 4 6-8',
};

/** One thing that was found; opened it says what was measured, what is allowed and what to do, and shows the place. */
export function FindingRow({
  finding,
  index,
  open,
  onOpen,
}: {
  readonly finding: Finding;
  /** Its place in the report. */
  readonly index: number;
  readonly open: boolean;
  readonly onOpen: (index: number | null) => void;
}): ReactNode {
  const tell = useTell();
  const units = useUnits();
  const row = useRef<HTMLLIElement>(null);
  const show = useShowPlace(finding, index);
  const fault = useMemo(() => ({ of: 'finding' as const, finding }), [finding]);
  const measured = measuredText(finding, units);
  const { level, todo } = finding;
  const sentence = tell(withoutPath(finding.say));
  useEffect(() => {
    if (open) row.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  return (
    <li
      ref={row}
      className={`finding finding-${level}${open ? ' finding-open' : ''}`}
      data-finding={finding.code}
    >
      <button
        type="button"
        className="finding-head"
        aria-expanded={open}
        onClick={() => {
          onOpen(open ? null : index);
          if (!open) show?.();
        }}
      >
        <svg className="icon-small" viewBox="0 0 12 12" aria-hidden="true">
          <path d={SIGNS[level]} />
        </svg>
        <span>{sentence}</span>
      </button>
      {open && (
        <div className="finding-inside">
          {measured !== '' && <p className="small">{measured}</p>}
          {todo !== null && <p>{tell({ key: 'page.fit.todo', values: { todo } })}</p>}
          {isCaution(finding) && <p className="small quiet">{say('page.fit.caution', {}, units)}</p>}
          {level !== 'ok' && <RepairButtons fault={fault} onMended={() => onOpen(null)} />}
          {show !== null && (
            <button
              type="button"
              className="link small"
              aria-label={say('page.fit.show.what', { what: sentence }, units)}
              onClick={show}
            >
              {say('page.fit.show', {}, units)}
            </button>
          )}
        </div>
      )}
    </li>
  );
}

/** Brings the place of a finding into view on the table; null where it has none. */
function useShowPlace(finding: Finding, index: number): (() => void) | null {
  const look = useLook();
  const view = useLooking((state) => state.look);
  if (!('where' in finding)) return null;
  const { where, level } = finding as Check;
  const [edge] = where.edges;
  const [piece] = where.pieces;
  if (edge === undefined && piece === undefined) return null;
  return () => {
    const flat = view.view === 'pieces' || view.view === 'sewn';
    const shown = flat ? {} : { look: { ...view, view: 'pieces' as const } };
    // Marks lie on the table for what has to be mended or looked at; the rest is picked there.
    if (level === 'stop' || level === 'warn') look({ ...shown, picked: null, markShown: findingId(index) });
    else if (edge !== undefined) look({ ...shown, markShown: null, picked: { kind: 'edge', ...edge } });
    else if (piece !== undefined) look({ ...shown, markShown: null, picked: { kind: 'piece', piece } });
  };
}
