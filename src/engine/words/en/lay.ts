/** English sentences about the lay: pieces on cloth, what cannot be laid and what would do. */
export const lay = {
  'lay.no-width': '{cloth} has no width between its selvedges. Give its usable width.',
  'lay.bad-gap': 'The gap between pieces on {cloth} must be 0 or more.',
  'lay.bad-share':
    'Shrinkage and extra length of {cloth} are parts of its length: at least 0, and the shrinkage below 1.',
  'lay.bad-copies': '{piece} is wanted {found} times. Give a whole number, 0 to leave it out.',
  'lay.no-outline': '{piece} encloses no cloth. Look at its outline.',
  'lay.crosswise-one-way':
    '{cloth} has one way up, and folded crosswise half of the pieces would lie upside down. Lay it single or fold it lengthwise.',
  'lay.remnant-single': 'A leftover of odd outline is laid single. Unfold {cloth}.',
  'lay.remnant-odd': 'The outline of the leftover of {cloth} encloses nothing that can be used.',
  'lay.flaws-crosswise':
    'Flaws on {cloth} cannot be found again while it is folded crosswise. Lay it single or fold it lengthwise.',
  'lay.repeat-odd': 'The repeat of {cloth} must be longer than nothing.',
  'lay.checks-folded':
    'Checks across {cloth} cannot be matched on two layers at once. Lay it single, as pieces have to be matched.',
  'lay.stripes-crosswise':
    'Stripes of {cloth} cannot be matched while it is folded crosswise. Lay it single or fold it lengthwise.',
  'lay.no-such-edge': '{piece} has no edge "{edge}" to match at. Choose another edge.',
  'lay.no-room-to-match': '{piece} fits on {cloth}, but not with its stripes on those of the other pieces.',
  'lay.too-wide':
    '{piece} takes {size} across the cloth and {cloth} gives {usable} as it is laid here. It does not fit.',
  'lay.too-long': '{piece} takes {size} along the cloth and there are only {usable} of {cloth}.',
  'lay.advice.wider': 'Cloth of {width} between the selvedges would do.',
  'lay.advice.cross': 'Turned across the grain it would fit: allow that if the cloth may hang that way.',
  'lay.advice.join':
    'It is a straight piece: cut it in {widths} widths and join them, with seam allowance at each join.',
  'lay.advice.more': 'Take a length of {length} or more.',
  'lay.pin-unknown': 'A piece was pinned that is not on this lay.',
  'lay.pin-turned': '{piece} cannot be pinned so: the grain or the nap does not allow it to lie that way.',
  'lay.pin-off': '{piece} was pinned over the edge of {cloth}. Move it onto the cloth.',
  'lay.pins-overlap': '{piece} and {other} were pinned over each other. Move one of them.',
  'lay.pin-on-flaw': '{piece} was pinned on a flaw of {cloth}. Move it, or take the mark of the flaw away.',
  'lay.does-not-fit': 'No place was found for all the pieces on {cloth}. Take more of it.',
  'lay.not-enough': 'There is not enough {cloth} at hand: {piece} and {more} more pieces find no place.',
  'lay.note.cleaned':
    'The cutting line of {piece} crosses itself. All that it goes round is cut; look at the piece before you cut.',
  'lay.note.opened':
    '{piece} does not lie on folded cloth. It is laid on a stretch of single cloth after the folded one.',
  'lay.note.stripes-off':
    '{piece}: "{group}" misses its stripe by {off}, as the piece is already matched elsewhere.',
  'lay.note.slipped': 'Cloth that slips: {percent} % more is bought.',
  'lay.note.repeat': 'One repeat of {repeat} is added, as the shop cuts anywhere in the pattern.',
  'lay.point.head': 'Grain line, upper end',
  'lay.point.foot': 'Grain line, lower end',
  'lay.from.selvedge': 'from the near selvedge',
  'lay.from.far-selvedge': 'from the far selvedge',
  'lay.from.fold': 'from the fold',
  'lay.from.second-fold': 'from the second fold',
  'lay.use.bow': 'a bow',
  'lay.use.knot': 'a bow knot',
  'lay.use.binding': 'bias binding {width} wide: {length} in {strips} strips',
} as const;
