import type { ClothRole, Edge, EdgeKind, EdgeName, Piece, PieceId } from '../piece/index.ts';
import { MM_PER_INCH } from '../units/index.ts';

/**
 * What an edge is when it comes to its allowance: its kind, or `bagged` for an edge that would be a hem
 * but is sewn to a lining or a strip and turned.
 */
export type AllowanceKind = EdgeKind | 'bagged';

/** Added outside the stitching line, mm. */
export type AllowanceTable = Readonly<Record<AllowanceKind, number>>;

const inch = (n: number): number => n * MM_PER_INCH;

/**
 * What is added where nothing else is said, mm. Sources:
 * - Workroom seams: a patternmaking handout on the allowances of trade patterns gives 1/4 in (6 mm) at the
 *   neck and at faced and bagged edges; 3/8 in (1 cm) at armhole, waist and joins is common practice, no
 *   source.
 * - Side seam and centre back of a girls' party dress: 1 in (2.5 cm), so that it can be let out: common
 *   practice, no source.
 * - Closing edge: 5/8 in at least, 1 in is better, for a centred zip (Kreifels and Speece, Zipper Methods,
 *   Nebraska EC73-422, 1973); 5/8 in for a concealed one.
 * - Hem of a straight gathered child's skirt, with room to grow: 3 to 5 in, 4 in typical (A. van H.
 *   Wakeman, Scientific Sewing and Garment Cutting, has 5 in added; a maker's page on growth tucks, 2 March
 *   2014).
 * - Hem of a circle: 1/4 in or rolled (T. Johnson, It's Fun to Sew: A Cotton School Dress, state extension
 *   circular); the curved edge of a cap or a short drop sleeve alike.
 * - Narrow folded hem, as on a short sleeve: up to 1.5 cm (open course page on hems).
 */
export const ALLOWANCES: AllowanceTable = {
  neck: 6,
  bagged: 6,
  shoulder: 10,
  armhole: 10,
  cap: 10,
  attach: 10,
  free: 6,
  dart: 0,
  waist: 10,
  'style-line': 10,
  join: 10,
  side: 25,
  centre: 25,
  closing: 25,
  fold: 0,
  'sleeve-hem': 15,
  'curved-sleeve-hem': 6,
  hem: inch(4),
  'curved-hem': 6,
};

/**
 * A lining is hemmed narrower than the dress: it is turned up once and does not grow with the child (common
 * practice, no source; a deep folded hem starts at 2 cm by an open course page on hems).
 */
const LINING_HEM = 25;

/**
 * The smallest and largest allowance that is taken from a maker, mm. The largest is a deep growth hem,
 * twice over.
 */
export const ALLOWANCE_RANGE: readonly [number, number] = [0, inch(10)];

/** The maker's own numbers, mm. The more closely a number says where it belongs, the more it counts. */
export interface OwnAllowances {
  /** For every piece. */
  readonly table?: Partial<AllowanceTable>;
  /** For the pieces of one cloth, as for a yoke of net. */
  readonly cloth?: Partial<Readonly<Record<ClothRole, Partial<AllowanceTable>>>>;
  /** For one edge of one piece. */
  readonly edges?: readonly EdgeAllowance[];
}

export interface EdgeAllowance {
  readonly piece: PieceId;
  readonly edge: EdgeName;
  readonly allowance: number;
}

/**
 * The allowance of an edge in mm: the maker's own number for this edge, what a design step asks for, her table for
 * the cloth and for every piece, the standard. A fold never has one. Throws on a number outside `ALLOWANCE_RANGE`, which
 * the caller refuses with words of its own before it comes here.
 */
export function allowanceOf(piece: Piece, edge: Edge, bagged: boolean, own: OwnAllowances): number {
  if (edge.kind === 'fold') return 0;
  const kind: AllowanceKind = bagged ? 'bagged' : edge.kind;
  const standard = piece.layer === 'lining' && kind === 'hem' ? LINING_HEM : ALLOWANCES[kind];
  const allowance =
    own.edges?.find((e) => e.piece === piece.id && e.edge === edge.name)?.allowance ??
    (bagged ? undefined : edge.allowance) ??
    own.cloth?.[piece.cloth]?.[kind] ??
    own.table?.[kind] ??
    standard;
  const [least, most] = ALLOWANCE_RANGE;
  if (!(allowance >= least && allowance <= most)) {
    throw new RangeError(`An allowance of ${allowance} mm at ${piece.id}/${edge.name} is out of range.`);
  }
  return allowance;
}
