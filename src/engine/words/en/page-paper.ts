/** English words of the place where papers are printed. */
export const pagePaper = {
  'page.did.paper-format': 'paper: {what}',
  'page.did.paper-overlap': 'overlap of the pages',
  'page.did.paper-rectangles': 'straight pieces on paper',
  'page.did.paper-square': 'measured test square',
  'page.did.paper-sizes': 'run of sizes',

  'page.paper.of': 'Paper for {child}',
  'page.paper.of-party': 'Paper for the party',
  'page.paper.for': 'For whom',
  'page.paper.for.party': 'the whole party',
  'page.paper.choose': 'What to print',
  'page.paper.what.pattern': 'Pattern at true size, {format}',
  'page.paper.what.dress': 'The dress, front and back',
  'page.paper.what.by-hand': 'How to draw it by hand',
  'page.paper.what.checks': 'Checks and measures',
  'page.paper.what.growth': 'Growth to the day',
  'page.paper.what.cut-list': 'What to cut, and cloth',
  'page.paper.what.lay': 'How it lies on the cloth',
  'page.paper.what.sizes': 'All sizes, one inside the other',
  'page.paper.what.pieces': 'Every piece in a drawing (SVG)',
  'page.paper.page': '1 page',
  'page.paper.pages': '{count} pages',
  'page.paper.drawings': '{count} drawings',
  'page.paper.drawing': 'The pages are being drawn ...',
  'page.paper.none': 'The pages are shown here as soon as the dress can be drawn.',
  'page.paper.no-pages':
    'These are drawings for other programs, each piece at true size. There are no pages to print.',
  'page.paper.open-page': 'Look at page {page}',
  'page.paper.page-of': '{page} ({number} of {count})',
  'page.paper.page-before': 'Page before',
  'page.paper.page-after': 'Next page',
  'page.paper.near': 'Larger',
  'page.paper.whole': 'The whole page',

  'page.paper.make': 'Make the PDF',
  'page.paper.make.zip': 'Make the files',
  'page.paper.make.count': '{count} sheets will come out of the printer.',
  'page.paper.make.count.one': '1 sheet will come out of the printer.',
  'page.paper.making': 'Writing {what}: {done} of {total}',
  'page.paper.making.begin': 'Drawing ...',
  'page.paper.stop': 'Break off',
  'page.paper.stopped': 'Broken off. Nothing was made.',
  'page.paper.made': '“{file}” is in your downloads.',
  'page.paper.made.pages': '“{file}” is in your downloads; pages: {count}.',
  'page.paper.made.open': 'Open it to print',
  'page.paper.made.again': 'Save it again',
  'page.paper.made.remember': 'Print at 100 %, without fitting to the page, and measure the square first.',
  'page.paper.made.printer':
    'It is drawn for the printer whose square you measured. On another printer it will be wrong.',
  'page.paper.unprintable':
    'The letters {letters} in “{text}” cannot be printed; a question mark stands there.',
  'page.paper.failed':
    'It could not be made: {why}. Your order is not touched. Try again, or make one paper at a time.',
  'page.paper.gone': 'This paper is no longer there. Choose another.',
  'page.paper.problem': 'It can’t be drawn: {what}',

  'page.paper.barred': 'Do not cut this yet',
  'page.paper.barred.about':
    'A check says that something must not be cut for {names}. See what does not fit before you print; a pattern that is made all the same says so on every piece.',
  'page.paper.barred.ask': 'Print it all the same?',
  'page.paper.barred.even-so': 'Make it, marked',
  'page.paper.barred.not': 'Not yet',

  'page.paper.paper': 'Your paper',
  'page.paper.format': 'Pattern on',
  'page.paper.format.also': 'Further papers in the pack',
  'page.paper.format.also.about': 'The pack has a pattern on each.',
  'page.paper.overlap': 'Overlap of the pages',
  'page.paper.overlap.about': 'What two neighbouring pages both show, to be taped.',
  'page.paper.rectangles': 'Straight pieces',
  'page.paper.rectangles.full': 'at true size',
  'page.paper.rectangles.figures': 'by measures',
  'page.paper.rectangles.about':
    'A piece that is a plain rectangle can be told by a small drawing with its measures. That saves paper.',
  'page.paper.sizes': 'Heights for a run of sizes',
  'page.paper.sizes.about':
    'Write heights with commas between, as “80 cm, 92 cm”. The dress of the order is drawn for average children of these heights, all sizes on one sheet.',

  'page.paper.true': 'At true size',
  'page.paper.true.print': 'Print at 100 %, without fitting to the page.',
  'page.paper.true.measure':
    'On the first page measure the grey square with a rigid ruler: 100 mm across and 100 mm down. If it is not, do not cut.',
  'page.paper.true.square': 'Is it a little off? Write what it measured, and the next print makes up for it.',
  'page.paper.true.across': 'Square across',
  'page.paper.true.down': 'Square down',
  'page.paper.true.number': 'Write it in millimetres.',
  'page.paper.true.now':
    'The next print is drawn {across} % as wide and {down} % as high. Print it on the same printer, and measure again: the square must now be 100 mm.',
  'page.paper.true.doubt':
    'That is {off} mm off. Most printers err by less than 1 mm: measure again with a rigid ruler, and look whether “fit to page” is off.',
  'page.paper.true.forget': 'Print as it is',
  'page.paper.true.forgotten': 'The next print is not changed for the printer.',

  'page.paper.all': 'Everything in one file',
  'page.paper.all.about':
    'Every paper of every child, the lists for the party, and a page that says what is what: one zip to keep or to take to a print shop.',
  'page.paper.all.make': 'Make the whole pack',
  'page.paper.all.making': '{what}: {done} of {total} done',
} as const;
