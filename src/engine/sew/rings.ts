import type { Garment, PieceId } from '../piece/index.ts';

/**
 * Which pieces become one length of cloth: those that skirt joins and the seam of the opening hold side by side. The
 * ring has the name of its first piece, without what tells front and back apart.
 */
export function ringsOf(garment: Garment): ReadonlyMap<PieceId, string> {
  const group = new Map<PieceId, PieceId>(garment.pieces.map(({ id }) => [id, id]));
  const rootOf = (id: PieceId): PieceId => {
    const above = group.get(id) ?? id;
    return above === id ? id : rootOf(above);
  };
  for (const seam of garment.seams) {
    if (seam.name !== 'skirt-join' && seam.name !== 'closing') continue;
    const [first, ...rest] = [...seam.a, ...seam.b].map(({ piece }) => rootOf(piece));
    if (first !== undefined) for (const other of rest) group.set(rootOf(other), rootOf(first));
  }
  const names = new Map<PieceId, string>();
  for (const { id } of garment.pieces) {
    const root = rootOf(id);
    if (!names.has(root)) names.set(root, id.replace(/-(front|back|gore|\d+)$/, ''));
  }
  return new Map(garment.pieces.map(({ id }) => [id, names.get(rootOf(id)) ?? id]));
}
