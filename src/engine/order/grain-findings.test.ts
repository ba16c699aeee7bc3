import { expect, it } from 'vitest';
import { exampleOrder } from '../../../tests/fixtures/example-order.ts';
import { checkChild } from './check-order.ts';

const findings = (piece: string) => {
  const order = exampleOrder((raw) => {
    Object.assign(raw.cloths[0], { grain: [{ piece, lies: 'bias' }] });
  });
  const [child] = order.children;
  const checked = child === undefined ? null : checkChild(order, child, '2027-03-01');
  if (checked?.ok !== true) throw new Error('The example can be drawn.');
  return checked.report.findings.filter(({ code }) => code === 'order.cloth.grain-unknown');
};

it('a piece that may lie otherwise is looked for among those of its cloth, and one that there is not is told', () => {
  expect(findings('front')).toEqual([]);
  expect(findings('frnt').map(({ say }) => say)).toMatchObject([
    { key: 'order.cloth.grain-meant', values: { piece: 'frnt', meant: 'front', cloth: 'ivory satin' } },
  ]);
  expect(findings('zeppelin').map(({ say }) => say)).toMatchObject([
    { key: 'order.cloth.grain-unknown', values: { piece: 'zeppelin' } },
  ]);
});
