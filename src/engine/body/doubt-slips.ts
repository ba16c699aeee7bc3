import type { Field, FieldId } from './doubt-fields.ts';
import { KG_PER_POUND } from './growth-input.ts';
import { MEASURES } from './measures.ts';
import type { BodyProblemCode } from './problem.ts';

/** A slip that may have happened: what was meant at some places instead of what is written. */
export interface Slip {
  readonly code: BodyProblemCode;
  readonly meant: readonly (readonly [place: number, value: number])[];
  /** How much better the fields must fit, in squared deviations, before it is thought of. */
  readonly price: number;
  /** Whose value it is, where another child's was written. */
  readonly whose?: string;
}

/** A value of another child that may have been written again. */
export interface OtherChild {
  readonly name: string;
  readonly measured: Readonly<Partial<Record<FieldId, number>>>;
}

/** The unit that was chosen over the unit that was meant, and how much too small or large the length came out. */
export const UNIT_SLIPS = [
  { code: 'body.meant-inches', factor: 2.54 },
  { code: 'body.meant-centimetres', factor: 1 / 2.54 },
  { code: 'body.meant-centimetres', factor: 10 },
  { code: 'body.meant-millimetres', factor: 1 / 10 },
  { code: 'body.meant-inches', factor: 25.4 },
  { code: 'body.meant-millimetres', factor: 1 / 25.4 },
] as const;

const SHEET_SLIPS = [
  { code: 'body.all-in-inches', factor: 2.54 },
  { code: 'body.all-in-centimetres', factor: 1 / 2.54 },
  { code: 'body.all-in-centimetres', factor: 10 },
  { code: 'body.all-in-millimetres', factor: 1 / 10 },
] as const;

const WEIGHT_SLIPS = [
  { code: 'body.weight-in-pounds', factor: KG_PER_POUND },
  { code: 'body.weight-in-kilos', factor: 1 / KG_PER_POUND },
] as const;

/** As squared deviations: 3.1 for a slip that is often made, more for one that might be many things. */
const USUAL = 9.5;
const SWAPPED = 11;
/**
 * Girths of about the same number are exchanged the most easily. The chest is left out: in the youngest it is as wide as
 * the waist. Set by bench/body.bench.ts: lower, one child in forty without a blunder is asked about.
 */
const BESIDE = 5;
const SAME_AS_OTHERS = 5;

/** Shoulder to elbow over shoulder to wrist, girls of 86 to 158 cm: 0.61 to 0.63 (Snyder 1977). */
const TO_THE_ELBOW = 0.62;

/** Every slip that the fields could hide. */
export function possibleSlips(fields: readonly Field[], others: readonly OtherChild[]): readonly Slip[] {
  return [
    ...fields.flatMap((field, place) => slipsOf(field, place, others)),
    ...sheetSlips(fields),
    ...swaps(fields),
    ...others.flatMap((other) => girthsOf(other, fields)),
  ];
}

function slipsOf({ id, value }: Field, place: number, others: readonly OtherChild[]): readonly Slip[] {
  const slip = (code: BodyProblemCode, meant: number, price = USUAL): Slip => ({
    code,
    meant: [[place, meant]],
    price,
  });
  if (id === 'age') return [];
  if (id === 'weight') return WEIGHT_SLIPS.map(({ code, factor }) => slip(code, value * factor));
  const isRound =
    MEASURES[id].kind === 'girth' || ['backWidth', 'frontChestWidth', 'shoulderWidth'].includes(id);
  return [
    ...UNIT_SLIPS.map(({ code, factor }) => slip(code, value * factor)),
    ...(isRound ? [slip('body.half-measured', value * 2), slip('body.measured-twice', value / 2)] : []),
    ...(id === 'armLength' ? [slip('body.arm-too-short', value / TO_THE_ELBOW)] : []),
    ...swappedDigits(value).map((meant) => slip('body.digits-swapped', meant)),
    ...others
      .filter(({ measured }) => measured[id] === value)
      .map(({ name }) => ({ ...slip('body.other-child', Number.NaN, SAME_AS_OTHERS), whose: name })),
  ];
}

/** The lengths that come of exchanging two neighbouring digits, in whichever unit the value was written. */
function swappedDigits(mm: number): readonly number[] {
  const found = [10, 25.4].flatMap((unit) => {
    const value = mm / unit;
    const whole = Math.floor(value + 1e-9);
    const rest = value - whole;
    const digits = String(whole);
    return [...digits].slice(1).flatMap((digit, i) => {
      const before = digits[i] ?? digit;
      if (before === digit) return [];
      return [(Number(`${digits.slice(0, i)}${digit}${before}${digits.slice(i + 2)}`) + rest) * unit];
    });
  });
  return [...new Set(found)];
}

/**
 * Several girths that are another child's to the mark, though the other is of another height. By chance two children
 * agree in one girth about once in twelve: their girths lie some 35 mm apart (Snyder 1977: 25 mm to either side of the
 * middle of an age), and are written to 5 mm. In squared deviations that is worth 2 ln 12, for each of them; the misfit
 * of so many girths together counts from their number, which it reaches by chance.
 */
function girthsOf({ name, measured }: OtherChild, fields: readonly Field[]): readonly Slip[] {
  const height = fields.find(({ id }) => id === 'height')?.value;
  if (height === undefined || measured.height === undefined) return [];
  if (Math.abs(height - measured.height) < OTHER_HEIGHT) return [];
  const places = fields.flatMap(({ id, value }, place) =>
    id !== 'age' && id !== 'weight' && MEASURES[id].kind === 'girth' && measured[id] === value ? [place] : [],
  );
  if (places.length < FEWEST_GIRTHS) return [];
  const price = OF_ANOTHER + places.length * (1 - SAME_GIRTH);
  return [
    { code: 'body.girths-of-other', meant: places.map((place) => [place, Number.NaN]), price, whose: name },
  ];
}

const SAME_GIRTH = 2 * Math.log(12);
/** So rare is it before anything is looked at, in squared deviations. */
const OF_ANOTHER = 25;
const FEWEST_GIRTHS = 3;
/** Nearer in height than this, two children may well have the same girths, mm. */
const OTHER_HEIGHT = 20;

/** Fewer lengths than this are no sheet. */
const SHEET = 3;

function sheetSlips(fields: readonly Field[]): readonly Slip[] {
  const lengths = fields.flatMap(({ id, value }, place) =>
    id === 'age' || id === 'weight' ? [] : [[place, value] as const],
  );
  if (lengths.length < SHEET) return [];
  return SHEET_SLIPS.map(({ code, factor }) => ({
    code,
    meant: lengths.map(([place, value]) => [place, value * factor] as const),
    price: USUAL,
  }));
}

function swaps(fields: readonly Field[]): readonly Slip[] {
  const isLength = ({ id }: Field): boolean => id !== 'age' && id !== 'weight';
  return fields.flatMap((a, i) =>
    fields.flatMap((b, j): Slip[] =>
      j <= i || !isLength(a) || !isLength(b) || a.value === b.value
        ? []
        : [
            {
              code: 'body.fields-swapped',
              meant: [
                [i, b.value],
                [j, a.value],
              ],
              price: isBeside(a, b) ? BESIDE : SWAPPED,
            },
          ],
    ),
  );
}

const LARGE_GIRTHS: readonly FieldId[] = ['waistGirth', 'hipGirth', 'headGirth'];
const isBeside = (a: Field, b: Field): boolean => LARGE_GIRTHS.includes(a.id) && LARGE_GIRTHS.includes(b.id);
