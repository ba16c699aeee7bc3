/** English words of the measuring guide, growth and averages on the page. */
export const pageMeasures = {
  'page.did.weight': 'weight of {child}',
  'page.did.early': 'weeks early: {child}',
  'page.did.growth': 'growth to the day',
  'page.did.charts': 'growth charts',

  'page.measures.source': 'Where this number comes from:',
  'page.measures.band': 'Nine girls of ten lie from {least} to {most}.',
  'page.measures.letter': '{letter}: {name}.',
  'page.measures.weight.about': 'Helps most to fill in girths. Write kg or lb after the number.',
  'page.measures.weight.unit': '{number} {unit}',
  'page.measures.early': 'Born early, by how many weeks',
  'page.measures.early.unit': 'weeks',
  'page.measures.early.about':
    'Up to two years the age is then counted from the day on which the birth was due.',
  'page.measures.sheet': 'Measuring sheet to print',
  'page.measures.sheet.about':
    'Where the tape runs for every measure, how to hold a child that wriggles, and blanks in both units.',
  'page.measures.sheet.made': 'The sheet is saved as {file}.',
  'page.measures.sheet.open': 'Open it',

  'page.paper.what.measuring': 'Measuring sheet',

  'page.growth': 'Growth to the day',
  'page.growth.no-days':
    'Write the birthday and the day of measuring: then it is told what {child} will measure on the day.',
  'page.growth.draft': 'Draft the dresses of this order',
  'page.growth.draft.as-measured': 'as measured',
  'page.growth.draft.to-the-day': 'grown to the day',
  'page.growth.draft.one-size-more': 'one size more',
  'page.growth.charts': 'Growth charts first from',
  'page.growth.charts.who': 'the WHO',
  'page.growth.charts.us': 'the US (CDC)',
  'page.growth.chart': '{title}. {days} {forecast}',
  'page.growth.chart.day': 'At {age} months: {value}.',
  'page.growth.chart.forecast':
    'On the day, at {age} months, as forecast: {value}; nine children of ten lie between {least} and {most}.',
  'page.growth.chart.none': 'There is no forecast of it.',
  'page.growth.limits': 'How sure this is',

  'page.average': 'Average children to compare',
  'page.average.by': 'Children of the same',
  'page.average.by.age': 'age',
  'page.average.by.height': 'height',
  'page.average.by.build': 'height and weight',
  'page.average.own': '{child}: {value}',
  'page.average.needs.age': 'Write the birthday first.',
  'page.average.needs.height': 'Measure the height first.',
  'page.average.needs.build': 'Measure the height and the weight first.',
  'page.average.about':
    'Averages of measured {who}. They draw nothing: what is filled in above goes by the girls and by all that is known of {child}.',
  'page.average.girls': 'girls',
  'page.average.boys': 'boys',
} as const;
