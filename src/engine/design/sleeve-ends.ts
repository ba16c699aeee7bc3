import type { Bench } from '../construct/index.ts';
import { pathSlice, pathTranslate } from '../geometry/index.ts';
import {
  edgeLength,
  edgeOf,
  type Garment,
  type Join,
  type Piece,
  type PieceId,
  pieceOf,
  type Seam,
  type SeamEdge,
  type SeamName,
  withPiece,
} from '../piece/index.ts';
import { armBandPiece } from './arm-band-piece.ts';

/** Words that every step with a gathered sleeve end needs, under its own id. */
export const SLEEVE_END_WORDS = {
  'piece.band': 'Sleeve band',
  'piece.cuff': 'Cuff',
  'draw.band':
    '{piece}: rule a rectangle {length} long and {depth} deep, twice its finished depth, for it is folded lengthwise. Cut one for each arm.',
  'draw.gather': 'Gather the sleeve edge of {hem} to {length}.',
  'draw.ease': 'Sew it to the sleeve edge of {hem}, easing in what is more.',
  'draw.elastic':
    'Turn the sleeve edge up as a casing. Cut elastic {elastic} long and 2 cm more to overlap; it draws {hem} together. Choose soft elastic and try it on the arm: it must not mark.',
} as const;

export interface BandWish {
  /** The step whose words tell of it. */
  readonly step: string;
  readonly kind: 'band' | 'cuff';
  /** Sewn length and finished depth; a cuff stands over by `overlap` for its button. */
  readonly length: number;
  readonly overlap: number;
  readonly depth: number;
  /** The sleeve's edges in the order in which the band is sewn to them, from its start. */
  readonly hem: readonly SeamEdge[];
}

/** Sews a folded band or cuff to the end of each sleeve, gathering the sleeve where it is wider. */
export function bandOn(garment: Garment, bench: Bench, wish: BandWish): Garment {
  const id: PieceId = `sleeve-${wish.kind}`;
  const isRing = wish.overlap === 0;
  const band = armBandPiece({
    id,
    title: { key: `${wish.step}.piece.${wish.kind}`, values: {} },
    length: wish.length,
    overlap: wish.overlap,
    depth: 2 * wish.depth,
    top: 'attach',
    ends: isRing ? 'join' : 'free',
    foot: 'attach',
  });
  const hemLength = wish.hem.reduce(
    (sum, { piece, edge }) => sum + edgeLength(pieceOf(garment, piece), edge),
    0,
  );
  bench.part({ key: `${wish.step}.piece.${wish.kind}`, values: {} });
  bench.tell(
    `${wish.step}.draw.band`,
    { piece: band.title, length: { mm: wish.length + wish.overlap }, depth: { mm: 2 * wish.depth } },
    { lines: band.edges.map((edge) => edge.path) },
  );
  const join = sewnOn(hemLength, wish.length);
  if (join.kind !== 'flat') {
    const key = join.kind === 'gathered' ? 'gather' : 'ease';
    bench.tell(`${wish.step}.draw.${key}`, { hem: { mm: hemLength }, length: { mm: wish.length } });
  }
  const on = (edge: string, reversed = false): SeamEdge => ({ piece: id, edge, times: 2, reversed });
  const seam = (
    part: string,
    name: SeamName,
    a: readonly SeamEdge[],
    b: readonly SeamEdge[],
    join: Join,
  ): Seam => ({
    id: `${id}-${part}`,
    name,
    a,
    b,
    join,
    smoothStart: false,
    smoothEnd: false,
  });
  const seams = [
    seam('sewn-on', wish.kind, [on('attach')], wish.hem, join),
    seam(
      'inside',
      wish.kind,
      isRing ? [on('attach')] : [on('attach'), on('underlap')],
      [on('foot', true)],
      FLAT,
    ),
  ];
  if (isRing) seams.push(seam('ring', 'sleeve-underarm', [on('end')], [on('start', true)], FLAT));
  const match = `${id}-middle`;
  const notched = notchHem(garment, wish.hem, hemLength / 2, match);
  return {
    ...notched,
    pieces: [
      ...notched.pieces,
      { ...band, notches: [{ edge: 'attach', at: wish.length / 2, style: 'single', match }] },
    ],
    seams: [...notched.seams, ...seams],
  };
}

/** Below this it is ease rather than gathers (the gathers check says 1.2; a short band takes a little less). */
const GATHERS_FROM = 1.15;

/** How a sleeve end of this length is sewn to its band; ease is told for both arms together. */
function sewnOn(hem: number, band: number): Join {
  if (Math.abs(hem - band) < 1e-6) return FLAT;
  return hem / band < GATHERS_FROM
    ? { kind: 'eased', ease: 2 * (hem - band) }
    : { kind: 'gathered', ratio: hem / band };
}

const FLAT: Join = { kind: 'flat' };

function notchHem(garment: Garment, hem: readonly SeamEdge[], along: number, match: string): Garment {
  let left = along;
  for (const { piece: id, edge, reversed } of hem) {
    const piece = pieceOf(garment, id);
    const length = edgeLength(piece, edge);
    if (left <= length) {
      const at = reversed === true ? length - left : left;
      return withPiece(garment, {
        ...piece,
        notches: [...piece.notches, { edge, at, style: 'single', match }],
      });
    }
    left -= length;
  }
  return garment;
}

/** The elastic lies this far above the foot of its casing, mm: for elastic 6 mm wide (common practice, no source). */
const CASING = 8;

/** Marks where elastic draws the end of a sleeve together, and tells how long it is cut. */
export function elasticIn(sleeve: Piece, bench: Bench, step: string, elastic: number): Piece {
  const hem = edgeOf(sleeve, 'sleeve-edge').path;
  const length = edgeLength(sleeve, 'sleeve-edge');
  const line = pathTranslate(pathSlice(hem, length * 0.06, length * 0.94), { x: 0, y: -CASING });
  bench.tell(`${step}.draw.elastic`, { elastic: { mm: elastic }, hem: { mm: length } }, { lines: [line] });
  return { ...sleeve, markings: [...sleeve.markings, { kind: 'gather', path: line, drawnTo: elastic }] };
}

/** Gives the end of a sleeve another kind of edge, when something is sewn to it. */
export const sleeveEdgeAs = (sleeve: Piece, kind: 'attach' | 'curved-sleeve-hem'): Piece => ({
  ...sleeve,
  edges: sleeve.edges.map((edge) => (edge.name === 'sleeve-edge' ? { ...edge, kind } : edge)),
});
