/** English sentences about paper. */
export const paper = {
  'paper.piece.child': '{child}, {size}',
  'paper.piece.allowances-in': 'Seam and hem allowances are included.',
  'paper.piece.allowances-out': 'No allowances: add your own.',
  'paper.piece.fold': 'Place on fold',
  'paper.piece.grain': 'grain',
  'paper.piece.pleat-fold': 'fold',
  'paper.piece.pleat-meet': 'meet',
  'paper.piece.closing-end': 'opening ends here',
  'paper.piece.centre': 'centre',
  'paper.piece.gather': 'gather',
  'paper.piece.strip-line': 'strip line',
  'paper.piece.button': 'button',
  'paper.piece.buttonhole': 'buttonhole',
  'paper.piece.loop': 'loop',
  'paper.piece.lower-side': 'lower side only',
  'paper.piece.lower-side.left': 'left side only',
  'paper.piece.lower-side.right': 'right side only',

  'paper.figure.name': 'Straight pieces {number}',
  'paper.figure.about':
    'Rule these straight on the cloth, along the grain, or on paper. Allowances are included. Measure on from the edge each time, never from line to line.',
  'paper.figure.size': '{width} wide, {length} long',
  'paper.figure.size-on-fold': '{width} wide on the fold ({opened} opened out), {length} long',
  'paper.figure.sum': 'The steps across add up to {ruled}; unrounded it is {width} by {length}.',
  'paper.figure.remainder': 'What rounding leaves over lies in the last pleats by the {edge}.',
  'paper.figure.pleated': 'With the pleats laid it measures {faces} along the waist.',
  'paper.figure.across': 'From the left edge',
  'paper.figure.down': 'From the top edge',
  'paper.figure.stitch': 'stitch',
  'paper.figure.notch': 'notch',
  'paper.figure.double-notch': '2 notches',
  'paper.figure.opening-end': 'opening',
  'paper.figure.right-edge': 'right edge',
  'paper.figure.lower-edge': 'lower edge',

  'paper.front.name': 'Front page',
  'paper.front.about': '{size}. Drawn {date}.',
  'paper.front.first': 'Print this page first, alone, at 100 %.',
  'paper.front.first-sheet': 'Check this before you cut.',
  'paper.front.settings':
    'Print at 100 % ("actual size"). Turn "fit to page" off in the reader and in the printer\'s own settings.',
  'paper.front.measure': 'Measure the square both ways and both check lines with a rigid ruler, not a tape.',
  'paper.front.measure-sheet':
    'Measure the square both ways and the check line along the top with a rigid ruler, not a tape.',
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
  'paper.front.figures': 'Rule these by the measures on the last pages:',
  'paper.front.map': 'How the pages lie',
  'paper.front.printer':
    'Drawn for a printer whose 100 mm square measured {across} mm across and {down} mm down.',
  'paper.tile.about': 'page {page} of {pages} - {child}',

  'paper.flow.number': '{page} of {pages}',

  'paper.hand.name': 'Drawing by hand',
  'paper.hand.title': 'Draw it by hand: {child}',
  'paper.hand.order':
    'Straight lines first, points second, curves last. Write the name beside each point as you make it. What is new in a step is drawn heavy, with the length that it lays off.',
  'paper.hand.scale': 'drawn 1 : {shrink}',
  'paper.hand.article': 'the',
  'paper.hand.allowances': 'These are stitching lines. Add the allowances before you cut.',

  'paper.cut-list.name': 'Cut list',
  'paper.cut-list.about': 'Drawn {date}. Cut every piece with its grain as the lay shows it.',
  'paper.cut-list.buy': '{cloth}: buy {length}',
  'paper.cut-list.width': 'The pieces lie on {length} of cloth, {width} wide between the selvedges.',
  'paper.cut-list.shrinkage': '{percent} % is added for shrinkage. Wash or steam the cloth before you cut.',
  'paper.cut-list.number': 'No.',
  'paper.cut-list.piece': 'Piece',
  'paper.cut-list.cutting': 'Cutting',
  'paper.cut-list.child': 'For',
  'paper.cut-list.picture':
    'In the pictures the length of the cloth runs to the right and the arrow in a piece points to its head. The lay is drawn larger, with measures, on sheets of its own.',
  'paper.sizes.name': 'All sizes',
  'paper.sizes.about':
    'Cutting lines of every size, one inside the other. Drawn {date}. Cut along the line of one size.',
  'paper.sizes.row': '{size}: cut {width} wide, {length} long',
  'paper.sizes.square': '100 mm each way',
} as const;
