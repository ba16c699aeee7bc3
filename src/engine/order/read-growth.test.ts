import { describe, expect, it } from 'vitest';
import { changedExample, exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { checkPages } from './check-pages.ts';
import { checkOrder, growthReport, growthSections, problemSentence, readOrder } from './index.ts';

const measuredInJanuary = (order: RawOrder): void => {
  order.children = order.children.slice(0, 2);
  for (const child of order.children) child.measured = '2027-01-20';
  order.children[1].weight = '33 lb';
};
const toTheDay = (order: RawOrder): void => {
  measuredInJanuary(order);
  order.growth = 'to-the-day';
};

function problemsOf(change: (order: RawOrder) => void): readonly string[] {
  const read = readOrder(changedExample(change));
  return read.ok ? [] : read.problems.map((problem) => problemSentence(problem, read.units));
}

describe('drafting for the day', () => {
  it('stays as measured unless the order says to grow', () => {
    const plain = exampleOrder((o) => {
      o.children = o.children.slice(0, 2);
    });
    for (const growth of [undefined, 'none']) {
      const order = exampleOrder((o) => {
        measuredInJanuary(o);
        if (growth !== undefined) o.growth = growth;
      });
      const measuresOf = ({ children }: typeof order) =>
        children.map(({ body }) => ({ ...body, weight: null }));
      expect(measuresOf(order)).toEqual(measuresOf(plain));
      expect(order.children.map((child) => child.growth?.drafted)).toEqual([null, null]);
    }
  });

  it('grows every measure to the due day, and says so among the findings and in the table of measures', () => {
    const [before, after] = [exampleOrder(measuredInJanuary), exampleOrder(toTheDay)];
    after.children.forEach(({ body }, i) => {
      const measured = before.children[i]?.body.measured ?? {};
      expect(Object.keys(body.measured)).toEqual(Object.keys(measured));
      expect(body.measured.height).toBeGreaterThan((measured.height ?? 0) + 20);
      expect(body.measured.chestGirth).toBeGreaterThan(measured.chestGirth ?? 0);
    });
    const report = checkOrder(after, '2027-01-21');
    if (!report.ok) throw new Error('Not drawn');
    for (const child of report.children) {
      expect(child.findings.map(({ code }) => code)).toContain('order.grown');
      const ink = {
        units: 'in',
        measure: { width: (text: string, size: number) => text.length * size * 0.5 },
      } as const;
      const paper = after.papers[0];
      if (paper === undefined) throw new Error('No paper');
      const pages = JSON.stringify(checkPages(child, paper, ink, '2027-01-21'));
      expect(pages).toContain('Grown from');
    }
  });

  it('grows a child whose age in months alone is known', () => {
    const order = exampleOrder((o) => {
      toTheDay(o);
      delete o.children[1].born;
      o.children[1].ageMonths = 40;
    });
    const [, girl] = order.children;
    expect(girl?.growth?.drafted?.grown.ages.event).toBeCloseTo(40, 1);
  });

  it('goes by American charts when the order says so', () => {
    const order = exampleOrder((o) => {
      toTheDay(o);
      o.growthCharts = 'us';
    });
    const from = order.children[1]?.growth?.drafted?.grown.values.height?.from;
    expect(from).toMatchObject({ reference: 'cdc-height' });
  });

  it('needs the day of measuring', () => {
    const order = exampleOrder((o) => {
      toTheDay(o);
      delete o.children[0].measured;
    });
    expect(order.children[0]?.growth).toBeNull();
    expect(growthReport(order, order.children[0] ?? notThere(), '2027-01-21')).toMatchObject({
      kind: 'no-days',
    });
  });

  it('refuses what growth can not be told of, with the child and what to do', () => {
    const [problem] = problemsOf((o) => {
      toTheDay(o);
      o.children[0].measured = '2025-11-01';
    });
    expect(problem).toMatch(
      /^Amina: the birthday, 2025-11-30, lies after the day of measuring, 2025-11-01\. Check/,
    );
    expect(
      problemsOf((o) => {
        toTheDay(o);
        o.children[0].weight = '24';
      }),
    ).toEqual([expect.stringMatching(/^Amina, weight: "24" is not a weight\. Write .*41 lb\./)]);
    expect(problemsOf((o) => Object.assign(o, { growth: 'fast' }))[0]).toContain('to-the-day');
  });
});

describe('the growth report', () => {
  it('says where the child stood, what it will measure, and advice, in the units of the order', () => {
    const order = exampleOrder(toTheDay);
    const child = order.children[1] ?? notThere();
    const report = growthReport(order, child, '2027-01-21');
    if (report.kind !== 'told') throw new Error(report.kind);
    expect(report.told.standing.map(({ measure }) => measure)).toEqual([
      'height',
      'weight',
      'headGirth',
      'upperArmGirth',
      'waistGirth',
    ]);
    // 33 lb, WHO girls of 36 months: between the middle, 13.9 kg, and +1 SD, 15.8 kg.
    const weight = report.told.standing[1];
    expect(weight?.value).toBeCloseTo(14.97, 2);
    expect(weight?.z).toBeGreaterThan(0);
    expect(weight?.z).toBeLessThan(1);
    const text = JSON.stringify(growthSections(child, report, 'in'));
    expect(text).toMatch(/give or take 1\/2 in/);
    expect(text).toMatch(/Turn the hem up .* in deeper/);
    expect(text).not.toMatch(/undefined|NaN/);
  });

  it('asks for more hem where the dress is drafted as measured', () => {
    const [measured, grown] = [exampleOrder(measuredInJanuary), exampleOrder(toTheDay)].map((order) => {
      const report = growthReport(order, order.children[1] ?? notThere(), '2027-01-21');
      return report.kind === 'told' ? (report.told.advice?.hem ?? 0) : 0;
    });
    expect(measured).toBeGreaterThan((grown ?? 0) + 5);
  });
});

function notThere(): never {
  throw new Error('No such child');
}

describe('refusals to grow and one size more', () => {
  const pathsOf = (change: (order: RawOrder) => void): readonly string[] => {
    const read = readOrder(changedExample(change));
    return read.ok ? [] : read.problems.map(({ path }) => path);
  };

  it('a refusal stands at the field that it is about', () => {
    expect(
      pathsOf((o) => {
        toTheDay(o);
        o.children[1].measures.height = '180 cm';
      }),
    ).toEqual(['children[1].measures.height']);
    expect(
      pathsOf((o) => {
        toTheDay(o);
        o.children[0].born = '2027-03-01';
      }),
    ).toEqual(['children[0].born']);
  });

  it('one size more is drafted larger than for the day, and says when the child has grown into it', () => {
    const day = exampleOrder(toTheDay);
    const more = exampleOrder((o) => {
      toTheDay(o);
      o.growth = 'one-size-more';
    });
    const heightOf = ({ children }: typeof day): number => children[0]?.body.measured.height ?? 0;
    expect(heightOf(more)).toBeGreaterThan(heightOf(day) + 20);
    const report = checkOrder(more, '2027-01-21');
    const codes = report.ok ? report.children[0]?.findings.map(({ code }) => code) : [];
    expect(codes).toEqual(expect.arrayContaining(['order.grown-size-more', 'growth.problem.size-more']));
  });
});
