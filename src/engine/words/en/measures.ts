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
} as const;
