import { describe, expect, it } from 'vitest';
import { BAD_FACTS } from '../../../tests/fixtures/bad-facts.ts';
import { BAD_FORMS } from '../../../tests/fixtures/bad-forms.ts';
import { spoil } from '../../../tests/fixtures/bad-order.ts';
import { changedExample, EXAMPLE_TEXT } from '../../../tests/fixtures/example-order.ts';
import { checkOrder, type OrderProblem, problemSentence, readOrder } from './index.ts';

/** Everything that is wrong with an order, whether it shows when it is read or when it is drawn. */
function problemsOf(text: string): {
  readonly problems: readonly OrderProblem[];
  readonly sentences: readonly string[];
} {
  const read = readOrder(text);
  const units = read.ok ? read.order.units : read.units;
  const report = read.ok ? checkOrder(read.order, '2027-01-01') : read;
  const problems = report.ok ? [] : report.problems;
  return { problems, sentences: problems.map((problem) => problemSentence(problem, units)) };
}

describe('an order that cannot be used', () => {
  it.each([...BAD_FORMS, ...BAD_FACTS])('$what', ({ change, code, child, path, says }) => {
    const { problems, sentences } = problemsOf(changedExample((order) => spoil(order, change)));
    expect(problems[0]).toMatchObject({ code, child, path });
    expect(sentences[0]).toMatch(says);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/[.?]( \[\S+\])?$/);
      expect(sentence).not.toMatch(/undefined|NaN|\[object|order\.|body\./);
    }
  });

  it('finds every problem of the form at once', () => {
    const { problems } = problemsOf(
      changedExample((o) => {
        delete o.title;
        o.children[0].measures.chest = 20;
        o.cloths[2].kind = 'felt';
      }),
    );
    expect(problems.map(({ path }) => path)).toEqual([
      'title',
      'cloths[2].kind',
      'children[0].measures.chest',
    ]);
  });

  it('finds the impossible measures of every child at once', () => {
    const { problems } = problemsOf(
      changedExample((o) => {
        o.children[0].measures.height = '200';
        o.children[4].measures.headGirth = '2';
      }),
    );
    expect(problems.map(({ child }) => child)).toEqual(['Amina', 'Noor']);
  });

  it.each([
    ['nothing', '', /empty/],
    ['a list', '[]', /not an order/],
    ['null', 'null', /not an order/],
    ['a comma too many', '{\n  "frockwright": 1,\n}', /^Line 3, place 1: .*"}"/],
    ['a comma missing', EXAMPLE_TEXT.replace('"units": "in",', '"units": "in"'), /^Line 7, place 3: .*ruler/],
    [
      'a file cut off',
      EXAMPLE_TEXT.slice(0, EXAMPLE_TEXT.lastIndexOf(']')),
      /ends at line \d+ before the order does/,
    ],
    ['a field twice', EXAMPLE_TEXT.replace('"waistGirth": "18"', '"height": "18"'), /"height" stands twice/],
    ['brackets without end', '['.repeat(5000), /far deeper/],
    ['a file of three million letters', `{"title":"${'x'.repeat(3_000_000)}"}`, /larger than 2 MB/],
  ])('%s instead of an order', (_, text, says) => {
    expect(problemsOf(text).sentences).toEqual([expect.stringMatching(says)]);
  });

  it.each(['__proto__', 'constructor', 'toString', 'prototype'])(
    'a field called %s is never passed over',
    (name) => {
      const inOrder = EXAMPLE_TEXT.replace('"units"', `"${name}": {"polluted": true}, "units"`);
      const inStep = EXAMPLE_TEXT.replace('"step": "yoke", "line"', `"step": "yoke", "${name}": 1, "line"`);
      for (const text of [inOrder, inStep]) {
        expect(text).not.toBe(EXAMPLE_TEXT);
        const { problems } = problemsOf(text);
        expect(problems[0]?.code).toMatch(/forbidden-field|unknown-field/);
      }
      expect({}).not.toHaveProperty('polluted');
    },
  );
});
