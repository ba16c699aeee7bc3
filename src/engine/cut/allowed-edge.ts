import type { Edge } from '../piece/index.ts';

/** An edge with what is added to it, mm; `turnsUp` where the allowance is folded back onto the piece. */
export interface AllowedEdge {
  readonly edge: Edge;
  readonly allowance: number;
  readonly turnsUp: boolean;
}
