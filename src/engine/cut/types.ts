import type { Line, Path, Point } from '../geometry/index.ts';
import type { EdgeName, Piece } from '../piece/index.ts';

/** What stands on a piece, in words ready to print. */
export interface PieceLabel {
  /** 'Front yoke' */
  readonly title: string;
  /** 'Cut 2 in satin, 1 pair' */
  readonly cutting: string;
  readonly child: string;
  readonly size: string;
  readonly date: string;
}

/** A piece ready to cut: stitching lines with the cutting line around them. Piece coordinates, mm. */
export interface CutPiece {
  readonly piece: Piece;
  /** Closed; on a fold edge it runs along the stitching line. */
  readonly cuttingLine: Path;
  readonly allowances: Readonly<Record<EdgeName, number>>;
  /** From the cutting line inwards, square to the edge. A double notch gives two strokes. */
  readonly notches: readonly Line[];
  readonly label: PieceLabel;
  /** Middle of a place inside the outline with room for the label. */
  readonly labelAt: Point;
}
