import { type ReactNode, useRef } from 'react';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import type { TableView } from './table-types.ts';

interface TableMenuProps {
  readonly view: TableView;
  readonly units: UnitSystem;
  readonly children: ReactNode;
}

/** On a phone the bars of the table lie behind one button, so that the drawing has the room. */
export function TableMenu({ view, units, children }: TableMenuProps): ReactNode {
  const menu = useRef<HTMLDetailsElement>(null);
  const fold = (): void => {
    if (menu.current !== null) menu.current.open = false;
  };
  return (
    <details
      ref={menu}
      className="t-menu"
      onKeyDown={({ key, currentTarget }) => {
        if (key !== 'Escape') return;
        fold();
        currentTarget.querySelector('summary')?.focus();
      }}
      onClick={({ target }) => {
        // Once a view is chosen or the tape taken, the drawing is what she wants to see.
        if (target instanceof Element && target.closest('button') !== null) fold();
      }}
    >
      <summary aria-label={say('table.menu', { view: { word: `table.view.${view}` } }, units)}>
        {say(`table.view.${view}`, {}, units)}
        <svg className="icon-small" viewBox="0 0 12 12" aria-hidden="true">
          <path d="M2 4l4 4 4-4" />
        </svg>
      </summary>
      <div className="t-menu-inside">{children}</div>
    </details>
  );
}
