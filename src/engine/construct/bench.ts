import {
  add,
  between,
  curveBetween,
  curveThrough,
  direction,
  linePath,
  type Path,
  type Point,
  scale,
  type Vector,
} from '../geometry/index.ts';
import { type Ruler, roundToRuler } from '../units/index.ts';
import type { Saying, WordValues } from '../words/index.ts';
import type { DraftPart, DraftStep } from './draft-record.ts';
import { type Place, place } from './place.ts';

/**
 * The drafting bench: every construction step is computed and told in the same call, so that the drawing and
 * the instructions for drawing by hand can never differ. With a ruler, each distance is first rounded to what
 * that ruler can show, and the draft is the one that a hand would get.
 */
export interface Bench {
  /** Opens a new part; the steps that follow belong to it. */
  part(title: Saying, before?: readonly Path[]): void;
  /** A distance as the maker's ruler shows it; unchanged without a ruler. */
  rounded(mm: number): number;
  /** Sets the first place of a part, or one that the draft already has, at a known point. */
  start(name: string, at: Point): Place;
  from(origin: Place): Measuring;
  /** The point at share `t` of the straight way from a to b, told as "halfway" when t = 0.5. */
  partWay(a: Place, b: Place, t: number, name: string): Place;
  /** The point level with `row` and straight below or above `column`. */
  meeting(row: Place, column: Place, name: string): Place;
  straight(a: Place, b: Place, makes: string): Path;
  curve(places: readonly [Place, Place, ...Place[]], ends: CurveEnds, makes: string): Path;
  /** Tells a step that the caller computed; `key` is a sentence of the catalogue. */
  tell(key: string, values: WordValues, made?: { places?: readonly Place[]; lines?: readonly Path[] }): void;
  record(): readonly DraftPart[];
}

/** Travel directions at the two ends of a curve, with how they are said (`end.square-to-shoulder`, ...). */
export interface CurveEnds {
  readonly start: Vector;
  readonly end: Vector;
  readonly startWords: string;
  readonly endWords: string;
}

export interface Measuring {
  down(mm: number, name: string): Place;
  up(mm: number, name: string): Place;
  out(mm: number, name: string): Place;
  inward(mm: number, name: string): Place;
  toward(target: Place, mm: number, name: string): Place;
}

const DOWN: Vector = { x: 0, y: 1 };
const UP: Vector = { x: 0, y: -1 };
const OUT: Vector = { x: 1, y: 0 };
const INWARD: Vector = { x: -1, y: 0 };

export function createBench(ruler: Ruler | null = null): Bench {
  const parts: { title: Saying; before: readonly Path[]; steps: DraftStep[] }[] = [];
  const rounded = (mm: number): number => (ruler === null ? mm : roundToRuler(mm, ruler));

  const tell: Bench['tell'] = (key, values, made = {}) => {
    const current = parts.at(-1);
    if (current === undefined) throw new Error('A bench needs a part before its first step.');
    current.steps.push({ saying: { key, values }, places: made.places ?? [], lines: made.lines ?? [] });
  };

  const measured = (
    origin: Place,
    way: Vector,
    mm: number,
    name: string,
    verb: string,
    extra: WordValues = {},
  ): Place => {
    const length = rounded(mm);
    const made = place(name, add(origin.at, scale(way, length)));
    const values = { from: { word: origin.name }, length: { mm: length }, makes: { word: name }, ...extra };
    if (length === 0) tell('draft.stays', values, { places: [made] });
    else
      tell(`draft.${verb}`, values, {
        places: [made],
        lines: [linePath(origin.at, made.at)],
      });
    return made;
  };

  return {
    part: (title, before = []) => void parts.push({ title, before, steps: [] }),
    rounded,
    start: (name, at) => {
      const made = place(name, at);
      tell('draft.start', { makes: { word: name } }, { places: [made] });
      return made;
    },
    from: (origin) => ({
      down: (mm, name) => measured(origin, DOWN, mm, name, 'down'),
      up: (mm, name) => measured(origin, UP, mm, name, 'up'),
      out: (mm, name) => measured(origin, OUT, mm, name, 'out'),
      inward: (mm, name) => measured(origin, INWARD, mm, name, 'inward'),
      toward: (target, mm, name) =>
        measured(origin, direction(origin.at, target.at), mm, name, 'toward', {
          target: { word: target.name },
        }),
    }),
    partWay: (a, b, t, name) => {
      const made = place(name, between(a.at, b.at, t));
      const values = { from: { word: a.name }, to: { word: b.name }, makes: { word: name } };
      if (t === 0.5) tell('draft.halfway', values, { places: [made] });
      else tell('draft.part-way', { ...values, percent: t * 100 }, { places: [made] });
      return made;
    },
    meeting: (row, column, name) => {
      const made = place(name, { x: column.at.x, y: row.at.y });
      tell(
        'draft.meeting',
        { row: { word: row.name }, column: { word: column.name }, makes: { word: name } },
        { places: [made] },
      );
      return made;
    },
    straight: (a, b, makes) => {
      const path = linePath(a.at, b.at);
      const values = { from: { word: a.name }, to: { word: b.name }, makes: { word: makes } };
      tell('draft.straight', values, { lines: [path] });
      return path;
    },
    curve: (places, ends, makes) => {
      const [first, ...others] = places;
      const last = others[others.length - 1] as Place;
      const inner = others.slice(0, -1);
      const path =
        inner.length === 0
          ? curveBetween(first.at, ends.start, last.at, ends.end)
          : curveThrough(
              places.map((p) => p.at),
              ends,
            );
      const values = {
        from: { word: first.name },
        to: { word: last.name },
        makes: { word: makes },
        startWords: { word: ends.startWords },
        endWords: { word: ends.endWords },
      };
      const [through] = inner;
      if (through === undefined) tell('draft.curve', values, { lines: [path] });
      else tell('draft.curve-through', { ...values, through: { word: through.name } }, { lines: [path] });
      return path;
    },
    tell,
    record: () => parts,
  };
}
