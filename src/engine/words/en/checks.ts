/** English sentences about checks: what is so (`check.<code>.<variant>`), and what to do (`.todo` and the like). */
export const checks = {
  'check.part.bodice': 'the bodice',
  'check.part.skirt': 'the skirt',
  'check.part.lining': 'the lining',

  'check.cloth.satin': 'satin',
  'check.cloth.taffeta': 'taffeta',
  'check.cloth.net': 'net',
  'check.cloth.lace': 'lace',
  'check.cloth.organza': 'organza',
  'check.cloth.chiffon': 'chiffon',
  'check.cloth.velvet': 'velvet',
  'check.cloth.cotton': 'cotton',
  'check.cloth.crepe': 'crepe',
  'check.cloth.lining': 'lining cloth',

  'check.seam.shoulder': 'Shoulder seam',
  'check.seam.side': 'Side seam',
  'check.seam.yoke': 'Yoke seam',
  'check.seam.waist': 'Waist seam',
  'check.seam.neck-lining': 'Lining at the neck',
  'check.seam.armhole-lining': 'Lining at the armhole',
  'check.seam.waist-lining': 'Lining at the waist',
  'check.seam.closing': 'Seam of the opening',
  'check.seam.skirt-join': 'Join of the skirt',
  'check.seam.skirt-waist': 'Waist edge of the skirt',
  'check.seam.sleeve-underarm': 'Sleeve seam',
  'check.seam.sleeve-cap': 'Armhole seam',
  'check.seam.dart': 'Dart',
  'check.seam.princess': 'Princess seam',
  'check.seam.facing': 'Facing seam',
  'check.seam.binding': 'Binding',
  'check.seam.collar': 'Collar seam',
  'check.seam.frill': 'Frill',
  'check.seam.cuff': 'Cuff seam',
  'check.seam.band': 'Band seam',
  'check.seam.tier': 'Tier seam',
  'check.seam.overskirt-waist': 'Waist edge of the overskirt',
  'check.seam.placket': 'Placket seam',
  'check.seam.strap': 'Strap seam',
  'check.seam.trim': 'Trim',
  'check.seam.own': 'Your own seam',

  'check.edge.neck': 'neckline',
  'check.edge.shoulder': 'shoulder',
  'check.edge.armhole': 'armhole',
  'check.edge.sleeve-hem': 'sleeve edge',
  'check.edge.curved-sleeve-hem': 'sleeve edge',
  'check.edge.side': 'side',
  'check.edge.waist': 'waist line',
  'check.edge.style-line': 'style line',
  'check.edge.closing': 'opening edge',
  'check.edge.centre': 'centre line',
  'check.edge.fold': 'fold',
  'check.edge.join': 'join',
  'check.edge.hem': 'hem line',
  'check.edge.curved-hem': 'hem line',
  'check.edge.cap': 'sleeve cap',
  'check.edge.attach': 'sewn edge',
  'check.edge.free': 'outer edge',
  'check.edge.dart': 'dart leg',

  'check.outline-closed.all': 'All {count} pieces have a closed outline.',
  'check.outline-closed.open': 'The outline of {piece} has a gap of {gap}.',
  'check.outline-closed.todo':
    'Undo the last change to {piece}: one of its lines no longer meets the next. Do not cut it.',

  'check.outline-simple.all': 'None of the {count} outlines crosses itself.',
  'check.outline-simple.crosses': 'The outline of {piece} crosses itself.',
  'check.outline-simple.inside-out': 'The lines of {piece} lie the wrong way round and enclose no cloth.',
  'check.outline-simple.todo':
    'Make the last change to {piece} smaller: one of its lines has run past another. Do not cut it.',
  'check.outline-simple.short': '{piece}: the {edge} is too short to sew.',
  'check.outline-simple.lengthen':
    'Move the line that cuts into the {edge}, so that more of it is left or none at all.',

  'check.seam-lengths.flat': '{seam} agrees: {lengthA} on each side.',
  'check.seam-lengths.eased': '{seam} agrees: {a} measures {lengthA}, {b} {lengthB}, the rest is eased.',
  'check.seam-lengths.gathered': '{seam} agrees: {b} of {lengthB} is gathered to {lengthA}.',
  'check.seam-lengths.pleated': '{seam} agrees: {pleats} pleats take {b} of {lengthB} to {lengthA}.',
  'check.seam-lengths.long':
    '{seam}: {a} measures {lengthA} and {b} {lengthB}, which makes {b} {off} too long for the seam.',
  'check.seam-lengths.short':
    '{seam}: {a} measures {lengthA} and {b} {lengthB}, which makes {b} {off} too short for the seam.',
  'check.seam-lengths.hair': '{seam}: {a} and {b} differ by {tenths} mm, less than a ruler shows.',
  'check.seam-lengths.spread': 'Spread the difference along the seam as you pin it; it need not be redrawn.',
  'check.seam-lengths.true':
    'Walk one stitching line along the other and true the longer one, or ease the difference in.',
  'check.seam-lengths.redraw':
    'Do not cut yet. Walk one stitching line along the other, and redraw the one that is wrong.',

  'check.corners-run-smooth.all': 'Lines run on smoothly at all {count} ends of seams and centre lines.',
  'check.corners-run-smooth.peak':
    '{seam}: laid together, {a} and {b} make a peak of {degrees} degrees in the {line}.',
  'check.corners-run-smooth.hollow':
    '{seam}: laid together, {a} and {b} make a hollow of {degrees} degrees in the {line}.',
  'check.corners-run-smooth.todo':
    'Lay the two pieces together along the seam and redraw the {line} across it in one smooth line.',
  'check.corners-run-smooth.centre':
    '{piece}: the {line} meets the centre at {degrees} degrees, so it will show a small point when opened out.',
  'check.corners-run-smooth.square': 'Draw the last stretch of the {line} square to the centre.',
  'check.corners-run-smooth.point': '{piece}: the {line} makes a point at the centre, as it is drawn to.',

  'check.notches-meet.all': 'All {count} notches meet their mates.',
  'check.notches-meet.apart': '{seam}: the notches of {a} and {b} lie {gap} apart when sewn.',
  'check.notches-meet.walk':
    'Walk {a} along {b} from the end of the seam and mark the notch again where it falls.',
  'check.notches-meet.alone': '{piece}: the notch on the {edge}, {at} from its start, meets no other notch.',
  'check.notches-meet.add': 'Mark its mate on the other piece, or leave out the notch on the {edge}.',

  'check.lining-fits.ok': '{seam} fits: shell {shell}, lining {lining}.',
  'check.lining-fits.short':
    '{seam}: the shell measures {shell} and the lining {lining}, {off} shorter than its trim explains.',
  'check.lining-fits.long':
    '{seam}: the shell measures {shell} and the lining {lining}, {off} longer than its trim explains.',
  'check.lining-fits.todo':
    'Draw the lining again from the finished shell, and take off no more than 3 mm at neck and armhole.',

  'check.facing-matches.ok': '{facing} has the shape of the edge that it faces.',
  'check.facing-matches.off': '{facing} departs from the shape of the edge that it faces by {off}.',
  'check.facing-matches.todo': 'Trace {facing} again from the edge that it is sewn to.',
  'check.facing-matches.lined': '{lining}: this edge has a facing as well.',
  'check.facing-matches.lined.todo':
    'A full lining needs no facing. Leave out one of them, or cut the lining away under the facing.',

  'check.collar-matches.ok': 'The collar fits the neck: {collar} on {neck}.',
  'check.collar-matches.long': 'The neck edge of the collar, {collar}, is {off} longer than the neck.',
  'check.collar-matches.long.todo': 'Do not cut. Draw the collar again from the necks of front and back.',
  'check.collar-matches.short':
    'The neck edge of the collar, {collar}, is {off} shorter than the neck; {most} can be eased in.',
  'check.collar-matches.short.todo':
    'Draw the neck edge of the collar longer, until it is {most} shorter at most.',
  'check.collar-matches.closed': '{collar} runs across the opening at the centre back.',
  'check.collar-matches.closed.todo': 'Part {collar} at the centre back, or close the dress elsewhere.',

  'check.pleats-whole.ok': '{seam}: {pleats} whole pleats, {spacing} apart and {depth} deep.',
  'check.pleats-whole.broken': '{seam}: {pleats} pleats cannot be set evenly into a waist.',
  'check.pleats-whole.broken.todo':
    'Choose a whole number of pleats, two at least, and divide the waist by it.',
  'check.pleats-whole.flat': '{seam}: pleats {spacing} apart and {depth} deep take up no cloth.',
  'check.pleats-whole.flat.todo': 'Give the pleats more depth, or gather the skirt instead.',
  'check.pleats-whole.deep':
    '{seam}: pleats {depth} deep and {spacing} apart lie over each other more than twice.',
  'check.pleats-whole.deep.todo':
    'Make the pleats {deepest} deep at most, or set fewer of them: the waist seam gets too thick.',
  'check.pleats-whole.shallow': '{seam}: pleats only {depth} deep will not hold their press.',
  'check.pleats-whole.shallow.todo': 'Set fewer, deeper pleats, or gather the skirt instead.',

  'check.gather-ratio.ok': '{seam}: gathered {ratio} to 1.',
  'check.gather-ratio.none': '{seam}: gathered {ratio} to 1 leaves too little cloth to reach round.',
  'check.gather-ratio.none.todo':
    'Add cloth to the gathered side: {least} times the finished length at least.',
  'check.gather-ratio.flat': '{seam}: gathered {ratio} to 1, which looks like ease rather than gathers.',
  'check.gather-ratio.flat.todo': 'Take {least} or more if gathers should show; or ease it in.',
  'check.gather-ratio.thick': '{seam}: gathered {ratio} to 1 makes a thick seam that is hard to sew.',
  'check.gather-ratio.thick.todo':
    'Stay at {most} or below, or try a gathered strip of the same cloth first. Gather net in groups of layers.',
  'check.gather-ratio.ok-in': '{seam}: {cloth} gathered {ratio} to 1.',
  'check.gather-ratio.sparse':
    '{seam}: {cloth} gathered {ratio} to 1 is less full than the usual {least} to {most}.',
  'check.gather-ratio.sparse.todo': 'Take {least} or more if it should look full.',
  'check.gather-ratio.full':
    '{seam}: {cloth} gathered {ratio} to 1 is fuller than the usual {least} to {most}.',
  'check.gather-ratio.full.todo':
    'Gather a strip of the same cloth first, and see whether the seam lies well.',
  'check.gather-ratio.thick-in':
    '{seam}: {cloth} gathered {ratio} to 1 makes a thick seam that is hard to sew; {least} to {most} is usual.',
  'check.gather-ratio.thick-in.todo':
    'Stay at {most} or below, lay pleats, or share the cloth between two layers.',

  'check.head-passes.open.ok':
    'The head passes: neckline and opening give {ring} round, the head measures {head}.',
  'check.head-passes.open.warn':
    'The head passes only just: neckline and opening give {ring} round, the head measures {head}.',
  'check.head-passes.open.stop':
    'The head does not pass: neckline and opening give {ring} round, the head measures {head}.',
  'check.head-passes.open.todo': 'Make the opening {longer} longer, or widen the neckline by {wider}.',
  'check.head-passes.closed.ok': 'The head passes without an opening: neckline {neckline}, head {head}.',
  'check.head-passes.closed.stop':
    'The head does not pass: the neckline measures {neckline}, the head {head}, and there is no opening.',
  'check.head-passes.closed.todo': 'Give the dress an opening, or widen the neckline by {wider}.',

  'check.neck-clears.ok': 'The neckline lies flat: {neckline} round a neck of {neck}.',
  'check.neck-clears.warn': 'The neckline is tight: {neckline} round a neck of {neck}.',
  'check.neck-clears.todo': 'Widen or lower the neckline until it is at least {short} longer.',

  'check.arm-passes.ok': 'The arm passes: the opening is {round} round, {ease} more than the arm.',
  'check.arm-passes.warn': 'The arm passes only just: the opening is {round} round, the arm {arm}.',
  'check.arm-passes.stop': 'The arm does not pass: the opening is {round} round, the arm {arm}.',
  'check.hand-passes.ok':
    'The hand passes: the end of the sleeve opens to {round}, and the hand is taken as {hand}. Try it on the child.',
  'check.hand-passes.stop':
    'The hand does not pass: the end of the sleeve opens to {round} only, and the hand is taken as {hand}.',
  'check.hand-passes.todo': 'Give the cuff a longer slit, or make the end of the sleeve {short} wider.',

  'check.cap-ease.ok': 'The sleeve cap has {ease} to ease in round each armhole, {most} at the most.',
  'check.cap-ease.much':
    'The sleeve cap has {ease} to ease in round each armhole; {most} is what sets well at this age.',
  'check.cap-ease.much.todo':
    'Take less cap ease, or choose a cloth that shrinks in under the iron, such as wool.',
  'check.cap-ease.gathers':
    'The sleeve cap has {ease} to ease in round each armhole, too much to lie smooth.',
  'check.cap-ease.gathers.todo': 'Take {most} at the most, or choose a puff sleeve and gather the cap.',
  'check.cap-ease.short': 'The sleeve cap is {ease} shorter than the armhole.',
  'check.cap-ease.short.todo':
    'Lengthen the cap: the bodice would have to be eased into the sleeve, which never sets.',

  'check.arm-passes.todo':
    'Make the opening round each arm {short} larger, by lowering the underarm or widening the sleeve.',

  'check.armhole-ratio.ok': 'The armhole of {round} suits an arm of {arm}.',
  'check.armhole-ratio.tight': 'The armhole of {round} will bind on an arm of {arm}.',
  'check.armhole-ratio.tight.todo':
    'Lower the underarm or scoop the armhole out until it measures {least} at least.',
  'check.armhole-ratio.wide': 'The armhole of {round} will gape on an arm of {arm}.',
  'check.armhole-ratio.wide.todo': 'Raise the underarm or take less drop, until it measures {most} at most.',

  'check.chest-ease.ok': 'Chest {girth} finished, {ease} more than the body.',
  'check.chest-ease.tight': 'Chest {girth} finished, only {ease} more than the body.',
  'check.chest-ease.wide': 'Chest {girth} finished, {ease} more than the body: wider than you wished.',
  'check.chest-ease.stop': 'The chest is too tight to wear: {girth} finished on a body of {body}.',
  'check.waist-ease.ok': 'Waist seam {girth} finished, {ease} more than the body there.',
  'check.waist-ease.tight': 'Waist seam {girth} finished, only {ease} more than the body there.',
  'check.waist-ease.wide':
    'Waist seam {girth} finished, {ease} more than the body there: wider than you wished.',
  'check.waist-ease.stop': 'The waist is too tight to wear: {girth} finished on a body of {body} there.',
  'check.ease.let-out': 'Add {short} round the body, a quarter of it at each side seam of front and back.',
  'check.ease.take-in':
    'Take {over} out round the body, a quarter of it at each side seam of front and back.',

  'check.armhole-depth.ok': 'The underarm lies {depth} below the neck points, as usual for this chest.',
  'check.armhole-depth.high':
    'The underarm lies only {depth} below the neck points: {least} to {most} is usual.',
  'check.armhole-depth.high.todo': 'Check the back length, and try the armhole on in a toile; it may cut in.',
  'check.armhole-depth.low': 'The underarm lies {depth} below the neck points: {least} to {most} is usual.',
  'check.armhole-depth.low.todo':
    'Check the back length. A low underarm drags the whole bodice up when the arm is lifted.',

  'check.closing-long-enough.ok': 'The waist opens to {ring}, and {through} must pass.',
  'check.closing-long-enough.parts': 'The opening runs through the waist edge, so the back parts altogether.',
  'check.closing-long-enough.warn':
    'The opening ends {below} below the waist seam; {least} to {most} is usual.',
  'check.closing-long-enough.stop': 'The waist opens to {ring} only, and {through} must pass.',
  'check.closing-long-enough.none.ok':
    'The waist passes without an opening: {ring} round, and {through} must pass.',
  'check.closing-long-enough.none.stop':
    'The waist does not pass without an opening: {ring} round, and {through} must pass.',
  'check.closing-long-enough.lengthen': 'Make the opening {longer} longer.',
  'check.closing-long-enough.add':
    'Give the dress an opening that ends {least} to {most} below the waist seam.',
  'check.closing-long-enough.zip.ok': 'The zip of {zip} opens {opens}.',
  'check.closing-long-enough.zip.short':
    'The zip of {zip} opens only {opens} once sewn, the opening is {opening}.',
  'check.closing-long-enough.zip.todo': 'Buy a zip of {wanted} or longer and shorten it from the bottom.',

  'check.shoulder-narrow.ok': 'The shoulders of {width} are wide enough to turn the lining through.',
  'check.shoulder-narrow.note':
    'The shoulders of {width} are too narrow to turn the bodice through; {least} is wanted.',
  'check.shoulder-narrow.todo':
    'Sew neck and armholes with the shoulders open, sew the shoulders last, and close the ends of the armholes by hand.',

  'check.net-caution.note': 'This dress has net. Light net burns fast.',
  'check.net-caution.todo':
    'Keep light net away from candles and open fire, and tell whoever dresses the child. Ask the supplier how it burns: in the United States net wholly of nylon or polyester needs no test of it, light net of silk, rayon or cotton does (16 CFR 1610.1(d)). This is not legal advice: follow the rules where you sell.',
} as const;
