/** English sentences about an order: what its fields are called, what is wrong with them, and what the pack says. */
export const order = {
  'order.problem.field': '{field}: {what}',
  'order.problem.child': '{child}: {what}',
  'order.problem.child-field': '{child}, {field}: {what}',
  'order.problem.placed': '{sentence} [{path}]',

  'order.empty': 'The file is empty. Begin with the example order and change what it says.',
  'order.too-large': 'The file is larger than {most} MB; no order is. Is it the right file?',
  'order.broken':
    'Line {line}, place {column}: the file cannot be read on from "{found}". Look there and just before for a missing comma, quotation mark or bracket, or one too many.',
  'order.ends-early':
    'The file ends at line {line} before the order does. A quotation mark or a bracket is not closed, or the end was lost.',
  'order.field-twice': 'Line {line}: the field "{field}" stands twice in one place. Keep one of them.',
  'order.too-deep':
    'Line {line}: brackets lie in brackets far deeper than in any order. Is it the right file?',
  'order.not-an-order':
    'This is not an order. An order is one group of fields in curly brackets; begin with the example order.',
  'order.no-version':
    'The field "frockwright" is missing, which says by which version of the form the order is written. Write "frockwright": 1 as its first field.',
  'order.unknown-version':
    'The order says that it is written by version {found} of the form. This program reads: {known}. Use a newer program, or write the order again from the example.',

  'order.missing': 'this field is missing. Add "{name}".',
  'order.unknown-field': 'there is no field {found} here. The fields here are: {known}.',
  'order.unknown-field.near': 'there is no field {found} here. Is "{near}" meant?',
  'order.forbidden-field': 'a field cannot be called {found}. Take it out.',
  'order.not-a-choice': '{found} is not known here. Choose one of {choices}.',
  'order.not-a-choice.near': '{found} is not known here. Is "{near}" meant? The choices are {choices}.',
  'order.wants.table': 'a group of fields in curly brackets belongs here, not {found}.',
  'order.wants.list': 'a list in square brackets belongs here, not {found}.',
  'order.wants.text': 'a text in quotation marks belongs here, not {found}.',
  'order.wants.length': 'a length belongs here, not {found}. Write for instance "20 1/2", "52 cm" or 20.5.',
  'order.wants.number': 'a number belongs here, not {found}. Write it without quotation marks.',
  'order.wants.whole-number': 'a whole number belongs here, not {found}. Write for instance 12.',
  'order.wants.name': '{found} is not a name. Write one, in quotes.',
  'order.wants.flag': 'true or false belongs here, not {found}. Write it without quotation marks.',
  'order.wants.scalar': 'a length, a number, a word or true or false belongs here, not {found}.',
  'order.wants.not-empty': 'the list is empty. Write one entry at least.',
  'order.wants.not-blank': 'this is empty. Write what it is called.',
  'order.too-many': 'the list is too long. Up to {most} are taken; make two orders.',
  'order.too-long': '{found} is too long. Up to {most} letters are taken.',
  'order.control-character':
    '{found} holds a sign that is no letter and cannot be printed. Type the text again.',
  'order.length-out-of-range': '{value} is outside {least} to {most}. Check the number and its unit.',
  'order.number-out-of-range': '{found} is outside {least} to {most}.',
  'order.not-a-day':
    '{found} is not a day of the calendar. Write year, month and day, for instance "2027-06-12".',
  'order.born-after-due':
    '{found} comes after the day on which the dress is worn. Check the birthday and the due day.',
  'order.other-units':
    'of {measured} measurements {count} can only be meant in {words}, but the order says "{units}". Write "units": "{other}", or measure again.',
  'order.units.in': 'inches',
  'order.units.cm': 'centimetres',
  'order.age-twice': 'the birthday and the age in months are both given. Keep one of them.',
  'order.block-twice': 'a drafted block and a paper block are both given. Keep one of them.',
  'order.printer-too-far-off':
    'the test square was outside {least} to {most} mm. A printer alone does not err so much: print at 100 %, turn "fit to page" off, and measure again.',

  'order.cloth.same-name':
    'two cloths are called {name}. Give each a name of its own, since it is printed on the pieces.',
  'order.cloth.role-twice':
    'two cloths are to be used for "{role}", {other} already is. Keep it in one of them.',
  'order.cloth.no-main':
    'no cloth is used for "main". Write "main" under "use" of the cloth of the bodice; what has no cloth of its own is cut from it too.',

  'order.step.unknown': 'there is no design step "{found}". The steps are: {known}.',
  'order.step.unknown.near': 'there is no design step "{found}". Is "{near}" meant?',
  'order.step.twice': 'it stands twice in the list. Put its numbers together in one line.',
  'order.step.same-kind':
    '{first} and {second} cannot both be in one dress. Take one out, or give it "off": true.',
  'order.step.off-absent': "it is switched off, but the order's dress has no such step. Take the line out.",

  'order.param.out-of-range': '{value} does not work here. Take {least} to {most}.',
  'order.param.no-room':
    '{value} does not work here, nor does any other length: these measurements leave no room for it.',

  'order.block.tip-outside-chest':
    'on the {half} the shoulder comes out wider than the chest. Check the shoulder length and the chest girth, or give the chest more ease.',
  'order.block.armhole-too-shallow':
    'on the {half} no room is left for an armhole between shoulder and waist. Check the back length and the chest girth.',
  'order.block.shoulder-too-short':
    'the shoulder of {shoulder} cannot fall by {fall}. The fall must be less than the shoulder is long.',
  'order.block.own-tip-outside-chest':
    'the shoulder tip lies {tip} from the centre, the underarm only {chest}. Measure the shoulder and the chest width again.',
  'order.block.no-side-left':
    'the underarm lies {underarm} below the neck point and the waist {waist}, which leaves no side seam. Measure both again.',
  'order.block.neck-too-deep':
    'the neck of {depth} comes down to the underarm at {underarm}. Measure both again.',
  'order.block.allowance-too-wide':
    'taking off an allowance of {allowance} leaves no pattern. Check how wide it is on the paper.',
  'order.half.front': 'front',
  'order.half.back': 'back',

  'order.field.order': 'order',
  'order.field.frockwright': 'version of the form',
  'order.field.title': 'title',
  'order.field.dueDay': 'day on which the dress is worn',
  'order.field.madeOn': 'day printed on the pieces',
  'order.field.units': 'units',
  'order.field.ruler': 'ruler for drafting by hand',
  'order.field.of-cloth': 'cloth {number}, {field}',
  'order.field.cloths': 'cloths',
  'order.field.cloths.name': 'name',
  'order.field.cloths.use': 'used for',
  'order.field.cloths.width': 'width',
  'order.field.cloths.usableWidth': 'width without selvedges',
  'order.field.cloths.shrinkage': 'shrinkage',
  'order.field.cloths.soldBy': 'sold by',
  'order.field.cloths.kind': 'kind of cloth',
  'order.field.block': 'block',
  'order.field.block.method': 'block, method',
  'order.field.block.chestEase': 'block, chest ease',
  'order.field.block.waistEase': 'block, waist ease',
  'order.field.block.frontShoulderFall': 'block, fall of the front shoulder',
  'order.field.block.backShoulderFall': 'block, fall of the back shoulder',
  'order.field.block.backNeckDepth': 'block, depth of the back neck',
  'order.field.block.tummy': 'block, front longer for the tummy',
  'order.field.paperBlock': 'paper block',
  'order.field.paperBlock.front': 'paper block, front',
  'order.field.paperBlock.back': 'paper block, back',
  'order.field.paperBlock.neckWidth': 'paper block, neck width',
  'order.field.paperBlock.neckDepth': 'paper block, neck depth',
  'order.field.paperBlock.shoulder': 'paper block, shoulder',
  'order.field.paperBlock.shoulderFall': 'paper block, fall of the shoulder',
  'order.field.paperBlock.armholeDepth': 'paper block, straight depth of the armhole',
  'order.field.paperBlock.armholeHollow': 'paper block, hollow of the armhole',
  'order.field.paperBlock.chestWidth': 'paper block, chest width',
  'order.field.paperBlock.waistWidth': 'paper block, waist width',
  'order.field.paperBlock.sideWaistLevel': 'paper block, waist level at the side',
  'order.field.paperBlock.centreLength': 'paper block, length of the centre',
  'order.field.paperBlock.seamIncluded': 'paper block, seam allowance included',
  'order.field.paperBlock.closingIncluded': 'paper block, closing allowance included',
  'order.field.dress': 'dress',
  'order.field.dress.step': 'design step',
  'order.field.dress.off': 'switched off',
  'order.field.of-step': '{step}, {field}',
  'order.field.children': 'children',
  'order.field.name': 'name',
  'order.field.born': 'birthday',
  'order.field.ageMonths': 'age in months',
  'order.field.sex': 'girl or boy',
  'order.field.measures': 'measurements',
  'order.field.fit': 'bounds of ease',
  'order.field.fit.chestEase': 'bounds of chest ease',
  'order.field.fit.waistEase': 'bounds of waist ease',
  'order.field.fit.chestEase.from': 'least chest ease',
  'order.field.fit.chestEase.to': 'most chest ease',
  'order.field.fit.waistEase.from': 'least waist ease',
  'order.field.fit.waistEase.to': 'most waist ease',
  'order.field.allowances': 'allowances',
  'order.field.allowances.all': 'allowances',
  'order.field.allowances.main': 'allowances of the main cloth',
  'order.field.allowances.yoke': 'allowances of the yoke',
  'order.field.allowances.skirt': 'allowances of the skirt',
  'order.field.allowances.lining': 'allowances of the lining',
  'order.field.allowances.net': 'allowances of the net layers',
  'order.field.allowances.trim': 'allowances of the trimmings',
  'order.field.allowance': 'allowance at the {edge}',
  'order.edge.bagged': 'edge sewn to the lining and turned',
  'order.field.paper': 'paper',
  'order.field.paper.formats': 'formats of paper',
  'order.field.paper.overlap': 'overlap of the pages',
  'order.field.paper.printerMeasured': 'measured test square',
  'order.field.paper.printerMeasured.across': 'measured test square, across',
  'order.field.paper.printerMeasured.down': 'measured test square, down',

  'order.size.both': 'height {height}, chest {chest}',
  'order.size.height': 'height {height}',
  'order.size.chest': 'chest {chest}',
  'order.size.age': 'for {months} months',
  'order.not-to-cut': 'DO NOT CUT YET. {cutting}',

  'order.level.stop': 'Cut nothing before this is mended',
  'order.level.warn': 'Look at this before you cut',
  'order.level.note': 'Worth knowing',
  'order.level.ok': 'This fits',
  'order.level.stop.short': 'stop',
  'order.level.warn.short': 'look',
  'order.level.note.short': 'know',
  'order.level.ok.short': 'fits',

  'order.checks.name': 'Checks',
  'order.checks.about': '{size}. Drawn {date}.',
  'order.checks.child': 'For',
  'order.checks.stops': 'Do not cut: {stops} of the checks found something that must be mended first.',
  'order.checks.warnings': 'Before you cut, look at what the checks found: {warnings}.',
  'order.checks.fine': 'All checks fit. Notes worth knowing: {notes}.',

  'order.checks.party-fine':
    'Nothing stands against cutting. Each child has a list of her own in her folder.',

  'order.measures.heading': 'Measurements',
  'order.measures.about':
    'What was not measured is filled in from averages. A child may differ from them: measure where it matters.',
  'order.measures.measure': 'Measurement',
  'order.measures.value': 'Length',
  'order.measures.from': 'Where it comes from',
  'order.measures.measured': 'measured',

  'order.hand.last': 'Before you cut',
  'order.hand.allowances': 'Add round the stitching lines',
  'order.hand.piece': 'Piece',
  'order.hand.cutting': 'Cutting',
  'order.hand.add': 'Add',
  'order.hand.fit': 'Does the rounded draft fit together?',
  'order.hand.fits':
    'Yes. With every length rounded to your ruler, the seams still agree, notches meet and pleats come out whole.',
  'order.hand.fits-not': 'Not everywhere. True these places before you add the allowances:',

  'order.file.pattern': 'pattern at true size on {format}; pages: {count}',
  'order.file.by-hand': 'how to draw the pattern by hand, step by step',
  'order.file.checks': 'what fits, what to look at, and the measurements',
  'order.file.cut-list': 'what to cut, and how much cloth for this child alone',
  'order.file.pieces': 'every piece in a drawing of its own (SVG, true size)',
  'order.file.contents': 'names the files of this pack; leave it here',
  'order.file.party-checks': 'checks of all dresses at a glance',
  'order.file.party-cut-list': 'what to cut and to buy for all together',

  'order.readme.days': 'To be worn on {due}. Made on {made}.',
  'order.readme.barred':
    'DO NOT CUT YET for {names}: the checks found something that must be mended first. Every piece concerned says so too.',
  'order.readme.begin': 'Begin here',
  'order.readme.begin.checks': 'Read checks.pdf. Cut nothing before what it asks for is done.',
  'order.readme.begin.square':
    'Print the front page of one pattern alone, at 100 %, and measure its squares and lines with a rigid ruler.',
  'order.readme.begin.print': 'If they are right, print the rest of the pattern on the same printer.',
  'order.readme.begin.cloth': 'Buy the cloth from one lot, wash or steam it, then cut by the cut list.',
  'order.readme.party': 'For the whole order',
  'order.readme.buy': 'Cloth to buy for all dresses together',
  'order.readme.counts':
    'Checks: {stops} to mend before cutting, {warnings} to look at, {notes} worth knowing.',
  'order.readme.zip': 'Zip to buy: {kind}, {length} or longer.',
  'order.zip.centred-zip': 'centred',
  'order.zip.concealed-zip': 'concealed',
  'order.readme.folder': 'In the folder "{folder}":',

  'cli.exits':
    '0 all well; 1 something must not be cut; 2 the order cannot be used; 3 a file cannot be read or written.',
  'cli.fault':
    'This is a mistake of the program, not of your order ({what}). Please report it with the order that you used.',
  'cli.broken-off': 'Broken off. Nothing was written.',
  'cli.file.read': 'The file "{file}" cannot be read: {why}.',
  'cli.file.write': '"{file}" cannot be written: {why}.',
  'cli.file.not-utf8':
    'The file "{file}" is not plain text in UTF-8. Save it again as UTF-8 from your text editor.',
  'cli.file.why.missing': 'there is no such file or folder',
  'cli.file.why.no-folder': 'part of the path is a file, not a folder',
  'cli.file.why.not-allowed': 'you have no permission there',
  'cli.file.why.read-only': 'that place is for reading only',
  'cli.file.why.is-folder': 'it is a folder',
  'cli.file.why.exists': 'it is there already; choose another name',
  'cli.file.why.full': 'the disk is full',
  'cli.file.why.long-name': 'the name is too long',
  'cli.file.why.in-use': 'another program has it open',
  'cli.folder.is-file': '"{folder}" is a file. Choose a folder with --into.',
  'cli.folder.not-ours':
    'The folder "{folder}" holds files that are no pack of this program, for instance "{file}". Choose another folder with --into.',
  'cli.folder.foreign':
    'The folder "{folder}" holds a pack, but also "{file}", which would be lost. Move it away, or choose another folder with --into.',
  'cli.folder.old-pack':
    'The folder "{folder}" holds an older pack. Say --replace to put the new one in its place.',
  'cli.check.fits': '{count} more checks fit.',
  'cli.check.go': 'Nothing stands against cutting.',
  'cli.check.stop': 'DO NOT CUT YET for {names}: mend first what is marked "stop".',
  'cli.pack.drawing': 'drawing: {what}',
  'cli.pack.writing': 'writing: {what}',
  'cli.pack.buy': 'Buy {length} of {cloth}.',
  'cli.pack.done': '{count} files written. Open README.txt first: {folder}',
  'cli.pack.stop':
    'No pack was made: for {names} something must be mended before it is cut. Say --even-so to make a marked pack all the same.',
  'cli.pack.unprintable':
    'The fonts have no shape for {letters} in "{text}"; a question mark stands there on the papers.',
  'cli.measures.which': 'Name an order, or say with --steps which design is meant.',
  'cli.measures.known': 'Measured:',
  'cli.measures.filled-in': 'Filled in from averages; measure what you can:',
  'cli.measures.take': 'Measurements to take:',
  'cli.measures.about': 'about {length}, give or take {spread}',
  'cli.measures.checks': 'for the checks only',
  'cli.steps.length': 'a length',
  'cli.steps.ratio': 'a number, such as 2.5',
  'cli.steps.count': 'a whole number',
  'cli.steps.flag': 'true or false',
  'cli.steps.text': 'a name',
  'cli.example.written':
    'The example order is in "{file}". Change what it says, then: frockwright check {file}',
} as const;
