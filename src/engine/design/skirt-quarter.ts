import type { Half } from '../block/index.ts';
import type { Bench } from '../construct/index.ts';
import { add, linePath, type Point } from '../geometry/index.ts';
import {
  edgeLength,
  edgeOf,
  type Garment,
  grainThrough,
  opensBack,
  type Piece,
  type Seam,
  type SeamEdge,
} from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { arc } from './arc.ts';
import { closingEnd } from './skirt-panel.ts';
import { centreBack, closingBelowWaist, notchWaist, type WaistRing } from './waist-ring.ts';

export interface QuarterWish {
  readonly half: Half;
  readonly id: string;
  readonly title: Saying;
  /** From the point about which waist and hem are drawn, mm. */
  readonly radius: number;
  /** Waist of the quarter along its arc, mm. */
  readonly waist: number;
  readonly length: number;
  /** Turning at the hem, mm, where it is not the narrow one of a circle. */
  readonly hemAllowance?: number;
}

/**
 * A quarter of a skirt cut as part of a ring: the centre straight down on x = 0, the waist arc from the centre to the
 * side. Waist and hem meet the centre and the side square, so that both run smoothly through the seams.
 */
export function skirtQuarter(garment: Garment, wish: QuarterWish): Piece {
  const { half, radius, length, waist } = wish;
  const angle = waist / radius;
  const hub: Point = { x: 0, y: -radius };
  const at = (r: number, turned: number): Point =>
    add(hub, { x: r * Math.sin(turned), y: r * Math.cos(turned) });
  const outer = radius + length;
  const open = opensBack(garment.closing) ? 'closing' : 'centre';
  const below = half === 'back' ? closingBelowWaist(garment) : null;
  return {
    id: wish.id,
    title: wish.title,
    edges: [
      { name: 'waist', kind: 'waist', path: arc(hub, radius, 0, angle) },
      { name: 'side', kind: 'side', path: linePath(at(radius, angle), at(outer, angle)) },
      {
        name: 'hem',
        kind: 'curved-hem',
        path: arc(hub, outer, angle, 0),
        ...(wish.hemAllowance === undefined ? {} : { allowance: wish.hemAllowance }),
      },
      {
        name: 'centre',
        kind: half === 'front' ? 'fold' : open,
        path: linePath(at(outer, 0), at(radius, 0)),
      },
    ],
    cloth: 'skirt',
    layer: 'shell',
    cutting: half === 'front' ? { as: 'fold', copies: 1 } : { as: 'pair', copies: 2 },
    grain: grainThrough(at((radius + outer) / 2, angle * 0.4), length * 0.6),
    notches: [
      {
        edge: 'waist',
        at: waist / 2,
        style: half === 'front' ? 'single' : 'double',
        match: `skirt-waist-${half}`,
      },
    ],
    markings: below === null || below === 0 ? [] : [closingEnd(0, below)],
  };
}

/** Tells how quarters of a skirt are drawn by hand: two arcs about one point. */
export function tellQuarters(
  bench: Bench,
  title: Saying,
  quarters: readonly { readonly piece: Piece; readonly radius: number }[],
  length: number,
): void {
  for (const { piece, radius } of quarters) {
    bench.part(title);
    const lines = ['waist', 'side', 'centre'].map((name) => edgeOf(piece, name).path);
    bench.tell(
      'draft.ring-waist',
      { piece: piece.title, radius: { mm: radius }, waist: { mm: edgeLength(piece, 'waist') } },
      { lines },
    );
    bench.tell('draft.ring-hem', { radius: { mm: radius + length } }, { lines: [edgeOf(piece, 'hem').path] });
  }
}

/** Puts front and back quarters under the waist and sews them. */
export function sewQuarters(garment: Garment, ring: WaistRing, quarters: readonly Piece[]): Garment {
  const notched = notchWaist(garment, ring, 'skirt');
  return {
    ...notched,
    pieces: [...notched.pieces, ...quarters],
    seams: [...notched.seams, ...quarterSeams(ring, opensBack(garment.closing))],
  };
}

/** Sews quarters to each other and to the waist; `prefix` begins their ids. */
export function quarterSeams(ring: WaistRing, open: boolean, prefix = 'skirt'): readonly Seam[] {
  const once = (piece: string, reversed: boolean): SeamEdge => ({ piece, edge: 'waist', times: 1, reversed });
  return [
    {
      id: `${prefix}-side`,
      name: 'skirt-join',
      a: [{ piece: `${prefix}-front`, edge: 'side', times: 2 }],
      b: [{ piece: `${prefix}-back`, edge: 'side', times: 2 }],
      join: { kind: 'flat' },
      smoothStart: true,
      smoothEnd: true,
    },
    centreBack(`${prefix}-centre-back`, { piece: `${prefix}-back`, edge: 'centre' }, open),
    {
      id: `${prefix}-waist`,
      name: 'skirt-waist',
      a: ring.side,
      b: [
        once(`${prefix}-back`, false),
        once(`${prefix}-front`, true),
        once(`${prefix}-front`, false),
        once(`${prefix}-back`, true),
      ],
      join: { kind: 'flat' },
      smoothStart: false,
      smoothEnd: false,
    },
  ];
}
