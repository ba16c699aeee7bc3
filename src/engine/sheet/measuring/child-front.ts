import { type Path, pathJoin } from '../../geometry/index.ts';
import { bothHalves, type ChildPart, onBothSides, smooth, straight } from './child-drawing.ts';

/** The child from the front or from the back, arms a little away from the body. */
export function childUpright(view: 'front' | 'back'): readonly ChildPart[] {
  return [
    { kind: 'skin', outline: bothHalves(HALF) },
    { kind: 'cloth', outline: bothHalves(SHORTS) },
    { kind: 'cloth', outline: bothHalves(view === 'front' ? VEST_FRONT : VEST_BACK) },
    ...(view === 'front' ? FRONT_LINES : BACK_LINES).map((path): ChildPart => ({ kind: 'light', path })),
    ...onBothSides(EAR).map((outline): ChildPart => ({ kind: 'skin', outline })),
    ...(view === 'front' ? faceParts() : [{ kind: 'hair', outline: bothHalves(HAIR_BACK) } as const]),
  ];
}

/** From the middle of the neck out, round arm and leg, back to the middle between the legs. */
const HALF: Path = pathJoin(
  straight([0, 172], [36, 172]),
  smooth(
    [
      [36, 172],
      [38, 204],
      [56, 220],
      [98, 233],
      [126, 247],
      [147, 281],
    ],
    [0, 1],
    [0.36, 0.93],
  ),
  // Outer arm, hand, inner arm.
  smooth(
    [
      [147, 281],
      [170, 345],
      [197, 420],
      [216, 470],
      [236, 528],
      [262, 606],
    ],
    [0.36, 0.93],
    [0.36, 0.93],
  ),
  smooth(
    [
      [262, 606],
      [281, 640],
      [290, 688],
      [284, 722],
      [272, 724],
      [258, 700],
      [249, 668],
    ],
    [0.36, 0.93],
    [-0.1, -1],
  ),
  smooth(
    [
      [249, 668],
      [244, 688],
      [235, 690],
      [231, 664],
      [229, 618],
    ],
    [-0.2, 1],
    [-0.2, -1],
  ),
  smooth(
    [
      [229, 618],
      [205, 552],
      [178, 482],
      [150, 414],
      [126, 350],
      [104, 304],
    ],
    [-0.3, -0.95],
    [-0.5, -0.86],
  ),
  // Side, hip, outer leg, foot.
  smooth(
    [
      [104, 304],
      [99, 350],
      [89, 420],
      [87, 466],
      [98, 532],
      [106, 592],
      [107, 650],
      [99, 740],
      [86, 830],
      [83, 868],
      [86, 930],
      [78, 1010],
      [66, 1090],
      [70, 1122],
      [90, 1148],
      [86, 1160],
    ],
    [-0.1, 1],
    [-0.6, 0.8],
  ),
  straight([86, 1160], [34, 1160]),
  // Inner leg, up to the middle.
  smooth(
    [
      [34, 1160],
      [27, 1136],
      [30, 1090],
      [26, 1010],
      [17, 930],
      [20, 868],
      [13, 800],
      [7, 720],
      [4, 652],
    ],
    [-0.5, -1],
    [-0.1, -1],
  ),
  straight([4, 652], [0, 648]),
);

const SHORTS: Path = pathJoin(
  smooth([
    [0, 545],
    [60, 542],
    [99, 534],
  ]),
  smooth(
    [
      [99, 534],
      [106, 592],
      [107.5, 650],
      [104, 706],
    ],
    [0.2, 1],
    [-0.1, 1],
  ),
  smooth([
    [104, 706],
    [58, 714],
    [8, 712],
  ]),
  smooth(
    [
      [8, 712],
      [4, 652],
    ],
    [-0.1, -1],
    [-0.1, -1],
  ),
  straight([4, 652], [0, 648]),
);

const VEST_SIDE: Path = pathJoin(
  smooth(
    [
      [86, 232],
      [84, 268],
      [92, 296],
      [103, 312],
    ],
    [-0.1, 1],
    [0.7, 0.7],
  ),
  smooth(
    [
      [103, 312],
      [98, 354],
      [89, 420],
      [87, 466],
      [98, 532],
      [103, 562],
    ],
    [-0.1, 1],
    [0.2, 1],
  ),
  smooth(
    [
      [103, 562],
      [56, 572],
      [0, 574],
    ],
    undefined,
    [-1, 0],
  ),
);
const VEST_FRONT: Path = pathJoin(
  smooth(
    [
      [0, 268],
      [34, 258],
      [54, 222],
    ],
    [1, 0],
    [0.2, -1],
  ),
  straight([54, 222], [86, 232]),
  VEST_SIDE,
);
const VEST_BACK: Path = pathJoin(
  smooth(
    [
      [0, 246],
      [36, 240],
      [54, 222],
    ],
    [1, 0],
    [0.3, -1],
  ),
  straight([54, 222], [86, 232]),
  VEST_SIDE,
);

const FRONT_LINES: readonly Path[] = [
  // Collar bones and knees.
  ...onBothSides(
    smooth([
      [10, 238],
      [28, 232],
      [44, 231],
    ]),
  ),
  ...onBothSides(
    smooth([
      [36, 872],
      [50, 880],
      [66, 872],
    ]),
  ),
];

const BACK_LINES: readonly Path[] = [
  // Shoulder blades, spine, seat, crease of the knees.
  ...onBothSides(
    smooth([
      [42, 300],
      [58, 340],
      [46, 372],
    ]),
  ),
  smooth([
    [0, 262],
    [0, 400],
    [0, 500],
  ]),
  ...onBothSides(
    smooth([
      [34, 866],
      [50, 872],
      [68, 866],
    ]),
  ),
];

const EAR: Path = pathJoin(
  smooth([
    [66, 96],
    [78, 92],
    [80, 108],
    [74, 126],
    [64, 128],
  ]),
  straight([64, 128], [66, 96]),
);

const HEAD: Path = smooth(
  [
    [0, 0],
    [46, 14],
    [70, 62],
    [68, 112],
    [58, 156],
    [34, 187],
    [0, 197],
  ],
  [1, 0],
  [-1, 0],
);

/** Above the forehead, down to the ears. */
const HAIR_FRONT: Path = pathJoin(
  smooth(
    [
      [0, -7],
      [50, 8],
      [76, 62],
      [72, 100],
    ],
    [1, 0],
    [-0.1, 1],
  ),
  smooth(
    [
      [72, 100],
      [62, 76],
      [40, 54],
      [0, 46],
    ],
    [-0.2, -1],
    [-1, 0],
  ),
);

const HAIR_BACK: Path = smooth(
  [
    [0, -7],
    [50, 8],
    [76, 62],
    [74, 112],
    [60, 152],
    [34, 172],
    [0, 176],
  ],
  [1, 0],
  [-1, 0],
);

function faceParts(): readonly ChildPart[] {
  const lines = [
    ...onBothSides(
      smooth([
        [28, 103],
        [29, 107],
        [28, 111],
      ]),
    ),
    ...onBothSides(
      smooth([
        [20, 90],
        [29, 86],
        [38, 90],
      ]),
    ),
    smooth([
      [-4, 132],
      [0, 136],
      [5, 132],
    ]),
    smooth([
      [-18, 156],
      [0, 164],
      [18, 156],
    ]),
  ];
  return [
    { kind: 'skin', outline: bothHalves(HEAD) },
    { kind: 'hair', outline: bothHalves(HAIR_FRONT) },
    ...lines.map((path): ChildPart => ({ kind: 'line', path })),
  ];
}
