import { BLOCK_PARAMS } from '../block/index.ts';
import { findStep } from '../design/index.ts';
import { parseLength, type UnitSystem } from '../units/index.ts';
import type { ChildFile, ClothFile, OrderFile, PaperBlockFile, StepFile } from './schema.ts';

type Length = string | number;

/**
 * The order told in other units, with every length as long as before: a number without a unit gets the one that was
 * meant written after it. Nothing is rounded, so changing there and back is safe. The ruler follows the units.
 */
export function changeUnits(file: OrderFile, units: UnitSystem): OrderFile {
  if (file.units === units) return file;
  const kept = (given: Length): Length => withUnit(given, file.units, units);
  const { ruler: _, ...rest } = file;
  return {
    ...rest,
    ...changedBlocks(file, kept),
    units,
    cloths: file.cloths.map((cloth) => ({
      ...cloth,
      ...changedCloth(cloth, kept),
    })),
    ...(file.dress === undefined ? {} : { dress: changedSteps(file.dress, kept) }),
    children: file.children.map((child) => changedChild(child, kept)),
    ...(file.sizes?.heights === undefined
      ? {}
      : { sizes: { ...file.sizes, heights: file.sizes.heights.map(kept) } }),
    ...(file.fit === undefined ? {} : { fit: mapped(file.fit, (range) => mapped(range, kept)) }),
    ...(file.allowances === undefined
      ? {}
      : { allowances: mapped(file.allowances, (table) => mapped(table, kept)) }),
    ...(file.paper === undefined ? {} : { paper: changedPaper(file.paper, kept) }),
  };
}

type Keep = (given: Length) => Length;

/** Says the unit that was meant, where the number alone would be read in another. */
export function withUnit(given: Length, from: UnitSystem, to: UnitSystem): Length {
  const before = parseLength(given, from);
  const after = parseLength(given, to);
  if (!before.ok || (after.ok && after.mm === before.mm)) return given;
  return `${typeof given === 'number' ? given : given.trim()} ${from}`;
}

/** The same fields with other values; a field that is not there stays away. */
function mapped<T extends object>(table: T, change: (value: NonNullable<T[keyof T]>) => unknown): T {
  return Object.fromEntries(
    Object.entries(table).map(([name, value]) => [name, value === undefined ? value : change(value)]),
  ) as T;
}

function changedCloth({ width, usableWidth, gap, repeat, flaws, atHand }: ClothFile, kept: Keep) {
  return {
    width: kept(width),
    ...(usableWidth === undefined ? {} : { usableWidth: kept(usableWidth) }),
    ...(gap === undefined ? {} : { gap: kept(gap) }),
    ...(repeat === undefined ? {} : { repeat: mapped(repeat, kept) }),
    ...(flaws === undefined ? {} : { flaws: flaws.map((flaw) => mapped(flaw, kept)) }),
    ...(atHand === undefined
      ? {}
      : {
          atHand: atHand.map(({ length, corners }) => ({
            ...(length === undefined ? {} : { length: kept(length) }),
            ...(corners === undefined ? {} : { corners: corners.map((corner) => mapped(corner, kept)) }),
          })),
        }),
  };
}

function changedChild(child: ChildFile, kept: Keep): ChildFile {
  return {
    ...child,
    ...changedBlocks(child, kept),
    ...(child.measures === undefined ? {} : { measures: mapped(child.measures, kept) }),
    ...(child.earlier === undefined
      ? {}
      : { earlier: child.earlier.map((old) => ({ ...old, measures: mapped(old.measures, kept) })) }),
    ...(child.dress === undefined ? {} : { dress: changedSteps(child.dress, kept) }),
  };
}

function changedBlocks({ block, paperBlock }: Pick<ChildFile, 'block' | 'paperBlock'>, kept: Keep) {
  return {
    ...(block === undefined ? {} : { block: changedBlock(block, kept) }),
    ...(paperBlock === undefined ? {} : { paperBlock: changedPaperBlock(paperBlock, kept) }),
  };
}

function changedBlock(block: NonNullable<ChildFile['block']>, kept: Keep): NonNullable<ChildFile['block']> {
  const changed = Object.entries(block).map(([name, value]) => {
    const isLength = BLOCK_PARAMS[name as keyof typeof BLOCK_PARAMS]?.kind === 'length';
    return [name, isLength && typeof value !== 'boolean' && value !== undefined ? kept(value) : value];
  });
  return Object.fromEntries(changed) as typeof block;
}

function changedPaperBlock(paper: PaperBlockFile, kept: Keep): PaperBlockFile {
  const { seamIncluded, closingIncluded, fits } = paper;
  return {
    ...paper,
    front: mapped(paper.front, kept),
    back: mapped(paper.back, kept),
    ...(seamIncluded === undefined ? {} : { seamIncluded: kept(seamIncluded) }),
    ...(closingIncluded === undefined ? {} : { closingIncluded: kept(closingIncluded) }),
    ...(fits?.measures === undefined ? {} : { fits: { ...fits, measures: mapped(fits.measures, kept) } }),
  };
}

function changedSteps(steps: readonly StepFile[], kept: Keep): StepFile[] {
  return steps.map((step) => {
    const params = findStep(step.step)?.params ?? {};
    const changed = Object.entries(step).map(([name, value]) => {
      const isLength = params[name]?.kind === 'length' && typeof value !== 'boolean' && value !== undefined;
      return [name, isLength ? kept(value) : value];
    });
    return Object.fromEntries(changed) as StepFile;
  });
}

function changedPaper(paper: NonNullable<OrderFile['paper']>, kept: Keep): NonNullable<OrderFile['paper']> {
  const { overlap, printerMeasured } = paper;
  return {
    ...paper,
    ...(overlap === undefined ? {} : { overlap: kept(overlap) }),
    ...(printerMeasured === undefined ? {} : { printerMeasured: mapped(printerMeasured, kept) }),
  };
}
