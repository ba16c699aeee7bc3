import type { ClothAtHand, ClothRepeat, Flaw } from '../lay/index.ts';
import { fieldProblem, type OrderPlace } from './problem.ts';
import type { LengthReader } from './read-lengths.ts';
import type { ClothFile } from './schema.ts';

/** What is marked on a cloth, with all that is needed to read it. */
interface ClothMarks {
  readonly file: ClothFile;
  readonly usableWidth: number;
  readonly at: (...path: readonly (string | number)[]) => OrderPlace;
  readonly reader: LengthReader;
}

/** From a pin stripe to a woven panel, mm. */
const REPEATS: readonly [number, number] = [2, 2000];
/** As long as a bale, mm. */
const ALONG: readonly [number, number] = [0, 100_000];
const LEAST = 1;

/** Stripes begin at the cut end and the selvedge. */
export function repeatOf({ file, at, reader }: ClothMarks): ClothRepeat | null {
  const { along, across } = file.repeat ?? {};
  const read = (name: 'along' | 'across', given: string | number | undefined): ClothRepeat =>
    given === undefined
      ? {}
      : { [name]: { every: reader.length(at('repeat', name), given, REPEATS), first: 0 } };
  const repeat = { ...read('along', along), ...read('across', across) };
  return Object.keys(repeat).length === 0 ? null : repeat;
}

/** Each flaw as the rectangle that lies round it. */
export function flawsOf({ file, usableWidth, at, reader }: ClothMarks): readonly Flaw[] {
  return (file.flaws ?? []).map((flaw, i): Flaw => {
    const x = reader.length(at('flaws', i, 'fromEnd'), flaw.fromEnd, ALONG);
    const y = reader.length(at('flaws', i, 'fromSelvedge'), flaw.fromSelvedge, [0, Math.max(0, usableWidth)]);
    const along = reader.length(at('flaws', i, 'along'), flaw.along, [LEAST, ALONG[1]]);
    const across = reader.length(at('flaws', i, 'across'), flaw.across, [
      LEAST,
      Math.max(LEAST, usableWidth),
    ]);
    return {
      outline: [
        { x, y },
        { x: x + along, y },
        { x: x + along, y: y + across },
        { x, y: y + across },
      ],
    };
  });
}

/** Less than a hand's breadth is no length to lay anything on, mm. */
const SHORTEST = 50;

/** Each is a length of the whole width, or a leftover by its corners. */
export function atHandOf({ file, at, reader }: ClothMarks): readonly ClothAtHand[] {
  return (file.atHand ?? []).map(({ length, corners }, i): ClothAtHand => {
    if ((length === undefined) === (corners === undefined) || (corners?.length ?? 3) < 3) {
      reader.problems.push(fieldProblem(at('atHand', i), 'order.cloth.at-hand'));
      return {};
    }
    if (corners === undefined)
      return { length: reader.length(at('atHand', i, 'length'), length ?? 0, [SHORTEST, ALONG[1]]) };
    const remnant = corners.map((corner, k) => ({
      x: reader.length(at('atHand', i, 'corners', k, 'along'), corner.along, ALONG),
      y: reader.length(at('atHand', i, 'corners', k, 'across'), corner.across, ALONG),
    }));
    return { remnant };
  });
}
