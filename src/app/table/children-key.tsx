import type { ReactNode } from 'react';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { childDash } from './align-children.ts';
import type { TableScene } from './table-scene.ts';

/** Whose outline is which: a stroke of her line beside each name. */
export function ChildrenKey(props: {
  readonly scene: Extract<TableScene, { view: 'children' }>;
  readonly units: UnitSystem;
}): ReactNode {
  const { children } = props.scene;
  if (children.length < 2) return <p className="t-card">{say('table.children.one', {}, props.units)}</p>;
  return (
    <ul className="t-key">
      {children.map(({ name }, child) => (
        <li key={name} className={`t-child-${child % 3}`}>
          <svg width="56" height="12" aria-hidden="true">
            <path d="M0 6H56" strokeDasharray={childDash(child) || undefined} />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
