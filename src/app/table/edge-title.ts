import { hasWords, tell } from '../../engine/design/index.ts';
import type { Edge, Piece } from '../../engine/piece/index.ts';
import type { UnitSystem } from '../../engine/units/index.ts';

/** What the maker calls an edge. A place cut in two keeps its name with a number; her own names stand as she wrote them. */
export function edgeTitle({ name, kind }: Edge, units: UnitSystem): string {
  const [, base = name, number = ''] = /^(.*?)(?:-(\d+))?$/.exec(name) ?? [];
  // 'left' of a skirt panel says less than 'opening edge'.
  const byKind = kind === 'fold' || SAYS_MORE.includes(base) ? `table.edge-kind.${kind}` : '';
  const key = [byKind, `table.edge.${base}`].find((k) => k !== '' && hasWords(k));
  const title = key === undefined ? base.replaceAll('-', ' ') : tell({ key, values: {} }, units);
  return number === '' ? title : `${title} ${number}`;
}

const SAYS_MORE: readonly string[] = ['left', 'right', 'centre'];

export const pieceTitle = (piece: Piece, units: UnitSystem): string => tell(piece.title, units);
