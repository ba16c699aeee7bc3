import type { ReactNode } from 'react';
import type { CutPiece } from '../../engine/cut/index.ts';
import { pathLength } from '../../engine/geometry/index.ts';
import { findEdge, type Garment, type Join, outlineOf } from '../../engine/piece/index.ts';
import type { Ruler, UnitSystem } from '../../engine/units/index.ts';
import { say, type WordKey, type WordValues } from '../../engine/words/index.ts';
import { edgeTitle, pieceTitle } from './edge-title.ts';
import { lengthText } from './length-text.ts';
import { cornerAngle, readEdge, type SewnTo } from './read-edge.ts';
import type { TablePlace } from './table-types.ts';

interface ReadingCardProps {
  readonly garment: Garment;
  readonly pieces: readonly CutPiece[];
  readonly picked: TablePlace | null;
  readonly onPick: (place: TablePlace | null) => void;
  readonly units: UnitSystem;
  readonly ruler: Ruler;
}

/** Reads the place that was touched; pieces and edges can be chosen by keyboard as well. */
export function ReadingCard(props: ReadingCardProps): ReactNode {
  const { garment, pieces, picked, onPick, units } = props;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);
  const piece = pieces.find(({ piece: { id } }) => id === picked?.piece)?.piece;
  const edge = picked === null || picked.kind === 'piece' ? '' : picked.edge;
  return (
    <section className="t-card" aria-label={told('table.read.piece')}>
      <div className="t-card-choice">
        <label>
          <span>{told('table.read.piece')}</span>
          <select
            value={piece?.id ?? ''}
            onChange={({ target: { value } }) =>
              onPick(value === '' ? null : { kind: 'piece', piece: value })
            }
          >
            <option value="">–</option>
            {pieces.map((cut) => (
              <option key={cut.piece.id} value={cut.piece.id}>
                {cut.label.title}
              </option>
            ))}
          </select>
        </label>
        {piece === undefined ? null : (
          <label>
            <span>{told('table.read.edge')}</span>
            <select
              value={edge}
              onChange={({ target: { value } }) =>
                onPick(
                  value === ''
                    ? { kind: 'piece', piece: piece.id }
                    : { kind: 'edge', piece: piece.id, edge: value },
                )
              }
            >
              <option value="">{told('table.read.whole-piece')}</option>
              {piece.edges.map((one) => (
                <option key={one.name} value={one.name}>
                  {edgeTitle(one, units)}
                </option>
              ))}
            </select>
          </label>
        )}
        {picked === null ? null : (
          <button type="button" className="t-quiet" onClick={() => onPick(null)}>
            {told('table.read.close')}
          </button>
        )}
      </div>
      <output className="t-reading">
        {picked === null ? told('table.read.none') : <Reading {...props} garment={garment} picked={picked} />}
      </output>
    </section>
  );
}

function Reading(props: ReadingCardProps & { readonly picked: TablePlace }): ReactNode {
  const { garment, pieces, picked, units, ruler } = props;
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);
  const length = (mm: number): string => lengthText(mm, units, ruler);
  const cut = pieces.find(({ piece: { id } }) => id === picked.piece);
  if (cut === undefined) return null;
  const { piece } = cut;
  switch (picked.kind) {
    case 'piece':
      return (
        <>
          <b>{pieceTitle(piece, units)}</b>
          <p>{cut.label.cutting}</p>
          <p>{told('table.read.around', { length: length(pathLength(outlineOf(piece))) })}</p>
        </>
      );
    case 'corner': {
      const index = piece.edges.findIndex(({ name }) => name === picked.edge);
      const [before, after] = [piece.edges.at(index - 1), piece.edges[index]];
      const angle = cornerAngle(piece, picked.edge);
      if (before === undefined || after === undefined || angle === null) return null;
      return (
        <>
          <b className="t-figure">
            {told('table.read.angle', { degrees: (Math.round(angle * 2) / 2).toFixed(1).replace('.0', '') })}
          </b>
          <p>
            {told('table.read.corner', { before: edgeTitle(before, units), after: edgeTitle(after, units) })}
          </p>
        </>
      );
    }
    case 'edge': {
      const edge = findEdge(piece, picked.edge);
      const reading = readEdge(garment, piece.id, picked.edge);
      if (edge === undefined || reading === null) return null;
      const allowance = cut.allowances[edge.name] ?? 0;
      return (
        <>
          <b className="t-figure">{length(reading.length)}</b>
          <p>
            {told('table.read.edge-of', { edge: edgeTitle(edge, units), piece: pieceTitle(piece, units) })}
            {allowance > 0 ? `. ${told('table.read.allowance', { length: length(allowance) })}` : ''}
          </p>
          {edge.kind === 'fold' ? (
            <p>{told('table.read.on-fold')}</p>
          ) : reading.sewn.length === 0 ? (
            <p>{told('table.read.not-sewn')}</p>
          ) : (
            reading.sewn.map((sewn, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the seams of one edge keep their order.
              <p key={i}>{sewnText(sewn, reading.length, units, length)}</p>
            ))
          )}
        </>
      );
    }
  }
}

function sewnText(sewn: SewnTo, own: number, units: UnitSystem, length: (mm: number) => string): string {
  const told = (key: WordKey, values: WordValues = {}): string => say(key, values, units);
  if (sewn.toItself) return told(sewn.seam === 'closing' ? 'table.read.closing' : 'table.read.sewn-to-twin');
  const others = sewn.others
    .map(({ piece, edge }) =>
      told('table.read.edge-of', { edge: edgeTitle(edge, units), piece: pieceTitle(piece, units) }),
    )
    .join(', ');
  // A seam of one edge on each side needs no sum.
  const alone = sewn.others.length === 1 && Math.abs(sewn.own - own) < 0.01;
  const both = alone
    ? told('table.read.other', { other: length(sewn.other) })
    : told('table.read.both', { own: length(sewn.own), other: length(sewn.other) });
  return `${told('table.read.sewn-to', { others })}, ${joinText(sewn.join, units, length)}. ${both}.`;
}

function joinText(join: Join, units: UnitSystem, length: (mm: number) => string): string {
  switch (join.kind) {
    case 'flat':
      return say('table.read.flat', {}, units);
    case 'eased':
      return say('table.read.eased', { length: length(Math.abs(join.ease)) }, units);
    case 'gathered':
      return say('table.read.gathered', { ratio: Math.round(join.ratio * 100) / 100 }, units);
    case 'pleated':
      return say('table.read.pleated', { pleats: join.pleats }, units);
  }
}
