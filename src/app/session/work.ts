import {
  type ChildDrawing,
  type ChildReport,
  drawChild,
  type Order,
  type OrderChild,
  type OrderFile,
  type OrderProblem,
  readOrderValue,
  reportOnDrawing,
} from '../../engine/order/index.ts';

/** What is known of one child's dress as the order stands. */
export interface ChildWork {
  /** As it will stand on the paper: told apart by a number where two children have one name. */
  readonly name: string;
  /** What lies on the table; the last that could be drawn, when `old`. Null when none ever could. */
  readonly drawing: ChildDrawing | null;
  /**
   * The dress drawn, checked and cut. While `pending` it is still that of the drawing before; a moment later its
   * garment and pieces are those of `drawing`. Null when none could ever be drawn.
   */
  readonly report: ChildReport | null;
  /** The drawing is of an earlier state: a number that was changed since cannot be used (see `problems`). */
  readonly old: boolean;
  /** Not yet checked since the last change. The child that is shown comes first, the others when there is time. */
  readonly pending: boolean;
  /** What keeps the dress from being drawn, each with the path of its field. */
  readonly problems: readonly OrderProblem[];
}

/** The engine's result for the whole order, one entry a child in the order of the file. */
export interface OrderWork {
  /** The order as read; the last that could be, when something outside the children cannot be read. */
  readonly order: Order | null;
  readonly children: readonly ChildWork[];
  /** Every problem of the order and of all children. */
  readonly problems: readonly OrderProblem[];
}

/** Draws what an order asks for, and remembers what has not changed. One for each open order. */
export interface Workbench {
  /**
   * Reads the order and draws the child that is shown, so that a changed number is on the screen in the same frame.
   * She is not checked yet, and the others not even drawn: they are `pending` where something must be done anew.
   */
  work(file: OrderFile, shown: number): OrderWork;
  /** Draws and checks one pending child more, the one that is shown first; null when there is none left. */
  workOn(): OrderWork | null;
}

/** What a child's dress rests on: while all of it is the same object, the dress is the same. */
type Grounds = readonly unknown[];

interface Remembered {
  readonly grounds: Grounds;
  /** Null while it is drawn and not yet checked, and where it can't be drawn. */
  readonly report: ChildReport | null;
  readonly drawing: ChildDrawing | null;
  readonly problems: readonly OrderProblem[];
}

/** The newest of a child that could be made. */
interface Good {
  readonly drawing: ChildDrawing;
  readonly report: ChildReport | null;
}

export function createWorkbench(today: string): Workbench {
  /** By child of the file: the newest result, and the newest that was a drawing. */
  let results = new Map<number, Remembered>();
  let good = new Map<number, Good>();
  let lastGood: OrderFile | null = null;
  let now: { file: OrderFile; read: ReadAround; shown: number } | null = null;

  const draw = (index: number): void => {
    if (now === null) return;
    const { file, read } = now;
    const child = read.children.get(index);
    if (read.order === null || child === undefined) return;
    const drawn = drawChild(read.order, child, today, good.get(index)?.drawing ?? null);
    const grounds = groundsOf(read.file, file, index, child);
    if (!drawn.ok) {
      results.set(index, { grounds, report: null, drawing: null, problems: drawn.problems });
      return;
    }
    const { drawing } = drawn;
    good.set(index, { drawing, report: good.get(index)?.report ?? null });
    results.set(index, { grounds, report: null, drawing, problems: [] });
  };

  const check = (index: number): void => {
    const result = results.get(index);
    const order = now?.read.order ?? null;
    if (order === null || result === undefined || result.drawing === null) return;
    const report = reportOnDrawing(order, result.drawing);
    results.set(index, { ...result, report });
    good.set(index, { drawing: result.drawing, report });
  };

  const isDrawn = (index: number): boolean => {
    if (now === null) return true;
    const { file, read } = now;
    const child = read.children.get(index);
    const remembered = results.get(index);
    return (
      child === undefined ||
      (remembered !== undefined && sameGrounds(remembered.grounds, groundsOf(read.file, file, index, child)))
    );
  };

  const isChecked = (index: number): boolean => {
    if (!isDrawn(index)) return false;
    const remembered = results.get(index);
    const isReadable = now?.read.children.has(index) === true && now.read.order !== null;
    return !isReadable || remembered?.drawing == null || remembered.report !== null;
  };

  const stateOf = (index: number): ChildWork => {
    if (now === null) throw new Error('An order is worked before it is told.');
    const { file, read } = now;
    const name = read.children.get(index)?.name ?? file.children[index]?.name ?? '';
    const unread = read.problems.filter(({ path }) => path.startsWith(`children[${index}]`));
    const { drawing = null, report = null } = good.get(index) ?? {};
    if (unread.length > 0) return { name, drawing, report, old: true, pending: false, problems: unread };
    const problems = isDrawn(index) ? (results.get(index)?.problems ?? []) : [];
    const pending = !isChecked(index);
    const unreadParty = read.problems.length > 0 && read.order === null;
    return { name, drawing, report, old: problems.length > 0 || unreadParty, pending, problems };
  };

  const tell = (): OrderWork => {
    if (now === null) throw new Error('An order is worked before it is told.');
    const children = now.file.children.map((_, index) => stateOf(index));
    const drawn = children.flatMap(({ problems }) => problems);
    const whole = now.read.problems.filter(({ path }) => !path.startsWith('children['));
    return { order: now.read.order, children, problems: [...whole, ...drawn] };
  };

  return {
    work(file, shown) {
      if (now !== null && now.file.children.length !== file.children.length) {
        ({ results, good } = moved(now.file, file, results, good));
        lastGood = null;
      }
      const read = readAround(file, lastGood);
      if (read.problems.length === 0) lastGood = file;
      now = { file, read, shown };
      if (!isDrawn(shown)) draw(shown);
      return tell();
    },
    workOn() {
      if (now === null) return null;
      const waiting = [now.shown, ...now.file.children.keys()].find((index) => !isChecked(index));
      if (waiting === undefined) return null;
      if (!isDrawn(waiting)) draw(waiting);
      check(waiting);
      return tell();
    },
  };
}

/** The fields of an order that no dress rests on. */
const NOT_DRAWN: readonly string[] = ['title', 'customer', 'children', 'sizes', 'paper', 'lays', 'pay'];

function groundsOf(read: OrderFile, file: OrderFile, index: number, child: OrderChild): Grounds {
  const shared = Object.entries(read)
    .filter(([name]) => !NOT_DRAWN.includes(name))
    .map(([, value]) => value);
  return [file.children[index], child.name, ...shared];
}

const sameGrounds = (a: Grounds, b: Grounds): boolean =>
  a.length === b.length && a.every((ground, i) => ground === b[i]);

/** Results follow their children when one is added or taken out. */
function moved(
  before: OrderFile,
  after: OrderFile,
  results: ReadonlyMap<number, Remembered>,
  good: ReadonlyMap<number, Good>,
): { results: Map<number, Remembered>; good: Map<number, Good> } {
  const follow = <T>(old: ReadonlyMap<number, T>): Map<number, T> =>
    new Map(
      after.children.flatMap((child, index): [number, T][] => {
        const value = old.get(before.children.indexOf(child));
        return value === undefined ? [] : [[index, value]];
      }),
    );
  return { results: follow(results), good: follow(good) };
}

/** As much of an order as can be read. */
interface ReadAround {
  readonly order: Order | null;
  /** The file that was read in the end. */
  readonly file: OrderFile;
  /** By their place in the file that was given. */
  readonly children: ReadonlyMap<number, OrderChild>;
  readonly problems: readonly OrderProblem[];
}

/**
 * Reads an order in which something may not be readable: a child with a bad field is held by her name alone, so that
 * the others keep their places, and a bad field of the party is taken from the last good order. So a slip in one place
 * does not take every drawing away.
 */
function readAround(file: OrderFile, lastGood: OrderFile | null): ReadAround {
  const read = readOrderValue(file);
  if (read.ok) return { order: read.order, file, children: childrenOf(read.order, new Set()), problems: [] };
  const { problems } = read;
  const bad = new Set(problems.flatMap(({ path }) => /^children\[(\d+)\]/.exec(path)?.[1] ?? []).map(Number));
  const fields = new Set(problems.map(({ path }) => /^\w+/.exec(path)?.[0] ?? ''));
  fields.delete('children');
  const party = lastGood === null ? [] : Object.entries(lastGood).filter(([name]) => fields.has(name));
  const children = file.children.map((child, index) => (bad.has(index) ? { name: child.name } : child));
  const mended: OrderFile = { ...file, ...Object.fromEntries(party), children };
  const again = readOrderValue(mended);
  if (!again.ok) return { order: null, file, children: new Map(), problems };
  return { order: again.order, file: mended, children: childrenOf(again.order, bad), problems };
}

const childrenOf = (order: Order, leftOut: ReadonlySet<number>): ReadonlyMap<number, OrderChild> =>
  new Map([...order.children.entries()].filter(([index]) => !leftOut.has(index)));
