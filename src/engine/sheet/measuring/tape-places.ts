import type { MeasureId } from '../../body/index.ts';
import { type Bounds, cubic, type Path, type Point, pathOf } from '../../geometry/index.ts';
import { boxAt, rectanglePath } from '../shapes.ts';
import { type At, CHILD_HEIGHT, type ChildView, smooth, straight } from './child-drawing.ts';
import type { LandmarkId } from './landmarks.ts';

/** Weight is taken with the lengths, and has a place on the sheet. */
export type TakenId = MeasureId | 'weight';

/** Where the tape runs on the drawn child, mm. */
export interface TapePlace {
  readonly view: ChildView;
  /** What of the child is shown. */
  readonly window: Bounds;
  readonly tape: readonly Path[];
  /** Where it runs behind the body, or where a level is carried over to it. */
  readonly behind: readonly Path[];
  /** A cord, a wall, a book, a floor. */
  readonly beside: readonly Path[];
  readonly landmarks: readonly Marked[];
}

/** `at` is the place; `aside` is where the middle of its letter stands from there, in sizes of the letter. */
export interface Marked {
  readonly id: LandmarkId;
  readonly at: Point;
  readonly aside: Point;
}

const marked = (id: LandmarkId, x: number, y: number, dx: number, dy: number): Marked => ({
  id,
  at: { x, y },
  aside: { x: dx, y: dy },
});

const FLOOR = CHILD_HEIGHT;
const WAIST = 466;
const SCALES = 36;

const UPPER = boxAt(-215, -20, 430, 520);
const TRUNK = boxAt(-215, 190, 430, 520);
const WHOLE = boxAt(-290, -60, 580, 1260);

/** Round the body at a level: in front, seen a little from above, and behind. */
function round(y: number, half: number, sag: number): Pick<TapePlace, 'tape' | 'behind'> {
  return {
    tape: [bowed([-half, y], [half, y], sag)],
    behind: [bowed([-half, y], [half, y], -sag * 0.7)],
  };
}

/** Half a girth seen from its side: an arc from end to end that bulges down by `sag`, or up where that is negative. */
function bowed(from: At, to: At, sag: number): Path {
  const [width, slope] = [to[0] - from[0], (to[1] - from[1]) / (to[0] - from[0])];
  const handle = (share: number): Point => ({
    x: from[0] + share * width - slope * sag * BOW,
    y: from[1] + share * width * slope + sag * BOW,
  });
  const end = (at: At): Point => ({ x: at[0], y: at[1] });
  return pathOf(cubic(end(from), handle(0.06), handle(0.94), end(to)));
}

/** The middle of a cubic lies at three quarters of the height of its handles. */
const BOW = 4 / 3;

/** A girth of the arm, from its inner to its outer side. */
const roundArm = (inner: At, outer: At, sag: number): Pick<TapePlace, 'tape' | 'behind'> => ({
  tape: [bowed(inner, outer, sag)],
  behind: [bowed(inner, outer, -sag * 0.7)],
});

const CORD = bowed([-88, WAIST], [88, WAIST], 12);
const RULER = rectanglePath(boxAt(-112, 304, 224, 14));
const GROUND = straight([-220, FLOOR], [220, FLOOR]);
/** Straight down beside the leg, from a level to the floor. */
const downFrom = (y: number, from: number, x: number): Pick<TapePlace, 'tape' | 'behind'> => ({
  tape: [straight([x, y], [x, FLOOR])],
  behind: [straight([from, y], [x + 14, y])],
});

const NAPE = marked('nape', 0, 206, 1, 0);
const SHOULDER_BONES: readonly Marked[] = [
  marked('shoulderBone', 127, 247, 0.95, -0.7),
  marked('shoulderBone', -127, 247, -0.95, -0.7),
];

export const TAPE_PLACES: Readonly<Record<TakenId, TapePlace>> = {
  height: {
    view: 'side',
    window: boxAt(-300, -80, 580, 1260),
    tape: [straight([160, -10], [160, FLOOR])],
    behind: [straight([64, -10], [176, -10])],
    beside: [
      rectanglePath(boxAt(-98, -34, 166, 24)),
      straight([-98, -70], [-98, FLOOR]),
      straight([-120, FLOOR], [220, FLOOR]),
    ],
    landmarks: [],
  },
  weight: {
    view: 'front',
    window: boxAt(-290, -24, 580, 1260),
    tape: [],
    behind: [],
    beside: [rectanglePath(boxAt(-130, FLOOR, 260, SCALES))],
    landmarks: [],
  },
  chestGirth: {
    view: 'front',
    window: UPPER,
    ...round(318, 102, 14),
    beside: [],
    landmarks: [marked('armpit', 104, 304, 0.95, -0.7), marked('armpit', -104, 304, -0.95, -0.7)],
  },
  waistGirth: {
    view: 'front',
    window: TRUNK,
    ...round(WAIST, 88, 13),
    beside: [],
    landmarks: [marked('waistCord', 88, WAIST, 0.95, 0)],
  },
  hipGirth: { view: 'front', window: TRUNK, ...round(596, 107, 14), beside: [], landmarks: [] },
  neckBaseGirth: {
    view: 'front',
    window: UPPER,
    tape: [
      smooth([
        [-52, 217],
        [-30, 238],
        [0, 246],
        [30, 238],
        [52, 217],
      ]),
    ],
    behind: [
      smooth([
        [-52, 217],
        [0, 204],
        [52, 217],
      ]),
    ],
    beside: [],
    landmarks: [marked('neckSide', 52, 217, 0.95, -0.7), marked('neckHollow', 0, 246, 0, 1.1)],
  },
  headGirth: {
    view: 'front',
    window: UPPER,
    ...round(64, 76, 13),
    beside: [],
    landmarks: [],
  },
  shoulderLength: {
    view: 'front',
    window: UPPER,
    tape: [
      smooth([
        [52, 217],
        [64, 222],
        [98, 232],
        [127, 247],
      ]),
    ],
    behind: [],
    beside: [],
    landmarks: [marked('neckSide', 52, 217, 0.95, -0.7), marked('shoulderBone', 127, 247, 0.95, -0.7)],
  },
  shoulderWidth: {
    view: 'back',
    window: UPPER,
    tape: [
      smooth([
        [-127, 247],
        [-66, 222],
        [0, 206],
        [66, 222],
        [127, 247],
      ]),
    ],
    behind: [],
    beside: [],
    landmarks: [NAPE, ...SHOULDER_BONES],
  },
  backWidth: {
    view: 'back',
    window: UPPER,
    tape: [straight([-91, 278], [91, 278])],
    behind: [],
    beside: [],
    landmarks: [marked('shoulderBone', 127, 247, 0.95, -0.7), marked('armpit', 104, 304, 0.95, 0.7)],
  },
  frontChestWidth: {
    view: 'front',
    window: UPPER,
    tape: [straight([-93, 288], [93, 288])],
    behind: [],
    beside: [],
    landmarks: [marked('armpit', 104, 304, 0.95, 0.7), marked('armpit', -104, 304, -0.95, 0.7)],
  },
  backNeckToWaist: {
    view: 'back',
    window: boxAt(-215, 60, 430, 520),
    tape: [straight([0, 206], [0, WAIST + 12])],
    behind: [],
    beside: [CORD],
    landmarks: [NAPE, marked('waistCord', 0, WAIST + 12, 0.95, 0.7)],
  },
  scyeDepth: {
    view: 'back',
    window: UPPER,
    tape: [straight([0, 206], [0, 304])],
    behind: [],
    beside: [RULER],
    landmarks: [NAPE, marked('armpit', 104, 304, 0.95, -0.7)],
  },
  upperArmGirth: {
    view: 'front',
    window: boxAt(-30, 190, 430 * 0.72, 520 * 0.72),
    ...roundArm([127, 352], [169, 342], 9),
    beside: [],
    landmarks: [],
  },
  wristGirth: {
    view: 'front',
    window: boxAt(115, 470, 430 * 0.55, 520 * 0.55),
    ...roundArm([226.5, 606], [259, 597], 7),
    beside: [],
    landmarks: [marked('wristBone', 259, 597, 0.95, -0.7)],
  },
  armLength: {
    view: 'side',
    window: boxAt(-215, 175, 430, 520),
    tape: [
      smooth([
        [-6, 244],
        [-9, 340],
        [-8, 400],
        [0, 462],
        [20, 530],
        [45, 602],
      ]),
    ],
    behind: [],
    beside: [],
    landmarks: [marked('shoulderBone', -6, 244, -0.95, -0.7), marked('wristBone', 45, 602, 1.5, 0)],
  },
  waistHeight: {
    view: 'front',
    window: WHOLE,
    ...downFrom(WAIST, 88, 140),
    beside: [CORD, GROUND],
    landmarks: [marked('waistCord', 88, WAIST, -0.9, -0.8)],
  },
  kneeHeight: {
    view: 'back',
    window: WHOLE,
    ...downFrom(868, 50, 140),
    beside: [GROUND],
    landmarks: [marked('kneeCrease', 50, 868, -1.5, 0)],
  },
};

/** All landmarks at once, on the child from three sides. */
export const LANDMARK_PLACES: Readonly<Record<ChildView, readonly Marked[]>> = {
  front: [
    marked('neckSide', 52, 217, 0.95, -0.7),
    marked('neckHollow', 0, 246, 0, 1.1),
    marked('armpit', 104, 304, 0.95, 0),
    marked('waistCord', 88, WAIST, 0.95, 0.7),
    marked('wristBone', 259, 597, 0.95, -0.7),
  ],
  back: [
    marked('nape', 0, 206, 1, 0),
    marked('shoulderBone', 127, 247, 0.95, -0.7),
    marked('waistCord', 88, WAIST, 0.95, 0.7),
    marked('kneeCrease', 50, 868, 0, -0.7),
  ],
  side: [
    marked('nape', -52, 212, -0.95, 0),
    marked('shoulderBone', -6, 242, 0, -0.9),
    marked('wristBone', 45, 602, 1.5, 0),
    marked('kneeCrease', -30, 864, -0.95, 0),
  ],
};
