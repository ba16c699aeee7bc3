import type { ClothRole, Layer, Marking, Notch, Piece, Seam, SeamEdge } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { closingEnd, skirtPanel } from './skirt-panel.ts';
import { centreBack, JOIN_ROOM, type WaistRing } from './waist-ring.ts';

/** What widths of cloth are gathered to: a waist, or the foot of the tier above, from the centre back once round. */
export type PanelRing = Pick<WaistRing, 'frontHalf' | 'backHalf' | 'side'>;

export interface GatheredWish {
  readonly ring: PanelRing;
  readonly ratio: number;
  readonly length: number;
  readonly usableWidth: number;
  readonly cloth: ClothRole;
  readonly layer: Layer;
  /** `skirt` or `skirt-lining`: start of the piece ids. */
  readonly prefix: string;
  readonly titles: { readonly front: Saying; readonly back: Saying };
  /** How far the closing runs below the waist, or null when the skirt is closed all round. */
  readonly closingBelow: number | null;
  readonly seamName: 'skirt-waist' | 'waist-lining' | 'overskirt-waist' | 'tier';
  /** A tier is sewn to the one above and to the one below; by itself a skirt hangs from the waist and ends in a hem. */
  readonly top?: 'waist' | 'join';
  readonly foot?: 'hem' | 'join';
}

export interface SkirtParts {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  /** Widths of cloth sewn together into the front, and into each half of the back. */
  readonly frontWidths: number;
  readonly backWidths: number;
  /** The lower edge, for what is gathered to it. */
  readonly foot: PanelRing;
}

/**
 * Straight widths gathered to the waist. The side seams of the skirt meet those of the bodice; the front is one
 * width on the fold where the cloth allows, each half of the back another. Wider skirts are joined from equal widths.
 */
export function gatheredPanels(wish: GatheredWish): SkirtParts {
  const { ring, ratio, prefix } = wish;
  const most = wish.usableWidth - JOIN_ROOM;
  const front = 2 * ring.frontHalf * ratio;
  const back = ring.backHalf * ratio;
  const [frontWidths, backWidths] = [Math.ceil(front / most), Math.ceil(back / most)];
  const [frontId, backId] = [`${prefix}-front`, `${prefix}-back`];
  const open = wish.closingBelow !== null;

  const onFold = frontWidths === 1;
  const frontPiece = skirtPanel({
    ...wish,
    id: frontId,
    title: wish.titles.front,
    width: onFold ? front / 2 : front / frontWidths,
    left: onFold ? 'fold' : 'join',
    right: onFold ? 'side' : 'join',
    cutting: onFold ? { as: 'fold', copies: 1 } : { as: 'single', copies: frontWidths },
    notches: frontWidths <= 2 ? [midNotch(prefix, 'front', front / 4)] : [],
    markings: [],
  });
  const backPiece = skirtPanel({
    ...wish,
    id: backId,
    title: wish.titles.back,
    width: back / backWidths,
    left: open ? 'closing' : 'centre',
    right: backWidths === 1 ? 'side' : 'join',
    cutting: { as: 'pair', copies: 2 * backWidths },
    notches: backWidths === 1 ? [midNotch(prefix, 'back', back / 2)] : [],
    markings: backMarkings(wish.closingBelow),
  });
  return {
    pieces: [frontPiece, backPiece],
    seams: [
      ...joins(prefix, frontId, backId, frontWidths, backWidths),
      centreBack(`${prefix}-centre-back`, { piece: backId, edge: 'left' }, open),
      waistSeam(wish, frontWidths, backWidths),
    ],
    frontWidths,
    backWidths,
    foot: {
      frontHalf: front / 2,
      backHalf: back,
      side: ringOf(wish, frontWidths, backWidths, 'hem'),
    },
  };
}

const backMarkings = (below: number | null): readonly Marking[] =>
  below === null || below === 0 ? [] : [closingEnd(0, below)];

/** Half-way round each half of the bodice, so that the gathers are spread evenly. */
const midNotch = (prefix: string, half: 'front' | 'back', at: number): Notch => ({
  edge: 'waist',
  at,
  style: half === 'front' ? 'single' : 'double',
  match: `${prefix}-waist-${half}`,
});

/** The upper or the lower edge of all widths, from the centre back once round. The lower one is drawn the other way. */
function ringOf(
  { prefix }: GatheredWish,
  frontWidths: number,
  backWidths: number,
  edge: 'waist' | 'hem',
): readonly SeamEdge[] {
  const pass = (half: 'front' | 'back', outward: boolean): SeamEdge => ({
    piece: `${prefix}-${half}`,
    edge,
    times: 1,
    reversed: outward === (edge === 'hem'),
  });
  const back = (outward: boolean): SeamEdge[] =>
    Array.from({ length: backWidths }, () => pass('back', outward));
  const fronts =
    frontWidths === 1
      ? [pass('front', false), pass('front', true)]
      : Array.from({ length: frontWidths }, () => pass('front', true));
  return [...back(true), ...fronts, ...back(false)];
}

const waistSeam = (wish: GatheredWish, frontWidths: number, backWidths: number): Seam => ({
  id: `${wish.prefix}-waist`,
  name: wish.seamName,
  a: wish.ring.side,
  b: ringOf(wish, frontWidths, backWidths, 'waist'),
  join: { kind: 'gathered', ratio: wish.ratio },
  smoothStart: false,
  smoothEnd: false,
});

function joins(
  prefix: string,
  front: string,
  back: string,
  frontWidths: number,
  backWidths: number,
): readonly Seam[] {
  const seam = (id: string, a: SeamEdge, b: SeamEdge): Seam => ({
    id: `${prefix}-${id}`,
    name: 'skirt-join',
    a: [a],
    b: [b],
    join: { kind: 'flat' },
    smoothStart: true,
    smoothEnd: true,
  });
  const seams = [
    seam('side', { piece: front, edge: 'right', times: 2 }, { piece: back, edge: 'right', times: 2 }),
  ];
  if (frontWidths > 1) {
    const times = frontWidths - 1;
    seams.push(
      seam(
        'front-join',
        { piece: front, edge: 'left', times, reversed: true },
        { piece: front, edge: 'right', times },
      ),
    );
  }
  if (backWidths > 1) {
    const times = 2 * (backWidths - 1);
    seams.push(
      seam(
        'back-join',
        { piece: back, edge: 'left', times, reversed: true },
        { piece: back, edge: 'right', times },
      ),
    );
  }
  return seams;
}
