import type { Half } from '../block/index.ts';
import { pathAt } from '../geometry/index.ts';
import { edgeLength, edgeOf, type Join, type Piece } from '../piece/index.ts';
import { armEdgeLength } from './armhole-ring.ts';
import { HALVES } from './bodice.ts';
import { bandOn, elasticIn, SLEEVE_END_WORDS, sleeveEdgeAs } from './sleeve-ends.ts';
import { plainBelowNotch, setSleeve } from './sleeve-seams.ts';
import { spreadSleeve } from './spread-sleeve.ts';
import { COMMON_PRACTICE, cannot, choiceParam, defineStep, done, lengthParam, ratioParam } from './step.ts';
import { STRAIGHT_SLEEVE_WORDS, sleeveWidthParams, straightSleeve } from './straight-sleeve.ts';

/** Added to the length where the hem is gathered, so that the cloth falls over the band (common practice, no source), mm. */
const BLOUSE = 15;

/** A short sleeve, slashed and spread, gathered at the cap, at its end, or at both. */
export const puffSleeve = defineStep({
  id: 'puff-sleeve',
  stage: 'set-in',
  kind: 'sleeve',
  params: {
    places: choiceParam(['top', 'hem', 'both'], 'both', COMMON_PRACTICE),
    length: lengthParam(
      ({ body }) => Math.max(body.values.armLength.mm * 0.42, 115),
      ({ body }) => [50, body.values.armLength.mm + 20],
      'short sleeve, about two fifths of the arm, so that the puff has room below the cap (common practice, no source)',
    ),
    fullness: ratioParam(
      () => 1.75,
      [1.5, 2],
      'puff sleeve: spread 50-100 % between the notches (common practice, no source)',
    ),
    raise: lengthParam(
      () => 25,
      () => [15, 40],
      'puff sleeve: the cap raised 1.5-4 cm (common practice, no source)',
    ),
    ...sleeveWidthParams,
    end: choiceParam(['band', 'elastic'], 'band', COMMON_PRACTICE),
    bandEase: lengthParam(
      () => 30,
      () => [25, 40],
      'sleeve hem on the bare arm 2.5-4 cm (common practice, no source)',
    ),
    bandDepth: lengthParam(
      () => 20,
      () => [10, 60],
      COMMON_PRACTICE,
    ),
    elasticEase: lengthParam(
      () => 5,
      () => [0, 10],
      'elastic: the arm and 0 to 1 cm (common practice, no source)',
    ),
  },
  words: {
    title: 'Puff sleeve',
    about: 'A short full sleeve, gathered at the cap, at its end or at both.',
    places: 'Gathered where',
    'places.top': 'At the cap only',
    'places.hem': 'At the end only',
    'places.both': 'At the cap and at the end',
    length: 'Length from the shoulder tip, with its band',
    fullness: 'Cloth, times the width between the notches',
    raise: 'Cap raised by',
    capEase: 'Gathered at the end only: cap ease',
    armEase: 'Ease at the upper arm, before spreading',
    end: 'End of the sleeve',
    'end.band': 'Band',
    'end.elastic': 'Elastic in a casing',
    bandEase: 'Band, ease round the arm',
    bandDepth: 'Band, finished depth',
    elasticEase: 'Elastic, longer than the arm is round by',
    ...STRAIGHT_SLEEVE_WORDS,
    ...SLEEVE_END_WORDS,
    'too-fanned':
      'The sleeve would fan out too far for its length. Take less fullness, a longer sleeve, or gather it at the cap and at the end.',
    'draw.notches':
      'Mark a notch on the cap {front} from the underarm in front and {back} behind. Between the notches rule eight lines straight down to the hem and cut along them.',
    'draw.spread.top':
      'Spread the strips evenly at the cap until it is {by} wider between the notches; they stay together at the hem.',
    'draw.spread.hem':
      'Spread the strips evenly at the hem until it is {by} wider; they stay together at the cap.',
    'draw.spread.both': 'Move the strips apart evenly until the sleeve is {by} wider.',
    'draw.raise':
      'Raise the top of the cap by {raise} and draw the cap from notch to notch. It is gathered between the notches, from {gathered} to {sewn}.',
    'draw.outline': 'Draw round the whole; the hem leaves both underarm seams square.',
  },
  apply: (work, values) => {
    const { garment, body, bench } = work;
    const { places } = values;
    const [gatherCap, gatherHem] = [places !== 'hem', places !== 'top'];
    const bandDepth = gatherHem && values.end === 'band' ? bench.rounded(values.bandDepth) : 0;
    const capEase = gatherCap ? 0 : bench.rounded(values.capEase);
    const beyond = bandDepth - (gatherHem ? bench.rounded(BLOUSE) : 0);
    const drafted = straightSleeve(work, 'puff-sleeve', {
      armEase: values.armEase,
      capEase,
      length: bench.rounded(values.length) - beyond,
      beyond,
    });
    if (!drafted.ok) return drafted.refusal;
    const armholes = {
      front: armEdgeLength(garment, 'front', 'armhole'),
      back: armEdgeLength(garment, 'back', 'armhole'),
    };
    const plain = { front: plainBelowNotch(armholes.front), back: plainBelowNotch(armholes.back) };
    const by = bench.rounded(widthBetween(drafted.piece, plain) * (values.fullness - 1));
    const raise = bench.rounded(values.raise);
    const spread = spreadSleeve(drafted.piece, {
      top: gatherCap ? by : 0,
      hem: gatherHem ? by : 0,
      raise,
      plain,
    });
    if (!spread.ok) return cannot('puff-sleeve.too-fanned');
    bench.tell('puff-sleeve.draw.notches', { front: { mm: plain.front }, back: { mm: plain.back } });
    bench.tell(`puff-sleeve.draw.spread.${places}`, { by: { mm: by } });
    if (gatherCap) {
      const sewn = armholes.front + armholes.back - plain.front - plain.back;
      const gathered = spread.gathered.front + spread.gathered.back;
      bench.tell('puff-sleeve.draw.raise', {
        raise: { mm: raise },
        gathered: { mm: gathered },
        sewn: { mm: sewn },
      });
    }
    bench.tell('puff-sleeve.draw.outline', {}, { lines: spread.piece.edges.map((edge) => edge.path) });
    const join = (half: Half): Join =>
      gatherCap
        ? {
            kind: 'gathered',
            ratio: spread.gathered[half] / (armholes[half] - plain[half]),
            plainEnd: plain[half],
          }
        : { kind: 'eased', ease: 2 * (edgeLength(spread.piece, `cap-${half}`) - armholes[half]) };
    const arm = body.values.upperArmGirth.mm;
    if (!gatherHem) {
      return done(setSleeve(garment, sleeveEdgeAs(spread.piece, 'curved-sleeve-hem'), join));
    }
    if (values.end === 'elastic') {
      const elastic = bench.rounded(arm + values.elasticEase);
      return done(setSleeve(garment, elasticIn(spread.piece, bench, 'puff-sleeve', elastic), join));
    }
    const dress = setSleeve(garment, sleeveEdgeAs(spread.piece, 'attach'), join);
    return done(
      bandOn(dress, bench, {
        step: 'puff-sleeve',
        kind: 'band',
        length: bench.rounded(arm + values.bandEase),
        overlap: 0,
        depth: bandDepth,
        hem: [{ piece: 'sleeve', edge: 'sleeve-edge', times: 2, reversed: true }],
      }),
    );
  },
});

/** Straight width of a sleeve between the notches of its cap. */
function widthBetween(sleeve: Piece, plain: Readonly<Record<Half, number>>): number {
  return HALVES.reduce((sum, half) => {
    const at = half === 'front' ? edgeLength(sleeve, 'cap-front') - plain.front : plain.back;
    return sum + Math.abs(pathAt(edgeOf(sleeve, `cap-${half}`).path, at).point.x);
  }, 0);
}
