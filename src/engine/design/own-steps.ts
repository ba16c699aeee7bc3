import { addDart } from './add-dart.ts';
import { addNotch } from './add-notch.ts';
import { addTuck } from './add-tuck.ts';
import { changeEdgeAllowance } from './change-edge-allowance.ts';
import { joinPieces } from './join-pieces.ts';
import { mirrorPiece } from './mirror-piece.ts';
import { moveHandle } from './move-handle.ts';
import { movePoint } from './move-point.ts';
import { renamePiece } from './rename-piece.ts';
import { slashAndSpread } from './slash-and-spread.ts';
import { splitAlong } from './split-along.ts';
import type { DesignStep } from './step.ts';

/** The maker's own changes to what the other steps have made. They run last, in the order in which she lists them. */
export const OWN_STEPS: readonly DesignStep[] = [
  movePoint,
  moveHandle,
  changeEdgeAllowance,
  renamePiece,
  addNotch,
  addDart,
  addTuck,
  splitAlong,
  slashAndSpread,
  joinPieces,
  mirrorPiece,
];
