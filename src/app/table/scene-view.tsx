import { memo, type ReactNode } from 'react';
import { pathMap } from '../../engine/geometry/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';
import { say } from '../../engine/words/index.ts';
import { pathData } from '../parts/path-data.ts';
import { childDash } from './align-children.ts';
import { AtSize } from './at-size.tsx';
import { DraftingPaper } from './drafting-paper.tsx';
import { linesOfHalf } from './drafting-play.ts';
import { HALVES, halfPieces } from './layers.ts';
import { svgMatrix } from './motion.ts';
import { PieceDrawing } from './piece-drawing.tsx';
import type { TableScene } from './table-scene.ts';
import type { Showable, TableDress } from './table-types.ts';

interface SceneViewProps {
  readonly scene: TableScene;
  readonly dress: TableDress;
  readonly shown: Readonly<Record<Showable, boolean>>;
  readonly hatches: string;
  readonly units: UnitSystem;
}

/** The lines of the chosen view; nothing in here changes while the camera moves. */
export const SceneView = memo(function SceneView(props: SceneViewProps): ReactNode {
  const { scene, dress, shown, hatches, units } = props;
  switch (scene.view) {
    case 'pieces': {
      const construction = shown.construction ? HALVES.map((half) => linesOfHalf(dress.draft, half)) : [];
      const half = (id: string): number =>
        HALVES.findIndex((h) => halfPieces(dress.garment, h).some((piece) => piece.id === id));
      return scene.laid.map((laid) => (
        <PieceDrawing
          key={laid.key}
          laid={laid}
          hatches={hatches}
          allowances={shown.allowances}
          sewn={false}
          construction={construction[half(laid.cut.piece.id)] ?? NONE}
        />
      ));
    }
    case 'sewn':
      return scene.layers.map(({ layer, pieces, widths }) => (
        <g key={layer} className={`t-layer t-layer-${layer}`}>
          {widths.map(({ key, frame, outline, folds, hem, side, opening }) => (
            <g key={key} transform={svgMatrix(frame)}>
              <path className="t-cloth" d={pathData(outline)} />
              <path className="t-seam" d={pathData(side)} />
              <path className="t-finished" d={pathData(hem) + (opening === null ? '' : pathData(opening))} />
              <path className="t-pleat" d={folds.map(pathData).join('')} />
            </g>
          ))}
          {pieces.map((laid) => (
            <PieceDrawing
              key={laid.key}
              laid={laid}
              hatches={hatches}
              allowances={false}
              sewn={true}
              construction={NONE}
            />
          ))}
        </g>
      ));
    case 'sketch':
      return scene.sketches.map(({ side, lines, frame, caption }) => (
        <g key={side} className="t-sketch">
          {lines.map(({ stroke, path }, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a sketch have no names, and keep their order.
            <path key={i} className={`t-sk-${stroke}`} d={pathData(pathMap(path, frame))} />
          ))}
          <AtSize at={caption}>
            <text className="t-caption" y={20}>
              {say(`table.sketch.${side}`, {}, units)}
            </text>
          </AtSize>
        </g>
      ));
    case 'children':
      return scene.children.map(({ name, lines }, child) => (
        <g key={name} className={`t-child t-child-${child % 3}${child === 0 ? ' t-child-own' : ''}`}>
          <path
            d={lines.map(({ path }) => pathData(path)).join('')}
            strokeDasharray={childDash(child) || undefined}
          />
        </g>
      ));
    case 'drafting':
      return <DraftingPaper paper={scene.paper} units={units} />;
  }
});

const NONE = [] as const;
