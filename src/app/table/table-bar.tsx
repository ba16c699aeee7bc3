import type { ReactNode } from 'react';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { SHOWABLE, TABLE_VIEWS, type TableLook } from './table-types.ts';

interface TableBarProps {
  readonly look: TableLook;
  readonly onLook: (look: TableLook) => void;
  readonly tape: boolean;
  readonly onTape: (out: boolean) => void;
  readonly units: UnitSystem;
}

/** The views, what is shown of them, and the tape. */
export function TableBar({ look, onLook, tape, onTape, units }: TableBarProps): ReactNode {
  const readable = look.view === 'pieces' || look.view === 'sewn';
  return (
    <div className="t-bar">
      {/* biome-ignore lint/a11y/useSemanticElements: a row of buttons is no part of a form. */}
      <div className="t-views" role="group" aria-label={say('table.view', {}, units)}>
        {TABLE_VIEWS.map((view) => (
          <button
            key={view}
            type="button"
            aria-pressed={look.view === view}
            onClick={() => onLook({ ...look, view })}
          >
            {say(`table.view.${view}`, {}, units)}
          </button>
        ))}
      </div>
      <div className="t-tools">
        <button type="button" aria-pressed={tape} disabled={!readable} onClick={() => onTape(!tape)}>
          {say('table.tape', {}, units)}
        </button>
        <details className="t-show">
          <summary>{say('table.show', {}, units)}</summary>
          <div className="t-show-list">
            {SHOWABLE.map((one) => (
              <label key={one}>
                <input
                  type="checkbox"
                  checked={look.shown[one]}
                  onChange={({ target: { checked } }) =>
                    onLook({ ...look, shown: { ...look.shown, [one]: checked } })
                  }
                />
                {say(`table.show.${one}`, {}, units)}
              </label>
            ))}
          </div>
        </details>
      </div>
    </div>
  );
}
