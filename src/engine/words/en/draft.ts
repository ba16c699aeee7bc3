/** English sentences of the drafting bench: what the hand does, and what places and lines are called. */
export const draft = {
  'draft.start': 'Mark {makes}.',
  'draft.down': 'From {from} measure down {length}. Mark {makes}.',
  'draft.up': 'From {from} measure up {length}. Mark {makes}.',
  'draft.out': 'From {from} measure {length} away from the centre. Mark {makes}.',
  'draft.inward': 'From {from} measure {length} toward the centre. Mark {makes}.',
  'draft.toward': 'From {from} measure {length} toward {target}. Mark {makes}.',
  'draft.stays': '{from} also becomes {makes}.',
  'draft.halfway': 'Halve the way from {from} to {to}. Mark {makes}.',
  'draft.part-way': 'From {from} go {percent} % of the way to {to}. Mark {makes}.',
  'draft.meeting': 'Level with {row} and straight in line with {column}, mark {makes}.',
  'draft.straight': 'Rule a straight line from {from} to {to}: {makes}.',
  'draft.curve':
    'Draw a smooth curve from {from} to {to}, {startWords} at its start and {endWords} at its end: {makes}.',
  'draft.curve-through':
    'Draw a smooth curve from {from} through {through} to {to}, {startWords} at its start and {endWords} at its end: {makes}.',
  'draft.take-in-allowance':
    'Your paper includes allowances: draw the stitching line {seam} inside every edge, and {closing} inside the centre back.',
  'draft.panel': '{piece}: rule a rectangle {width} wide and {length} long. Cut {copies}.',
  'draft.panel-on-fold':
    '{piece}: rule a rectangle {width} wide and {length} long; one long side is the fold. Cut {copies}.',
  'draft.ring-waist':
    '{piece}: from one point draw an arc with the radius {radius}, along it {waist}; this is the waist. Rule both ends out from the same point.',
  'draft.ring-hem': 'From the same point draw the hem with the radius {radius}.',
  'draft.panel-pleats':
    'Mark the pleat lines, {count} in all, by the measures on the last pages; bring each fold line to its meeting line.',
  'draft.bias.rule':
    'Rule a strip {length} long and {width} wide at 45 degrees to the grain. Cut {copies}, with allowances at all sides.',
  'draft.bias.inside':
    'Sew one long edge to the dress, clip, turn the strip to the inside, fold its other edge in and stitch it down, {finished} wide.',
  'draft.bias.bound':
    'Cut the allowance off the edge of the dress. Fold the strip over the raw edge, both its long edges turned in, and stitch, {finished} wide on each side.',

  'end.square-centre': 'square to the centre',
  'end.square-shoulder': 'square to the shoulder',
  'end.square-side': 'square to the side',

  'place.centre-top': 'the top corner at the centre',
  'place.neck-point': 'the neck point',
  'place.neck-front': 'the neck at the centre front',
  'place.neck-back': 'the neck at the centre back',
  'place.waist-front': 'the waist at the centre front',
  'place.waist-back': 'the waist at the centre back',
  'place.side-top': 'the top of the side line',
  'place.shoulder-aim': 'the aim of the shoulder line',
  'place.shoulder-top': 'the point above the shoulder tip',
  'place.shoulder-level': 'the level of the shoulder tip',
  'place.shoulder-tip': 'the shoulder tip',
  'place.underarm': 'the underarm',
  'place.underarm-centre': 'the underarm level at the centre',
  'place.across-level': 'the level of the armhole middle',
  'place.armhole-half': 'the half of the armhole',
  'place.armhole-foot': 'the foot of the straight armhole',
  'place.armhole-middle': 'the middle of the armhole',
  'place.waist-level': 'the waist on the side line',
  'place.waist-side': 'the waist at the side',

  'edge.neckline': 'the neckline',
  'edge.shoulder': 'the shoulder line',
  'edge.armhole': 'the armhole',
  'edge.side': 'the side seam',
  'edge.waist': 'the waist',
  'edge.centre-front': 'the centre front',
  'edge.centre-back': 'the centre back',

  'piece.front': 'Front',
  'piece.back': 'Back',
  'piece.sleeve': 'Sleeve',

  'draft.strip': 'Rule {piece}: {length} long and {width} wide. Cut {count}.',
  'draft.strip-on-fold':
    'Rule {piece}: {length} long and {width} wide, one long edge on the fold of the cloth. Cut {count}.',

  'draft.placket': 'Placket strip for the skirt',
  'draft.placket.strip':
    'Rule a strip {length} long and {width} wide and fold it lengthwise. It binds both edges of the slit of {slit} in the skirt, in one piece.',
} as const;
