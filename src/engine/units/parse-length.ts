import { centimetres, inches, type UnitSystem } from './system.ts';

/** Why a typed length is not taken. `code` is also the key of its sentence, `values` fill it. */
export type LengthProblem =
  | { readonly code: 'length.empty'; readonly values: Readonly<Record<string, never>> }
  | {
      readonly code:
        | 'length.not-a-number'
        | 'length.negative'
        | 'length.several-numbers'
        | 'length.bad-fraction'
        | 'length.ambiguous-comma'
        | 'length.unknown-unit';
      readonly values: { readonly text: string };
    }
  | {
      readonly code: 'length.too-large';
      readonly values: { readonly text: string; readonly most: { readonly mm: number } };
    };

export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  | { readonly ok: false; readonly problem: LengthProblem };

/** No length on a child's dress, nor of the cloth for it, comes near 20 m: a larger number is a slip. */
const LONGEST_MM = 20_000;

/** Finer than 1/64 in no tape or ruler is divided. */
const LARGEST_DENOMINATOR = 64;

/** The written names of the units; `undefined` for any other word. Feet are left out: 5' is no dress measure. */
const UNITS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...['in', 'ins', 'inch', 'inches', '"', "''"].map((name): [string, Unit] => [name, 'in']),
  ...['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((name): [string, Unit] => [
    name,
    'cm',
  ]),
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((name): [string, Unit] => [
    name,
    'mm',
  ]),
]);

type Unit = UnitSystem | 'mm';

const FRACTION_CHARACTERS: ReadonlyMap<string, string> = new Map([
  ['½', '1/2'],
  ['⅓', '1/3'],
  ['⅔', '2/3'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅕', '1/5'],
  ['⅖', '2/5'],
  ['⅗', '3/5'],
  ['⅘', '4/5'],
  ['⅙', '1/6'],
  ['⅚', '5/6'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
]);

/**
 * Reads a length as makers write it: `20 1/2`, `20-1/2"`, `20½ in`, `20.5`, `20,5`, `3/4`, `52 cm`, `520mm`.
 * Without a written unit, and for a bare number, `system` is meant. Zero is a length.
 * Refuses what could be read two ways rather than guess: several numbers, `201/2` (a fraction must be less
 * than one), `1,250` (thousands or decimals), feet and other units; also negative lengths and anything over 20 m.
 */
export function parseLength(text: string | number, system: UnitSystem): ParsedLength {
  if (typeof text === 'number') return lengthFrom(text, String(text), system);
  const shown = text.trim();
  if (shown === '') return { ok: false, problem: { code: 'length.empty', values: {} } };
  const plain = plainCharacters(shown);
  if (!/\d/.test(plain)) return refuse('length.not-a-number', shown);
  if (/^-/.test(plain)) return refuse('length.negative', shown);

  const [, amount = '', unitName = ''] = /^(.*\d[.,]?)\s*(\D*)$/.exec(plain) ?? [];
  const unit = unitName === '' ? system : UNITS.get(unitName.replace(/\.$/, ''));
  const read = readAmount(amount);
  if (typeof read === 'string') return refuse(read, shown);
  return unit === undefined ? refuse('length.unknown-unit', shown) : lengthFrom(read, shown, unit);
}

/** Lower case, one sort of slash, dash, inch mark and space, and fractions spelled out. */
function plainCharacters(text: string): string {
  return text
    .toLowerCase()
    .replace(/[−–‐‑]/g, '-')
    .replace(/(?<=\d)[\s-]?([½⅓⅔¼¾⅕-⅚⅛-⅞])/g, ' $1')
    .replace(/[½⅓⅔¼¾⅕-⅚⅛-⅞]/g, (character) => FRACTION_CHARACTERS.get(character) ?? character)
    .replace(/\s*[⁄∕/]\s*/g, '/')
    .replace(/[″”“]/g, '"')
    .replace(/[′’]/g, "'")
    .replace(/\s+/g, ' ')
    .trim();
}

type AmountProblem = Exclude<LengthProblem['code'], 'length.empty' | 'length.too-large'>;

/** Reads `20`, `20.5`, `20,5`, `1/2`, `20 1/2` or `20-1/2`; otherwise says what is wrong. */
function readAmount(amount: string): number | AmountProblem {
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/.test(amount)) return 'length.ambiguous-comma';
  if (/^(\d+[.,]?\d*|[.,]\d+)$/.test(amount)) return Number(amount.replace(',', '.'));

  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(amount);
  if (mixed !== null) {
    const [whole, numerator, denominator] = [mixed[1] ?? 0, mixed[2], mixed[3]].map(Number);
    if (whole === undefined || numerator === undefined || denominator === undefined)
      return 'length.bad-fraction';
    const sensible = numerator < denominator && denominator <= LARGEST_DENOMINATOR;
    return sensible ? whole + numerator / denominator : 'length.bad-fraction';
  }

  const besideOneFraction = amount.replace(/\d+\/\d+/, ' ');
  if ((besideOneFraction.match(/\d+([.,]\d+)?/g) ?? []).length > 1) return 'length.several-numbers';
  return amount.includes('/') ? 'length.bad-fraction' : 'length.not-a-number';
}

function lengthFrom(n: number, shown: string, unit: Unit): ParsedLength {
  if (Number.isNaN(n)) return refuse('length.not-a-number', shown);
  if (n < 0) return refuse('length.negative', shown);
  const mm = unit === 'mm' ? n : unit === 'cm' ? centimetres(n) : inches(n);
  if (mm <= LONGEST_MM) return { ok: true, mm };
  return {
    ok: false,
    problem: { code: 'length.too-large', values: { text: shown, most: { mm: LONGEST_MM } } },
  };
}

function refuse(code: AmountProblem, text: string): ParsedLength {
  return { ok: false, problem: { code, values: { text } } };
}
