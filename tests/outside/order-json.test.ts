import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJson } from '../../src/engine/order/read-json.ts';

/**
 * Judge: the JSON reader of the JavaScript engine (ECMA-404), over texts that are JSON, nearly JSON, and not. Only a
 * field that stands twice and nesting beyond any order may be treated otherwise.
 */
function judge(text: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return { ok: false };
  }
}

const SEED = { seed: 20270612, numRuns: 3000 };

function agrees(text: string): void {
  const read = readJson(text);
  if (!read.ok && (read.problem.code === 'field-twice' || read.problem.code === 'too-deep')) return;
  const judged = judge(text);
  expect(read.ok, text).toBe(judged.ok);
  if (read.ok && judged.ok) expect(read.value).toEqual(judged.value);
}

describe('the reader of JSON agrees with that of the engine', () => {
  it('on JSON, however it is spaced', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), fc.constantFrom(undefined, 2, '\t'), (text, space) => {
        agrees(text);
        agrees(JSON.stringify(JSON.parse(text), null, space));
      }),
      SEED,
    );
  });

  it('on JSON with one letter changed, lost or added', () => {
    const letter = fc.constantFrom(...'{}[],:"\\\n\t 0123456789.eE+-tfnaulsr\u0001\u00e9\u{1F457}');
    fc.assert(
      fc.property(
        fc.json({ maxDepth: 4 }),
        fc.nat(),
        fc.nat({ max: 1 }),
        fc.option(letter),
        (text, at, cut, put) => {
          const place = at % (text.length + 1);
          agrees(text.slice(0, place) + (put ?? '') + text.slice(place + cut));
        },
      ),
      SEED,
    );
  });

  it('on the hard places of the grammar', () => {
    const texts = [
      '01',
      '-',
      '-0',
      '1.',
      '.5',
      '1e',
      '1e5',
      '1E+2',
      '+1',
      '"\\u12g4"',
      '"\\u00e9"',
      '"\\x"',
      '"a\nb"',
    ];
    const more = [
      '"\u007f"',
      '"\u2028"',
      'tru',
      'nulll',
      '[1,]',
      '[,1]',
      '{,}',
      '{"a"}',
      '{"a":}',
      "{'a':1}",
      '//',
      ' ',
    ];
    for (const text of [...texts, ...more, '\u00a0{}', '{}\u0000', '"\\ud800"', '[[]]', '{"a":{}}'])
      agrees(text);
  });

  it('names the line and place of what is wrong', () => {
    expect(readJson('{\n  "a": 1\n  "b": 2\n}')).toEqual({
      ok: false,
      problem: { code: 'broken', line: 3, column: 3, found: '"b": 2' },
    });
    expect(readJson('{"a": [1, 2')).toEqual({ ok: false, problem: { code: 'ends-early', line: 1 } });
    expect(readJson('{"a": 1, "\\u0061": 2}')).toEqual({
      ok: false,
      problem: { code: 'field-twice', line: 1, field: 'a' },
    });
  });
});
