import { draftSleeve } from '../block/index.ts';
import { edgeLength, type Piece } from '../piece/index.ts';
import { armEdgeLength, openArmEdge } from './armhole-ring.ts';
import { setSleeve } from './sleeve-seams.ts';
import { cannot, defineStep, done, lengthParam } from './step.ts';

/** A straight sleeve set into the armhole, its cap a little longer than the armhole. */
export const setInSleeve = defineStep({
  id: 'set-in-sleeve',
  stage: 'set-in',
  kind: 'sleeve',
  params: {
    length: lengthParam(
      ({ body }) => Math.max(body.values.armLength.mm * 0.35, 100),
      ({ body }) => [50, body.values.armLength.mm + 20],
      'short sleeve, about a third of the arm, and 10 cm at least so that it clears its cap (common practice, no source)',
    ),
    capEase: lengthParam(
      ({ body }) => ((body.ageMonths ?? 72) < 72 ? 6 : 12),
      () => [0, 25],
      'woven cloth: 0-1.5 cm in small sizes, up to 2 cm at 10-12 (common practice); 1 in or more is gathers',
    ),
    armEase: lengthParam(
      () => 40,
      () => [25, 80],
      'sleeve hem on the bare arm 2.5-4 cm (common practice); the adult rule of 2 in is the upper end for a child',
    ),
  },
  words: {
    title: 'Set-in sleeve',
    about: 'A straight sleeve with a cap that fits the armhole.',
    length: 'Length from the shoulder tip',
    capEase: 'Cap ease',
    armEase: 'Ease at the upper arm',
    'no-armhole':
      'A set-in sleeve needs an armhole, and the drop shoulder has taken it away. Choose one of the two.',
    'too-wide':
      'A sleeve {width} wide is too wide for this armhole. {limit} is the most: give less ease at the arm.',
    'too-short': 'The sleeve is shorter than its cap. It must be longer than {limit}.',
    'piece.sleeve': 'Sleeve',
    draw: 'Sleeve',
    'draw.cap':
      'Rule a line {width} long for the foot of the cap and a line square to it. The top of the cap lies {cap} above the line.',
    'draw.curve':
      'Draw the cap level at its top and at its two ends. Measure it: {front} in front and {back} behind.',
    'draw.length': 'From the top of the cap measure down {length} and square the hem across.',
  },
  apply: ({ garment, body, bench }, values) => {
    if (openArmEdge(garment) !== 'armhole') return cannot('set-in-sleeve.no-armhole');
    const frontArmhole = armEdgeLength(garment, 'front', 'armhole');
    const backArmhole = armEdgeLength(garment, 'back', 'armhole');
    const width = bench.rounded(body.values.upperArmGirth.mm + values.armEase);
    const length = bench.rounded(values.length);
    const capEase = bench.rounded(values.capEase);
    const drafted = draftSleeve({ frontArmhole, backArmhole, capEase, width, length });
    if (!drafted.ok) {
      return cannot(`set-in-sleeve.${drafted.code}`, { width: { mm: width }, limit: { mm: drafted.limit } });
    }
    const sleeve: Piece = { ...drafted.piece, title: { key: 'set-in-sleeve.piece.sleeve', values: {} } };
    bench.part({ key: 'set-in-sleeve.draw', values: {} });
    bench.tell('set-in-sleeve.draw.cap', { width: { mm: width }, cap: { mm: drafted.capHeight } });
    const cap = sleeve.edges.filter((edge) => edge.kind === 'cap').map((edge) => edge.path);
    const lengths = {
      front: { mm: edgeLength(sleeve, 'cap-front') },
      back: { mm: edgeLength(sleeve, 'cap-back') },
    };
    bench.tell('set-in-sleeve.draw.curve', lengths, { lines: cap });
    bench.tell(
      'set-in-sleeve.draw.length',
      { length: { mm: length } },
      { lines: sleeve.edges.filter((edge) => edge.kind !== 'cap').map((edge) => edge.path) },
    );
    return done(setSleeve(garment, sleeve, () => ({ kind: 'eased', ease: capEase })));
  },
});
