/** English sentences of the measuring guide. Where nothing else is said: common practice, no source. */
export const measuring = {
  'measuring.name': 'Measuring sheet',
  'measuring.title': 'Measuring sheet: {child}',
  'measuring.taken': 'Measured on the ______________________ by ______________________',
  'measuring.before': 'Before you begin',
  'measuring.over':
    'Over what: a thin vest and leggings or knickers; no shoes, no belt, nothing in the pockets; hair as it will be worn on the day. A nappy stays on if one is worn under the dress. If something thick goes under the dress, measure over it and write that down.',
  'measuring.with':
    'With what: a tape that has not stretched (hold it against a ruler), a soft cord for the waist, a fine chain for the neck, a ruler, a book and a pencil. Cord and chain come off as soon as the tape has been read; a child never runs about with them, and is never left alone with them.',
  'measuring.hold':
    'A child that wriggles: measure a doll or a parent first, and let the child hold the end of the tape. Let the child stand with both feet on a sheet of paper and look at something at eye height, or tell you a story. A second person holds both hands and writes. Begin with the lengths, take the girths last and from behind. Two short goes are better than one long one; stop before there are tears. A baby is measured lying, or sitting on a lap.',
  'measuring.tape':
    'The tape lies flat and level all round; it touches and does not press, and one finger goes under it. Read it where it lies. Take every measure twice from the beginning. If the two differ by more than 1 cm (3/8 in), take it a third time and keep the two that agree.',
  'measuring.letters': 'The places that the tape runs between',
  'measuring.lines':
    'In the drawings: the heavy line is the tape, broken where it runs behind the body or where a level is carried across.',
  'measuring.needed': 'For this dress',
  'measuring.others': 'The others, if the child still stands still',
  'measuring.known': 'Measured on {day}: {cm} or {in}',
  'measuring.known-undated': 'Measured: {cm} or {in}',
  'measuring.likely': 'Likely {cm} or {in}, give or take {bandCm} or {bandIn}',
  'measuring.first': '1st',
  'measuring.second': '2nd',
  'measuring.unit.cm': 'cm',
  'measuring.unit.in': 'in',
  'measuring.unit.kg': 'kg',
  'measuring.unit.lb': 'lb',
  'measuring.weight': '{value} {unit}',
  'measuring.footer': 'Measuring sheet - {child} - {day}',
  'order.file.measuring': 'measuring sheet: where the tape runs, and blanks to fill in',

  'measure.more-by': '{by} more',
  'measure.less-by': '{by} less',
  'measure.same': 'the same',
  'measure.since': '{before}; now {now}, {change}',
  'cli.measures.before': 'Measured before, on {day}:',

  'landmark.nape': 'bone at the back of the neck',
  'landmark.nape.how': 'Let the child look at the floor: it is the bone that stands out most.',
  'landmark.neckSide': 'side of the neck',
  'landmark.neckSide.how': 'Where a fine chain laid round the neck crosses the top of the shoulder.',
  'landmark.neckHollow': 'hollow in front of the neck',
  'landmark.neckHollow.how': 'The soft place between the collar bones.',
  'landmark.shoulderBone': 'bone at the end of the shoulder',
  'landmark.shoulderBone.how':
    'Lift the arm sideways and feel along the shoulder for the dip: the bone lies just before it.',
  'landmark.armpit': 'armpit',
  'landmark.armpit.how': 'The upper edge of a ruler held level, close under the arm.',
  'landmark.waistCord': 'waist',
  'landmark.waistCord.how': 'Where a soft cord settles when the child bends to both sides.',
  'landmark.wristBone': 'wrist bone',
  'landmark.wristBone.how': 'The knob on the side of the little finger.',
  'landmark.kneeCrease': 'crease of the knee',
  'landmark.kneeCrease.how': 'The fold behind the knee when it is bent a little.',

  'measuring.picture': 'Drawing of a child seen from {view}, with the tape laid for the {measure}. {how}',
  'measuring.view.front': 'the front',
  'measuring.view.back': 'the back',
  'measuring.view.side': 'the side',

  'cli.measures.no-child': 'There is no child called "{name}" in this order. There are: {known}.',
  'cli.sheet.drawn': 'Drawn: {file}',
  'cli.sheet.not-pdf': 'The sheet is a PDF: name a new file that ends in .pdf, not {found}.',
} as const;
