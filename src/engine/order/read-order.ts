import type { EaseBounds } from '../check/index.ts';
import { ALLOWANCE_RANGE, type AllowanceTable, type OwnAllowances } from '../cut/index.ts';
import { finestRuler, RULERS, type Ruler, type UnitSystem } from '../units/index.ts';
import type { WordKey } from '../words/index.ts';
import { childNames } from './child-names.ts';
import { type Day, readDay } from './day.ts';
import { type FormResult, readForm } from './form-problems.ts';
import { keptLays } from './kept-lays.ts';
import { LARGEST_ORDER } from './largest-order.ts';
import { migrateOrder } from './migrate.ts';
import type { Order } from './order.ts';
import type { OrderPath } from './path.ts';
import { plainTextProblems } from './plain-text.ts';
import { aboutPlace, fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { readChildren } from './read-children.ts';
import { readCloths } from './read-cloths.ts';
import { type JsonProblem, readJson } from './read-json.ts';
import { createLengthReader, type LengthReader } from './read-lengths.ts';
import { readPaper } from './read-paper.ts';
import { ALLOWANCE_KINDS, CLOTH_ROLES, type OrderFile } from './schema.ts';
import { shown } from './shown.ts';

export type ReadOrder =
  | { readonly ok: true; readonly order: Order }
  /** `units`: those in which the maker writes, as far as they can be known; for telling the problems. */
  | { readonly ok: false; readonly units: UnitSystem; readonly problems: readonly OrderProblem[] };

const WHOLE: OrderPlace = { child: null, path: [] };

/**
 * Reads an order from the text of its file. Refuses what is not JSON, another version, unknown fields, texts that can't
 * be printed and lengths that can't be read, each with its place, what was found and what would do. Whether the
 * measurements can belong to a child and the dress can be made for her, `checkOrder` says.
 */
export function readOrder(text: string): ReadOrder {
  const read = readText(text);
  if (read.ok) return read;
  const units = /"units"\s*:\s*"in"/.test(text.slice(0, LARGEST_ORDER)) ? 'in' : 'cm';
  return { ...read, units };
}

type Refused = { readonly ok: false; readonly problems: readonly OrderProblem[] };

const refuse = (code: WordKey, values = {}): Refused => ({
  ok: false,
  problems: [aboutPlace(WHOLE, { key: code, values })],
});

function readText(text: string): Extract<ReadOrder, { ok: true }> | Refused {
  if (text.length > LARGEST_ORDER) return refuse('order.too-large', { most: LARGEST_ORDER / 1_000_000 });
  if (text.trim() === '') return refuse('order.empty');
  const json = readJson(text);
  if (!json.ok) return refuse(JSON_WORDS[json.problem.code], json.problem);
  return readValue(json.value);
}

/** The same for an order that has been read from its text already, or was never written down. */
export function readOrderValue(raw: unknown): ReadOrder {
  const read = readValue(raw);
  if (read.ok) return read;
  const isCm = typeof raw === 'object' && raw !== null && 'units' in raw && raw.units === 'cm';
  return { ...read, units: isCm ? 'cm' : 'in' };
}

/**
 * The file itself, as it was written, in the newest form; for a page that changes it field by field. Only the form is
 * looked at: what its texts say may still be nonsense, and `readOrderValue` finds that.
 */
export function readOrderFile(raw: unknown): FormResult {
  const opened = openFile(raw);
  return opened.ok ? readForm(opened.order, opened.placeOf) : opened;
}

function readValue(raw: unknown): Extract<ReadOrder, { ok: true }> | Refused {
  const opened = openFile(raw);
  if (!opened.ok) return opened;
  const form = readForm(opened.order, opened.placeOf);
  return form.ok ? resolveOrder(form.order, opened.names) : form;
}

type OpenedFile =
  | {
      readonly ok: true;
      readonly order: unknown;
      readonly names: readonly string[];
      readonly placeOf: (path: OrderPath) => OrderPlace;
    }
  | Refused;

/** Refuses what no order may hold, and brings older forms into the newest. */
function openFile(raw: unknown): OpenedFile {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return refuse('order.not-an-order');

  const names = childNames(
    'children' in raw && Array.isArray(raw.children) ? raw.children : [],
    (n) => `child ${n}`,
  );
  const placeOf = placesIn(raw, names);
  const unprintable = plainTextProblems(raw, placeOf);
  if (unprintable.length > 0) return { ok: false, problems: unprintable };
  const migrated = migrateOrder({ ...raw });
  if (!migrated.ok) {
    return migrated.code === 'no-version'
      ? refuse('order.no-version')
      : refuse('order.unknown-version', { found: migrated.found, known: migrated.known });
  }
  return { ok: true, order: migrated.order, names, placeOf };
}

const JSON_WORDS = {
  broken: 'order.broken',
  'ends-early': 'order.ends-early',
  'field-twice': 'order.field-twice',
  'too-deep': 'order.too-deep',
} as const satisfies Record<JsonProblem['code'], WordKey>;

/** Says of a path whose field it is, and which design step it leads into. */
function placesIn(raw: object, names: readonly string[]): (path: OrderPath) => OrderPlace {
  return (path) => {
    const [head, index] = path;
    const child = head === 'children' && typeof index === 'number' ? (names[index] ?? null) : null;
    const after = path.lastIndexOf('dress');
    const inStep = (field: string): unknown =>
      after < 0 || path.length <= after + 2 ? undefined : valueAt(raw, [...path.slice(0, after + 2), field]);
    const [step, as] = [inStep('step'), inStep('as')];
    if (typeof step !== 'string') return { child, path };
    return typeof as === 'string' ? { child, path, step, as } : { child, path, step };
  };
}

function valueAt(raw: unknown, path: OrderPath): unknown {
  return path.reduce<unknown>((value, part) => {
    const isThere = typeof value === 'object' && value !== null && Object.hasOwn(value, part);
    return isThere ? (value as Readonly<Record<string | number, unknown>>)[part] : undefined;
  }, raw);
}

const RULER_NAMES = {
  '1/16 in': RULERS.sixteenth,
  '1/8 in': RULERS.eighth,
  '1/4 in': RULERS.quarter,
  '1 mm': RULERS.millimetre,
  '5 mm': RULERS.fiveMillimetres,
} as const satisfies Record<NonNullable<OrderFile['ruler']>, Ruler>;

function resolveOrder(file: OrderFile, names: readonly string[]): Extract<ReadOrder, { ok: true }> | Refused {
  const reader = createLengthReader(file.units);
  const problems: OrderProblem[] = [];
  const dueDay = dayIn(file.dueDay, 'dueDay', problems);
  if (file.madeOn !== undefined) dayIn(file.madeOn, 'madeOn', problems);
  const { cloths, problems: clothProblems } = readCloths(file.cloths, file.units, reader);
  const { children, sizes, problems: childProblems } = readChildren(file, dueDay, names, reader);
  const { papers, printer, problems: paperProblems } = readPaper(file.paper, reader);
  const order: Order = {
    title: file.title.trim().normalize('NFC'),
    customer: file.customer?.trim().normalize('NFC') || null,
    dueDay: file.dueDay,
    madeOn: file.madeOn ?? null,
    units: file.units,
    ruler: file.ruler === undefined ? finestRuler(file.units) : RULER_NAMES[file.ruler],
    cloths,
    layTogether: file.layTogether !== 'child',
    children,
    sizes,
    fit: readFit(file.fit, reader),
    allowances: readAllowances(file.allowances, reader),
    papers,
    printer,
    rectangles: file.paper?.rectangles ?? null,
    pay: file.pay ?? {},
    lays: keptLays(file.lays ?? []),
  };
  problems.push(...reader.problems, ...clothProblems, ...childProblems, ...paperProblems);
  return problems.length === 0 ? { ok: true, order } : { ok: false, problems };
}

function dayIn(text: string, field: string, problems: OrderProblem[]): Day | null {
  const day = readDay(text);
  if (day === null)
    problems.push(fieldProblem({ child: null, path: [field] }, 'order.not-a-day', { found: shown(text) }));
  return day;
}

/** Bounds of ease that a maker may set, mm: from skin-tight to a loose smock. */
const EASES: readonly [number, number] = [0, 300];

function readFit(fit: OrderFile['fit'], reader: LengthReader): Order['fit'] {
  const bounds = (field: keyof EaseBounds): EaseBounds[typeof field] | null => {
    const given = fit?.[field];
    if (given === undefined) return null;
    const at = (end: 'from' | 'to'): OrderPlace => ({ child: null, path: ['fit', field, end] });
    const from = reader.length(at('from'), given.from, EASES);
    return [from, reader.length(at('to'), given.to, [from, EASES[1]])];
  };
  return { chestEase: bounds('chestEase'), waistEase: bounds('waistEase') };
}

function readAllowances(file: OrderFile['allowances'], reader: LengthReader): OwnAllowances {
  const table = (part: 'all' | (typeof CLOTH_ROLES)[number]): Partial<AllowanceTable> =>
    Object.fromEntries(
      ALLOWANCE_KINDS.flatMap((kind) => {
        const given = file?.[part]?.[kind];
        if (given === undefined) return [];
        const at: OrderPlace = { child: null, path: ['allowances', part, kind] };
        return [[kind, reader.length(at, given, ALLOWANCE_RANGE)]];
      }),
    );
  return { table: table('all'), cloth: Object.fromEntries(CLOTH_ROLES.map((role) => [role, table(role)])) };
}
