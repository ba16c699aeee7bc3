import type { ClothRepeat, LayCloth } from './cloth-rules.ts';
import { OUTLINE_TOLERANCE } from './grown-outline.ts';
import type { LayVariant } from './lay-drafts.ts';
import type { LayItem, LayStretch } from './lay-items.ts';
import { obstaclesOn } from './obstacles.ts';
import type { PackItem, PackPlace, PackProblem, PackRange, PackVariant } from './pack/index.ts';
import { type Polygon, polygonBounds, polygonsShared, rectangle } from './polygons.ts';
import { MIRROR_ACROSS, turnPoint } from './turns.ts';

/** Where the least x and y of a cutting line's box lie on the stretch, mm from its cut end and its edge or fold. */
export interface ClothPlace {
  readonly x: number;
  readonly y: number;
}

/** An item that stays where the maker put it. */
export interface HeldItem {
  readonly item: number;
  readonly variant: number;
  readonly place: ClothPlace;
}

export interface StretchProblem {
  readonly problem: PackProblem;
  /** Per item: which of its variants the problem has; stripes may leave one without a place. */
  readonly kept: readonly (readonly number[])[];
}

/** Where nothing ends a stretch, a range of x ends here: a kilometre of cloth. */
const ENDLESS = 1e6;

/**
 * A stretch as a strip to pack. The strip is wider than the cloth by what the packed outlines reach beyond the cutting
 * lines, so that a cutting line may lie on the very selvedge. Items come first, in their order, then obstacles.
 */
export function packProblem(
  stretch: LayStretch,
  cloth: LayCloth,
  from: number,
  held: readonly HeldItem[],
  avoid: readonly Polygon[] = obstaclesOn(stretch, cloth, from),
  ends: number | undefined = endOf(stretch, cloth, from),
): StretchProblem {
  const edge = edgeRoom(cloth);
  const kept: (readonly number[])[] = [];
  const items = stretch.items.map((item, i): PackItem => {
    const hold = held.find((h) => h.item === i);
    const variant = hold === undefined ? undefined : item.variants[hold.variant];
    if (hold === undefined || variant === undefined) {
      const variants = item.variants.map((v) => packVariant(item, v, cloth, from, ends));
      kept.push(variants.flatMap((v, k) => (v === null ? [] : [k])));
      return { variants: variants.filter((v) => v !== null) };
    }
    kept.push(item.variants.map((_, k) => k));
    const free = item.variants.map(({ posed }): PackVariant => ({ outline: posed.corners }));
    return {
      variants: free,
      fixed: { variant: hold.variant, ...packPlaceOf(variant, hold.place, cloth) },
    };
  });
  const obstacles = avoid
    .flatMap((ring) => before(ring, ends))
    .map((ring): PackItem => {
      const { minX, minY } = polygonBounds(ring);
      const outline = new Float64Array(ring.flatMap(({ x, y }) => [x, y]));
      return {
        variants: [{ outline }],
        fixed: { variant: 0, x: minX + cloth.gap / 2, y: minY + edge },
        obstacle: true,
      };
    });
  const problem = { width: stretch.depth + 2 * edge, items: [...items, ...obstacles] };
  return {
    problem: ends === undefined ? problem : { ...problem, longest: ends + cloth.gap / 2 + edge },
    kept,
  };
}

/** What of an obstacle lies before the end of the cloth. */
function before(ring: Polygon, ends: number | undefined): readonly Polygon[] {
  if (ends === undefined) return [ring];
  return polygonsShared([ring], [rectangle(-ENDLESS, -ENDLESS, ends, ENDLESS)]);
}

/** The end of the cloth on this stretch, as it lies. */
export function endOf({ folding }: LayStretch, { longest }: LayCloth, from: number): number | undefined {
  if (longest === undefined) return undefined;
  return folding === 'crosswise' ? longest / 2 : longest - from;
}

/** How far a packed outline reaches beyond its cutting line at most. */
const edgeRoom = ({ gap }: LayCloth): number => gap / 2 + OUTLINE_TOLERANCE;

/** A packed outline begins at least half a gap before its cutting line, so the cut end lies there on the strip. */
export function packPlaceOf(
  { posed: { box, grownBox } }: LayVariant,
  { x, y }: ClothPlace,
  cloth: LayCloth,
): Pick<PackPlace, 'x' | 'y'> {
  return {
    x: x + grownBox.minX - box.minX + cloth.gap / 2,
    y: y + grownBox.minY - box.minY + edgeRoom(cloth),
  };
}

/** The way back: where a packed item lies on the stretch. */
export function clothPlaceOf(
  { posed: { box, grownBox } }: LayVariant,
  { x, y }: Pick<PackPlace, 'x' | 'y'>,
  cloth: LayCloth,
): ClothPlace {
  return {
    x: x - grownBox.minX + box.minX - cloth.gap / 2,
    y: y - grownBox.minY + box.minY - edgeRoom(cloth),
  };
}

/** Null where no place is left on the stripes. */
function packVariant(
  { anchor }: LayItem,
  variant: LayVariant,
  cloth: LayCloth,
  from: number,
  ends: number | undefined,
): PackVariant | null {
  const { posed, fromY, toY, fixedX } = variant;
  const shift = packPlaceOf(variant, { x: 0, y: 0 }, cloth);
  const lastX = ends === undefined ? ENDLESS : ends - (posed.box.maxX - posed.box.minX);
  const lattice = anchor === null ? {} : latticeOf(anchor, variant, cloth.repeat ?? {}, from);
  const y = onLattice(fromY, toY, lattice.y);
  const x =
    fixedX === undefined
      ? ends === undefined && lattice.x === undefined
        ? undefined
        : onLattice(0, Math.max(0, lastX), lattice.x)
      : { from: fixedX, to: fixedX };
  if (y === null || x === null) return null;
  const outline = posed.corners;
  const moved = (range: PackRange, by: number): PackRange => ({
    ...range,
    from: range.from + by,
    to: range.to + by,
  });
  return x === undefined
    ? { outline, y: moved(y, shift.y) }
    : { outline, x: moved(x, shift.x), y: moved(y, shift.y) };
}

interface Lattice {
  readonly step: number;
  /** One of its places. */
  readonly at: number;
}

/** Least x and y of the cutting line's box at which the matched point falls on its phase of the repeat. */
function latticeOf(
  anchor: NonNullable<LayItem['anchor']>,
  { posed: { pose, box } }: LayVariant,
  { along, across }: ClothRepeat,
  from: number,
): { readonly x?: Lattice; readonly y?: Lattice } {
  const own = mirroredIf(pose.mirrored, anchor.point);
  const phase = mirroredIf(pose.mirrored, anchor.phase);
  return {
    ...(along === undefined
      ? {}
      : { x: { step: along.every, at: along.first - from + phase.x - own.x + box.minX } }),
    ...(across === undefined
      ? {}
      : { y: { step: across.every, at: across.first + phase.y - own.y + box.minY } }),
  };
}

const mirroredIf = (mirrored: boolean, p: ClothPlace): ClothPlace =>
  mirrored ? turnPoint(MIRROR_ACROSS, p) : p;

function onLattice(from: number, to: number, lattice: Lattice | undefined): PackRange | null {
  if (lattice === undefined) return { from, to };
  const { step, at } = lattice;
  const first = at + Math.ceil((from - at) / step - 1e-9) * step;
  return first > to + 1e-9 ? null : { from: first, to: Math.max(first, to), step };
}
