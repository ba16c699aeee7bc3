import { describe, expect, it } from 'vitest';
import { changedExample, exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import { tell } from '../design/index.ts';
import { checkOrder, makePack, problemSentence, readOrder } from './index.ts';

const point = (as: string | undefined, more: Record<string, unknown> = {}) => ({
  step: 'move-point',
  ...(as === undefined ? {} : { as }),
  ...more,
});

const sentences = (change: (order: RawOrder) => void): readonly string[] => {
  const read = readOrder(changedExample(change));
  return read.ok ? [] : read.problems.map((problem) => problemSentence(problem, read.units));
};

const movesOf = (change: (order: RawOrder) => void, child: number) =>
  exampleOrder(change)
    .children[child]?.steps.filter(({ step }) => step === 'move-point')
    .map(({ as, given }) => ({ as, ...given })) ?? [];

describe('changes that may stand several times', () => {
  it('are told apart by the names that she gives them', () => {
    const moves = movesOf((o) => {
      o.dress.push(
        point(undefined),
        point('front point', { down: '1/2' }),
        point('back point', { piece: 'back' }),
      );
    }, 0);
    expect(moves).toEqual([
      { as: undefined },
      { as: 'front point', down: '1/2' },
      { as: 'back point', piece: 'back' },
    ]);
  });

  it('need a name from the second on, and one of their own', () => {
    expect(sentences((o) => o.dress.push(point(undefined), point(undefined)))[0]).toMatch(
      /second time.*"as"/,
    );
    expect(sentences((o) => o.dress.push(point('a'), point('a')))[0]).toMatch(
      /two changes.*"a".*another name/,
    );
    expect(sentences((o) => o.dress.push(point('a', { az: 1 })))[0]).toMatch(
      /^Move a corner "a".*no field.*"az"/,
    );
    expect(sentences((o) => o.dress.push({ ...point('a'), ass: 'b' }))[0]).toMatch(/"as" meant/);
    expect(sentences((o) => o.dress.push(point('')))[0]).toMatch(/empty/);
  });

  it('other steps take no name', () => {
    expect(
      sentences((o) => {
        o.dress[0].as = 'mine';
      })[0],
    ).toMatch(/stands once.*Take "as" out/);
  });

  it('are overridden, switched off and added to by name for one child', () => {
    const change = (o: RawOrder) => {
      o.dress.push(point('a', { down: '1/2', edge: 'waist' }), point('b'));
      o.children[1].dress = [point('a', { down: '1' }), point('b', { off: true }), point('c')];
    };
    expect(movesOf(change, 0).map(({ as }) => as)).toEqual(['a', 'b']);
    expect(movesOf(change, 1)).toEqual([{ as: 'a', down: '1', edge: 'waist' }, { as: 'c' }]);
    const absent = sentences((o) => {
      o.children[1].dress = [point('d', { off: true })];
    });
    expect(absent[0]).toMatch(/switched off, but/);
  });
});

describe('a change that one body does not allow', () => {
  const order = exampleOrder((o) => {
    o.dress.push(
      { step: 'add-dart', as: 'front dart', width: '3/8', length: '4 3/4' },
      { step: 'rename-piece', as: 'her name', name: 'Bodice front' },
    );
  });
  const report = checkOrder(order, '2027-01-01');
  if (!report.ok) throw new Error('A change of hers stopped the order.');

  it('is left out for her with a warning that names it; her dress and the others go on', () => {
    const warned = report.children.filter(({ findings }) =>
      findings.some(({ level, code }) => level === 'warn' && code.startsWith('add-dart.')),
    );
    expect(warned.length).toBeGreaterThan(0);
    expect(warned.length).toBeLessThan(report.children.length);
    for (const { findings, pieces } of warned) {
      const found = findings.find(({ code }) => code.startsWith('add-dart.'));
      expect(found && tell(found.say, 'in')).toMatch(/A dart more "front dart".*\[dress\[\d+\]\]$/);
      expect(found?.todo && tell(found.todo, 'in')).toMatch(/without this change/);
      expect(pieces.some(({ label }) => label.title === 'Bodice front')).toBe(true);
    }
  });

  it('numbers that no body allows are refused, by the name of the change', () => {
    const wrong = exampleOrder((o) => {
      o.dress.push({ step: 'add-dart', as: 'front dart', width: '50' });
    });
    const checked = checkOrder(wrong, '2027-01-01');
    if (checked.ok) throw new Error('A dart of 50 in was taken.');
    expect(checked.problems.map((problem) => problemSentence(problem, 'in'))[0]).toMatch(
      /A dart more "front dart".*does not work/,
    );
  });
});

it('a dress whose back is joined to the front still gets all its papers', () => {
  const order = exampleOrder((o) => {
    o.dress.push({ step: 'join-pieces', as: 'no side seam', edge: 'side' });
    o.children = o.children.slice(2, 3);
  });
  const measure = { width: (text: string, size: number) => text.length * size * 0.6 };
  const made = makePack(order, { today: '2027-03-01', measure, evenSo: true });
  if (!made.ok) throw new Error(made.code);
  const [child] = made.pack.report.children;
  expect(child?.pieces.some(({ piece }) => piece.id === 'back')).toBe(false);
  expect(child?.findings.filter(({ level }) => level === 'stop' || level === 'warn')).toEqual([]);
  expect(made.pack.documents.some(({ path }) => path.endsWith('/the-dress.pdf'))).toBe(true);
});
