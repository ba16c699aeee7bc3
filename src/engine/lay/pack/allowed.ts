import type { Board } from './board.ts';
import { clamp } from './clamp.ts';

/** The least x of a variant, brought to where it may lie in a strip of this length. */
export function allowedX(board: Board, variant: number, x: number, length: number): number {
  const to = Math.min(board.toX[variant] as number, length - (board.w[variant] as number));
  return clamp(x, board.fromX[variant] as number, to, board.stepX[variant] as number);
}

/** The least y of a variant, brought to where it may lie. */
export function allowedY(board: Board, variant: number, y: number): number {
  const from = board.fromY[variant] as number;
  return clamp(y, from, board.toY[variant] as number, board.stepY[variant] as number);
}

/** The x at this share, 0 to 1, of all that a variant may take in a strip of this length. */
export function xAtShare(board: Board, variant: number, share: number, length: number): number {
  const from = board.fromX[variant] as number;
  const to = Math.min(board.toX[variant] as number, length - (board.w[variant] as number));
  return allowedX(board, variant, from + share * Math.max(0, to - from), length);
}

/** The y at this share, 0 to 1, of all that a variant may take. */
export function yAtShare(board: Board, variant: number, share: number): number {
  const from = board.fromY[variant] as number;
  return allowedY(board, variant, from + share * ((board.toY[variant] as number) - from));
}
