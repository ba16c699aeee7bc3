import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatLength,
  lengthParts,
  MM_PER_INCH,
  parseLength,
  RULERS,
  type RulerName,
  roundToRuler,
  type UnitSystem,
} from './index.ts';

const SEED = { seed: 20260501 };

describe('reading a length', () => {
  const inInches: [string | number, number][] = [
    ['20 1/2', 20.5],
    ['20 1/2in', 20.5],
    ['20-1/2"', 20.5],
    ['20–1/2″', 20.5],
    ['20½', 20.5],
    ['20-½', 20.5],
    ['20–½', 20.5],
    ['20 ½ in.', 20.5],
    ['20 1⁄2', 20.5],
    ['20 1 / 2 Inches', 20.5],
    ['20.5', 20.5],
    ['20,5', 20.5],
    ['.5', 0.5],
    ['0,125', 0.125],
    ['1 1/2 in', 1.5],
    ['3/4', 0.75],
    ['⅞', 0.875],
    ['2 3/16 "', 2.1875],
    ["20''", 20],
    ['0', 0],
    [20.5, 20.5],
  ];
  it.each(inInches)('%s in inches', (text, n) => {
    const read = parseLength(text, 'in');
    expect(read.ok && read.mm).toBeCloseTo(n * MM_PER_INCH, 9);
  });

  const inMillimetres: [string | number, UnitSystem, number][] = [
    ['52 cm', 'in', 520],
    ['52cm', 'cm', 520],
    ['520mm', 'in', 520],
    ['520 mm', 'cm', 520],
    ['52,5', 'cm', 525],
    ['20½', 'cm', 205],
    [52, 'cm', 520],
    ['10 in', 'cm', 254],
  ];
  it.each(inMillimetres)('%s, when %s is usual', (text, system, mm) => {
    const read = parseLength(text, system);
    expect(read.ok && read.mm).toBeCloseTo(mm, 9);
  });

  const refused: [string | number, string][] = [
    ['', 'length.empty'],
    ['   ', 'length.empty'],
    ['twenty', 'length.not-a-number'],
    ['in', 'length.not-a-number'],
    ['20 or so 3', 'length.several-numbers'],
    [Number.NaN, 'length.not-a-number'],
    [Number.POSITIVE_INFINITY, 'length.too-large'],
    ['1.2.3.', 'length.several-numbers'],
    ['-20', 'length.negative'],
    ['−20 1/2', 'length.negative'],
    ['-½', 'length.negative'],
    [-1, 'length.negative'],
    ['20 21', 'length.several-numbers'],
    ['20-21', 'length.several-numbers'],
    ['20 1/2 30', 'length.several-numbers'],
    ['1/2 1/4', 'length.several-numbers'],
    ['3\'6"', 'length.several-numbers'],
    ['20 in 1/2', 'length.bad-fraction'],
    ['20 1/0', 'length.bad-fraction'],
    ['201/2', 'length.bad-fraction'],
    ['20 3/2', 'length.bad-fraction'],
    ['20.5 1/2', 'length.bad-fraction'],
    ['1/2/3', 'length.bad-fraction'],
    ['20 1/1000', 'length.bad-fraction'],
    ['1,250', 'length.ambiguous-comma'],
    ['1,250.5 mm', 'length.ambiguous-comma'],
    ["3'", 'length.unknown-unit'],
    ['20 ft', 'length.unknown-unit'],
    ['20 kg', 'length.unknown-unit'],
    ['99999', 'length.too-large'],
    ['9'.repeat(400), 'length.too-large'],
  ];
  it.each(refused)('refuses %s: %s', (text, code) => {
    const read = parseLength(text, 'in');
    expect(read.ok ? read.mm : read.problem.code).toBe(code);
  });

  it('never throws and never returns a negative or unending length', () => {
    const characters = fc.constantFrom(...'0123456789 .,/-"\'½¾⁄−incmft');
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: characters }), fc.string()), (text) => {
        const read = parseLength(text, 'in');
        if (read.ok) expect(read.mm >= 0 && read.mm <= 20_000).toBe(true);
      }),
      { ...SEED, numRuns: 2000 },
    );
  });
});

describe('writing a length', () => {
  const written: [number, UnitSystem, RulerName | undefined, string][] = [
    [520.7, 'in', undefined, '20 1/2 in'],
    [19.05, 'in', undefined, '3/4 in'],
    [0, 'in', undefined, '0 in'],
    [-0.1, 'in', undefined, '0 in'],
    [25.39, 'in', undefined, '1 in'],
    [25.4 * 2.1875, 'in', undefined, '2 3/16 in'],
    [25.4 * 2.1875, 'in', 'eighth', '2 1/4 in'],
    [25.4 * 2.1875, 'in', 'quarter', '2 1/4 in'],
    [-12.7, 'in', undefined, '-1/2 in'],
    [520, 'cm', undefined, '52 cm'],
    [105, 'cm', undefined, '10.5 cm'],
    [104.96, 'cm', undefined, '10.5 cm'],
    [102, 'cm', 'fiveMillimetres', '10 cm'],
    [103, 'cm', 'fiveMillimetres', '10.5 cm'],
    [-4, 'cm', undefined, '-0.4 cm'],
    [12.7, 'cm', 'eighth', '1.3 cm'],
    [100, 'in', 'fiveMillimetres', '3 15/16 in'],
  ];
  it.each(written)('%d mm in %s on %s: %s', (mm, system, ruler, text) => {
    expect(formatLength(mm, system, ruler && RULERS[ruler])).toBe(text);
  });

  it('gives the parts of a fraction for setting in type', () => {
    expect(lengthParts(520.7, 'in')).toEqual({
      unit: 'in',
      negative: false,
      whole: 20,
      numerator: 1,
      denominator: 2,
    });
    expect(lengthParts(105, 'cm')).toEqual({ unit: 'cm', negative: false, decimal: '10.5' });
  });

  it('throws on what is no length', () => {
    expect(() => formatLength(Number.NaN, 'in')).toThrow('Not a length');
  });
});

describe('out and in again', () => {
  const rulers = fc.constantFrom(...Object.values(RULERS));
  const lengths = fc.double({ min: 0, max: 2000, noNaN: true });

  it('a written length is read as the nearest mark of its ruler', () => {
    fc.assert(
      fc.property(lengths, rulers, (mm, ruler) => {
        const read = parseLength(formatLength(mm, ruler.system, ruler), ruler.system);
        expect(read.ok).toBe(true);
        if (!read.ok) return;
        expect(read.mm).toBeCloseTo(roundToRuler(mm, ruler), 6);
        expect(Math.abs(read.mm - mm)).toBeLessThanOrEqual(ruler.step / 2 + 1e-6);
      }),
      { ...SEED, numRuns: 1000 },
    );
  });

  it('writing what was read gives the same text', () => {
    fc.assert(
      fc.property(lengths, rulers, (mm, ruler) => {
        const text = formatLength(mm, ruler.system, ruler);
        const read = parseLength(text, ruler.system);
        expect(read.ok && formatLength(read.mm, ruler.system, ruler)).toBe(text);
      }),
      { ...SEED, numRuns: 1000 },
    );
  });

  it('fractions are reduced and smaller than one', () => {
    fc.assert(
      fc.property(lengths, (mm) => {
        const parts = lengthParts(mm, 'in');
        if (parts.unit !== 'in' || parts.numerator === 0) return;
        expect(parts.numerator % 2).toBe(1);
        expect(parts.numerator).toBeLessThan(parts.denominator);
      }),
      { ...SEED, numRuns: 500 },
    );
  });
});
