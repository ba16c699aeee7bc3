import type { Draft } from 'immer';
import type { Check } from '../../../engine/check/index.ts';
import { type DressWish, findStep } from '../../../engine/design/index.ts';
import type { Finding, OrderFile, OrderProblem } from '../../../engine/order/index.ts';
import { finestRuler, formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import type { Saying, WordValue } from '../../../engine/words/index.ts';
import { type ParamNow, type ParamRef, paramNow } from '../../table/index.ts';
import { addStep, setParam, switchStep } from '../dress/change-dress.ts';
import { keyOf, type Scope, type StepKey } from '../dress/dress-list.ts';

/** Something that is wrong with a child's dress: what a check found, or why it can't be drawn. */
export type Fault =
  | { readonly of: 'finding'; readonly finding: Finding }
  | { readonly of: 'problem'; readonly problem: OrderProblem };

/** A change that may mend a fault. Whether it does is found by trying it, see `mends.ts`. */
export interface Candidate {
  /** Of candidates of one family at most one is offered, the first that mends. */
  readonly family: string;
  readonly label: Saying;
  /** It touches what other children wear as well. */
  readonly forAll: boolean;
  readonly change: (file: Draft<OrderFile>) => void;
}

/** A dress with something wrong in it. */
export interface FaultyDress {
  readonly file: OrderFile;
  readonly child: number;
  readonly wish: DressWish;
  readonly fault: Fault;
}

/** What may mend a fault, in the order in which it is tried: numbers before leaving something out. */
export function repairCandidates(dress: FaultyDress): readonly Candidate[] {
  const { fault } = dress;
  if (fault.of === 'problem') return problemCandidates(dress, fault.problem);
  const { finding } = fault;
  const check = 'where' in finding ? (finding as Check) : null;
  if (check === null) return skippedCandidates(dress, finding);
  return [
    ...numberCandidates(dress, check),
    ...closingCandidates(dress, check),
    ...paperCandidates(dress, check),
    ...ownStepCandidates(dress, check),
    ...stepCandidates(dress, check),
  ];
}

/** The numbers that move what a check measures: up with it (1), or against it (-1). Common practice, no source. */
const MOVED_BY: Readonly<Partial<Record<Check['code'], readonly (readonly [param: string, way: 1 | -1])[]>>> =
  {
    'closing-long-enough': [['belowWaist', 1]],
    'head-passes': [
      ['keyholeLength', 1],
      ['widen', 1],
      ['frontDrop', 1],
    ],
    'neck-clears': [
      ['widen', 1],
      ['frontDrop', 1],
    ],
    'arm-passes': [
      ['bandEase', 1],
      ['elasticEase', 1],
      ['armEase', 1],
      ['hemEase', 1],
      ['lowerUnderarm', 1],
    ],
    'armhole-ratio': [
      ['lowerUnderarm', 1],
      ['drop', 1],
    ],
    'armhole-depth': [['lowerUnderarm', 1]],
    'cap-ease': [['capEase', 1]],
    'hand-passes': [
      ['slit', 1],
      ['cuffEase', 1],
    ],
    'hem-walks': [
      ['hem', 1],
      ['flare', 1],
      ['ratio', 1],
    ],
    'gather-ratio': [
      ['ratio', 1],
      ['fullness', 1],
      ['ruffleRatio', 1],
      ['skirtRatio', 1],
      ['waistRatio', 1],
      ['tierRatio', 1],
    ],
    'ties-and-bows': [
      ['sashTail', 1],
      ['bowTail', 1],
      ['tieLength', 1],
      ['tieEnd', 1],
    ],
    'chest-ease': [
      ['chestEase', 1],
      ['letOut', 1],
      ['takeIn', -1],
    ],
    'waist-ease': [
      ['waistEase', 1],
      ['letOut', 1],
      ['takeIn', -1],
    ],
    'shoulder-narrow': [
      ['widen', -1],
      ['drop', 1],
    ],
    'lining-fits': [['turn', -1]],
  };

/** Which way a measure must go to be allowed, and how far; null where nothing was measured. */
function gapOf({ measured, allowed, todo }: Check): { readonly way: 1 | -1; readonly by: number } | null {
  const [is, from, to] = [measured, allowed?.from, allowed?.to].map(amount);
  if (is === null || is === undefined) return null;
  const longer = todo?.values.longer;
  const said = typeof longer === 'object' && 'mm' in longer ? longer.mm : null;
  if (from !== null && from !== undefined && is < from) return { way: 1, by: said ?? from - is };
  if (to !== null && to !== undefined && is > to) return { way: -1, by: is - to };
  return null;
}

function amount(quantity: Check['measured'] | undefined): number | null {
  if (quantity === null || quantity === undefined) return null;
  if ('mm' in quantity) return quantity.mm;
  if ('ratio' in quantity) return quantity.ratio;
  return 'degrees' in quantity ? quantity.degrees : quantity.count;
}

/** Every number that moves the measure, by as little as may do. */
function numberCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  const gap = gapOf(check);
  const { wish } = dress;
  if (gap === null) return [];
  return (MOVED_BY[check.code] ?? []).flatMap(([param, along]) =>
    refsTo(wish, param).flatMap((ref) => {
      const now = paramNow(wish, ref);
      if (now === null) return [];
      const way = (gap.way * along) as 1 | -1;
      return stepsToward(now, way, gap.by, wish.units).map((value) => setCandidate(dress, ref, now, value));
    }),
  );
}

/** Every number of that name in the block and in the steps that are worn. */
function refsTo({ block, steps }: DressWish, param: string): readonly ParamRef[] {
  const ofBlock = block.kind === 'drafted' && (param === 'chestEase' || param === 'waistEase');
  return [
    ...(ofBlock ? [{ of: 'block', param } as const] : []),
    ...steps.flatMap(({ step, as = null }): readonly ParamRef[] =>
      findStep(step)?.params[param] === undefined ? [] : [{ of: 'step', step, as, param }],
    ),
  ];
}

/** Parts of the gap that are tried: a measure may follow a number more or less than one to one. */
const PARTS = [0.25, 0.5, 1, 1.5, 2, 3, 5, 8];
/** Finest step of a ratio. */
const RATIO_STEP = 0.05;

/** Values from the present one on toward the end of the range, on marks of the ruler, the nearest first. */
function stepsToward(
  { value, range: [least, most], kind }: ParamNow,
  way: 1 | -1,
  gap: number,
  units: UnitSystem,
): readonly number[] {
  const step = kind === 'length' ? finestRuler(units).step : RATIO_STEP;
  const end = way > 0 ? most : least;
  const marked = (to: number): number =>
    way > 0 ? Math.ceil(to / step - 1e-6) * step : Math.floor(to / step + 1e-6) * step;
  const inner = way > 0 ? Math.floor(end / step + 1e-6) * step : Math.ceil(end / step - 1e-6) * step;
  const tried = PARTS.map((part) => marked(value + way * gap * part));
  const inside = tried.filter((to) => (way > 0 ? to > value && to < inner : to < value && to > inner));
  const moves = Math.abs(inner - value) > 1e-6 && inner >= least - 1e-6 && inner <= most + 1e-6;
  return [...new Set(moves ? [...inside, inner] : inside)];
}

/** Repairs of a number are for the child that needs them. */
const scopeFor = ({ file, child }: FaultyDress): Scope => (file.children.length > 1 ? child : 'party');

const childName = ({ file, child }: FaultyDress): string => file.children[child]?.name ?? '';

function setCandidate(dress: FaultyDress, ref: ParamRef, { kind }: ParamNow, value: number): Candidate {
  const scope = scopeFor(dress);
  const given = kind === 'length' ? formatLength(value, dress.wish.units) : Math.round(value * 100) / 100;
  const field = fieldWord(ref);
  return {
    family: `set ${ref.of === 'block' ? 'block' : `${ref.step} ${ref.as ?? ''}`} ${ref.param}`,
    label:
      scope === 'party'
        ? { key: 'page.fit.repair.set', values: { field, value: given } }
        : { key: 'page.fit.repair.set-of', values: { field, value: given, child: childName(dress) } },
    forAll: false,
    change: (file) => {
      if (ref.of === 'step') setParam(file, scope, ref, ref.param, given);
      else {
        const holder = scope === 'party' ? file : file.children[scope];
        if (holder !== undefined) holder.block = { ...holder.block, [ref.param]: given };
      }
    },
  };
}

const fieldWord = (ref: ParamRef): WordValue =>
  ref.of === 'block' ? { word: `page.block.${ref.param}` } : stepField(ref.step, ref.param);

const stepField = (step: string, param: string): Saying => ({
  key: 'page.fit.repair.field-of-step',
  values: { step: { word: `${step}.title` }, field: { word: `${step}.${param}` } },
});

/** A dress without opening, or with one that can strangle, is closed with a zip. */
function closingCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  const asks =
    check.code === 'closing-long-enough' ||
    check.code === 'head-passes' ||
    (check.code === 'ties-and-bows' && check.level === 'stop');
  const closing = dress.wish.steps.find(({ step }) => findStep(step)?.kind === 'closing');
  if (!asks || closing?.step === ZIP) return [];
  const key = closing === undefined ? 'page.fit.repair.add' : 'page.fit.repair.instead';
  return [
    {
      family: ZIP,
      label: { key, values: { step: { word: `${ZIP}.title` } } },
      forAll: false,
      change: (file) => addStep(file, scopeFor(dress), { step: ZIP, as: null }),
    },
  ];
}

const ZIP = 'back-zip';

/** Front and back of her paper that do not fit together: the back is made as the front, or both armholes alike. */
function paperCandidates({ file, child }: FaultyDress, check: Check): readonly Candidate[] {
  if (check.code !== 'seam-lengths' && check.code !== 'corners-run-smooth') return [];
  const ofChild = file.children[child]?.paperBlock !== undefined;
  if (!ofChild && file.paperBlock === undefined) return [];
  const alike = (
    family: string,
    fields: readonly ('armholeDepth' | 'sideWaistLevel' | 'shoulder')[],
    label: Saying,
  ): Candidate => ({
    family,
    label,
    forAll: !ofChild,
    change: (draft) => {
      const paper = ofChild ? draft.children[child]?.paperBlock : draft.paperBlock;
      if (paper !== undefined) for (const field of fields) paper.back[field] = paper.front[field];
    },
  });
  const asFront = (field: 'armholeDepth' | 'sideWaistLevel' | 'shoulder'): Candidate =>
    alike(`paper ${field}`, [field], {
      key: 'page.fit.repair.paper',
      values: { field: { word: `page.block.paper.${field}` } },
    });
  return [
    alike('paper armholeDepth', ['armholeDepth'], { key: 'page.fit.repair.paper-armhole', values: {} }),
    asFront('shoulder'),
    asFront('sideWaistLevel'),
  ];
}

/** Checks that a change of hers can spoil by changing one side of a seam only, or by going too far. */
const SPOILED: readonly Check['code'][] = [
  'seam-lengths',
  'notches-meet',
  'corners-run-smooth',
  'outline-simple',
  'outline-closed',
  'facing-matches',
  'lining-fits',
];

/** The other side of the seam changed alike, or else the change left out; the last change first. */
function ownStepCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  if (!SPOILED.includes(check.code)) return [];
  const own = dress.wish.steps.filter(({ step }) => findStep(step)?.stage === 'own').toReversed();
  const scope = scopeFor(dress);
  const alike = own.flatMap((chosen): readonly Candidate[] => {
    const key = keyOf(chosen);
    if (findStep(key.step)?.params[ALIKE] === undefined || chosen.given[ALIKE] === true) return [];
    return [
      {
        family: 'both sides',
        label: { key: 'page.fit.repair.both-sides', values: { step: nameOf(key) } },
        forAll: false,
        change: (file) => setParam(file, scope, key, ALIKE, true),
      },
    ];
  });
  return [...alike, ...own.map((chosen) => leaveOut(dress, keyOf(chosen)))];
}

const ALIKE = 'alsoOnSeam';

/** Steps that another makes needless. */
function stepCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
  if (check.code !== 'facing-matches' || check.level !== 'note') return [];
  return dress.wish.steps
    .filter(({ step }) => step.endsWith('-facing'))
    .map((chosen) => leaveOut(dress, keyOf(chosen)));
}

function leaveOut(dress: FaultyDress, key: StepKey): Candidate {
  const scope = scopeFor(dress);
  const step = nameOf(key);
  return {
    family: 'leave out',
    label:
      scope === 'party'
        ? { key: 'page.fit.repair.leave-out', values: { step } }
        : { key: 'page.fit.repair.leave-out-of', values: { step, child: childName(dress) } },
    forAll: false,
    change: (file) => switchStep(file, scope, key, false),
  };
}

const nameOf = ({ step, as }: StepKey): Saying =>
  as === null
    ? { key: `${step}.title`, values: {} }
    : { key: 'page.dress.step.named', values: { step: { word: `${step}.title` }, name: as } };

/** A change of hers that this child goes without anyway is left out for good. */
function skippedCandidates(dress: FaultyDress, { say: { values } }: Finding): readonly Candidate[] {
  const at = typeof values.path === 'string' ? placeIn(dress.file, values.path) : null;
  return at === null ? [] : [leaveOut(dress, at.key)];
}

interface StepPlace {
  readonly scope: Scope;
  readonly key: StepKey;
  readonly param: string | null;
}

/** The step that a path of the order file leads into. */
function placeIn(file: OrderFile, path: string): StepPlace | null {
  const [, child, index, param = null] =
    /^(?:children\[(\d+)\]\.)?dress\[(\d+)\](?:\.(\w+))?$/.exec(path) ?? [];
  if (index === undefined) return null;
  const scope = child === undefined ? 'party' : Number(child);
  const entry = (scope === 'party' ? file : file.children[scope])?.dress?.[Number(index)];
  return entry === undefined ? null : { scope, key: keyOf(entry), param };
}

/** A number out of its range goes to the nearest end of it, or back to the rule; a step that can't be made is left out. */
function problemCandidates(dress: FaultyDress, problem: OrderProblem): readonly Candidate[] {
  const { file } = dress;
  const at = placeIn(file, problem.path);
  if (at === null) return blockCandidates(dress, problem);
  const { scope, key, param } = at;
  if (param === null) return [leaveOut(dress, key)];
  const field = stepField(key.step, param);
  const forAll = scope === 'party' && file.children.length > 1;
  const nearest = nearestAllowed(problem, dress.wish.units);
  return [
    ...(nearest === null
      ? []
      : [
          {
            family: 'nearest',
            label: { key: 'page.fit.repair.set', values: { field, value: nearest } },
            forAll,
            change: (draft: Draft<OrderFile>) => setParam(draft, scope, key, param, nearest),
          },
        ]),
    {
      family: 'rule',
      label: { key: forAll ? 'page.fit.repair.rule-all' : 'page.fit.repair.rule', values: { field } },
      forAll,
      change: (draft) => setParam(draft, scope, key, param, undefined),
    },
    leaveOut(dress, key),
  ];
}

function blockCandidates({ file, wish }: FaultyDress, problem: OrderProblem): readonly Candidate[] {
  const [, child, param] = /^(?:children\[(\d+)\]\.)?block\.(\w+)$/.exec(problem.path) ?? [];
  if (param === undefined) return [];
  const field: WordValue = { word: `page.block.${param}` };
  const forAll = child === undefined && file.children.length > 1;
  const nearest = nearestAllowed(problem, wish.units);
  const write = (value: string | number | null) => (draft: Draft<OrderFile>) => {
    const holder = child === undefined ? draft : draft.children[Number(child)];
    if (holder === undefined) return;
    const block: Record<string, string | number | boolean | undefined> = { ...holder.block };
    if (value === null) delete block[param];
    else block[param] = value;
    holder.block = block as NonNullable<OrderFile['block']>;
  };
  return [
    ...(nearest === null
      ? []
      : [
          {
            family: 'nearest',
            label: { key: 'page.fit.repair.set', values: { field, value: nearest } },
            forAll,
            change: write(nearest),
          },
        ]),
    {
      family: 'rule',
      label: { key: forAll ? 'page.fit.repair.rule-all' : 'page.fit.repair.rule', values: { field } },
      forAll,
      change: write(null),
    },
  ];
}

/** The end of the range that lies nearer to what was given. */
function nearestAllowed({ code, values }: OrderProblem, units: UnitSystem): string | number | null {
  if (code !== 'order.param.out-of-range') return null;
  const { value, least, most } = values;
  const plain = [value, least, most].map((one) =>
    typeof one === 'object' && 'mm' in one ? one.mm : typeof one === 'number' ? one : null,
  );
  const [given, low, high] = plain;
  if (given === null || given === undefined || low === null || low === undefined) return null;
  if (high === null || high === undefined) return null;
  const end = given < low ? low : high;
  return typeof value === 'object' ? formatLength(end, units) : end;
}
