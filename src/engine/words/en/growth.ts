/** English sentences about growth references, growing to the day, size labels and starting bodies. */
export const growth = {
  'growth.problem.born-after-measured':
    '{child}: the birthday, {born}, lies after the day of measuring, {measured}. Check both days.',
  'growth.problem.born-in-future': '{child}: the birthday, {born}, is still to come. Check the year.',
  'growth.problem.measured-in-future':
    '{child}: the day of measuring, {measured}, is still to come. Check the year. Until then it is taken as it is written.',
  'growth.problem.event-passed':
    '{child}: the day of the event, {event}, has passed. Check the year. Until then it is taken as it is written.',
  'growth.problem.event-before-measured':
    '{child}: the event, {event}, comes before the day of measuring, {measured}. The measurements are taken as they are; check both days.',
  'growth.problem.too-old':
    '{child}: the growth references here end at {most} months. The measurements are taken as they are; measure again close to the day.',
  'growth.problem.ends-before-event':
    '{child}: the growth references here end at {most} months. Growth is counted up to that age only; measure again close to the day.',
  'growth.problem.weeks-early':
    '{child}: {found} weeks early is outside 0 to {most}. Write how many weeks before the due date the child was born; it is left out until then.',
  'growth.problem.height-impossible':
    '{child}: no child of {age} months is {value} tall. The middle height is {middle}, and all but a few lie between {least} and {most}. Measure again, and check the unit and the birthday.',
  'growth.problem.height-other-unit':
    '{child}: no child of {age} months is {value} tall, but the same number in {words} would fit ({meant}). Write the unit after the number.',
  'growth.problem.weight-impossible':
    '{child}: no child of {age} months weighs {value} kg. The middle weight is {middle} kg. Weigh again, and check the unit and the birthday. The weight is left out until then.',
  'growth.problem.weight-in-pounds':
    '{child}: {value} kg is far too heavy at {age} months, but {value} lb ({meant} kg) would fit. If it was weighed in pounds, write lb after the number. The weight is left out until then.',
  'growth.problem.weight-in-kilos':
    '{child}: {value} lb is far too light at {age} months, but {value} kg would fit. If it was weighed in kilos, write kg after the number. The weight is left out until then.',
  'growth.problem.unlikely-height':
    '{child}: {value} is unusual at {age} months; 998 children of 1000 lie between {least} and {most}. Measure again, and check the birthday.',
  'growth.problem.far-ahead':
    '{child}: the event is {months} months after the measuring. Children were followed over 12 months at most; what lies beyond is a guess. Measure again nearer the day.',
  'growth.problem.corrected':
    '{child}: born {weeks} weeks early; up to two years the age is counted from the day on which the birth was due.',
  'growth.problem.stands-up':
    '{child}: measured lying, and past two years at the event: the height then is that of the standing child, 0.7 cm (1/4 in) less.',
  'growth.problem.size-more':
    '{child}: drafted one size more than on the day, size {size}, for a height of {height}; {child} reaches it about {day}.',
  'growth.problem.size-more-too-far':
    '{child}: one size more, {size}, is drawn for a height of {height}, which {child} does not reach within two years of the day. The dress is drafted for the day.',
  'growth.problem.size-more-no-height':
    '{child}: one size more goes by the height. Measure the height; until then the dress is drafted for the day.',
  'growth.problem.nothing-measured':
    '{child}: nothing was measured that could be grown. Measure the height and the chest, and write the day.',

  'order.file.growth': 'where the child stands, what it will measure on the day, and growth charts',
  'order.not-a-weight':
    '{found} is not a weight. Write a number and its unit, for instance 18.5 kg or 41 lb.',
  'order.grown':
    '{child}: drafted for {event}, {days} days after the measuring on {measured}. What was measured is grown to that day; the table of measurements says how.',
  'order.grown-size-more':
    '{child}: what was measured on {measured} is grown on to one size more than on {event}; the table of measurements says how.',
  'order.grown.value': 'Grown from {measured}, give or take {band}: {how}',

  'growth.unit.inches': 'inches',
  'growth.unit.centimetres': 'centimetres',
  'growth.unit.millimetres': 'millimetres',

  'growth.from.measured': 'measured',
  'growth.from.keeps-place': 'keeps its place in {reference}',
  'growth.from.to-the-middle': 'drawn back towards the middle, as the youngest go, in {reference}',
  'growth.from.with-height': 'in step with the height, as the averages of the survey go',
  'growth.from.held': 'taken as measured, for want of anything to grow it by',

  'growth.reference.who-height': 'height by age (WHO 2006 and 2007)',
  'growth.reference.cdc-height': 'height by age (CDC 2000; WHO 2006 under two years)',
  'growth.reference.who-weight': 'weight by age (WHO 2006 and 2007)',
  'growth.reference.cdc-weight': 'weight by age (CDC 2000; WHO 2006 under two years)',
  'growth.reference.who-bmi': 'weight for height by age (BMI, WHO 2006 and 2007)',
  'growth.reference.who-head': 'head girth by age (WHO 2006)',
  'growth.reference.german-head': 'head girth by age (Germany, KiGGS 2003-06)',
  'growth.reference.who-arm': 'upper arm girth by age (WHO 2006)',
  'growth.reference.german-waist': 'waist girth by age (Germany, LIFE Child 2019)',
  'growth.reference.dutch-waist': 'waist girth by age (Netherlands 1997)',
  'growth.reference.us-waist': 'waist girth by age (United States, NHANES III 1988-94)',
  'growth.reference.german-hip': 'hip girth by age (Germany, LIFE Child 2019)',
  'growth.reference.dutch-hip': 'hip girth by age (Netherlands 1997)',
  'growth.reference.mexican-neck': 'neck girth by age (Mexico 2021)',

  'growth.page.name': 'Growth to the day',
  'growth.chart.heading': 'Growth charts',
  'growth.chart.about':
    'Thin lines: 3, 15, 50, 85 and 97 of 100 children of that age lie below. Dots: as measured. Ring and bar: the forecast for the day, and where nine of ten such children will be.',
  'growth.chart.age': 'age in months',

  'growth.limits.girths':
    'No study has followed the girths of children: that a girth keeps its place is a thought, and its give-or-take is worked out from that of height and weight. The references measured their own children, in their own way.',

  'growth.report.no-days':
    '{child}: growth can be told from the birthday and the day of measuring. Write both, for instance "born": "2021-03-04" and "measured": "2027-01-12".',
  'growth.report.ages': 'measured on {measured} at {age} months; the day is {event}, {days} days later',
  'growth.report.ages-before':
    'measured on {measured} at {age} months; the day, {event}, lies {days} days before that',
  'growth.report.stands': 'Where {child} stood on that day, of 100 children of the age:',
  'growth.report.centile': '{value}, more than {centile} of 100; {reference}',
  'growth.report.lowest': '{value}, less than 99 of 100; {reference}',
  'growth.report.then': 'On the day, as forecast; nine children of ten lie within the give or take:',
  'growth.report.value': '{value}, give or take {band}; {how}',
  'growth.report.value-kg': '{value} kg, give or take {band} kg; {how}',
  'growth.report.weight': 'weight',
  'growth.report.kg': '{value} kg',
  'growth.report.advice': 'Advice:',
  'growth.report.size': 'Sizes on the day:',
  'growth.report.size-now': 'Sizes as measured:',

  'growth.advice.as-measured':
    'The dress is drafted as {child} was measured. It can be drafted for the day instead, or one size more (in an order file: "growth": "to-the-day" or "one-size-more").',
  'growth.advice.hem':
    'Turn the hem up {hem} deeper than it hangs, so that it can be let down if {child} grows faster than forecast.',
  'growth.advice.hem-as-measured':
    'Turn the hem up {hem} deeper than it hangs: {child} will grow before the day, and may grow faster than forecast.',
  'growth.advice.let-out':
    'Leave {side} more in each of the four side-seam allowances: let out, that adds {girth} round the chest.',
  'growth.advice.measure-again.on-day':
    'Measure {child} again on {day} or later: from then on the forecast of the chest is sure enough for the ease of this dress, {ease}.',
  'growth.advice.measure-again.close-enough':
    '{child} was measured close enough to the day: the forecast of the chest stays within the ease of this dress, {ease}.',
  'growth.advice.measure-again.last-fitting':
    'No forecast of the chest is sure enough for the ease of this dress, {ease}. Plan a last fitting on {day}.',
  'growth.advice.one-size-more':
    'One size more, {size}, is drawn for a height of {height}: {chest} wider in the chest than forecast. {child} reaches that height about {day}.',
  'growth.advice.one-size-more-late':
    'One size more, {size}, is drawn for a height of {height}. {child} does not reach that height within two years of the day.',

  'growth.label.height': 'By height: size {size} ({label}).',
  'growth.label.age': 'By height: size {size} ({label}), the middle height at {age} months.',
  'growth.label.differences': 'Against the average of that height: chest {chest}, waist {waist}, hip {hip}.',
  'growth.label.more': '{by} more',
  'growth.label.less': '{by} less',
  'growth.label.us':
    'US label size by height {byHeight}, by chest {byChest}. A label says what a size is sold for, 4 to 6 cm more in the chest than measured children: for choosing ready clothes, never for drafting.',

  'start.from.given': 'as given',
  'start.from.age': 'the middle of children of this age',
  'start.from.height': 'the average of children of this height (US survey, Snyder 1977)',
  'start.from.build': 'the average of children of this height and weight (US survey, Snyder 1977)',
  'start.from.estimated': 'estimated, there is no open data: please measure it',
  'start.value': '{value}, give or take {spread}; {from}',
  'start.band': 'Nine children of ten lie within the give or take.',
  'start.too-little': 'Write --age in months or --height, for instance --age 72 or --height "116 cm".',
  'start.not-a-number': '{option}: {found} is not a number above nothing.',
  'start.not-a-length':
    '{option}: {found} is not a length. Write a number and its unit, for instance "116 cm" or "46 in".',
  'start.not-a-weight':
    '{option}: {found} is not a weight. Write a number and its unit, for instance "21 kg" or "46 lb".',
  'start.weight-beyond': 'No child of {height} weighs {weight}. Check the numbers and their units.',
  'start.beyond':
    'There are averages from birth to {most} months, and for heights of {shortest} to {tallest}.',
} as const;
