import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';

describe('an order that can be used', () => {
  it('takes lengths in the units of the order and in any that are written out', () => {
    const inches = exampleOrder((o) => {
      o.children[0].measures.chestGirth = '18 1/2';
    });
    const written = exampleOrder((o) => {
      o.children[0].measures.chestGirth = '469.9 mm';
    });
    const number = exampleOrder((o) => {
      o.children[0].measures.chestGirth = 18.5;
    });
    for (const { children } of [inches, written, number]) {
      expect(children[0]?.body.measured.chestGirth).toBeCloseTo(469.9, 9);
    }
  });

  it('counts the age on the day the dress is worn', () => {
    const { children } = exampleOrder();
    expect(children.map(({ body }) => body.ageMonths)).toEqual([18, 40, 66, 84, 111]);
  });

  it('fills in what is not said', () => {
    const order = exampleOrder((o) => {
      delete o.madeOn;
      delete o.ruler;
      delete o.paper;
      delete o.allowances;
      o.cloths = [{ name: 'silk', use: ['main'], width: '45' }];
    });
    expect(order.madeOn).toBeNull();
    expect(order.ruler.step).toBeCloseTo(25.4 / 16, 9);
    expect(order.papers.map(({ format }) => format.name)).toEqual(['a4']);
    expect(order.cloths[0]?.usableWidth).toBeCloseTo(45 * 25.4 - 24, 9);
    expect(order.cloths[0]?.unit).toBe('eighth-yard');
  });

  it('tells children of one name apart, whatever their capitals', () => {
    const { children } = exampleOrder((o) => {
      o.children[1].name = 'AMINA';
      o.children[2].name = 'Amina (2)';
      o.children[3].name = 'Amina';
    });
    const names = children.map(({ name }) => name);
    expect(names[0]).toBe('Amina');
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(5);
  });

  it('takes names in any letters', () => {
    const name = 'Ọ̀ṣun Ɛyɛ 小花 Ирина نور';
    expect(
      exampleOrder((o) => {
        o.children[0].name = name;
      }).children[0]?.name,
    ).toBe(name.normalize('NFC'));
  });
});

describe('a paper block of the maker', () => {
  const HALF = {
    neckWidth: '1 3/4',
    neckDepth: '2',
    shoulder: '2 1/4',
    shoulderFall: '3/4',
    armholeDepth: '3 1/2',
    armholeHollow: '1/2',
    chestWidth: '5',
    waistWidth: '4 3/4',
    sideWaistLevel: '7 3/4',
    centreLength: '5 3/4',
  };
  const blockOf = (fits: unknown) =>
    exampleOrder((o) => {
      delete o.block;
      o.paperBlock = { front: HALF, back: { ...HALF, neckDepth: '1/2', centreLength: '7 1/4' }, fits };
    }).children[1]?.block.choice;

  it('says the child whom it fits, so that it can be graded to the others', () => {
    const choice = blockOf({ ageMonths: 12, measures: { chestGirth: '18' } });
    if (choice?.kind !== 'own') throw new Error('The block must be her own.');
    expect(choice.fits?.values.chestGirth).toEqual({ mm: 457.2, from: 'measured' });
    expect(choice.own.front.chestWidth).toBeCloseTo(127, 9);
  });

  it('is used as it is where nobody is named', () => {
    const choice = blockOf(undefined);
    expect(choice?.kind === 'own' ? choice.fits : 'drafted').toBeNull();
  });

  it('refuses a child who cannot be pictured', () => {
    expect(() => blockOf({ measures: { headGirth: '18' } })).toThrow(/whom the paper block fits/);
  });
});

describe('a dress to begin with', () => {
  const stepsOf = (change: (order: RawOrder) => void) =>
    exampleOrder((o) => {
      delete o.dress;
      for (const child of o.children) delete child.dress;
      change(o);
    }).children[0]?.steps.map(({ step, given }) => ({ step, ...given }));

  it('is taken from the library as it is', () => {
    const steps = stepsOf((o) => {
      o.startFrom = 'brook';
    });
    expect(steps?.map(({ step }) => step)).toEqual([
      'neckline',
      'back-zip',
      'tiered-skirt',
      'lining',
      'sash',
    ]);
  });

  it('gives way to the numbers and steps of the order', () => {
    const steps = stepsOf((o) => {
      o.startFrom = 'brook';
      o.dress = [{ step: 'sash', off: true }, { step: 'tiered-skirt', tiers: 5 }, { step: 'set-in-sleeve' }];
    });
    expect(steps?.find(({ step }) => step === 'tiered-skirt')).toEqual({ step: 'tiered-skirt', tiers: 5 });
    expect(steps?.some(({ step }) => step === 'sash')).toBe(false);
    expect(steps?.some(({ step }) => step === 'set-in-sleeve')).toBe(true);
  });

  it('may have steps beside it that are switched off for all and worn by one child', () => {
    const change = (o: RawOrder): void => {
      o.startFrom = 'brook';
      o.dress = [
        { step: 'belt', beltWidth: '2', off: true },
        { step: 'sash', off: true },
      ];
      o.children = [
        { name: 'Ada', ageMonths: 60, dress: [{ step: 'belt' }, { step: 'sash', off: true }] },
        { name: 'Bea', ageMonths: 72 },
      ];
    };
    const [ada, bea] = exampleOrder(change).children.map(({ steps }) => steps.map(({ step }) => step));
    expect(ada).toEqual(['neckline', 'back-zip', 'tiered-skirt', 'lining', 'belt']);
    expect(bea).toEqual(['neckline', 'back-zip', 'tiered-skirt', 'lining']);
  });

  it('must be known, and an order needs one or a list', () => {
    const begin = (startFrom: string) => () =>
      stepsOf((o) => {
        o.startFrom = startFrom;
      });
    expect(begin('no-such')).toThrow(/there is no dress "no-such" to begin with.*clover/);
    expect(() => stepsOf(() => {})).toThrow(/the order has no dress/);
  });
});

describe('the dress of one child', () => {
  const stepsOf = (change: (order: RawOrder) => void, child = 0) =>
    exampleOrder(change).children[child]?.steps.map(({ step, given }) => ({ step, ...given })) ?? [];
  const named = (change: (order: RawOrder) => void) => stepsOf(change).map(({ step }) => step);

  it('is that of the order where she has no list', () => {
    expect(
      named((o) => {
        delete o.children[0].dress;
      }),
    ).toEqual(['neckline', 'drop-shoulder', 'yoke', 'back-zip', 'pleated-skirt', 'lining']);
  });

  it('has her numbers over those of the order, one by one', () => {
    const steps = stepsOf((o) => {
      o.children[0].dress = [{ step: 'yoke', rise: '3/4' }];
    });
    expect(steps).toContainEqual({ step: 'yoke', line: 'curved', rise: '3/4' });
  });

  it('leaves out what is off, adds what is new, and changes one skirt for another', () => {
    const steps = named((o) => {
      o.children[0].dress = [{ step: 'yoke', off: true }, { step: 'waist-level' }, { step: 'circle-skirt' }];
    });
    expect(steps).not.toContain('yoke');
    expect(steps).not.toContain('pleated-skirt');
    expect(steps).toEqual(expect.arrayContaining(['waist-level', 'circle-skirt', 'lining']));
  });

  it('wears a step that is off for the others', () => {
    const change = (o: RawOrder): void => {
      o.dress[2].off = true;
      o.children[0].dress = [{ step: 'yoke' }];
    };
    expect(stepsOf(change)).toContainEqual({ step: 'yoke', line: 'curved', rise: '1' });
    expect(stepsOf(change, 4).map(({ step }) => step)).not.toContain('yoke');
  });
});
