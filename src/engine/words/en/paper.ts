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

  'paper.front.name': 'Front page',
  'paper.front.about': '{size}. Drawn {date}.',
  'paper.front.first': 'Print this page first, alone, at 100 %.',
  'paper.front.first-sheet': 'Check this before you cut.',
  'paper.front.settings':
    'Print at 100 % ("actual size"). Turn "fit to page" off in the reader and in the printer\'s own settings.',
  'paper.front.measure': 'Measure the square both ways and both check lines with a rigid ruler, not a tape.',
  'paper.front.right': 'All right? Print the rest on the same printer.',
  'paper.front.wrong':
    'Not right? Do not cut. Look at the settings again. If the square is still a little off, have the sheets made again with what it measured: they will be drawn for your printer.',
  'paper.front.wrong-sheet':
    'Not right? Do not cut: have the sheet printed again at 100 %, or made again with what the square measured.',
  'paper.front.join':
    'Trim the left and top edges along the thin frame. Lay each page over its neighbour, edge on the dotted line, until the crosses meet. Tape.',
  'paper.front.square-mm': 'Grey square: 100 mm each way',
  'paper.front.square-inch': 'Outer line: 4 in each way',
  'paper.front.check-line': 'check line: exactly {length}',
  'paper.front.check-line-inches': '{inches} in ({millimetres} mm)',
  'paper.front.check-line-centimetres': '{centimetres} cm',
  'paper.front.pages': 'This page and {count} more. Pieces to cut:',
  'paper.front.pieces': 'Pieces to cut:',
  'paper.front.map': 'How the pages lie',
  'paper.front.printer':
    'Drawn for a printer whose 100 mm square measured {across} mm across and {down} mm down.',
  'paper.tile.about': 'page {page} of {pages} - {child}',
} as const;
