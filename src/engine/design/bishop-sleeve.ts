import type { Half } from '../block/index.ts';
import { linePath, pathAt, pathSlice } from '../geometry/index.ts';
import { type Edge, edgeLength, edgeOf, type Join, type Piece, replaceEdge } from '../piece/index.ts';
import { armBandPiece } from './arm-band-piece.ts';
import { armEdgeLength } from './armhole-ring.ts';
import { bandOn, elasticIn, SLEEVE_END_WORDS } from './sleeve-ends.ts';
import { plainBelowNotch, setSleeve } from './sleeve-seams.ts';
import { spreadSleeve } from './spread-sleeve.ts';
import {
  COMMON_PRACTICE,
  cannot,
  choiceParam,
  defineStep,
  done,
  lengthParam,
  ratioParam,
  type StepContext,
} from './step.ts';
import { STRAIGHT_SLEEVE_WORDS, sleeveWidthParams, straightSleeve } from './straight-sleeve.ts';

/** Where the slit stands: a quarter of the end from the underarm seam, on the back (common practice, no source). */
const SLIT_FROM_BACK = 0.25;

/** Cut width of the strip that binds the slit, mm (common practice, no source). */
const SLIT_BINDING = 30;

/** Diameter of a shirt button, mm (common practice, no source); told to the cautions about small parts. */
const CUFF_BUTTON = 11;

/** Enough to be a fifth wider at the end than at the arm, 1.8 at least. */
const widerThanArm = ({ body }: StepContext): number => {
  const [arm, wrist] = [body.values.upperArmGirth.mm + 40, body.values.wristGirth.mm + 25];
  return Math.min(3, Math.max(1.8, (1.2 * arm) / wrist));
};

/** A sleeve to the wrist, wider toward its end, gathered into a cuff or drawn together by elastic. */
export const bishopSleeve = defineStep({
  id: 'bishop-sleeve',
  stage: 'set-in',
  kind: 'sleeve',
  params: {
    length: lengthParam(
      ({ body }) => body.values.armLength.mm,
      ({ body }) => [body.values.armLength.mm * 0.7, body.values.armLength.mm + 40],
      'the arm from the shoulder tip to the wrist',
    ),
    blouse: lengthParam(
      () => 15,
      () => [0, 60],
      `cloth that falls over the cuff; ${COMMON_PRACTICE}`,
    ),
    fullness: ratioParam(
      widerThanArm,
      [1.3, 3],
      'gathers in medium cloth 2, in heavy 1.5 (a blog, after D. C. Lo); a fifth wider than at the arm at least (common practice)',
    ),
    ...sleeveWidthParams,
    end: choiceParam(['cuff', 'elastic'], 'cuff', COMMON_PRACTICE),
    cuffEase: lengthParam(
      () => 25,
      () => [15, 50],
      COMMON_PRACTICE,
    ),
    cuffDepth: lengthParam(
      () => 30,
      () => [15, 70],
      COMMON_PRACTICE,
    ),
    underlap: lengthParam(
      () => 20,
      () => [15, 30],
      `room for the button; ${COMMON_PRACTICE}`,
    ),
    slit: lengthParam(
      () => 60,
      () => [30, 100],
      COMMON_PRACTICE,
    ),
    elasticEase: lengthParam(
      () => 5,
      () => [0, 10],
      'elastic: the arm and 0 to 1 cm (common practice, no source)',
    ),
  },
  words: {
    title: 'Bishop sleeve',
    about: 'A long sleeve, wider toward the wrist and gathered there.',
    length: 'Length from the shoulder tip, with its cuff',
    blouse: 'Longer by what falls over the cuff',
    fullness: 'End of the sleeve, times the cuff or the elastic',
    capEase: 'Cap ease',
    armEase: 'Ease at the upper arm',
    end: 'End of the sleeve',
    'end.cuff': 'Cuff with a slit',
    'end.elastic': 'Elastic in a casing',
    cuffEase: 'Cuff, ease round the wrist',
    cuffDepth: 'Cuff, finished depth',
    underlap: 'Cuff, underlap for the button',
    slit: 'Length of the slit',
    elasticEase: 'Elastic, longer than the wrist is round by',
    ...STRAIGHT_SLEEVE_WORDS,
    ...SLEEVE_END_WORDS,
    'piece.slit': 'Binding of the sleeve slit',
    'too-fanned': 'The sleeve would fan out too far. Take less fullness or a longer sleeve.',
    'no-slit': 'A slit of {slit} is longer than the sleeve below its cap. Make it shorter.',
    'draw.notches':
      'Mark a notch on the cap {front} from the underarm in front and {back} behind. Between the notches rule eight lines straight down to the hem and cut along them.',
    'draw.spread':
      'Spread the strips evenly at the hem until it measures {hem}; they stay together at the cap. Draw round the whole; the hem leaves both underarm seams square.',
    'draw.slit':
      'On the back, a quarter of the hem from the underarm seam, mark the slit {slit} up into the sleeve. Bind it with a strip {length} long and {depth} wide. The cuff closes over its underlap with a button or a press stud; sew it on so that a child can not pull it off.',
  },
  apply: (work, values) => {
    const { garment, body, bench } = work;
    const wrist = body.values.wristGirth.mm;
    const hasCuff = values.end === 'cuff';
    const drawn = bench.rounded(wrist + (hasCuff ? values.cuffEase : values.elasticEase));
    const cuffDepth = hasCuff ? bench.rounded(values.cuffDepth) : 0;
    const beyond = cuffDepth - bench.rounded(values.blouse);
    const length = bench.rounded(values.length) - beyond;
    const capEase = bench.rounded(values.capEase);
    const drafted = straightSleeve(work, 'bishop-sleeve', {
      armEase: values.armEase,
      capEase,
      length,
      beyond,
    });
    if (!drafted.ok) return drafted.refusal;
    const armholes = {
      front: armEdgeLength(garment, 'front', 'armhole'),
      back: armEdgeLength(garment, 'back', 'armhole'),
    };
    const plain = { front: plainBelowNotch(armholes.front), back: plainBelowNotch(armholes.back) };
    const hem = bench.rounded(drawn * values.fullness);
    const spread = spreadSleeve(drafted.piece, { top: 0, hem: hem - drafted.width, raise: 0, plain });
    if (!spread.ok) return cannot('bishop-sleeve.too-fanned');
    const slit = bench.rounded(values.slit);
    if (hasCuff && slit > edgeLength(spread.piece, 'underarm-back') - 10) {
      return cannot('bishop-sleeve.no-slit', { slit: { mm: slit } });
    }
    bench.tell('bishop-sleeve.draw.notches', { front: { mm: plain.front }, back: { mm: plain.back } });
    bench.tell(
      'bishop-sleeve.draw.spread',
      { hem: { mm: spread.hemLength } },
      { lines: spread.piece.edges.map((edge) => edge.path) },
    );
    const join = (half: Half): Join => ({
      kind: 'eased',
      ease: 2 * (edgeLength(spread.piece, `cap-${half}`) - armholes[half]),
    });
    if (!hasCuff) {
      return done(setSleeve(garment, elasticIn(spread.piece, bench, 'bishop-sleeve', drawn), join));
    }
    const sleeve = withSlit(spread.piece, slit);
    const binding = armBandPiece({
      id: 'sleeve-slit',
      title: { key: 'bishop-sleeve.piece.slit', values: {} },
      length: 2 * slit,
      overlap: 0,
      depth: SLIT_BINDING,
      top: 'attach',
      ends: 'join',
      foot: 'attach',
    });
    bench.tell(
      'bishop-sleeve.draw.slit',
      { slit: { mm: slit }, length: { mm: 2 * slit }, depth: { mm: SLIT_BINDING } },
      { lines: sleeve.markings.map((marking) => marking.path) },
    );
    const cuffed = bandOn(setSleeve(garment, sleeve, join), bench, {
      step: 'bishop-sleeve',
      kind: 'cuff',
      length: drawn,
      overlap: bench.rounded(values.underlap),
      depth: cuffDepth,
      hem: [
        { piece: 'sleeve', edge: 'sleeve-edge-back', times: 2 },
        { piece: 'sleeve', edge: 'sleeve-edge', times: 2 },
      ],
    });
    return done({
      ...cuffed,
      pieces: [...cuffed.pieces, binding],
      trims: [
        ...cuffed.trims,
        { kind: 'buttons', place: 'sleeve', diameter: CUFF_BUTTON, pieces: ['sleeve-cuff'] },
      ],
      seams: [
        ...cuffed.seams,
        {
          id: 'sleeve-slit-binding',
          name: 'placket',
          a: [{ piece: 'sleeve-slit', edge: 'attach', times: 2 }],
          b: [{ piece: 'sleeve-slit', edge: 'foot', times: 2, reversed: true }],
          join: { kind: 'flat' },
          smoothStart: false,
          smoothEnd: false,
        },
      ],
    });
  },
});

/** Cuts the sleeve's end in two where the slit begins; the cuff starts and ends there. */
function withSlit(sleeve: Piece, slit: number): Piece {
  const hem = edgeOf(sleeve, 'sleeve-edge').path;
  const length = edgeLength(sleeve, 'sleeve-edge');
  const at = length * (1 - SLIT_FROM_BACK);
  const foot = pathAt(hem, at).point;
  const part = (name: string, from: number, to: number): Edge => ({
    name,
    kind: 'attach',
    path: pathSlice(hem, from, to),
  });
  const cut = replaceEdge(sleeve, 'sleeve-edge', [
    part('sleeve-edge', 0, at),
    part('sleeve-edge-back', at, length),
  ]);
  return {
    ...cut,
    markings: [
      ...cut.markings,
      { kind: 'closing-end', path: linePath(foot, { x: foot.x, y: foot.y - slit }) },
    ],
  };
}
