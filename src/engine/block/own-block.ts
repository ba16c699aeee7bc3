import { type Bench, place } from '../construct/index.ts';
import { offsetOutline, type Path, pathEnd, pathStart, pathTranslate } from '../geometry/index.ts';
import type { Piece } from '../piece/index.ts';
import type { BodicePlaces, Half } from './bodice-places.ts';
import { drawBodice } from './draw-bodice.ts';

/** What the maker measures on one half of her paper block, mm. All as drawn on the paper. */
export interface OwnHalf {
  /** Neck point from the centre line, straight across. */
  readonly neckWidth: number;
  /** From the level of the neck point down to the neckline at the centre. */
  readonly neckDepth: number;
  readonly shoulder: number;
  /** How far the shoulder tip lies below the level of the neck point. */
  readonly shoulderFall: number;
  /** From the shoulder tip straight down to the level of the underarm. */
  readonly armholeDepth: number;
  /** How far the armhole is hollowed inward from that straight line, half-way down. */
  readonly armholeHollow: number;
  /** Underarm from the centre line, straight across. */
  readonly chestWidth: number;
  /** Waist at the side from the centre line, straight across. */
  readonly waistWidth: number;
  /** From the level of the neck point down to the waist at the side. */
  readonly sideWaistLevel: number;
  /** Neckline to waist along the centre. */
  readonly centreLength: number;
}

/** A whole own block. Front and back are typed apart, since their shoulders slope differently. */
export interface OwnBlock {
  readonly front: OwnHalf;
  readonly back: OwnHalf;
  /** Seam allowance that the paper already includes on every edge but the centre, mm; 0 for none. */
  readonly seamIncluded: number;
  /** Allowance for the closing that the paper's centre back already includes, mm; 0 for none. */
  readonly closingIncluded: number;
}

export type OwnBlockProblem =
  | {
      readonly code: 'shoulder-too-short';
      readonly half: Half;
      readonly shoulder: number;
      readonly fall: number;
    }
  | { readonly code: 'tip-outside-chest'; readonly half: Half; readonly tip: number; readonly chest: number }
  | { readonly code: 'no-side-left'; readonly half: Half; readonly underarm: number; readonly waist: number }
  | { readonly code: 'neck-too-deep'; readonly half: Half; readonly depth: number; readonly underarm: number }
  | { readonly code: 'allowance-too-wide'; readonly half: Half; readonly allowance: number };

/** Why the numbers of one half can't make a bodice; empty when they can. */
export function checkOwnHalf(half: Half, own: OwnHalf): readonly OwnBlockProblem[] {
  const problems: OwnBlockProblem[] = [];
  const underarm = own.shoulderFall + own.armholeDepth;
  if (own.shoulder <= own.shoulderFall) {
    problems.push({ code: 'shoulder-too-short', half, shoulder: own.shoulder, fall: own.shoulderFall });
    return problems;
  }
  const tip = own.neckWidth + Math.sqrt(own.shoulder ** 2 - own.shoulderFall ** 2);
  if (tip >= own.chestWidth) problems.push({ code: 'tip-outside-chest', half, tip, chest: own.chestWidth });
  if (underarm >= own.sideWaistLevel - 10) {
    problems.push({ code: 'no-side-left', half, underarm, waist: own.sideWaistLevel });
  }
  if (own.neckDepth >= underarm)
    problems.push({ code: 'neck-too-deep', half, depth: own.neckDepth, underarm });
  return problems;
}

/**
 * Lays an own paper block out as a bodice with the same named edges as a drafted one. Where the paper includes
 * allowances, the outline is drawn as measured and then taken in by them, edge by edge.
 */
export function drawOwnHalf(
  bench: Bench,
  half: Half,
  own: OwnHalf,
  seam: number,
  closing: number,
): Piece | null {
  const drawn = drawBodice(bench, half, ownPlaces(bench, own, half));
  if (seam === 0 && closing === 0) return drawn;
  bench.tell('draft.take-in-allowance', { seam: { mm: seam }, closing: { mm: closing } });
  const moved = offsetOutline(
    drawn.edges.map((edge) => edge.path),
    drawn.edges.map((edge) => (edge.name === 'centre' ? -closing : -seam)),
  );
  const centre = moved[5];
  const shoulder = moved[1];
  if (centre === undefined || shoulder === undefined) return null;
  // Back to the common origin: the centre line at x = 0, the neck point at y = 0.
  const shift = { x: -pathEnd(centre).x, y: -pathStart(shoulder).y };
  return {
    ...drawn,
    edges: drawn.edges.map((edge, i) => ({ ...edge, path: pathTranslate(moved[i] as Path, shift) })),
  };
}

function ownPlaces(bench: Bench, own: OwnHalf, half: Half): BodicePlaces {
  const top = bench.start('place.centre-top', { x: 0, y: 0 });
  const neckPoint = bench.from(top).out(own.neckWidth, 'place.neck-point');
  const neckCentre = bench.from(top).down(own.neckDepth, `place.neck-${half}`);
  const waistCentre = bench.from(neckCentre).down(own.centreLength, `place.waist-${half}`);
  const run = Math.sqrt(own.shoulder ** 2 - own.shoulderFall ** 2);
  const below = bench.from(neckPoint).down(own.shoulderFall, 'place.shoulder-level');
  const aim = place('place.shoulder-aim', { x: below.at.x + run, y: below.at.y });
  const shoulderTip = bench.from(neckPoint).toward(aim, own.shoulder, 'place.shoulder-tip');
  const armholeFoot = bench.from(shoulderTip).down(own.armholeDepth, 'place.armhole-foot');
  const underarmCentre = bench.meeting(armholeFoot, top, 'place.underarm-centre');
  const underarm = bench.from(underarmCentre).out(own.chestWidth, 'place.underarm');
  const halfWay = bench.partWay(shoulderTip, armholeFoot, 0.5, 'place.armhole-half');
  const armholeMiddle = bench.from(halfWay).inward(own.armholeHollow, 'place.armhole-middle');
  const sideLevel = bench.from(top).down(own.sideWaistLevel, 'place.waist-level');
  const waistSide = bench.from(sideLevel).out(own.waistWidth, 'place.waist-side');
  return { neckCentre, neckPoint, shoulderTip, armholeMiddle, underarm, waistSide, waistCentre };
}
