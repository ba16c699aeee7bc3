import { memo, type ReactNode } from 'react';
import type { CutPiece } from '../../engine/cut/index.ts';
import type { Path } from '../../engine/geometry/index.ts';
import { type EdgeKind, outlineOf } from '../../engine/piece/index.ts';
import { cuttingRuns } from '../../engine/sheet/index.ts';
import { lineData, pathData } from '../parts/path-data.ts';
import { hatchFill } from './hatches.tsx';
import type { LaidPiece } from './lay-pieces.ts';
import { svgMatrix } from './motion.ts';
import { bracketText, grainText, stitchedNotches } from './piece-signs.ts';

interface PieceDrawingProps {
  readonly laid: LaidPiece;
  readonly hatches: string;
  readonly allowances: boolean;
  /** Drawn as sewn: seams light, finished edges heavy, no signs for cutting. */
  readonly sewn: boolean;
  /** Construction lines of the half that the piece belongs to. */
  readonly construction: readonly Path[];
}

/** A piece with the signs of the trade, drawn in its own millimetres. */
export const PieceDrawing = memo(function PieceDrawing(props: PieceDrawingProps): ReactNode {
  const { laid, hatches, allowances, sewn, construction } = props;
  const { cut, frame } = laid;
  const { piece } = cut;
  const area = pathData(allowances ? cut.cuttingLine : outlineOf(piece));
  const hatch = hatchFill(hatches, piece.cloth);
  return (
    <g transform={svgMatrix(frame)} className={`t-piece t-cloth-${piece.cloth}`} data-piece={piece.id}>
      <path className="t-cloth" d={area} />
      {hatch === null ? null : <path d={area} fill={hatch} />}
      {construction.length === 0 ? null : (
        <path className="t-construction" d={construction.map(pathData).join('')} />
      )}
      {sewn ? <SewnLines cut={cut} /> : <CutLines cut={cut} allowances={allowances} />}
    </g>
  );
});

function CutLines({ cut, allowances }: { readonly cut: CutPiece; readonly allowances: boolean }): ReactNode {
  const { piece } = cut;
  const folds = piece.edges.filter(({ kind }) => kind === 'fold');
  const stitched = piece.edges.filter(({ kind }) => kind !== 'fold');
  const runs = allowances ? cuttingRuns(cut) : null;
  const notches = allowances ? cut.notches : stitchedNotches(piece);
  const kinds = [...new Set(piece.markings.map(({ kind }) => kind))];
  return (
    <>
      <path className="t-stitching" d={stitched.map(({ path }) => pathData(path)).join('')} />
      {kinds.map((kind) => (
        <path
          key={kind}
          className={`t-marking t-${kind}`}
          d={piece.markings.flatMap((m) => (m.kind === kind ? [pathData(m.path)] : [])).join('')}
        />
      ))}
      <path className="t-grain" d={grainText(piece)} />
      {folds.length === 0 ? null : (
        <>
          <path className="t-fold" d={(runs?.fold ?? folds.map(({ path }) => path)).map(pathData).join('')} />
          <path className="t-bracket" d={folds.map(({ path }) => bracketText(path)).join('')} />
        </>
      )}
      <path className="t-notch" d={notches.map(({ from, to }) => lineData(from, to)).join('')} />
      {runs === null ? null : <path className="t-cutting" d={runs.cut.map(pathData).join('')} />}
    </>
  );
}

/** Edges that are still edges when the dress is sewn. */
const FINISHED: readonly EdgeKind[] = [
  'neck',
  'armhole',
  'sleeve-hem',
  'curved-sleeve-hem',
  'closing',
  'hem',
  'curved-hem',
  'free',
];

function SewnLines({ cut: { piece } }: { readonly cut: CutPiece }): ReactNode {
  const text = (wanted: (kind: EdgeKind) => boolean): string =>
    piece.edges.flatMap(({ kind, path }) => (wanted(kind) ? [pathData(path)] : [])).join('');
  return (
    <>
      <path className="t-seam" d={text((kind) => kind !== 'fold' && !FINISHED.includes(kind))} />
      <path className="t-centre" d={text((kind) => kind === 'fold')} />
      <path className="t-finished" d={text((kind) => FINISHED.includes(kind))} />
    </>
  );
}
