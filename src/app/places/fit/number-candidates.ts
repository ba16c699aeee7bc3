import type { Check } from '../../../engine/check/index.ts';
import { type DressWish, findStep } from '../../../engine/design/index.ts';
import { finestRuler, formatLength, type UnitSystem } from '../../../engine/units/index.ts';
import { type ParamNow, type ParamRef, paramNow } from '../../table/index.ts';
import { type Candidate, childName, type FaultyDress, fieldWord, scopeFor, setNumber } from './candidate.ts';

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
export function numberCandidates(dress: FaultyDress, check: Check): readonly Candidate[] {
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
    change: (file) => setNumber(file, scope, ref, given),
  };
}
