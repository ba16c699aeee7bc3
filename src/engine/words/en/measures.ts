/** English sentences about lengths, measurements and the body. */
export const measures = {
  'length.empty': 'Write a length here, for instance 20 1/2 in or 52 cm.',
  'length.not-a-number': '"{text}" is not a length. Write a number, for instance 20 1/2 in or 52 cm.',
  'length.negative': '"{text}" is less than nothing. Write the length without a minus sign.',
  'length.several-numbers': '"{text}" holds more than one number. Write one length, for instance 20 1/2 in.',
  'length.bad-fraction':
    '"{text}" has a fraction that no ruler has. Write a fraction smaller than one after a space, for instance 20 1/2 in.',
  'length.ambiguous-comma':
    '"{text}" can be read two ways. Write a point before decimals, and no comma between thousands.',
  'length.unknown-unit': 'The unit in "{text}" is not known here. Write in, cm or mm after the number.',
  'length.too-large':
    '"{text}" is longer than {most}, the longest length taken here. Check the number and its unit.',

  'measure.height': 'height',
  'measure.height.how':
    'Stand the child against a wall without shoes. Lay a book flat on the head and measure from the floor to the book. A baby is measured lying, from crown to sole.',
  'measure.chestGirth': 'chest girth',
  'measure.chestGirth.how':
    'Round the fullest part of the chest: over the shoulder blades, close under the arms, level all round, while the child breathes quietly.',
  'measure.waistGirth': 'waist girth',
  'measure.waistGirth.how':
    'Tie a soft cord round the middle and let the child bend to both sides: where the cord settles is the waist. Measure along the cord and leave it tied for the lengths.',
  'measure.hipGirth': 'hip girth',
  'measure.hipGirth.how':
    'Level round the fullest part of the seat; over the nappy if one is worn under the dress.',
  'measure.neckBaseGirth': 'neck base girth',
  'measure.neckBaseGirth.how':
    'Where the neck grows out of the shoulders: over the bone at the back of the neck, both sides of the neck and the hollow in front. A fine chain laid round shows the line.',
  'measure.headGirth': 'head girth',
  'measure.headGirth.how':
    'The largest girth of the head, above the ears and over the hair as it will be worn.',
  'measure.shoulderLength': 'shoulder length',
  'measure.shoulderLength.how':
    'From the side of the neck, where the chain lies, along the shoulder to the bone at its end.',
  'measure.shoulderWidth': 'shoulder width',
  'measure.shoulderWidth.how':
    'Across the back from the bone at the end of one shoulder to the other, over the bone at the back of the neck.',
  'measure.backWidth': 'back width',
  'measure.backWidth.how':
    'Straight across the back from arm to arm, half-way between the shoulder and the armpit, the arms hanging.',
  'measure.frontChestWidth': 'front chest width',
  'measure.frontChestWidth.how':
    'Straight across the chest from arm to arm, just above the creases where the arms begin, the arms hanging.',
  'measure.backNeckToWaist': 'back length',
  'measure.backNeckToWaist.how':
    'From the bone at the back of the neck down the spine to the cord round the waist.',
  'measure.scyeDepth': 'armhole depth',
  'measure.scyeDepth.how':
    'Lay a ruler level under both arms, across the back. From the bone at the back of the neck down the spine to the upper edge of the ruler.',
  'measure.upperArmGirth': 'upper arm girth',
  'measure.upperArmGirth.how': 'Round the fullest part of the upper arm while it hangs loose.',
  'measure.wristGirth': 'wrist girth',
  'measure.wristGirth.how': 'Round the wrist, over the bone.',
  'measure.armLength': 'arm length',
  'measure.armLength.how':
    'From the bone at the end of the shoulder over the slightly bent elbow to the wrist bone.',
  'measure.waistHeight': 'waist height',
  'measure.waistHeight.how':
    'At the side, from the cord round the waist straight down to the floor, without shoes.',
  'measure.kneeHeight': 'knee height',
  'measure.kneeHeight.how':
    'At the side, from the crease of the knee straight down to the floor, without shoes.',

  'measure.weight': 'weight',
  'measure.weight.how':
    'In light clothes and without shoes, on the day of the measuring. Write its unit after it: kg or lb.',
  'measure.next':
    'Measure next: {measure}. It takes away {share} % of what is still unsure about this dress.',
  'measure.give-or-take-of': 'filled in, give or take {band}',
  'measure.give-or-take': 'nine girls of ten lie within the give or take',

  'body.too-little':
    '{child}: write the height, the age or the chest girth. Without one of them nothing can be filled in.',
  'body.age-not-a-number': '{child}: the age is not a number. Write it in months, or check the birthday.',
  'body.age-out-of-range':
    '{child}: an age of {age} months is outside {least} to {most} months, for which there are sizes here. Check the birthday.',
  'body.age-beyond-blocks':
    '{child}: at {age} months the figure may have begun to change. The drafting rules are meant for up to {most} months; measure everything, and make a trial bodice.',
  'body.boy-by-girls':
    '{child}: what was not measured is filled in from the averages of girls. For a boy, measure as much as you can.',
  'body.measure-not-a-number':
    '{child}: the {measure} is not a number. Measure it and write a length from {least} to {most}.',
  'body.measure-not-positive':
    '{child}: the {measure} must be more than nothing. Measure it and write a length from {least} to {most}.',
  'body.measure-too-small':
    '{child}: the {measure}, {value}, is too small for any child. From {least} to {most} is taken; measure it again.',
  'body.measure-too-large':
    '{child}: the {measure}, {value}, is too large for any child. From {least} to {most} is taken; measure it again.',
  'body.measure-unusual':
    '{child}: the {measure}, {value}, is unusual beside the other measurements; {least} to {most} would be expected. Measure it again, and keep it if it is right.',
  'body.meant-inches':
    '{child}: the {measure}, {value}, is outside {least} to {most}, but the same number in inches would fit ({meant}). If it was measured in inches, write in after the number.',
  'body.meant-centimetres':
    '{child}: the {measure}, {value}, is outside {least} to {most}, but the same number in centimetres would fit ({meant}). If it was measured in centimetres, write cm after the number.',
  'body.meant-millimetres':
    '{child}: the {measure}, {value}, is outside {least} to {most}, but the same number in millimetres would fit ({meant}). If it was measured in millimetres, write mm after the number.',
  'body.do-not-belong':
    '{child}: the {measure}, {value}, and the {other}, {otherValue}, cannot belong to one child. Beside that {other} the {measure} lies between {least} and {most}. Measure both again.',

  'body.half-measured':
    '{child}: the {measure}, {value}, is about half of what the other measurements let expect ({least} to {most}). If half of it was measured, write {meant}.',
  'body.measured-twice':
    '{child}: the {measure}, {value}, is about twice what the other measurements let expect ({least} to {most}). If it was doubled by mistake, write {meant}.',
  'body.digits-swapped':
    '{child}: the {measure}, {value}, does not fit the other measurements; {least} to {most} would be expected. If two digits were exchanged, {meant} was meant. Measure it again.',
  'body.fields-swapped':
    '{child}: the {measure}, {value}, and the {other}, {otherValue}, fit better the other way round. Were the two exchanged? Measure both again, and keep them if they are right.',
  'body.all-in-inches':
    '{child}: taken together the lengths fit no child, but the same numbers in inches would. If they were measured in inches, write in after each number.',
  'body.all-in-centimetres':
    '{child}: taken together the lengths fit no child, but the same numbers in centimetres would. If they were measured in centimetres, write cm after each number.',
  'body.all-in-millimetres':
    '{child}: taken together the lengths fit no child, but the same numbers in millimetres would. If they were measured in millimetres, write mm after each number.',
  'body.arm-too-short':
    '{child}: the {measure}, {value}, is shorter than any arm that goes with the other measurements; {least} to {most} would be expected. Was it measured to the elbow only? Measure from the bone at the end of the shoulder to the wrist bone.',
  'body.other-child':
    '{child}: the {measure}, {value}, does not fit the other measurements ({least} to {most} would be expected), and it is the one of {whose}. Perhaps it was written twice: measure it again.',
  'body.girths-of-other':
    '{child}: {count} girths, the {measure} among them, are those of {whose} to the mark, who is of another height. Perhaps they were written beside the wrong name: measure them again, and keep them if they are right.',
  'body.age-unusual':
    '{child}: these are the measurements of a child of {least} to {most} months, not of {age} months. Check the birthday; keep it if it is right.',
  'body.weight-not-possible':
    '{child}: no child weighs {value} kg; {least} to {most} kg is taken. Check the number and its unit. The weight is left out until then.',
  'body.weight-in-pounds':
    '{child}: {value} kg does not fit the measurements ({least} to {most} kg would be expected), but {value} lb ({meant} kg) would. If it was weighed in pounds, write lb after the number. The weight is left out until then.',
  'body.weight-in-kilos':
    '{child}: {pounds} lb does not fit the measurements ({least} to {most} kg would be expected), but {pounds} kg would. If it was weighed in kilos, write kg after the number. The weight is left out until then.',
  'body.weight-unusual':
    '{child}: {value} kg does not fit the measurements; {least} to {most} kg would be expected. Weigh again, and check the unit. The weight is left out until then.',
  'body.shrank':
    '{child}: the {measure}, {value}, is less than on {day}, {before}. Children do not shrink: measure again.',
  'body.grew-too-fast':
    '{child}: the {measure} was {before} on {day} and is {value} now, faster than children grow; {least} to {most} would be expected. Measure again, and check both days.',
  'body.changed-too-much':
    '{child}: the {measure} was {before} on {day} and is {value} now; {least} to {most} would be expected. Measure again, and keep it if it is right.',

  'body.rule.height-by-age': 'The middle height of girls of this age (WHO growth standards).',
  'body.rule.height-by-chest':
    'The height at which this chest is the average: a rough guess, since children of one chest differ widely in height. Measure the height.',
  'body.rule.by-height':
    'The average of girls of this height (US survey, Snyder 1977). Children of today are often wider in the waist.',
  'body.rule.by-height-baby':
    'The average of babies of this length (US survey, Snyder 1977; Dutch growth study 1997; WHO growth standards).',
  'body.rule.beyond-data':
    'There are no measured averages for this height; the nearest ones are carried on in a straight line. A guess: measure it.',
  'body.rule.height-by-others':
    'The height that is likeliest beside the age and what was measured (WHO growth standards; US survey, Snyder 1977). Measure the height.',
  'body.rule.by-girths':
    'The likeliest beside the girths that are known, among girls of this height (averages, spreads and correlations of a US survey, Snyder 1977).',
  'body.rule.by-weight':
    'The likeliest beside the weight and the girths that are known, among girls of this height (averages, spreads and correlations of a US survey, Snyder 1977).',
  'body.rule.moved':
    'The usual rule by height for this measure, moved as far as what was measured beside it asks. A guess: measure it.',
  'body.rule.shoulder-width':
    'Both shoulders laid level, and the width of the neck between them (a geometric guess within about 2 cm).',
  'body.rule.shoulder':
    'Half of what is left of the breadth of the shoulders beside the neck, by height (US survey, Snyder 1977): a guess within about 1 cm.',
  'body.rule.back-width':
    '0.415 of the chest girth, as in a published draft for a child. No survey has measured it.',
  'body.rule.front-width':
    '0.385 of the chest girth, as in a published draft for a child. No survey has measured it.',
  'body.rule.neck-base':
    '1.07 of the girth of the middle of the neck (US survey, Snyder 1977), as in a published draft for a child.',
  'body.rule.back-length':
    "A straight line by height through the back lengths of US children's sizes, which are given from memory. Measure it.",
  'body.rule.scye-depth':
    'Half the back length less 3/4 cm (5/16 in), as in a published draft for a child. No survey has measured it.',
  'body.rule.waist-height':
    'The height of the navel among girls of this height (US survey, Snyder 1977) and 3 cm (1 3/16 in) more, which is a guess.',
} as const;
