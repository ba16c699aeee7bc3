import fc from 'fast-check';
import { produce } from 'immer';
import { describe, expect, it } from 'vitest';
import { DESIGN_STEPS, LIBRARY } from '../../../engine/design/index.ts';
import { type OrderFile, readOrderFile, readOrderValue } from '../../../engine/order/index.ts';
import type { Scope } from '../scope.ts';
import {
  addStep,
  canMove,
  canTakeOut,
  childrenWithOwn,
  forAllAgain,
  isFreeName,
  moveStep,
  nameForCopy,
  removeStep,
  renameStep,
  setParam,
  startFrom,
  switchStep,
} from './change-dress.ts';
import { findListed, givenAt, listSteps, type StepKey } from './dress-list.ts';

const file = (change: Partial<OrderFile> = {}): OrderFile => {
  const read = readOrderFile({
    frockwright: 1,
    title: 'Three cousins',
    dueDay: '2027-06-12',
    units: 'in',
    cloths: [{ name: 'satin', use: ['main'], width: '58' }],
    startFrom: 'clover',
    children: [
      { name: 'Ada', ageMonths: 40 },
      { name: 'Bea', ageMonths: 60 },
      { name: 'Cleo', ageMonths: 90 },
    ],
    ...change,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.order;
};

const key = (step: string, as: string | null = null): StepKey => ({ step, as });
const names = (f: OrderFile, scope: Scope = 'party'): readonly string[] =>
  listSteps(f, scope).flatMap(({ step, on }) => (on ? [step] : []));

/** What the engine makes of the file: the steps of each child with what is given for them. */
function worn(f: OrderFile): readonly (readonly string[])[] {
  const read = readOrderValue(f);
  if (!read.ok) throw new Error(read.problems.map(({ code, path }) => `${path} ${code}`).join(', '));
  return read.order.children.map(({ steps }) =>
    steps.map(({ step, as = '', given }) => told(step, as, given)).toSorted(),
  );
}

const told = (step: string, as: string, given: object): string =>
  `${step} ${as} ${JSON.stringify(Object.entries(given).toSorted(([a], [b]) => a.localeCompare(b)))}`;

/** The same as the page lists it. */
const listed = (f: OrderFile): readonly (readonly string[])[] =>
  f.children.map((_, child) =>
    listSteps(f, child)
      .filter(({ on }) => on)
      .map(({ step, as, layers }) =>
        told(step, as ?? '', Object.assign({}, ...layers.map(({ given }) => given)) as object),
      )
      .toSorted(),
  );

describe('the list of a dress', () => {
  it('is that of the library with the order and the child over it', () => {
    const f = file({
      dress: [{ step: 'yoke', rise: '1' }],
      children: [
        { name: 'Ada', ageMonths: 40, dress: [{ step: 'yoke', line: 'straight' }, { step: 'circle-skirt' }] },
      ],
    });
    const yoke = findListed(f, 0, key('yoke'));
    if (yoke === undefined) throw new Error('There is a yoke.');
    expect(givenAt(yoke, 0, 'line')).toEqual({
      own: 'straight',
      under: { from: 'library', value: 'curved' },
      path: 'children[0].dress[0].line',
    });
    expect(givenAt(yoke, 0, 'rise')).toEqual({
      own: undefined,
      under: { from: 'order', value: '1' },
      path: 'dress[0].rise',
    });
    expect(givenAt(yoke, 0, 'above').under.from).toBe('rule');
    const skirt = findListed(f, 0, key('circle-skirt'));
    expect(skirt?.instead).toBe('pleated-skirt');
    expect(names(f, 0)).not.toContain('pleated-skirt');
    expect(names(f)).toContain('pleated-skirt');
  });

  it('stands in the order in which the program sews', () => {
    const f = file({
      dress: [{ step: 'sash' }, { step: 'long-body' }, { step: 'add-notch' }, { step: 'mirror-piece' }],
    });
    const all = names(f);
    expect(all[0]).toBe('long-body');
    expect(all.slice(-3)).toEqual(['sash', 'add-notch', 'mirror-piece']);
  });
});

describe('changes of a dress', () => {
  it('write a number for all or for one, and take it back', () => {
    const all = produce(file(), (f) => setParam(f, 'party', key('yoke'), 'rise', '1 1/4'));
    expect(all.dress).toEqual([{ step: 'yoke', rise: '1 1/4' }]);
    const one = produce(all, (f) => setParam(f, 1, key('yoke'), 'rise', '2'));
    expect(one.children[1]?.dress).toEqual([{ step: 'yoke', rise: '2' }]);
    expect(childrenWithOwn(one, key('yoke'))).toEqual([1]);
    const back = produce(one, (f) => {
      setParam(f, 1, key('yoke'), 'rise', undefined);
      setParam(f, 'party', key('yoke'), 'rise', undefined);
    });
    expect(back).toEqual(file());
  });

  it('leave out and put back', () => {
    const off = produce(file(), (f) => switchStep(f, 2, key('yoke'), false));
    expect(off.children[2]?.dress).toEqual([{ step: 'yoke', off: true }]);
    expect(produce(off, (f) => switchStep(f, 2, key('yoke'), true))).toEqual(file());
    expect(produce(off, (f) => forAllAgain(f, 2, key('yoke')))).toEqual(file());
    const forAll = produce(off, (f) => switchStep(f, 'party', key('yoke'), false));
    expect(names(forAll)).not.toContain('yoke');
    const butAda = produce(forAll, (f) => switchStep(f, 0, key('yoke'), true));
    expect(names(butAda, 0)).toContain('yoke');
    expect(names(butAda, 1)).not.toContain('yoke');
  });

  it('change one skirt for another', () => {
    const f = produce(file(), (draft) => {
      addStep(draft, 'party', key('gathered-skirt'));
      addStep(draft, 'party', key('circle-skirt'));
    });
    expect(f.dress).toEqual([{ step: 'circle-skirt' }]);
    expect(names(f).filter((name) => name.endsWith('skirt'))).toEqual(['circle-skirt']);
    expect(names(produce(f, (draft) => removeStep(draft, 'party', key('circle-skirt'))))).toContain(
      'pleated-skirt',
    );
  });

  it('take a step out with what single children changed of it', () => {
    const f = produce(file(), (draft) => {
      addStep(draft, 'party', key('sash'));
      setParam(draft, 0, key('sash'), 'sashWidth', '3');
      switchStep(draft, 1, key('sash'), false);
    });
    expect(canTakeOut(f, 'party', key('sash'))).toBe(true);
    expect(canTakeOut(f, 0, key('sash'))).toBe(false);
    expect(canTakeOut(f, 'party', key('yoke'))).toBe(false);
    expect(produce(f, (draft) => removeStep(draft, 'party', key('sash')))).toEqual(file());
  });

  it('tell copies apart by name, and rename them in every list', () => {
    const f = produce(file(), (draft) => {
      for (let i = 0; i < 3; i++) addStep(draft, 'party', key('add-notch', nameForCopy(draft, 'add-notch')));
      setParam(draft, 1, key('add-notch', 'A notch more 2'), 'share', 0.3);
    });
    expect(f.dress?.map(({ as }) => as)).toEqual([undefined, 'A notch more 2', 'A notch more 3']);
    const renamed = produce(f, (draft) => {
      expect(isFreeName(draft, key('add-notch', 'A notch more 2'), 'A notch more 3')).toBe(false);
      expect(isFreeName(draft, key('add-notch', 'A notch more 2'), ' dart mate ')).toBe(true);
      renameStep(draft, key('add-notch', 'A notch more 2'), ' dart mate ');
    });
    expect(renamed.children[1]?.dress).toEqual([{ step: 'add-notch', as: 'dart mate', share: 0.3 }]);
    expect(worn(renamed)).toEqual(listed(renamed));
  });

  it('reorder her own changes, and nothing else', () => {
    const f = file({ dress: [{ step: 'add-notch' }, { step: 'sash' }, { step: 'mirror-piece' }] });
    expect(canMove(f, 'party', key('add-notch'), -1)).toBe(false);
    expect(canMove(f, 'party', key('sash'), 1)).toBe(true);
    const moved = produce(f, (draft) => moveStep(draft, 'party', key('add-notch'), 1));
    expect(moved.dress?.map(({ step }) => step)).toEqual(['mirror-piece', 'sash', 'add-notch']);
    expect(names(moved).slice(-2)).toEqual(['mirror-piece', 'add-notch']);
  });

  it('begin from another dress, or from nothing', () => {
    const f = produce(file(), (draft) => {
      setParam(draft, 'party', key('yoke'), 'rise', '1');
      switchStep(draft, 1, key('yoke'), false);
      setParam(draft, 2, key('pleated-skirt'), 'style', 'knife');
    });
    expect(produce(f, (draft) => startFrom(draft, 'brook', false))).toEqual(file({ startFrom: 'brook' }));
    const kept = produce(f, (draft) => startFrom(draft, 'brook', true));
    expect(kept.dress).toEqual(f.dress);
    const nothing = produce(f, (draft) => startFrom(draft, null, false));
    expect(nothing.dress).toEqual([{ step: 'neckline' }]);
    expect(nothing.startFrom).toBeUndefined();
    expect(names(nothing, 2)).toEqual(['neckline']);
  });

  it('whatever is done, the file is read, and the page lists what the engine draws', () => {
    const step = fc.constantFrom(...DESIGN_STEPS.map(({ id }) => id));
    const scope = fc.constantFrom<Scope>('party', 0, 1, 2);
    const change = fc.oneof(
      fc.record({ what: fc.constant('add' as const), scope, step }),
      fc.record({
        what: fc.constantFrom('on', 'off', 'out', 'all', 'set', 'clear', 'up', 'down'),
        scope,
        at: fc.nat(),
      }),
      fc.record({
        what: fc.constant('begin' as const),
        dress: fc.constantFrom(null, ...LIBRARY.map(({ id }) => id)),
        keep: fc.boolean(),
      }),
    );
    fc.assert(
      fc.property(fc.array(change, { maxLength: 14 }), (changes) => {
        let now = file();
        for (const one of changes) now = produce(now, (draft) => act(draft, one));
        expect(readOrderFile(now).ok).toBe(true);
        expect(worn(now)).toEqual(listed(now));
      }),
      { seed: 20260712, numRuns: 400 },
    );
  });
});

type Change =
  | { readonly what: 'add'; readonly scope: Scope; readonly step: string }
  | { readonly what: string; readonly scope: Scope; readonly at: number }
  | { readonly what: 'begin'; readonly dress: string | null; readonly keep: boolean };

/** Does only what the page offers. */
function act(draft: Parameters<typeof startFrom>[0], change: Change): void {
  if ('dress' in change) {
    startFrom(draft, change.dress, change.keep);
    return;
  }
  const { scope } = change;
  if ('step' in change) {
    const added = key(change.step, nameForCopy(draft, change.step));
    if (findListed(draft, scope, added)?.on !== true) addStep(draft, scope, added);
    return;
  }
  const list = listSteps(draft, scope);
  const at = list[change.at % Math.max(list.length, 1)];
  if (at === undefined) return;
  switch (change.what) {
    case 'on':
    case 'off':
      switchStep(draft, scope, at, change.what === 'on');
      return;
    case 'out':
      // The page lets the last step stand.
      if (canTakeOut(draft, scope, at) && (draft.startFrom !== undefined || (draft.dress?.length ?? 0) > 1))
        removeStep(draft, scope, at);
      return;
    case 'all':
      if (scope !== 'party') forAllAgain(draft, scope, at);
      return;
    case 'up':
    case 'down':
      moveStep(draft, scope, at, change.what === 'up' ? -1 : 1);
      return;
    default: {
      const [param] = Object.entries(at.known.params).find(([, { kind }]) => kind === 'length') ?? [];
      if (param !== undefined && at.on)
        setParam(draft, scope, at, param, change.what === 'set' ? '1 1/2' : undefined);
    }
  }
}
