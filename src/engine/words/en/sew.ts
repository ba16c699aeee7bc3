/** English sentences of the sewing plan: what is done, why there, how each cloth is sewn and pressed. */
export const sew = {
  'sew.list.and': '{first} and {second}',
  'sew.list.comma': '{first}, {rest}',
  'sew.edge-of': '{edge} of {pieces}',
  'sew.title': '{step}: {pieces}',
  'sew.title-more': '{step}: {first}, {second} and more',
  'sew.breaks.later': '{step} now comes before {need}, which it needs. Move it down, or undo.',
  'sew.breaks.left-out': '{step} is left out. It stays open: {edges}. Put it back, or finish it another way.',
  'sew.breaks.left-out-plain': '{step} is left out. Put it back, or do it another way.',
  'sew.breaks.needed': '{step} needs {need}, which is left out.',

  'sew.step.staystitch': 'Hold the curves',
  'sew.step.dart': 'Darts',
  'sew.step.tuck': 'Tucks',
  'sew.step.elastic': 'Elastic',
  'sew.step.gather': 'Draw up gathers',
  'sew.step.pleats': 'Lay pleats',
  'sew.step.seam': 'Join',
  'sew.step.princess': 'Princess seams',
  'sew.step.yoke': 'Yoke seam',
  'sew.step.shoulder': 'Shoulders',
  'sew.step.side': 'Side seams',
  'sew.step.sides-in-one': 'Sides, shell and lining in one run',
  'sew.step.mount': 'Lay the lining under',
  'sew.step.layers': 'Hold two layers together',
  'sew.step.wrap': 'Cross the fronts',
  'sew.step.collar': 'Collar',
  'sew.step.frill': 'Frill',
  'sew.step.trim-edge': 'Ruffle or strap',
  'sew.step.neck': 'Neck with its lining',
  'sew.step.face': 'Facing',
  'sew.step.bind': 'Binding',
  'sew.step.understitch': 'Understitch',
  'sew.step.armholes': 'Armholes with their lining',
  'sew.step.turn': 'Turn',
  'sew.step.shoulders-last': 'Shoulders, last',
  'sew.step.sleeve-seam': 'Sleeve seam',
  'sew.step.set-sleeve': 'Set the sleeves',
  'sew.step.cuff': 'Cuff or band',
  'sew.step.widths': 'Skirt widths',
  'sew.step.waist': 'Waist seam',
  'sew.step.net-waist': 'Net to the waist',
  'sew.step.tier': 'Tier',
  'sew.step.close-below': 'Seam below the opening',
  'sew.step.zip': 'Zip',
  'sew.step.opening': 'Edges of the opening',
  'sew.step.studs': 'Lap the shoulders',
  'sew.step.placket': 'Strip at a slit',
  'sew.step.fell': 'Close by hand',
  'sew.step.hem': 'Hem',
  'sew.step.narrow-hem': 'Narrow hem',
  'sew.step.trim-net': 'Cut the net level',
  'sew.step.bind-raw': 'Strip round a raw edge',
  'sew.step.neaten': 'Neaten',
  'sew.step.turn-edge': 'Turn an edge',
  'sew.step.make-trim': 'Make a part',
  'sew.step.catch-trim': 'Pin a trim in its place',
  'sew.step.sew-on': 'Sew a trim on',
  'sew.step.fasten': 'Fasteners',
  'sew.step.press': 'Press and finish',

  'sew.do.staystitch': 'Sew a row of plain stitches just inside the stitching line along the {edges}.',
  'sew.do.dart':
    'Sew the darts of {pieces} from the wide end to the point. Tie the threads there; press each dart to one side.',
  'sew.do.tuck':
    'Bring the two lines of each tuck round {pieces} together, stitch, and press the tuck towards the hem.',
  'sew.do.elastic':
    '{piece}: sew a strip over the marked line as a casing and draw elastic through it to {length}. Hold both ends at the seam edges.',
  'sew.do.gather':
    'Sew two rows inside the allowance along the {edges}, {length} in all, and draw them up to {to}. Spread the gathers evenly between the notches.',
  'sew.do.pleats':
    'Lay the {pleats} pleats along the {edges}: bring each fold to its meeting line until {length} measure {to}. Press them, and stitch across their heads inside the allowance.',
  'sew.do.seam': 'Sew the {edges} right sides together, {length} in all.',
  'sew.do.own-fold':
    'Fold {pieces} where you have drawn it, bring the two edges together, and stitch along them.',
  'sew.do.princess':
    'Sew the panels to their middles, right sides together: {pieces}. Clip the hollow edge so that it opens along the full one.',
  'sew.do.yoke':
    'Sew the yoke to the part below, right sides together, line on line: {pieces}. Press the allowances down.',
  'sew.do.wrap':
    'Lay the fronts across each other, notch on notch, and hold them together along the waist: {pieces}.',
  'sew.do.shoulder': 'Sew the shoulders right sides together: {pieces}. Press them open.',
  'sew.do.shoulders-last':
    'Draw the shoulders of the shell out, fold the lining back, and sew them right sides together: {pieces}.',
  'sew.do.shoulders-felled':
    'Tuck the shoulder allowances inside and close the shoulders of the lining by hand: {pieces}.',
  'sew.do.side': 'Sew the sides right sides together: {pieces}.',
  'sew.do.sides-in-one':
    'Open shell and lining out from each other at the armhole. Sew each side in one run, from the waist of the shell over the armhole seam to the waist of the lining: {pieces}.',
  'sew.do.mount':
    'Lay the lining under the shell, wrong sides together, and baste the {edges}; from here on they are sewn as one.',
  'sew.do.round-edge': 'Pin {piece} along the {edges}, notches together, and sew it on inside the allowance.',
  'sew.do.strip-join': 'Sew the ends of {piece} together and press the seam open.',
  'sew.do.neck':
    'Lay the lining on the shell, right sides together, and sew round the {edges}. Trim, clip the hollow places up to the stitching.',
  'sew.do.neck-apart':
    'Leave the shoulders open. Lay the lining on the shell, right sides together, front and back each by itself, and sew the {edges}; stop at the stitching line of the shoulder. Trim and clip.',
  'sew.do.layers': 'Lay the lining inside the shell, wrong sides together, and baste the {edges} as one.',
  'sew.do.understitch':
    'Press the allowances away from the shell and stitch them down 2 to 3 mm from the seam, along the {edges}, as far as the machine reaches.',
  'sew.do.armholes': 'Right sides together, sew the {edges}. Trim to 6 mm, clip.',
  'sew.do.armholes-apart':
    'Right sides together, front and back each by itself, sew the {edges}; stop at the stitching line of the shoulder. Trim to 6 mm, clip.',
  'sew.do.turn-through':
    'Draw each back through its shoulder to the front, so that the bodice comes right side out. Press the edges.',
  'sew.do.turn-apart': 'Turn front and back right side out and press the edges.',
  'sew.do.fell-armhole':
    'Turn the edge of the lining under and sew it by hand over the seam of the armhole: {edges}. Where the edge of the shell is still raw, turn both in, edge to edge.',
  'sew.do.face':
    'Lay {facing} on the dress, right sides together, and sew round the {edges}. Trim, clip, turn to the inside, press.',
  'sew.do.face-itself':
    'Lay the two layers of {piece} right sides together, sew the {edges} and their ends, trim, turn, press.',
  'sew.do.bind':
    'Sew {binding} along the {edges}, fold it over the raw edge or to the inside, turn its other edge in, and stitch it down.',
  'sew.do.placket': 'Sew {piece} along the {edges}, fold it over, and stitch it down.',
  'sew.do.sleeve-seam': 'Sew the seam of {pieces}, right sides together.',
  'sew.do.cuff': 'Sew the {edges} together, right sides together. Press towards the band.',
  'sew.do.cuff-inside': 'Fold {piece} over the seam, turn the inner edge and the ends in, and fell it down.',
  'sew.do.set-sleeve':
    'Set {pieces} into the armholes: notches, shoulder and underarm first, then the rest. Sew from the sleeve side; sew the lower half twice.',
  'sew.do.widths': 'Sew the widths together: {pieces} (seams: {count}).',
  'sew.do.widths-slit':
    'Sew the widths together: {pieces} (seams: {count}). Leave the seam behind open as far as the dress opens, and turn those edges narrowly.',
  'sew.do.widths-net':
    'Sew the widths together: {pieces} (seams: {count}). Leave the edges behind open, as they are cut.',
  'sew.do.widths-open':
    'Sew the widths together: {pieces}. Leave the edges behind unsewn from waist to hem and turn them narrowly.',
  'sew.do.close-below': 'Sew the seam behind, from the end of the opening to the hem: {pieces}.',
  'sew.do.open-to-hem':
    'Leave the edges behind unsewn from waist to hem and turn them in, as wide as the allowance: {pieces}.',
  'sew.do.tier': 'Sew {lower} to {upper}, right sides together.',
  'sew.do.waist':
    'Sew {skirt} to the waist of the bodice, right sides together, the flat bodice up. Keep the lining out of the way.',
  'sew.do.net-waist':
    'Sew {skirt} to the waist by itself, in the allowance; trim the net away from the opening by 25 mm.',
  'sew.do.waist-lining':
    'Sew {skirt} to the waist of the lining, so that its seam lies against the inside of the skirt.',
  'sew.do.fell-waist':
    'Fold the edge of the lining just over the stitching of the waist and sew it down by hand: {edges}.',
  'sew.do.concealed-zip':
    'Open the teeth with a cool iron. Sew the concealed zip ({zip}) along the opening of {opening}, both waist seams at one height, the top 6 mm below the neck.',
  'sew.do.centred-zip':
    'Sew the centred zip ({zip}) into the opening of {opening}, 6 mm each side, both waist seams at one height.',
  'sew.do.lapped-zip':
    'Sew the lapped zip ({zip}) into the opening of {opening}: the under edge folded 3 mm out, the upper one over it.',
  'sew.do.opening': 'Fold the {edges} in, press, and stitch down flat.',
  'sew.do.lap-shoulders':
    'Lay the front shoulder over the back strip, mark on mark, and baste the lap at the armhole: {edges}.',
  'sew.do.fell-opening':
    'Turn in the {edges} and sew them by hand along the opening, clear of the teeth or the fold.',
  'sew.do.fasten-hook': 'Sew a hook and an eye above the zip.',
  'sew.do.fasten-buttons':
    'Work {count} buttonholes of {hole} and sew the buttons opposite, each thread tied off twice.',
  'sew.do.fasten-lacing': 'Lace {cord} of cord from the neck down. Seal its ends; no knots or beads on them.',
  'sew.do.fasten-ties': 'Sew the press stud on at the neck and try the ties.',
  'sew.do.fasten-studs': 'Fix {count} press studs along the shoulders and pull at each.',
  'sew.do.fasten-keyhole': 'Sew the button on opposite its loop, thread tied off twice.',
  'sew.do.slit':
    'Bind both edges of the slit with {piece}: sew it on in one run round the foot of the slit, fold it over, stitch it down.',
  'sew.do.hem': 'Level the hem and sew it up by hand: {edges}.',
  'sew.do.hem-lining': 'Turn the hem up and stitch it: {edges}.',
  'sew.do.curved-hem': 'Level the hem, then turn it narrowly twice and stitch: {edges}.',
  'sew.do.arm-hem': 'Turn the edge narrowly twice and stitch: {edges}.',
  'sew.do.narrow-hem': 'Turn the {edges} narrowly twice and stitch.',
  'sew.do.waist-edge': 'Turn the {edges} in twice and stitch.',
  'sew.do.trim-net': 'Lay the net flat in folds and cut the {edges} level.',
  'sew.do.bind-raw':
    'Cut a bias strip 30 to 35 mm wide from what is left. Sew it along the {edges}, turn it to the inside, and fell it 8 to 10 mm wide.',
  'sew.do.turn-edge': 'Turn in the {edges} and stitch.',
  'sew.do.overlap-ends': 'Turn the ends of the overlap in narrowly: {edges}.',
  'sew.do.overlap-bagged':
    'Sew shell and lining together along the ends of the overlap, right sides together, and turn: {edges}.',
  'sew.do.make':
    '{pieces}: sew right sides together, leave a gap or one end open, trim, turn, press, close the gap.',
  'sew.do.make-disc': '{pieces}: gather the edge and draw each disc up over its button.',
  'sew.do.neaten': 'Overcast or turn the {edges}.',
  'sew.do.catch-side': 'Pin the ends of {piece} to the side edges, free ends inwards, and baste.',
  'sew.do.catch-opening': 'Pin {piece} to the edges of the opening, free ends inwards, and baste.',
  'sew.do.catch-keyhole': 'Pin {piece} at the top of the keyhole, its loop inwards, and baste.',
  'sew.do.sew-on': 'Sew {piece} on by hand through all layers, firmly.',
  'sew.do.finish':
    'Give the dress its last pressing. Count your pins and needles, and lay broken pieces of a needle together until all is there.',

  'sew.why.staystitch': 'A curve cut across the grain stretches as soon as it is handled.',
  'sew.why.tuck':
    'The skirt still lies flat; on the finished dress the tuck would have to be sewn round a tube.',
  'sew.why.elastic': 'On the flat sleeve, so that the sleeve seam catches both ends.',
  'sew.why.gather':
    'Gathers that are drawn up beforehand can be spread; gathered layers are thick, so each layer by itself.',
  'sew.why.pleats': 'What is pressed and held lies still while the waist seam runs over it.',
  'sew.why.yoke':
    'First of all at the yoke: shoulders, armholes and sides run over this seam. A net yoke has its allowance between the cloth and the lining.',
  'sew.why.shoulders-last':
    'The shoulder is {width} wide, or the back is closed: the back would not go through it. So neck and armholes come first, the shoulders last.',
  'sew.why.sides-in-one': 'Only now: the bodice had to be turned while its sides were open.',
  'sew.why.mount': 'The lining has no seam of its own there.',
  'sew.why.collar': 'Before the neck is closed: the collar lies between shell and lining or facing.',
  'sew.why.neck':
    'While the opening, the sides and the waist are still open. Stop at the fold of the opening, so that its corner stays square.',
  'sew.why.layers': 'What closes this edge goes over both layers.',
  'sew.why.understitch':
    'Before the zip and the turning: afterwards the machine cannot reach. It keeps the lining inside.',
  'sew.why.armholes': 'The lining is a little smaller here, so that it rolls inside.',
  'sew.why.turn-through': 'Works only while the centre back and the sides are open.',
  'sew.why.fell-sleeve':
    'A sleeve, a strip or a frill lies in this armhole, so the lining is closed over its seam by hand.',
  'sew.why.fell-bare': 'This bodice could not be turned with its armholes sewn, so they are closed by hand.',
  'sew.why.set-sleeve':
    'Into the closed armhole, the sleeve finished: a small sleeve is easier to finish by itself.',
  'sew.why.net-opening':
    'Net does not fray. Its edges meet at the opening and are not folded into its seam, so that nothing catches them.',
  'sew.why.concealed-first': 'A concealed zip goes in before the seam below it is closed.',
  'sew.why.waist':
    'Gathers or pleats lie below, where the feeding teeth hold them; the flat side shows what you sew.',
  'sew.why.net-waist':
    'Net and lining skirt each by themselves: all layers at once make a thick, uneven seam.',
  'sew.why.fell-waist': 'The zip or the edges of the opening come first; the lining then hides both seams.',
  'sew.why.zip': 'After the neck and the waist: their seams must meet at one height on both sides.',
  'sew.why.lap-shoulders': 'Before the armhole is finished: it holds the lap.',
  'sew.why.buttons': 'Buttons are small parts: a child must not be able to pull them off.',
  'sew.why.bind-raw': 'Nothing else closes this edge: the design has no lining, facing or binding here.',
  'sew.why.trim-net': 'Net does not fray and needs no hem.',
  'sew.why.curved-hem':
    'Let the skirt hang for 48 hours first: cloth across the grain drops. Measure from the floor, in her shoes.',
  'sew.why.hem-first':
    'Before the pleats: they are pressed to the very edge. At the seam behind, open the hem a little and turn it up again over the seam.',
  'sew.why.hem-last':
    'Last, at the fitting: measure from the floor, in the shoes and the underskirt that will be worn.',
  'sew.why.catch-side': 'Sewn into the seam it cannot come off; tie it over the opening, not across a zip.',
  'sew.why.sew-on': 'At the end, so that it does not crush or catch.',
  'sew.why.finish': 'A pin left in a dress hurts a child. A magnet finds what the eye does not.',

  'sew.cannot.seam':
    'This can not be sewn: there is too little cloth outside the stitching line at the {edges}. Give it an allowance of at least {least}, or leave out what is sewn there.',
  'sew.cannot.turn':
    'This can not be finished: nothing closes the {edges}, and there is no cloth to turn. Give it an allowance of at least {least}, or add a lining, a facing or a binding.',
  'sew.cannot.circle':
    'This can not be sewn one after the other: the {first} must come before the {second}, and the other way round. Take back the last change of your own at one of them, or leave out the lining there.',

  // Stitching and pressing by kind of cloth: common practice, no source.
  'sew.stitch.satin': 'Fine needle (70), 2 to 2.5 mm stitches, pins in the allowance only: holes stay.',
  'sew.stitch.taffeta': 'Fine needle (70), 2.5 mm stitches. Do not unpick: holes stay.',
  'sew.stitch.net':
    '2.5 to 3 mm stitches, a strip of paper under slippery net; no backstitching, knot the threads.',
  'sew.stitch.lace':
    'Fine needle, 2 to 2.5 mm stitches, paper under the lace so that the teeth do not catch.',
  'sew.stitch.organza': 'Fine needle (60 to 70), 2 mm stitches, French seams: everything shows through.',
  'sew.stitch.chiffon': 'Fine needle (60 to 70), 2 mm stitches, paper under the cloth, French seams.',
  'sew.stitch.velvet':
    'Baste first: the pile creeps. 3 mm stitches in the direction of the pile, light pressure of the foot.',
  'sew.stitch.cotton': 'Needle 70 to 80, 2.5 mm stitches.',
  'sew.stitch.crepe': 'Needle 70, 2.5 mm stitches, hold the cloth taut before and behind the needle.',
  'sew.stitch.lining': 'Fine needle (70), 2 to 2.5 mm stitches.',
  'sew.press.satin': 'Press on the wrong side with a dry, cool iron through a cloth; water leaves spots.',
  'sew.press.taffeta': 'Press on the wrong side, dry and warm, through a cloth.',
  'sew.press.net': 'Cool iron through a cloth, no steam; synthetic net melts.',
  'sew.press.lace': 'Press face down on a towel, through a cloth.',
  'sew.press.organza': 'Dry, warm iron for silk, cool for synthetics; try on a scrap.',
  'sew.press.chiffon': 'Cool, dry iron, hardly any weight.',
  'sew.press.velvet':
    'Do not lay the iron on it: steam from the wrong side over a towel or a piece of velvet.',
  'sew.press.cotton': 'Hot iron with steam, on the wrong side where it could shine.',
  'sew.press.crepe': 'Warm iron, little steam; crepe shrinks when it is wet.',
  'sew.press.lining': 'Cool to warm iron, no water.',

  'sew.caution.pins':
    'Count pins and needles before you begin and when you finish; keep the pieces of a broken needle together, and run a magnet over the dress before you hand it over.',
  'sew.caution.beads':
    'She is under three: no beads, sequins or stones, unless they are sewn through and tried; none that a pull takes off (CEN/TR 16792, after its summary).',
  'sew.caution.law':
    'These are the usual cautions, taken from public summaries of EN 14682, CEN/TS 17394-1, CEN/TR 16792 and 16 CFR 1610. They are not legal advice: follow the rules where you sell.',

  'sew.care.fibres': '{cloth}: ______ % ____________',
  'sew.care.wash': 'Wash at 30 °C with like colours. Iron while damp. Do not tumble dry.',
  'sew.care.gentle': 'Gentle wash at 30 °C in a bag. Do not wring. Warm iron on the wrong side.',
  'sew.care.hand': 'Hand wash cool, do not wring, dry flat. Cool iron through a cloth.',
  'sew.care.clean': 'Do not wash: dry clean only. Steam from the wrong side, do not press.',
  'sew.care.fire': 'KEEP AWAY FROM FIRE.',
  'sew.care.maker': 'Made by: ____________   Made in: ____________',
  'sew.care.law':
    'Try the care on a scrap, and ask the shop for the fibres. What must stand on a label differs from place to place: follow the rules where you sell.',

  'sew.paper.name': 'Sewing plan',
  'sew.paper.party-name': 'Sewing in batches',
  'sew.paper.party-about':
    'One step for every child who has it, then the next: the machine is set once, and the hand stays in. The number in brackets is the step in the child’s own plan. No child’s order is broken by it.',
  'sew.paper.cautions': 'Before you begin',
  'sew.paper.cloths': 'Your cloths',
  'sew.paper.steps': 'Steps: {hours} h {minutes} min in all',
  'sew.paper.estimates': 'The minutes are estimates; they become yours as you note your own times.',
  'sew.paper.own-times': 'Minutes follow your own times where you have noted any; the others are estimates.',
  'sew.paper.legend':
    'In the drawings grey lies wrong side up and white right side up; the needle goes along the heavy broken line. Nothing is drawn to scale.',
  'sew.paper.minutes': '{minutes} min',
  'sew.paper.care': 'For the care label',
  'sew.paper.step': 'Step',
  'sew.paper.children': 'For whom',
  'sew.paper.time': 'Time',
  'cli.sew.bad-sheet': 'The plan is a PDF: name a new file that ends in .pdf, not {found}.',
  'order.file.sewing': 'Sewing plan',
  'order.file.party-sewing': 'Sewing of all children in batches',
} as const;
