import type { ClothKind } from '../check/index.ts';
import type { SellingUnit } from '../lay/index.ts';
import type { ClothRole } from '../piece/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { OrderCloth } from './order.ts';
import { fieldProblem, type OrderPlace, type OrderProblem } from './problem.ts';
import { atHandOf, flawsOf, repeatOf } from './read-cloth-marks.ts';
import type { LengthReader } from './read-lengths.ts';
import type { ClothFile } from './schema.ts';
import { shown } from './shown.ts';

/** Ribbon loom to the widest net: 10 cm to 4 m (common practice, no source). */
const WIDTHS: readonly [number, number] = [100, 4000];

/** A selvedge is 1 to 1.5 cm wide on each side (common practice, no source). */
const SELVEDGE = 12;

/** In hundredths. Rayon takes up to 10 (a laundering handout); more is a slip of the pen. */
const MOST_SHRINKAGE = 20;

/** Cloth bought on top because it slips, in hundredths: 5 to 10 as a rule (common practice, no source). */
const MOST_EXTRA = 50;

/** Between two cutting lines, mm: room for the scissors, 1/4 in (common practice, no source). */
const GAP = 6.35;
const GAPS: readonly [number, number] = [0, 100];

/** Cloth that looks different from below and from above, so that all heads lie the same way (common practice). */
const ONE_WAY: readonly ClothKind[] = ['satin', 'velvet', 'taffeta'];

const SOLD_BY = {
  '1/8 yd': 'eighth-yard',
  '1/4 yd': 'quarter-yard',
  '10 cm': 'ten-centimetres',
  '50 cm': 'half-metre',
} as const satisfies Record<NonNullable<ClothFile['soldBy']>, SellingUnit>;

export interface ReadCloths {
  readonly cloths: readonly OrderCloth[];
  readonly problems: readonly OrderProblem[];
}

/** Reads the cloths; each has a name of its own, and every role is filled once, the main one for certain. */
export function readCloths(files: readonly ClothFile[], units: UnitSystem, reader: LengthReader): ReadCloths {
  const problems: OrderProblem[] = [];
  const cloths: OrderCloth[] = [];
  for (const [i, file] of files.entries()) {
    const at = (...path: readonly (string | number)[]): OrderPlace => ({
      child: null,
      path: ['cloths', i, ...path],
    });
    const name = file.name.trim().normalize('NFC');
    if (cloths.some((other) => sameWord(other.name, name))) {
      problems.push(fieldProblem(at('name'), 'order.cloth.same-name', { name }));
    }
    for (const [k, role] of file.use.entries()) {
      const rival = cloths.find((other) => other.roles.includes(role));
      if (rival !== undefined || file.use.indexOf(role) < k) {
        problems.push(
          fieldProblem(at('use', k), 'order.cloth.role-twice', { role, other: rival?.name ?? name }),
        );
      }
    }
    const shrinkage = file.shrinkage ?? 0;
    if (shrinkage < 0 || shrinkage > MOST_SHRINKAGE) {
      const values = { found: shown(shrinkage), least: 0, most: MOST_SHRINKAGE };
      problems.push(fieldProblem(at('shrinkage'), 'order.number-out-of-range', values));
    }
    const extra = file.extra ?? 0;
    if (extra < 0 || extra > MOST_EXTRA) {
      const values = { found: shown(extra), least: 0, most: MOST_EXTRA };
      problems.push(fieldProblem(at('extra'), 'order.number-out-of-range', values));
    }
    const width = reader.length(at('width'), file.width, WIDTHS);
    const usableWidth =
      file.usableWidth === undefined
        ? width - 2 * SELVEDGE
        : reader.length(at('usableWidth'), file.usableWidth, [
            WIDTHS[0] - 2 * SELVEDGE,
            Math.max(width, WIDTHS[0]),
          ]);
    const marks = { file, usableWidth, at, reader };
    const repeat = repeatOf(marks);
    const flaws = flawsOf(marks);
    cloths.push({
      name,
      roles: file.use,
      width,
      usableWidth,
      extra: extra / 100,
      ...wayOf(file),
      facesAlike: file.facesAlike ?? false,
      oneLength: file.oneLength ?? false,
      grain: new Map(file.grain?.map(({ piece, lies }) => [piece.trim(), lies])),
      folding: file.folding ?? 'single',
      selvedgesToMiddle: file.selvedgesToMiddle ?? false,
      gap: file.gap === undefined ? GAP : reader.length(at('gap'), file.gap, GAPS),
      ...(repeat === null ? {} : { repeat }),
      ...(flaws.length === 0 ? {} : { flaws }),
      atHand: atHandOf(marks),
      shrinkage: shrinkage / 100,
      unit: SOLD_BY[file.soldBy ?? (units === 'in' ? '1/8 yd' : '10 cm')],
      kind: file.kind ?? null,
    });
  }
  if (cloths.every((cloth) => !cloth.roles.includes('main'))) {
    problems.push(fieldProblem({ child: null, path: ['cloths'] }, 'order.cloth.no-main'));
  }
  return { cloths, problems };
}

function wayOf({ way, kind }: ClothFile): Pick<OrderCloth, 'way' | 'garmentOneWay'> {
  if (way === 'child-one-way') return { way: 'both-ways', garmentOneWay: true };
  return { way: way ?? (kind !== undefined && ONE_WAY.includes(kind) ? 'one-way' : 'both-ways') };
}

const sameWord = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** The cloth of a role; one that no cloth names is cut from the main cloth. */
export function clothOf(cloths: readonly OrderCloth[], role: ClothRole): OrderCloth {
  const cloth = cloths.find((c) => c.roles.includes(role)) ?? cloths.find((c) => c.roles.includes('main'));
  if (cloth === undefined) throw new Error('An order has a main cloth.');
  return cloth;
}
