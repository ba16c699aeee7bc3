import { pathBounds } from '../geometry/index.ts';
import { edgeLength, type Garment, outlineOf, type Piece, type SeamEdge } from '../piece/index.ts';

/** What a dress takes beside its cloths. Lengths in mm. */
export interface Need {
  readonly good: Good;
  /** Pieces, or mm for what is sold by length. */
  readonly amount: number;
  /** The longest part that must be cut in one, mm; strips of several dresses may lie side by side. */
  readonly least?: number;
}

/** Something a shop sells, told apart by its sort and its size. */
export interface Good {
  readonly kind: GoodKind;
  /** Zip, button: its length or diameter, mm; 0 where there is only one. */
  readonly size: number;
}

/** By length: elastic, cord, interfacing. By the piece: the others; thread by the reel. */
export const GOOD_KINDS = [
  'thread',
  'concealed-zip',
  'centred-zip',
  'lapped-zip',
  'zip-apart',
  'hook',
  'button',
  'stud',
  'cord',
  'elastic',
  'interfacing',
] as const;
export type GoodKind = (typeof GOOD_KINDS)[number];

/** Sold by length rather than by the piece. */
export const byLength = (kind: GoodKind): boolean =>
  kind === 'cord' || kind === 'elastic' || kind === 'interfacing';

/** Everything beside the cloths that one dress takes, each good once. */
export function dressNeeds(garment: Garment): readonly Need[] {
  const needs = [
    ...threadNeeds(garment),
    ...closingNeeds(garment),
    ...elasticNeeds(garment.pieces),
    ...interfacingNeeds(garment),
  ];
  const goods = new Map<string, Need>();
  for (const need of needs) {
    if (need.amount <= 0) continue;
    const { amount = 0, least = 0 } = goods.get(goodKey(need.good)) ?? {};
    const longest = Math.max(least, need.least ?? 0);
    goods.set(goodKey(need.good), { good: need.good, amount: amount + need.amount, least: longest });
  }
  return [...goods.values()];
}

/** Tells goods apart; to a millimetre, so that zips of one name are one good. */
export const goodKey = ({ kind, size }: Good): string =>
  size === 0 ? kind : `${kind} ${Math.round(size)} mm`;

/** The usual small reel holds 100 m (common practice, no source). */
export const REEL = 100_000;
/** Stitches of 2.5 mm, and cloth of 0.4 mm a layer: plain dress cloths (common practice, no source). */
const STITCH = 2.5;
const LAYER = 0.4;
/** Tacking, both gathering threads, ends and bobbins that run out (common practice, no source). */
const WASTE = 1.5;

/**
 * Sewing thread by the seams: in a lockstitch both threads run along the stitch and once through the cloth, so a stitch
 * takes 2 x (its length + the thickness); geometry, as in the sums of thread makers. Cut edges that no lining covers are
 * overcast, at about four times their length on each (common practice, no source).
 */
function threadNeeds({ pieces, seams }: Garment): readonly Need[] {
  const sides = seams.map(({ name, a, b }) => ({
    name,
    length: Math.max(sideLength(a, pieces), sideLength(b, pieces)),
  }));
  const hems = pieces.reduce((sum, piece) => sum + hemLength(piece), 0);
  const seamLength = sides.reduce((sum, { length }) => sum + length, 0);
  const isLined = pieces.some(({ layer }) => layer === 'lining');
  const raw = isLined ? 0 : 2 * 4 * seamLength;
  const perMm = (layers: number): number => (2 * (STITCH + layers * LAYER)) / STITCH;
  const length = WASTE * (seamLength * perMm(3) + hems * perMm(2) + raw);
  return [{ good: { kind: 'thread', size: 0 }, amount: length / REEL }];
}

function sideLength(side: readonly SeamEdge[], pieces: readonly Piece[]): number {
  return side.reduce((sum, { piece, edge, times }) => {
    const found = pieces.find(({ id }) => id === piece);
    return found === undefined ? sum : sum + times * edgeLength(found, edge);
  }, 0);
}

const HEMS: readonly string[] = ['hem', 'curved-hem', 'sleeve-hem', 'curved-sleeve-hem', 'free'];

const hemLength = (piece: Piece): number =>
  piece.edges
    .filter(({ kind }) => HEMS.includes(kind))
    .reduce((sum, { name }) => sum + copiesOf(piece) * edgeLength(piece, name), 0);

/** How often what is drawn stands in the dress: a half on the fold twice in each copy. */
const copiesOf = ({ cutting: { as, copies } }: Piece): number => (as === 'fold' ? 2 * copies : copies);

function closingNeeds({ closing }: Garment): readonly Need[] {
  if (closing === null) return [];
  const need = (kind: GoodKind, amount: number, size = 0): Need => ({ good: { kind, size }, amount });
  switch (closing.kind) {
    case 'centred-zip':
    case 'concealed-zip':
    case 'lapped-zip': {
      const zip = need(closing.toHem === true ? 'zip-apart' : closing.kind, 1, closing.zipLength);
      // A hook and eye above the zip, and a strip of interfacing under each of its edges (common practice, no source).
      return [zip, need('hook', 1), strips(closing.openingLength, 25)];
    }
    case 'buttons':
      return [
        need('button', closing.count, closing.diameter),
        strips(closing.openingLength, 2 * closing.stand),
      ];
    case 'keyhole':
      return [need('button', 1, closing.diameter)];
    case 'lacing':
      return [need('cord', closing.cordLength)];
    case 'shoulder-studs':
      return [need('stud', 2 * closing.count)];
    case 'ties':
      return [];
  }
}

/** Elastic laps over itself by an inch where it is joined (common practice, no source). */
const ELASTIC_LAP = 25.4;

function elasticNeeds(pieces: readonly Piece[]): readonly Need[] {
  const amount = pieces.reduce(
    (sum, { markings, cutting }) =>
      sum +
      markings.reduce(
        (own, { drawnTo }) => (drawnTo === undefined ? own : own + cutting.copies * (drawnTo + ELASTIC_LAP)),
        0,
      ),
    0,
  );
  return [{ good: { kind: 'elastic', size: 0 }, amount }];
}

/** Parts that keep their shape by interfacing (common practice, no source). */
const STIFFENED = /(^|-)(collar|cuff|facing|placket|belt|strap|sleeve-band|lacing-panel)(-|$)/;
/** Iron-on interfacing lies 90 cm wide (common practice, no source). */
const INTERFACING_WIDTH = 900;

/** A strip under each edge of an opening, `width` mm wide: their share of the interfacing's width. */
const strips = (length: number, width: number): Need => ({
  good: { kind: 'interfacing', size: 0 },
  amount: (2 * width * length) / INTERFACING_WIDTH,
  least: length,
});

/** One layer of each stiffened part, its boxes set in rows across the interfacing. */
function interfacingNeeds({ pieces }: Garment): readonly Need[] {
  const boxes = pieces
    .filter(({ id }) => STIFFENED.test(id))
    .flatMap((piece) => {
      const { minX, maxX, minY, maxY } = pathBounds(outlineOf(piece));
      const [a, b] = [(piece.cutting.as === 'fold' ? 2 : 1) * (maxX - minX), maxY - minY];
      const box = { long: Math.min(Math.max(a, b), INTERFACING_WIDTH), short: Math.min(a, b) };
      // Collars, cuffs and bands are cut double, and one of the two is interfaced; a facing is single.
      const copies = /facing/.test(piece.id) ? piece.cutting.copies : Math.ceil(piece.cutting.copies / 2);
      return Array.from({ length: copies }, () => box);
    })
    .sort((a, b) => b.short - a.short);
  let [rows, depth, across] = [0, 0, 0];
  for (const { long, short } of boxes) {
    if (across + long > INTERFACING_WIDTH || rows === 0) {
      rows++;
      depth += short;
      across = 0;
    }
    across += long;
  }
  return [{ good: { kind: 'interfacing', size: 0 }, amount: depth }];
}
