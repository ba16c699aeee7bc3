import type { ReactNode } from 'react';
import { type Bounds, type Point, pathAt, pathLength } from '../../engine/geometry/index.ts';
import { edgeStart, findEdge, type Garment, outlineOf } from '../../engine/piece/index.ts';
import { pathData } from '../parts/path-data.ts';
import { AtSize } from './at-size.tsx';
import { type Governed, governedAt, governedKey } from './governed-places.ts';
import type { LaidPiece } from './lay-pieces.ts';
import { applyTo, boundsOfAll, isMirrored, movedBounds, svgMatrix } from './motion.ts';
import { paramKey } from './param-now.ts';
import { readEdge } from './read-edge.ts';
import type { TableMark, TablePlace } from './table-types.ts';

interface LiveLayerProps {
  readonly garment: Garment;
  readonly laid: readonly LaidPiece[];
  readonly picked: TablePlace | null;
  readonly marks: readonly TableMark[];
  readonly markShown: string | null;
  readonly governed: readonly Governed[];
  /** The handle that is being dragged, or over which it stands. */
  readonly held: string | null;
}

/** What stands out: the place that was touched, what does not fit, what a number governs. */
export function LiveLayer(props: LiveLayerProps): ReactNode {
  const { garment, laid, picked, marks, markShown, governed, held } = props;
  return (
    <g className="t-live">
      {marks.map((mark) => (
        <Mark key={mark.id} mark={mark} laid={laid} shown={mark.id === markShown} />
      ))}
      <Picked garment={garment} laid={laid} picked={picked} />
      {governed.map((one) => (
        <GovernedPoints key={paramKey(one.ref)} governed={one} laid={laid} held={held} />
      ))}
    </g>
  );
}

function Picked({ garment, laid, picked }: Pick<LiveLayerProps, 'garment' | 'laid' | 'picked'>): ReactNode {
  if (picked === null) return null;
  const partners =
    picked.kind === 'edge'
      ? (readEdge(garment, picked.piece, picked.edge)?.sewn ?? []).flatMap(({ others }) => others)
      : [];
  return (
    <>
      {laid.map(({ key, cut: { piece }, frame }) => {
        const edges = partners.flatMap((other) => (other.piece.id === piece.id ? [other.edge] : []));
        return edges.length === 0 ? null : (
          <path
            key={key}
            className="t-partner"
            transform={svgMatrix(frame)}
            d={edges.map(({ path }) => pathData(path)).join('')}
          />
        );
      })}
      {laid
        .filter(({ cut }) => cut.piece.id === picked.piece)
        .map(({ key, cut: { piece }, frame }) => {
          if (picked.kind === 'corner') {
            if (findEdge(piece, picked.edge) === undefined) return null;
            return (
              <AtSize key={key} at={applyTo(frame, edgeStart(piece, picked.edge))}>
                <circle className="t-corner" r={8} />
              </AtSize>
            );
          }
          const edge = picked.kind === 'edge' ? findEdge(piece, picked.edge) : undefined;
          const path = picked.kind === 'piece' ? outlineOf(piece) : edge?.path;
          return path === undefined ? null : (
            <path key={key} className="t-picked" transform={svgMatrix(frame)} d={pathData(path)} />
          );
        })}
    </>
  );
}

function Mark(props: {
  readonly mark: TableMark;
  readonly laid: readonly LaidPiece[];
  readonly shown: boolean;
}): ReactNode {
  const { mark, laid, shown } = props;
  const places = markPlaces(mark, laid);
  return (
    <g className={`t-mark t-mark-${mark.level}${shown ? ' t-mark-shown' : ''}`}>
      {places.map(({ key, laid: { cut, frame }, edge }) =>
        edge === null ? null : (
          <path
            key={key}
            className="t-mark-edge"
            transform={svgMatrix(frame)}
            d={pathData(findEdge(cut.piece, edge)?.path ?? outlineOf(cut.piece))}
          />
        ),
      )}
      {places.map(({ key, at }) => (
        <AtSize key={key} at={at}>
          <g data-mark={mark.id}>
            <circle className="t-mark-reach" r={22} />
            <path className="t-mark-sign" d="M0 -11L10 7H-10Z" />
            <path className="t-mark-bang" d="M0 -4.5V1.5M0 3.8V4.6" />
          </g>
        </AtSize>
      ))}
    </g>
  );
}

interface MarkPlace {
  readonly key: string;
  readonly laid: LaidPiece;
  readonly edge: string | null;
  readonly at: Point;
}

function markPlaces({ where }: TableMark, laid: readonly LaidPiece[]): readonly MarkPlace[] {
  const first = (id: string): LaidPiece | undefined => laid.find(({ cut }) => cut.piece.id === id);
  const edges = where.edges.flatMap(({ piece, edge: name }): readonly MarkPlace[] => {
    const on = first(piece);
    const edge = on === undefined ? undefined : findEdge(on.cut.piece, name);
    if (on === undefined || edge === undefined) return [];
    // Beside the middle, where the length stands.
    const beside = pathAt(edge.path, pathLength(edge.path) * 0.3).point;
    const at = where.at !== undefined && piece === where.pieces[0] ? where.at : beside;
    return [{ key: `${piece} ${name}`, laid: on, edge: name, at: applyTo(on.frame, at) }];
  });
  if (edges.length > 0) return edges;
  return where.pieces.flatMap((id, i): readonly MarkPlace[] => {
    const on = first(id);
    if (on === undefined) return [];
    const at = i === 0 && where.at !== undefined ? where.at : on.cut.labelAt;
    return [{ key: id, laid: on, edge: null, at: applyTo(on.frame, at) }];
  });
}

/** What has to be in view to see a mark; null where none of its pieces lies on the table. */
export function markBox(mark: TableMark, laid: readonly LaidPiece[]): Bounds | null {
  const places = markPlaces(mark, laid);
  if (places.length === 0) return null;
  return boundsOfAll(
    places.map(({ laid: { cut, frame }, edge, at }) => {
      const path = edge === null ? undefined : findEdge(cut.piece, edge)?.path;
      return path === undefined ? around(at) : movedBounds(path, frame);
    }),
  );
}

/** What has to be in view to see a place that was picked elsewhere. */
export function placeBox(place: TablePlace, laid: readonly LaidPiece[]): Bounds | null {
  const on = laid.find(({ cut }) => cut.piece.id === place.piece);
  if (on === undefined) return null;
  const { piece } = on.cut;
  if (place.kind === 'piece') return movedBounds(outlineOf(piece), on.frame);
  const edge = findEdge(piece, place.edge);
  if (edge === undefined) return null;
  return place.kind === 'edge'
    ? movedBounds(edge.path, on.frame)
    : around(applyTo(on.frame, edgeStart(piece, place.edge)));
}

/** A little of the table round a point, mm. */
const AROUND = 40;
const around = ({ x, y }: Point): Bounds => ({
  minX: x - AROUND,
  minY: y - AROUND,
  maxX: x + AROUND,
  maxY: y + AROUND,
});

function GovernedPoints(props: {
  readonly governed: Governed;
  readonly laid: readonly LaidPiece[];
  readonly held: string | null;
}): ReactNode {
  const { governed, laid, held } = props;
  const handles = new Set(governed.handles.map(governedKey));
  return governed.points.map((point) => {
    const on = laid.find(({ cut }) => cut.piece.id === point.piece);
    const at = on === undefined ? null : governedAt(on.cut.piece, point.edge, point.middle);
    if (on === undefined || at === null) return null;
    const key = governedKey(point);
    const handle = `${paramKey(governed.ref)} ${key}`;
    return (
      <AtSize key={key} at={applyTo(on.frame, at)}>
        {handles.has(key) ? (
          <g className={held === handle ? 't-handle t-handle-held' : 't-handle'} data-handle={handle}>
            <circle className="t-handle-reach" r={22} />
            <circle className="t-handle-dot" r={8} />
            <Ways point={point.moves} mirrored={isMirrored(on.frame)} />
          </g>
        ) : (
          <circle className="t-governed" r={3.5} />
        )}
      </AtSize>
    );
  });
}

/** Two small arrow heads that show which way a handle goes. */
function Ways({ point, mirrored }: { readonly point: Point; readonly mirrored: boolean }): ReactNode {
  const turn = (Math.atan2(point.y, mirrored ? -point.x : point.x) * 180) / Math.PI;
  return <path className="t-ways" transform={`rotate(${turn})`} d="M13 -4L18 0L13 4M-13 -4L-18 0L-13 4" />;
}
