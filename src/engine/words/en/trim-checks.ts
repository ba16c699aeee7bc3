/** English sentences about checks of ties, bows and small parts: what is so, and what to do. */
const CEREMONY =
  'Celebratory clothing worn at civil or religious ceremonies or festivals, for a limited time and under supervision, is outside EN 14682; whether this dress is, you decide. This is not legal advice: follow the rules where you sell.';

export const trimChecks = {
  'check.trim.sash': 'sash',
  'check.trim.ties': 'ties',
  'check.trim.lacing': 'lacing cord',
  'check.trim.tied-bow': 'tied bow',
  'check.trim.sewn-bow': 'sewn-on bow',
  'check.trim.buttons': 'buttons',
  'check.trim.studs': 'press studs',
  'check.trim-place.neck': 'at the neck in front',
  'check.trim-place.nape': 'at the nape',
  'check.trim-place.shoulder': 'at the shoulder',
  'check.trim-place.chest': 'at the chest',
  'check.trim-place.waist-front': 'at the waist in front',
  'check.trim-place.waist-back': 'at the waist behind',
  'check.trim-place.back': 'at the back',
  'check.trim-place.sleeve': 'on the sleeve',
  'check.trim-place.skirt': 'on the skirt',

  'check.ties-and-bows.ok':
    'The {trim} {place}, with ends of {tail}, keeps the usual limits for this age. No knots or beads on the ends.',
  'check.ties-and-bows.neck-tie': 'The {trim} {place} can strangle: none for children under 7.',
  'check.ties-and-bows.neck-tie.todo': `Close the dress there with a button, a press stud or a zip instead. ${CEREMONY}`,
  'check.ties-and-bows.neck-bow':
    'The {trim} {place} has tails of {tail}: no tails there for children under 7.',
  'check.ties-and-bows.neck-bow.todo': `Make the bow without tails, or put it elsewhere. ${CEREMONY}`,
  'check.ties-and-bows.neck-long': 'The {trim} {place} has free ends of {tail}; {most} is the most there.',
  'check.ties-and-bows.neck-long.todo': `Shorten the ends to {most} or less. ${CEREMONY}`,
  'check.ties-and-bows.back-cord': 'The {trim} {place} comes out and is tied behind, where it can catch.',
  'check.ties-and-bows.back-cord.todo': `Close the back with buttons or a zip, or sew the lacing down and tuck its ends in. ${CEREMONY}`,
  'check.ties-and-bows.long': 'The {trim} {place} has free ends of {tail}; {most} is the most.',
  'check.ties-and-bows.long.todo': `Shorten the ends to {most} or less, without knots or beads on them. ${CEREMONY}`,
  'check.ties-and-bows.sash-long':
    'The {trim} {place} hangs {tail} from where it is tied, once undone; {most} is the most.',
  'check.ties-and-bows.sash-long.todo': `Shorten it to {most} or less, without knots or beads on the ends. ${CEREMONY}`,
  'check.ties-and-bows.below-hem':
    'The {trim} {place} hangs {tail} once undone, below the hem, which lies {most} down: it can be trodden on or catch.',
  'check.ties-and-bows.below-hem.todo': `Shorten it to {most} or less. ${CEREMONY}`,

  'check.small-parts.pull':
    'The {part} of {diameter} mm must hold a pull of {newtons} N on a child under three (CEN/TS 17394-1).',
  'check.small-parts.tiny':
    'The {part} of {diameter} mm are too small for a child under three to be safe from.',
  'check.small-parts.todo':
    'Sew them through with a locked thread shank, pull each hard before you hand the dress over, and check with a magnet for needles. Buttons of clothes are exempt from the small-parts law of the United States, which makes this a caution there. This is not legal advice: follow the rules where you sell.',
} as const;
