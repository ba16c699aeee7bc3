/** English sentences about paper. */
export const paper = {
  'paper.piece.child': '{child}, {size}',
  'paper.piece.allowances-in': 'Seam and hem allowances are included.',
  'paper.piece.allowances-out': 'No allowances: add your own.',
  'paper.piece.fold': 'Place on fold',
  'paper.piece.grain': 'grain',
  'paper.piece.pleat-fold': 'fold',
  'paper.piece.pleat-meet': 'meet',
  'paper.piece.closing-end': 'zip ends here',
  'paper.piece.centre': 'centre',
  'paper.piece.gather': 'gather',
  'paper.piece.strip-line': 'strip line',
} as const;
