import type { Bench } from '../construct/index.ts';
import type { Piece, PieceId, Seam, SeamEdge } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { lengthParam } from './step.ts';
import { stripPiece } from './strip.ts';

/**
 * Taken up where a folded strip bends round its allowances, mm (common practice, no source). With 6 mm allowances on
 * both long edges a strip finished 8 to 10 mm wide is then cut 30 to 34 mm wide: 3 to 3.5 cm is usual.
 */
const TURN_OF_CLOTH = 2;

export const finishedWidth = lengthParam(
  () => 9,
  () => [8, 10],
  'cut 3 to 3.5 cm wide, finished 8 to 10 mm (common practice, no source)',
);

export interface BiasWish {
  readonly id: PieceId;
  readonly title: Saying;
  /** Along the edge that it finishes, mm. */
  readonly length: number;
  readonly finished: number;
  readonly copies: number;
}

/** A strip cut on the bias; its `upper` edge is sewn on, the `lower` one is folded in. */
export function biasStrip({ id, title, length, finished, copies }: BiasWish): Piece {
  const width = 2 * finished + TURN_OF_CLOTH;
  const strip = stripPiece({
    id,
    title,
    length,
    width,
    upper: 'attach',
    lower: 'free',
    left: 'join',
    right: 'join',
    cutting: { as: 'single', copies },
    grain: 'across',
    cloth: 'main',
  });
  const [middle, reach] = [{ x: length / 2, y: width / 2 }, width * 0.35];
  return {
    ...strip,
    grain: {
      from: { x: middle.x - reach, y: middle.y + reach },
      to: { x: middle.x + reach, y: middle.y - reach },
    },
  };
}

/** The strip sewn on, and its two ends sewn to each other where the edge that it finishes is a closed ring. */
export function bindingSeams(strip: Piece, a: readonly SeamEdge[], closed: boolean): readonly Seam[] {
  const { copies } = strip.cutting;
  const edge = (name: string, reversed = false): SeamEdge => ({
    piece: strip.id,
    edge: name,
    times: copies,
    reversed,
  });
  const seam = (id: string, side: readonly SeamEdge[], other: SeamEdge): Seam => ({
    id,
    name: 'binding',
    a: side,
    b: [other],
    join: { kind: 'flat' },
    smoothStart: false,
    smoothEnd: false,
  });
  const round = seam(strip.id, a, edge('upper'));
  return closed ? [round, seam(`${strip.id}-join`, [edge('left')], edge('right', true))] : [round];
}

/** How the strip is ruled and sewn; the sentences are those of the drafting bench. */
export function tellBiasStrip(bench: Bench, strip: Piece, wish: BiasWish, way: 'inside' | 'bound'): void {
  bench.part(wish.title);
  bench.tell(
    'draft.bias.rule',
    {
      length: { mm: wish.length },
      width: { mm: 2 * wish.finished + TURN_OF_CLOTH },
      copies: wish.copies,
    },
    { lines: strip.edges.map((edge) => edge.path) },
  );
  bench.tell(`draft.bias.${way}`, { finished: { mm: wish.finished } });
}

export const bindingWays = ['inside', 'bound'] as const;
