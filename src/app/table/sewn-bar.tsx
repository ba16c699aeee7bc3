import type { ReactNode } from 'react';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import type { TableScene } from './table-scene.ts';
import type { TableLook } from './table-types.ts';

interface SewnBarProps {
  readonly scene: Extract<TableScene, { view: 'sewn' }>;
  readonly look: TableLook;
  readonly onLook: (look: TableLook) => void;
  readonly units: UnitSystem;
}

/** Where the sewn dress lies open, and its layers, which lift off one by one. */
export function SewnBar({ scene, look, onLook, units }: SewnBarProps): ReactNode {
  const top = scene.layers.at(-1)?.layer;
  const off = scene.lifted.at(-1)?.layer;
  const named = (layer: string) => ({ word: `table.layer.${layer}` });
  return (
    <div className="t-sewn-bar">
      {/* biome-ignore lint/a11y/useSemanticElements: a row of buttons is no part of a form. */}
      <div className="t-views" role="group" aria-label={say('table.joined', {}, units)}>
        {(['shoulder', 'side'] as const).map((joined) => (
          <button
            key={joined}
            type="button"
            aria-pressed={look.joined === joined}
            onClick={() => onLook({ ...look, joined })}
          >
            {say(`table.joined.${joined}`, {}, units)}
          </button>
        ))}
      </div>
      <button
        type="button"
        disabled={scene.layers.length < 2}
        onClick={() => onLook({ ...look, lifted: scene.lifted.length + 1 })}
      >
        {say('table.lift', { layer: named(top ?? 'shell') }, units)}
      </button>
      {off === undefined ? null : (
        <button type="button" onClick={() => onLook({ ...look, lifted: scene.lifted.length - 1 })}>
          {say('table.put-back', { layer: named(off) }, units)}
        </button>
      )}
    </div>
  );
}
