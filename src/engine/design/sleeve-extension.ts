import { curveBetween, linePath, type Point, pathEndTangent, rotate } from '../geometry/index.ts';
import { grainThrough, type Piece } from '../piece/index.ts';
import { openArm } from './arm-opening.ts';
import { armEdgeLength, armRing } from './armhole-ring.ts';
import { armRound } from './edge-strip.ts';
import { COMMON_PRACTICE, cannot, defineStep, done, lengthParam, type StepContext } from './step.ts';

/** A straight piece of sleeve, sewn to the straight edge of a drop shoulder and closed under the arm. */
export const sleeveExtension = defineStep({
  id: 'sleeve-extension',
  stage: 'set-in',
  kind: 'arm-edge',
  params: {
    extension: lengthParam(
      ({ body }) => Math.max(body.values.armLength.mm * 0.3, 60),
      ({ body }) => [20, body.values.armLength.mm],
      COMMON_PRACTICE,
    ),
    hemEase: lengthParam(
      (c) => Math.min(60, Math.max(25, mostEase(c))),
      (c) => [25, Math.max(25, mostEase(c))],
      'sleeve hem on the bare arm 2.5-4 cm (common practice); a loose sleeve takes more',
    ),
  },
  words: {
    title: 'Sleeve extension',
    about: 'A straight piece of sleeve, sewn to the straight edge of a drop shoulder.',
    extension: 'Length from the edge of the drop shoulder',
    hemEase: 'Ease at the hem, round the upper arm',
    'no-edge':
      'A sleeve extension needs the straight edge of a drop shoulder. Choose a drop shoulder with the straight finish.',
    'too-steep':
      'The sleeve would go too steeply from {edge} at the shoulder edge to {hem} at its hem. Make it longer, or bring its hem nearer to the edge.',
    'piece.sleeve': 'Sleeve extension',
    draw: 'Sleeve extension',
    'draw.top':
      'Rule a line {edge} long for the edge of the drop shoulder, front and back in one: {front} of it is the front.',
    'draw.sides':
      'Square down {length} from its middle and rule the hem {hem} wide, half to each side. Rule both underarm seams.',
    'draw.hem': 'Draw the hem so that it leaves both underarm seams square.',
  },
  apply: ({ garment, body, bench }, values) => {
    if (openArm(garment) !== 'sleeve-edge' || armRound(garment) === 0) {
      return cannot('sleeve-extension.no-edge');
    }
    const front = armEdgeLength(garment, 'front', 'sleeve-edge');
    const edge = front + armEdgeLength(garment, 'back', 'sleeve-edge');
    const hem = bench.rounded(body.values.upperArmGirth.mm + values.hemEase);
    const length = bench.rounded(values.extension);
    if (isTooSteep(edge, hem, length)) {
      return cannot('sleeve-extension.too-steep', { edge: { mm: edge }, hem: { mm: hem } });
    }
    const piece = drawExtension(edge, hem, length);
    bench.part({ key: 'sleeve-extension.draw', values: {} });
    const path = (name: string) => piece.edges.filter((e) => e.name === name).map((e) => e.path);
    bench.tell(
      'sleeve-extension.draw.top',
      { edge: { mm: edge }, front: { mm: front } },
      { lines: path('cap') },
    );
    bench.tell(
      'sleeve-extension.draw.sides',
      { length: { mm: length }, hem: { mm: hem } },
      { lines: [...path('underarm-front'), ...path('underarm-back')] },
    );
    bench.tell('sleeve-extension.draw.hem', {}, { lines: path('sleeve-edge') });
    return done({
      ...garment,
      pieces: [...garment.pieces, piece],
      seams: [
        ...garment.seams,
        {
          id: 'sleeve-cap',
          name: 'sleeve-cap',
          a: armRing(garment, 'sleeve-edge'),
          b: [{ piece: piece.id, edge: 'cap', times: 2 }],
          join: { kind: 'flat' },
          smoothStart: false,
          smoothEnd: false,
        },
        {
          id: 'sleeve-underarm',
          name: 'sleeve-underarm',
          a: [{ piece: piece.id, edge: 'underarm-back', times: 2 }],
          b: [{ piece: piece.id, edge: 'underarm-front', times: 2, reversed: true }],
          join: { kind: 'flat' },
          smoothStart: false,
          smoothEnd: true,
        },
      ],
    });
  },
});

/** Steepest underarm seam, to the side for each mm down; and how far the hem may bow for it, as a share of the length. */
const STEEPEST = 0.5;
const MOST_BOW = 0.5;

function isTooSteep(edge: number, hem: number, length: number): boolean {
  const slope = Math.abs(edge - hem) / 2 / length;
  return slope > STEEPEST || (hem / 2) * Math.tan(Math.atan(slope) / 2) > MOST_BOW * length;
}

/** The hem may be as wide as the edge and a quarter more. */
const mostEase = ({ garment, body }: StepContext): number =>
  armRound(garment) * 1.25 - body.values.upperArmGirth.mm;

/** The front to the left, as the ring round the arm is walked: up the front, down the back. */
function drawExtension(edge: number, hem: number, length: number): Piece {
  const [left, right]: [Point, Point] = [
    { x: -edge / 2, y: 0 },
    { x: edge / 2, y: 0 },
  ];
  const [footLeft, footRight]: [Point, Point] = [
    { x: -hem / 2, y: length },
    { x: hem / 2, y: length },
  ];
  const back = linePath(right, footRight);
  const front = linePath(footLeft, left);
  const upFront = pathEndTangent(front);
  return {
    id: 'sleeve',
    title: { key: 'sleeve-extension.piece.sleeve', values: {} },
    edges: [
      { name: 'cap', kind: 'cap', path: linePath(left, right) },
      { name: 'underarm-back', kind: 'side', path: back },
      {
        name: 'sleeve-edge',
        kind: 'sleeve-hem',
        path: curveBetween(
          footRight,
          rotate(pathEndTangent(back), Math.PI / 2),
          footLeft,
          rotate(upFront, -Math.PI / 2),
        ),
      },
      { name: 'underarm-front', kind: 'side', path: front },
    ],
    cloth: 'main',
    layer: 'shell',
    cutting: { as: 'pair', copies: 2 },
    grain: grainThrough({ x: 0, y: length / 2 }, length * 0.6),
    notches: [],
    markings: [],
  };
}
