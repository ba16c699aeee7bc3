import fc from 'fast-check';
import { type ChosenStep, DESIGN_STEPS, type DesignStep } from '../../src/engine/design/index.ts';

/**
 * Random designs: any choice of steps that exclude each other by kind, each parameter either left to its rule or
 * set somewhere a maker could set it. Lengths are in mm, so that the values do not depend on the units.
 */
export const randomDress: fc.Arbitrary<readonly ChosenStep[]> = fc
  .tuple(...kinds().map(sometimes))
  .map((chosen) => chosen.filter((step): step is ChosenStep => step !== null))
  .map((steps) => steps.filter(({ step }) => hasWhatItShapes(step, steps) && hasItsEdge(step, steps)));

/** Steps that change a skirt, and the skirts that they can change. */
const SHAPES: Readonly<Record<string, readonly string[]>> = {
  'high-low-hem': ['gathered-skirt', 'circle-skirt', 'a-line-skirt', 'tiered-skirt'],
  'growth-hem': ['gathered-skirt', 'pleated-skirt', 'tiered-skirt'],
  'growth-tuck': ['gathered-skirt', 'tiered-skirt'],
};

/** A skirt that there is not can't be shaped; that it is refused has a test of its own. */
function hasWhatItShapes(step: string, steps: readonly ChosenStep[]): boolean {
  const skirts = SHAPES[step];
  return skirts === undefined || steps.some((other) => skirts.includes(other.step));
}

/** What is sewn to a neck or an armhole, and what leaves it no edge; that it is refused has a test of its own. */
const ROUND_THE_NECK = ['neck-binding', 'flat-collar', 'neck-frill'];
const ROUND_THE_ARM = ['armhole-facing', 'armhole-binding'];

const BACK_CLOSINGS = ['back-zip', 'back-buttons', 'back-lacing', 'back-ties'];

/** What is drawn from the fold at the centre front, which a wrapped front has not. */
const WANT_A_FOLD = ['neck-facing', 'flat-collar', 'neck-frill'];

/** What leaves no plain shoulder for a dart, or keeps the shape of the armhole as it was. */
const NO_PLAIN_SHOULDER = ['drop-shoulder', 'yoke', 'shoulder-studs', 'armhole-facing'];

function hasItsEdge(step: string, steps: readonly ChosenStep[]): boolean {
  const has = (id: string): boolean => steps.some((other) => other.step === id);
  if (step === 'full-back-opening') return BACK_CLOSINGS.some(has);
  if (step === 'wrap-front') return !has('yoke');
  if (step === 'shoulder-darts') return NO_PLAIN_SHOULDER.every((other) => !has(other));
  if (step === 'waist-darts') return !has('dropped-waist');
  if (WANT_A_FOLD.includes(step) && has('wrap-front')) return false;
  if (ROUND_THE_NECK.includes(step)) return steps.every((other) => other.step !== 'shoulder-studs');
  if (step === 'edge-strip') return hasOpenArm(steps);
  if (step === 'sleeve-extension') return hasOpenArm(steps) && has('drop-shoulder');
  if (step === 'sleeve-band') return has('set-in-sleeve');
  // A keyhole needs more room than most yokes have.
  if (step === 'keyhole-back') return steps.every((other) => other.step !== 'yoke');
  if (!ROUND_THE_ARM.includes(step)) return true;
  if (hasOpenArm(steps) && (has('edge-strip') || has('sleeve-extension'))) return false;
  return steps.every((other) => other.step === 'drop-shoulder' || !SLEEVES.has(other.step));
}

/** A straight edge or an armhole to which a strip or a piece of sleeve can be sewn. */
const hasOpenArm = (steps: readonly ChosenStep[]): boolean =>
  steps.every(
    ({ step, given }) => !SLEEVES.has(step) || (step === 'drop-shoulder' && given.finish === 'straight'),
  );

const SLEEVES = new Set(DESIGN_STEPS.filter(({ kind }) => kind === 'sleeve').map(({ id }) => id));

/** Steps for figures and trims are rare, one or two to a dress; all together would be a figure that no child has. */
function sometimes(steps: readonly DesignStep[]): fc.Arbitrary<ChosenStep | null> {
  const chosen = fc.constantFrom(...steps).chain(randomStep);
  return steps.every((step) => isRare(step))
    ? fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: chosen })
    : fc.option(chosen, { freq: 4 });
}

function isRare({ stage }: DesignStep): boolean {
  return [
    'figure',
    'fitting',
    'panel',
    'hem-line',
    'over-skirt',
    'opening',
    'finish',
    'shoulder',
    'marking',
    'trim',
  ].includes(stage);
}

function kinds(): readonly (readonly DesignStep[])[] {
  const byKind = new Map<string, DesignStep[]>();
  for (const step of DESIGN_STEPS) {
    // The maker's own changes may spoil what fits; they have a property test of their own.
    if (step.stage === 'own') continue;
    const kind = step.kind ?? step.id;
    byKind.set(kind, [...(byKind.get(kind) ?? []), step]);
  }
  return [...byKind.values()];
}

/** A step with some of its numbers set at random, the rest left to its rules. */
export function randomStep(step: DesignStep): fc.Arbitrary<ChosenStep> {
  const values = Object.entries(step.params)
    .filter(([, param]) => param.kind !== 'text')
    .map(([name, param]): [string, fc.Arbitrary<string | number | boolean>] => [
      name,
      randomValue(name, param),
    ]);
  return fc.record(Object.fromEntries(values), { requiredKeys: [] }).map((all) => {
    const given: Record<string, string | number | boolean> = {};
    // Many numbers stay with their rule, or hardly a design would be possible on any child.
    for (const [i, [name, value]] of Object.entries(all).entries()) {
      if (value !== undefined && (KEPT.has(name) || i % 3 !== 0)) given[name] = value;
    }
    return { step: step.id, given };
  });
}

function randomValue(
  name: string,
  param: DesignStep['params'][string],
): fc.Arbitrary<string | number | boolean> {
  switch (param.kind) {
    case 'choice':
      return fc.constantFrom(...param.choices);
    case 'flag':
      return fc.boolean();
    case 'text':
      throw new Error('Names are left to their rule.');
    case 'count':
      return fc.integer({ min: 3, max: 5 });
    case 'ratio':
      return fc.double({
        ...(name === 'fullness' ? { min: 1.5, max: 2 } : { min: 1.3, max: 2.9 }),
        noNaN: true,
      });
    case 'length': {
      const [min, max] = TRIED[name] ?? [0, 100];
      return fc.integer({ min, max }).map((mm) => `${mm} mm`);
    }
  }
}

/** Choices are always kept; they cannot make a design impossible by themselves. */
const KEPT = new Set([
  'places',
  'end',
  'shape',
  'finish',
  'line',
  'halves',
  'way',
  'style',
  'part',
  'cut',
  'skirt',
  'count',
]);

/** What is tried for each length, mm; some of it lies beyond what a small child allows, and must be refused well. */
const TRIED: Readonly<Record<string, readonly [number, number]>> = {
  length: [100, 500],
  spacing: [12, 120],
  capEase: [0, 25],
  armEase: [25, 80],
  bandEase: [25, 40],
  bandDepth: [10, 50],
  elasticEase: [0, 10],
  hemEase: [25, 120],
  extension: [40, 250],
  stripLength: [180, 900],
  over: [10, 60],
  clear: [10, 60],
  endDepth: [8, 40],
  depth: [30, 90],
  cuffEase: [15, 50],
  cuffDepth: [15, 70],
  underlap: [15, 30],
  slit: [30, 90],
  blouse: [0, 60],
  turn: [0, 3],
  takeIn: [0, 15],
  letOut: [0, 30],
  raise: [0, 35],
  frontDrop: [0, 40],
  backDrop: [0, 60],
  widen: [0, 30],
  rise: [0, 15],
  backRise: [0, 15],
  above: [15, 40],
  below: [10, 20],
  drop: [0, 45],
  capHeight: [45, 90],
  fall: [25, 80],
  shapeIn: [3, 18],
  shapeDown: [3, 18],
  hollow: [0, 25],
  lowerUnderarm: [0, 30],
  belowWaist: [0, 200],
  skirtShorter: [0, 60],
  hem: [600, 1600],
  flare: [10, 150],
  hemDepth: [60, 120],
  tuckDepth: [6, 20],
  differ: [0, 40],
  shorter: [0, 60],
  yokeDepth: [60, 150],
  frontUp: [0, 120],
  backDown: [0, 200],
  facingDepth: [40, 90],
  facingWidth: [20, 60],
  finishedWidth: [8, 10],
  collarWidth: [25, 80],
  keyholeLength: [50, 150],
  keyholeWidth: [8, 60],
  frillWidth: [15, 80],
  standAway: [0, 22],
  neckEase: [0, 12],
  lap: [16, 25],
  sashWidth: [15, 45],
  sashLoop: [30, 200],
  sashKnot: [20, 80],
  sashTail: [0, 600],
  bowSpan: [40, 300],
  bowWidth: [20, 120],
  bowTail: [0, 400],
  bowKnot: [20, 90],
  bandRound: [8, 40],
  bandWidth: [10, 50],
  tailWidth: [10, 90],
  ruffleDepth: [10, 120],
  strapWidth: [10, 60],
  strapLength: [100, 400],
  beltWidth: [15, 80],
  beltOverlap: [20, 80],
  rosetteDiameter: [30, 120],
  diameter: [6, 25],
  thickness: [1, 6],
  buttonSpacing: [25, 90],
  loopSpacing: [15, 50],
  panelWidth: [60, 150],
  tieEnd: [80, 300],
  tieWidth: [10, 50],
  tieLength: [80, 400],
  overlap: [12, 35],
  studDiameter: [5, 12],
  longer: [0, 20],
  wider: [0, 30],
  by: [0, 10],
  seat: [0, 60],
  waist: [0, 20],
  backLonger: [0, 25],
  frontShorter: [0, 15],
  hipEase: [30, 90],
  allowance: [26, 60],
  width: [5, 20],
  backWidth: [5, 20],
  backLength: [45, 80],
  backEase: [2, 12],
  frontWidth: [5, 15],
  frontLength: [45, 80],
  shaping: [2, 15],
  reach: [40, 70],
  up: [30, 60],
  tip: [5, 25],
};
