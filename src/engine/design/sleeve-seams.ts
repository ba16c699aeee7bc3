import type { Half } from '../block/index.ts';
import { edgeLength, type Garment, type Join, type Notch, type Piece, type Seam } from '../piece/index.ts';
import { armEdgeLength, armEdges, notchArmEdge, notchStyle } from './armhole-ring.ts';
import { HALVES } from './bodice.ts';

/**
 * Cap notches lie as far from the underarm as those of the armhole, so that below them nothing is eased or gathered;
 * nearly half-way up, where the armhole turns upright (common practice, no source).
 */
const NOTCH_FROM_UNDERARM = 0.45;

/** Length of armhole and cap below the notch of one half, mm: sewn plain. */
export const plainBelowNotch = (armhole: number): number => armhole * NOTCH_FROM_UNDERARM;

/**
 * Sews a sleeve with the edges `cap-back` (underarm to top), `cap-front` (top to underarm), `underarm-front` and
 * `underarm-back` into both armholes, and notches armhole and cap where the ease or the gathers begin.
 */
export function setSleeve(
  garment: Garment,
  sleeve: Piece,
  joinOf: (half: Half) => Join,
  smoothHem = true,
): Garment {
  let dress = garment;
  const onSleeve: Notch[] = [];
  for (const half of HALVES) {
    const armhole = armEdgeLength(garment, half, 'armhole');
    const plain = plainBelowNotch(armhole);
    const match = `sleeve-${half}`;
    const cap = edgeLength(sleeve, `cap-${half}`);
    dress = notchArmEdge(dress, half, 'armhole', armhole - plain, match);
    const at = half === 'front' ? cap - plain : plain;
    onSleeve.push({ edge: `cap-${half}`, at, style: notchStyle(half), match });
  }
  const caps = HALVES.map(
    (half): Seam => ({
      id: `sleeve-cap-${half}`,
      name: 'sleeve-cap',
      a: armEdges(garment, half, 'armhole'),
      b: [{ piece: sleeve.id, edge: `cap-${half}`, times: 2, reversed: half === 'back' }],
      join: joinOf(half),
      smoothStart: false,
      smoothEnd: false,
    }),
  );
  return {
    ...dress,
    pieces: [...dress.pieces, { ...sleeve, notches: [...sleeve.notches, ...onSleeve] }],
    seams: [...dress.seams, ...caps, underarmSeam(sleeve, smoothHem)],
  };
}

/** The seam along the underside of the arm. */
const underarmSeam = (sleeve: Piece, smoothHem: boolean): Seam => ({
  id: `${sleeve.id}-underarm`,
  name: 'sleeve-underarm',
  a: [{ piece: sleeve.id, edge: 'underarm-front', times: 2 }],
  b: [{ piece: sleeve.id, edge: 'underarm-back', times: 2, reversed: true }],
  join: { kind: 'flat' },
  smoothStart: true,
  smoothEnd: smoothHem,
});
