/** English sentences of the lay on paper. */
export const paperLay = {
  'paper.lay.name': 'Lay',
  'paper.lay.title': '{cloth}: {title}',
  'paper.lay.buy': 'Buy {length}.',
  'paper.lay.buy-none': 'Nothing to buy: all of it lies on what you have.',
  'paper.lay.saved': 'Each child laid alone takes {alone}: one lay for all saves {saved}.',
  'paper.lay.by-table':
    'Lengths for another width of cloth, changed to this one by the table on home patterns, come to {table}: the lay saves {saved}.',
  'paper.lay.about':
    'The cut end of the cloth lies on the left. The arrow in a piece is its grain line and points to the head. For each piece measure to both ends of its grain line: along from the cut end, and across from the edge that is named. Pin it there, then cut.',
  'paper.lay.bought': 'On the cloth to be bought',
  'paper.lay.at-hand': 'On your length {number}',
  'paper.lay.facts':
    'The pieces lie on {length} of cloth, {width} wide between the selvedges, and cover {percent} % of it.',
  'paper.lay.one-way': 'All heads lie the same way.',
  'paper.lay.child-one-way':
    'All heads of one child lie the same way; those of the next may lie the other way.',
  'paper.lay.both-ways': 'Heads may lie either way.',
  'paper.lay.shrinks':
    '{percent} % is added for shrinkage. Wash or steam the cloth before you cut; the measures are those of the cloth after that.',
  'paper.lay.single': 'Single cloth, face up.',
  'paper.lay.lengthwise': 'Folded lengthwise, face to face.',
  'paper.lay.crosswise': 'Folded crosswise, face to face.',
  'paper.lay.then': 'Then, {from} from the cut end and measured from there: {how}',
  'paper.lay.scale': 'Drawn 1 : {shrink}.',
  'paper.lay.selvedge': 'selvedge',
  'paper.lay.fold': 'fold',
  'paper.lay.number': 'No.',
  'paper.lay.piece': 'Piece',
  'paper.lay.head': 'Upper end: along / across',
  'paper.lay.foot': 'Lower end: along / across',
  'paper.lay.edge': 'Across is measured',
  'paper.lay.pin': '{along} / {across}',
  'paper.lay.double': 'cut double',
  'paper.lay.on-fold': 'on the fold',
  'paper.lay.mirrored': 'turned over',
  'paper.lay.offcuts': 'What is left over',
  'paper.lay.letter': 'On it',
  'paper.lay.measures': 'Along and across',
  'paper.lay.size': '{along} by {across}',
  'paper.lay.twice': '(twice)',
  'paper.lay.uses': 'Enough for',
} as const;
