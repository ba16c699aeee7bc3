import { edgeAt, pieceAt, type Seam } from '../piece/index.ts';
import type { Saying } from '../words/index.ts';
import { clothKindOf, keyOf, type SewLook, usesOf } from './look.ts';
import { finishOf, looseEdges } from './loose-edges.ts';
import type { EdgeRef, SewStep } from './step.ts';
import { edgesOf, tell } from './words-of.ts';

/** A seam needs at least this outside its stitching to hold, mm (common practice, no source). */
const LEAST_SEAM = 3;
/** The narrowest turning, rolled, mm (an open course page on hems: rolled up to 3 mm). */
const LEAST_TURNING = 3;

/** What can't be sewn for want of cloth outside the stitching line, and what to change. */
export function allowanceProblems(look: SewLook): readonly Saying[] {
  const { cut } = look;
  if (cut === undefined) return [];
  const given = new Map(cut.map(({ piece, allowances }) => [piece.id, allowances]));
  const room = (at: EdgeRef): number => given.get(at.piece)?.[at.edge] ?? Number.POSITIVE_INFINITY;
  const short = (at: readonly EdgeRef[], least: number): readonly EdgeRef[] =>
    at.filter((edge) => room(edge) < least && edgeAt(look, edge).kind !== 'dart');
  const seams = look.garment.seams.flatMap((seam) => {
    if (isLeftOpen(look, seam)) return [];
    const sewn = usesOf(seam).filter((at) => !isBound(look, at));
    return short(sewn, LEAST_SEAM);
  });
  const turned = short(
    looseEdges(look).filter((at) => isTurned(look, at)),
    LEAST_TURNING,
  );
  return [
    ...problem('sew.cannot.seam', look, seams, LEAST_SEAM),
    ...problem('sew.cannot.turn', look, turned, LEAST_TURNING),
  ];
}

/** The opening of a net layer is not sewn: its edges lie behind those of the dress as they are cut. */
const isLeftOpen = (look: SewLook, seam: Seam): boolean =>
  seam.name === 'closing' && usesOf(seam).some((at) => clothKindOf(look, pieceAt(look, at)) === 'net');

/** What a binding goes over needs nothing outside its edge. */
const isBound = (look: SewLook, at: EdgeRef): boolean =>
  look.seamsAt(at).some((seam) => seam.name === 'binding' && seam.a.some((use) => keyOf(use) === keyOf(at)));

function isTurned(look: SewLook, at: EdgeRef): boolean {
  const piece = pieceAt(look, at);
  if (clothKindOf(look, piece) === 'net' || piece.edges.length === 1) return false;
  return ['hem', 'arm-hem', 'narrow', 'waist-edge', 'own-edge', 'overlap'].includes(finishOf(look, at).as);
}

function problem(
  key: 'sew.cannot.seam' | 'sew.cannot.turn',
  look: SewLook,
  edges: readonly EdgeRef[],
  least: number,
): readonly Saying[] {
  return edges.length === 0 ? [] : [tell(key, { edges: edgesOf(look, edges), least: { mm: 2 * least } })];
}

/** Steps that wait for each other: the seams of this design can't be sewn one after the other. */
export const circleProblem = (look: SewLook, circle: readonly SewStep[]): Saying => {
  const [first, second = first] = circle;
  const edges = (step: SewStep | undefined): readonly EdgeRef[] => step?.sideA ?? [];
  return tell('sew.cannot.circle', {
    first: edgesOf(look, edges(first)),
    second: edgesOf(look, edges(second)),
  });
};
