import { produce } from 'immer';
import { describe, expect, it } from 'vitest';
import { tell } from '../../../engine/design/index.ts';
import {
  checkChild,
  dressWish,
  type Finding,
  type OrderFile,
  type OrderProblem,
  type PaperBlockFile,
  readOrderFile,
  readOrderValue,
} from '../../../engine/order/index.ts';
import type { Fault } from './candidate.ts';
import { type Repair, repairs } from './mends.ts';

type Steps = NonNullable<OrderFile['dress']>;

const file = (change: Partial<OrderFile>): OrderFile => {
  const read = readOrderFile({
    frockwright: 1,
    title: 'Two sisters',
    dueDay: '2027-06-12',
    units: 'in',
    cloths: [{ name: 'satin', use: ['main'], width: '58' }],
    dress: [{ step: 'neckline' }, { step: 'back-zip' }, { step: 'gathered-skirt' }],
    children: [
      { name: 'Ada', ageMonths: 60 },
      { name: 'Bea', ageMonths: 30 },
    ],
    ...change,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.order;
};

const withSteps = (...steps: Steps): OrderFile => file({ dress: steps });

interface State {
  readonly problems: readonly OrderProblem[];
  readonly findings: readonly Finding[];
}

/** What the whole engine says of a child, told without the part that the repairs use. */
function stateOf(order: OrderFile, child: number): State {
  const read = readOrderValue(order);
  if (!read.ok) return { problems: read.problems, findings: [] };
  const found = read.order.children[child];
  if (found === undefined) throw new Error('There is such a child.');
  const checked = checkChild(read.order, found, '2027-01-01');
  return checked.ok
    ? { problems: [], findings: checked.report.findings }
    : { problems: checked.problems, findings: [] };
}

const bad = ({ findings }: State, code: string): readonly Finding[] =>
  findings.filter((finding) => finding.code === code && finding.level !== 'ok');

function repairsOf(order: OrderFile, child: number, fault: Fault): readonly Repair[] {
  // For a number that can't be used the wish of the last good dress does: that of the same order without its list.
  const drawn = readOrderValue(order);
  const plain = drawn.ok ? drawn : readOrderValue({ ...order, dress: [{ step: 'neckline' }], block: {} });
  if (!plain.ok) throw new Error('The plain order can be read.');
  const found = plain.order.children[child];
  if (found === undefined) throw new Error('There is such a child.');
  const good = checkChild(
    plain.order,
    { ...found, steps: [], block: { ...found.block, choice: { kind: 'drafted', given: {} } } },
    '2027-01-01',
  );
  if (!good.ok) throw new Error('A plain bodice can be drawn.');
  const tried = repairs({
    file: order,
    child,
    fault,
    wish: dressWish(plain.order, found, good.report.dress.body, null),
  });
  for (;;) {
    const next = tried.next();
    if (next.done === true) return next.value;
  }
}

const told = ({ label }: Repair): string => tell(label, 'in');

const paper = (back: Partial<PaperBlockFile['back']>): PaperBlockFile => {
  const half = {
    neckWidth: '2 1/4',
    shoulder: '3 1/2',
    shoulderFall: '1',
    armholeDepth: '5 3/4',
    armholeHollow: '3/8',
    chestWidth: '6 1/4',
    waistWidth: '6',
    sideWaistLevel: '10',
  };
  return {
    front: { ...half, neckDepth: '2 1/2', centreLength: '7 3/4' },
    back: { ...half, neckDepth: '5/8', centreLength: '9 1/2', ...back },
  };
};

interface Case {
  readonly what: string;
  readonly code: string;
  readonly order: OrderFile;
  readonly child?: number;
  /** What the first offer says. */
  readonly says: RegExp;
}

const CASES: readonly Case[] = [
  {
    what: 'an opening that ends too high',
    code: 'closing-long-enough',
    order: withSteps(
      { step: 'neckline' },
      { step: 'back-zip', belowWaist: '1/2' },
      { step: 'gathered-skirt' },
    ),
    says: /^Set “Back zip: Runs below the waist by” to 3 \S+ in for Ada/,
  },
  {
    what: 'a dress without an opening',
    code: 'head-passes',
    order: withSteps({ step: 'neckline' }, { step: 'gathered-skirt' }),
    says: /Back zip|Wider along/,
  },
  {
    what: 'a keyhole too short for the head',
    code: 'head-passes',
    order: withSteps({ step: 'neckline' }, { step: 'keyhole-back', keyholeLength: '2' }),
    says: /^Set “Keyhole back: /,
  },
  {
    what: 'a skirt gathered too full for its satin',
    code: 'gather-ratio',
    order: {
      ...withSteps({ step: 'neckline' }, { step: 'back-zip' }, { step: 'gathered-skirt', ratio: 2.8 }),
      cloths: [{ name: 'satin', use: ['main'], kind: 'satin', width: '58' }],
    },
    says: /^Set “Gathered skirt: .*” to 2 for Ada/,
  },
  {
    what: 'a chest tighter than she allows',
    code: 'chest-ease',
    order: { ...file({}), block: { chestEase: '1' }, fit: { chestEase: { from: '2', to: '4' } } },
    says: /^Set “Chest ease” to 2 \S*\s?in for Ada/,
  },
  {
    what: 'a waist wider than she allows',
    code: 'waist-ease',
    order: { ...file({}), block: { waistEase: '3 1/2' }, fit: { waistEase: { from: '1', to: '2' } } },
    says: /^Set “Waist ease” to [12]/,
  },
  {
    what: 'a corner moved on one side of a seam only',
    code: 'seam-lengths',
    order: withSteps(
      { step: 'neckline' },
      { step: 'back-zip' },
      { step: 'move-point', piece: 'front', edge: 'side', end: 'end', down: '1/2' },
    ),
    says: /^Change the other side of the seam alike: Move a corner/,
  },
  {
    what: 'a notch without its mate',
    code: 'notches-meet',
    order: withSteps(
      { step: 'neckline' },
      { step: 'back-zip' },
      { step: 'add-notch', piece: 'front', edge: 'side', share: 0.3, alsoOnSeam: false },
    ),
    says: /^Change the other side of the seam alike: A notch more/,
  },
  {
    what: 'too much ease in a cap',
    code: 'cap-ease',
    order: withSteps({ step: 'neckline' }, { step: 'back-zip' }, { step: 'set-in-sleeve', capEase: '3/4' }),
    says: /^Set “Set-in sleeve: .*” to .* for Ada/,
  },
  {
    what: 'a sash that hangs too long',
    code: 'ties-and-bows',
    order: withSteps(
      { step: 'neckline' },
      { step: 'back-zip' },
      { step: 'gathered-skirt' },
      { step: 'sash', sashTail: '20' },
    ),
    says: /^Set “Sash: .*” to .* for Ada/,
  },
  {
    what: 'ties at the nape of a small child',
    code: 'ties-and-bows',
    order: withSteps({ step: 'neckline' }, { step: 'back-ties', tied: 'neck' }, { step: 'gathered-skirt' }),
    child: 1,
    says: /^Close the dress with Back zip instead$/,
  },
  {
    what: 'a hem too narrow to walk in',
    code: 'hem-walks',
    order: withSteps({ step: 'neckline' }, { step: 'back-zip' }, { step: 'a-line-skirt', hem: '25' }),
    says: /^Set “A-line skirt: .*” to .* for Ada/,
  },
  {
    what: 'a facing under a full lining',
    code: 'facing-matches',
    order: withSteps({ step: 'neckline' }, { step: 'back-zip' }, { step: 'neck-facing' }, { step: 'lining' }),
    says: /^Leave out Neck facing for Ada$/,
  },
  {
    what: 'shoulders too narrow to turn through',
    code: 'shoulder-narrow',
    order: withSteps({ step: 'neckline', widen: '2' }, { step: 'back-zip' }, { step: 'lining' }),
    says: /^Set “Neckline: Wider along each shoulder” to .* for Ada/,
  },
  {
    what: 'a change that can’t be made on her',
    code: 'own.no-edge',
    order: withSteps(
      { step: 'neckline' },
      { step: 'back-zip' },
      { step: 'add-dart', piece: 'front', edge: 'hem' },
    ),
    says: /^Leave out A dart more for Ada$/,
  },
  {
    what: 'armholes of her paper that are not alike',
    code: 'seam-lengths',
    order: { ...file({}), paperBlock: paper({ armholeDepth: '6 1/4' }) },
    says: /^Make both armholes of the paper block alike$/,
  },
  {
    what: 'shoulders of her paper that are not alike',
    code: 'seam-lengths',
    order: { ...file({}), paperBlock: paper({ shoulder: '3 7/8' }) },
    says: /^Make the back of the paper block as the front: Shoulder$/,
  },
];

describe('repairs of what does not fit', () => {
  for (const { what, code, order, child = 0, says } of CASES) {
    it(`mend ${what}`, () => {
      const before = stateOf(order, child);
      const [finding] = bad(before, code);
      if (finding === undefined)
        throw new Error(
          `Not found: ${[...before.problems, ...before.findings].map((f) => f.code).join(', ')}`,
        );
      const found = repairsOf(order, child, { of: 'finding', finding });
      expect(found.map(told).join(' | ')).toMatch(says);
      for (const { change } of found) {
        const mended = produce(order, change);
        expect(readOrderFile(mended).ok).toBe(true);
        const after = stateOf(mended, child);
        expect(after.problems).toEqual([]);
        expect(bad(after, code).length).toBeLessThan(bad(before, code).length);
        const stops = (state: State): number => state.findings.filter(({ level }) => level === 'stop').length;
        expect(stops(after)).toBeLessThanOrEqual(stops(before));
      }
    });
  }

  it('change nothing for the other child', () => {
    const order = withSteps(
      { step: 'neckline' },
      { step: 'back-zip', belowWaist: '1/2' },
      { step: 'gathered-skirt' },
    );
    const [finding] = bad(stateOf(order, 0), 'closing-long-enough');
    if (finding === undefined) throw new Error('The opening is too short.');
    const [first] = repairsOf(order, 0, { of: 'finding', finding });
    if (first === undefined) throw new Error('There is a way.');
    const mended = produce(order, first.change);
    expect(mended.dress).toBe(order.dress);
    expect(mended.children[1]).toBe(order.children[1]);
  });
});

describe('repairs of what can’t be drawn', () => {
  const problems: readonly {
    readonly what: string;
    readonly order: OrderFile;
    readonly says: readonly RegExp[];
  }[] = [
    {
      what: 'a number out of its range',
      order: withSteps({ step: 'neckline' }, { step: 'back-zip', belowWaist: '20' }),
      says: [/^Set “Back zip: Runs below the waist by” to 9 13\/16 in$/, /back to the rule, for everyone$/],
    },
    {
      what: 'an ease out of its range',
      order: { ...file({}), block: { chestEase: '20' } },
      says: [/^Set “Chest ease” to 6 in$/, /^Put “Chest ease” back to the rule, for everyone$/],
    },
    {
      what: 'a text that is no length',
      order: withSteps({ step: 'neckline', frontDrop: 'a little' }),
      says: [/^Put “Neckline: Lower at the centre front” back to the rule, for everyone$/],
    },
    {
      what: 'a hem shaped where there is no skirt',
      order: withSteps(
        { step: 'neckline' },
        { step: 'back-zip' },
        { step: 'back-buttons', off: true },
        { step: 'high-low-hem' },
      ),
      says: [/^Leave out High-low hem for Ada$/],
    },
  ];
  for (const { what, order, says } of problems) {
    it(`mend ${what}`, () => {
      const before = stateOf(order, 0);
      const [problem] = before.problems;
      if (problem === undefined) throw new Error('It can be drawn.');
      const found = repairsOf(order, 0, { of: 'problem', problem });
      const offered = found.map(told);
      expect(offered.length).toBeGreaterThanOrEqual(says.length);
      for (const [i, pattern] of says.entries()) expect(offered[i]).toMatch(pattern);
      for (const { change } of found) {
        const after = stateOf(produce(order, change), 0);
        expect(
          after.problems.filter(({ code, path }) => code === problem.code && path === problem.path),
        ).toEqual([]);
      }
    });
  }
});
