import { BLOCK_PARAMS, type BlockChoice, type OwnBlock, type OwnHalf } from '../block/index.ts';
import { type Body, type BodyInput, completeBody } from '../body/index.ts';
import { findDress, LIBRARY } from '../design/index.ts';
import { say } from '../words/index.ts';
import { type Day, monthsBetween, readDay } from './day.ts';
import { givenProblems } from './given-params.ts';
import { mergeSteps, type ReadSteps, readSteps, wornSteps } from './merge-steps.ts';
import type { OrderChild, PlacedBlock } from './order.ts';
import { fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { readGrowth, readMeasures } from './read-growth.ts';
import type { LengthReader } from './read-lengths.ts';
import type { ChildFile, OrderFile, OWN_FIELDS, PaperBlockFile } from './schema.ts';
import { shown } from './shown.ts';

export interface ReadChildren {
  readonly children: readonly OrderChild[];
  readonly sizes: readonly OrderChild[];
  readonly problems: readonly OrderProblem[];
}

/**
 * Reads the children, each with the order's block and dress and her own over them. An age is counted on the day on
 * which the dress is worn: that is when it must fit.
 */
export function readChildren(
  order: OrderFile,
  dueDay: Day | null,
  names: readonly string[],
  reader: LengthReader,
): ReadChildren {
  const problems: OrderProblem[] = [];
  const whole: OrderPlace = { child: null, path: [] };
  const party = readParty(order, whole, problems);
  const partyBlock = readBlock(order, whole, null, reader, problems);

  const children = order.children.map((file, i): OrderChild => {
    const name = names[i] ?? file.name;
    const at: OrderPlace = { child: name, path: ['children', i] };
    const own = readSteps({ steps: file.dress ?? [], at }, order.units);
    const merged = mergeSteps(party, own.steps, at);
    problems.push(...own.problems, ...merged.problems);
    const body = readBody(file, at, dueDay, reader, problems);
    return {
      name,
      ...readGrowth(order, file, at, body, problems),
      block: readBlock(file, at, partyBlock, reader, problems),
      steps: wornSteps(merged.steps),
      sewing: file.sewing ?? {},
      path: at.path,
    };
  });
  const sizes = readSizes(order, reader).map((size) => ({
    ...size,
    block: partyBlock,
    steps: wornSteps(party),
    sewing: {},
    growth: null,
  }));
  return { children, sizes, problems };
}

/** The dress of the order: one of the library with her list over it, or her list alone. */
function readParty(order: OrderFile, whole: OrderPlace, problems: OrderProblem[]): ReadSteps['steps'] {
  const { startFrom, dress = [], units } = order;
  const own = readSteps({ steps: dress, at: whole }, units);
  problems.push(...own.problems);
  if (startFrom === undefined) {
    if (dress.length === 0) problems.push(fieldProblem({ ...whole, path: ['dress'] }, 'order.no-dress'));
    return own.steps;
  }
  const begun = findDress(startFrom);
  if (begun === undefined) {
    const known = LIBRARY.map(({ id }) => id);
    const values = { found: startFrom, known: known.join(', ') };
    problems.push(fieldProblem({ ...whole, path: ['startFrom'] }, 'order.start-from', values));
    return own.steps;
  }
  const path = ['startFrom'];
  const steps = begun.steps.map((step) => ({ ...step, off: false, path, paths: {} }));
  const merged = mergeSteps(steps, own.steps, whole);
  problems.push(...merged.problems);
  return merged.steps;
}

/** The run of sizes, from the smallest, each named by what it is picked by. */
function readSizes(
  { sizes, units }: OrderFile,
  reader: LengthReader,
): readonly Pick<OrderChild, 'name' | 'body' | 'path'>[] {
  const heights = (sizes?.heights ?? []).flatMap((given, i) => {
    const path = ['sizes', 'heights', i];
    const height = reader.anyLength({ child: null, path }, given);
    if (height === null) return [];
    const name = say('order.size.height', { height: { mm: height } }, units);
    return [
      { rank: height, name, path, body: { ageMonths: null, sex: 'girl' as const, measured: { height } } },
    ];
  });
  const ages = (sizes?.ageMonths ?? []).map((ageMonths, i) => {
    const name = say('order.size.age', { months: ageMonths }, units);
    const body = { ageMonths, sex: 'girl' as const, measured: {} };
    return { rank: ageMonths, name, path: ['sizes', 'ageMonths', i], body };
  });
  return [...heights, ...ages].toSorted((a, b) => a.rank - b.rank);
}

function readBody(
  file: ChildFile,
  at: OrderPlace,
  dueDay: Day | null,
  reader: LengthReader,
  problems: OrderProblem[],
): BodyInput {
  const measured = readMeasures(file.measures, { ...at, path: [...at.path, 'measures'] }, reader);
  if (file.measured !== undefined && readDay(file.measured) === null) {
    const place = { ...at, path: [...at.path, 'measured'] };
    problems.push(fieldProblem(place, 'order.not-a-day', { found: shown(file.measured) }));
  }
  return { ageMonths: ageOf(file, at, dueDay, problems), sex: file.sex ?? 'girl', measured };
}

function ageOf(file: ChildFile, at: OrderPlace, dueDay: Day | null, problems: OrderProblem[]): number | null {
  const born = { ...at, path: [...at.path, 'born'] };
  if (file.born !== undefined && file.ageMonths !== undefined) {
    problems.push(fieldProblem(born, 'order.age-twice'));
    return null;
  }
  if (file.born === undefined) return file.ageMonths ?? null;
  const day = readDay(file.born);
  if (day === null) {
    problems.push(fieldProblem(born, 'order.not-a-day', { found: shown(file.born) }));
    return null;
  }
  if (dueDay === null) return null;
  const months = monthsBetween(day, dueDay);
  if (months >= 0) return months;
  problems.push(fieldProblem(born, 'order.born-after-due', { found: file.born }));
  return null;
}

/** The block that an order or a child asks for; a child's numbers go over those of the order's drafted block. */
function readBlock(
  { block, paperBlock }: Pick<ChildFile, 'block' | 'paperBlock'>,
  at: OrderPlace,
  party: PlacedBlock | null,
  reader: LengthReader,
  problems: OrderProblem[],
): PlacedBlock {
  if (block !== undefined && paperBlock !== undefined) {
    problems.push(fieldProblem({ ...at, path: [...at.path, 'paperBlock'] }, 'order.block-twice'));
  }
  if (paperBlock !== undefined) {
    const path = [...at.path, 'paperBlock'];
    return {
      choice: {
        kind: 'own',
        own: readPaperBlock(paperBlock, { ...at, path }, reader),
        fits: readFits(paperBlock, { ...at, path: [...path, 'fits'] }, reader, problems),
      },
      path,
      paths: {},
    };
  }
  const path = [...at.path, 'block'];
  const before = party?.choice.kind === 'drafted' ? party : null;
  if (block === undefined && party !== null) return party;
  const own = Object.fromEntries(
    Object.entries(block ?? {}).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
  const given = before?.choice.kind === 'drafted' ? { ...before.choice.given, ...own } : own;
  problems.push(...givenProblems(BLOCK_PARAMS, own, { ...at, path }, reader.units));
  const choice: BlockChoice = { kind: 'drafted', given };
  const paths = Object.fromEntries(Object.keys(own).map((name) => [name, [...path, name]]));
  return { choice, path, paths: { ...before?.paths, ...paths } };
}

/** The body of the child whom a paper block fits; null where the file does not say, and the block is used as it is. */
function readFits(
  { fits }: PaperBlockFile,
  at: OrderPlace,
  reader: LengthReader,
  problems: OrderProblem[],
): Body | null {
  if (fits === undefined) return null;
  const measured = readMeasures(fits.measures, { ...at, path: [...at.path, 'measures'] }, reader);
  const completed = completeBody({ ageMonths: fits.ageMonths ?? null, measured });
  if (completed.ok) return completed.body;
  problems.push(fieldProblem(at, 'order.block-fits'));
  return null;
}

/** No side of a child's bodice is longer than this, mm; what does not fit together the block room says. */
const LONGEST_SIDE = 800;
/** Seam allowances on paper blocks go up to 1 in, those of a closing to 2 in (common practice, no source). */
const WIDEST_ALLOWANCE = 60;

function readPaperBlock(file: PaperBlockFile, at: OrderPlace, reader: LengthReader): OwnBlock {
  const half = (side: 'front' | 'back'): OwnHalf => {
    const read = (field: (typeof OWN_FIELDS)[number]): number => {
      const least = field === 'armholeHollow' || field === 'shoulderFall' ? 0 : 5;
      return reader.length({ ...at, path: [...at.path, side, field] }, file[side][field], [
        least,
        LONGEST_SIDE,
      ]);
    };
    return {
      neckWidth: read('neckWidth'),
      neckDepth: read('neckDepth'),
      shoulder: read('shoulder'),
      shoulderFall: read('shoulderFall'),
      armholeDepth: read('armholeDepth'),
      armholeHollow: read('armholeHollow'),
      chestWidth: read('chestWidth'),
      waistWidth: read('waistWidth'),
      sideWaistLevel: read('sideWaistLevel'),
      centreLength: read('centreLength'),
    };
  };
  const allowance = (field: 'seamIncluded' | 'closingIncluded'): number =>
    reader.length({ ...at, path: [...at.path, field] }, file[field] ?? 0, [0, WIDEST_ALLOWANCE]);
  return {
    front: half('front'),
    back: half('back'),
    seamIncluded: allowance('seamIncluded'),
    closingIncluded: allowance('closingIncluded'),
  };
}
