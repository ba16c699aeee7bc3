import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish, withNeeds } from '../../../tests/dress-of.ts';
import { faultsOf } from '../../../tests/faults-of.ts';
import { distance, outlineSelfCrossings } from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, outlineOf } from '../piece/index.ts';
import { DESIGN_STEPS, tell } from './index.ts';

describe('every design step', () => {
  for (const step of DESIGN_STEPS) {
    it(`${step.id} works by its rules alone at every age`, () => {
      for (const ageMonths of [6, 12, 24, 48, 84, 120, 144]) {
        const dress = tryDress({ ageMonths, steps: withNeeds(step.id) });
        expect(dress.ok, `${ageMonths} months`).toBe(true);
        if (!dress.ok) continue;
        for (const part of dress.draft) {
          expect(tell(part.title, 'in').length).toBeGreaterThan(0);
          for (const told of part.steps) expect(tell(told.saying, 'in')).toMatch(/^\S.*\S$/);
        }
      }
    });
  }
});

describe('waist level', () => {
  it('raises the waist at the side and the centre alike', () => {
    const [plain, raised] = [dressOf({}), dressOf({ steps: [['waist-level', { raise: '30 mm' }]] })];
    for (const id of ['front', 'back']) {
      for (const edge of ['side', 'centre']) {
        const by = edgeLength(pieceNamed(plain, id), edge) - edgeLength(pieceNamed(raised, id), edge);
        expect(by).toBeCloseTo(30, 6);
      }
    }
  });

  it('refuses to leave no side seam', () => {
    expect(refusalOf({ ageMonths: 12, steps: [['waist-level', { raise: '90 mm' }]] })).toBe(
      'waist-level.raise out-of-range',
    );
  });
});

describe('side shaping', () => {
  it('takes in one side seam of each half and keeps both sides equal', () => {
    const dress = dressOf({ steps: [['side-shaping', { takeIn: '10 mm' }]] });
    const plain = dressOf({});
    for (const id of ['front', 'back']) {
      const by = edgeEnd(pieceNamed(plain, id), 'side').x - edgeEnd(pieceNamed(dress, id), 'side').x;
      expect(by).toBeCloseTo(10, 6);
    }
    expect(edgeLength(pieceNamed(dress, 'front'), 'side')).toBeCloseTo(
      edgeLength(pieceNamed(dress, 'back'), 'side'),
      6,
    );
  });

  it('refuses both at once', () => {
    expect(refusalOf({ steps: [['side-shaping', { takeIn: '5 mm', letOut: '5 mm' }]] })).toBe(
      'side-shaping.both',
    );
  });
});

describe('neckline', () => {
  for (const shape of ['round', 'scoop', 'v', 'square']) {
    it(`${shape}: lowered and widened as asked, both shoulders equal`, () => {
      const given = { shape, frontDrop: '30 mm', backDrop: '10 mm', widen: '15 mm' };
      const [plain, dress] = [dressOf({}), dressOf({ steps: [['neckline', given]] })];
      const drop = (id: string) =>
        edgeEnd(pieceNamed(dress, id), 'centre').y - edgeEnd(pieceNamed(plain, id), 'centre').y;
      expect(drop('front')).toBeCloseTo(30, 6);
      expect(drop('back')).toBeCloseTo(10, 6);
      for (const id of ['front', 'back']) {
        const by =
          edgeLength(pieceNamed(plain, id), 'shoulder') - edgeLength(pieceNamed(dress, id), 'shoulder');
        expect(by).toBeCloseTo(15, 6);
      }
    });
  }

  it('a scoop is longer than a round neck, a round neck longer than a V', () => {
    const length = (shape: string) =>
      edgeLength(
        pieceNamed(dressOf({ steps: [['neckline', { shape, frontDrop: '40 mm' }]] }), 'front'),
        'neckline',
      );
    expect(length('scoop')).toBeGreaterThan(length('round'));
    expect(length('round')).toBeGreaterThan(length('v'));
  });

  it('a deep square neck under a steep shoulder keeps its corner away from the centre', () => {
    const dress = dressOf({
      ageMonths: 6,
      measured: { height: 654, chestGirth: 417 },
      block: { kind: 'drafted', given: { method: 'eighth-of-chest', frontShoulderFall: '29 mm' } },
      steps: [['neckline', { shape: 'square', frontDrop: '39 mm' }], 'lining'],
    });
    for (const id of ['front', 'front-lining']) {
      expect(outlineSelfCrossings(outlineOf(pieceNamed(dress, id))), id).toEqual([]);
    }
  });

  it('refuses a neckline below the underarm', () => {
    expect(refusalOf({ steps: [['neckline', { frontDrop: '200 mm' }]] })).toBe(
      'neckline.frontDrop out-of-range',
    );
  });
});

describe('drop shoulder', () => {
  it('front and back overarms are equally long although their shoulders slope differently', () => {
    const block = {
      kind: 'drafted',
      given: { frontShoulderFall: '30 mm', backShoulderFall: '15 mm' },
    } as const;
    for (const finish of ['cap-pointed', 'cap-rounded', 'short', 'straight']) {
      const dress = dressOf({ block, steps: [['drop-shoulder', { finish }]] });
      const [front, back] = ['front', 'back'].map((id) => edgeLength(pieceNamed(dress, id), 'overarm'));
      expect(Math.abs((front ?? 0) - (back ?? 1)), finish).toBeLessThan(0.01);
    }
  });

  it('refuses an extension longer than the arm', () => {
    expect(refusalOf({ steps: [['drop-shoulder', { capHeight: '60 cm' }]] })).toBe(
      'drop-shoulder.capHeight out-of-range',
    );
  });

  it('says when a short sleeve would eat the side seam up', () => {
    const steps = [
      ['waist-level', { raise: '30 mm' }],
      ['drop-shoulder', { finish: 'short', drop: '60 mm' }],
    ] as const;
    expect(refusalOf({ ageMonths: 12, steps: [[...steps[0]], [...steps[1]]] })).toBe(
      'drop-shoulder.no-side-left',
    );
  });

  it('says when a cap would fall onto a side seam that runs out far below it', () => {
    const wish = (fall: string): Wish => ({
      ageMonths: 6,
      measured: { height: 654, chestGirth: 417, shoulderLength: 50 },
      block: { kind: 'drafted', given: { chestEase: '40 mm', backShoulderFall: '28 mm' } },
      steps: [
        'shoulder-slope',
        'nappy-room',
        'waist-level',
        ['side-shaping', { letOut: '26 mm' }],
        ['drop-shoulder', { finish: 'cap-pointed', drop: '42 mm', fall }],
      ],
    });
    expect(refusalOf(wish('78 mm'))).toBe('drop-shoulder.cap-on-side');
    // The refusal says that its corner has to end so much higher.
    const refused = tryDress(wish('78 mm'));
    const [problem] = refused.ok ? [] : refused.problems;
    if (problem?.of !== 'body') throw new Error('The body is in the way.');
    expect(tell(problem.problem, 'cm')).toContain('on the back would lie against the side seam');
    expect(tell(problem.problem, 'cm')).toContain('end 1.9 cm higher');
    expect(faultsOf(wish('59 mm'))).toEqual([]);
  });
});

describe('yoke', () => {
  it('cuts both halves in two, and both parts share the line', () => {
    const dress = dressOf({ steps: ['drop-shoulder', 'yoke'] });
    for (const id of ['front', 'back']) {
      expect(edgeLength(pieceNamed(dress, id), 'yoke-line')).toBeCloseTo(
        edgeLength(pieceNamed(dress, `${id}-yoke`), 'yoke-line'),
        9,
      );
      expect(pieceNamed(dress, `${id}-yoke`).cloth).toBe('yoke');
    }
  });

  it('the back line runs straight across, or rises to the centre, pointed or curved', () => {
    for (const line of ['straight', 'curved']) {
      for (const [backRise, by] of [
        ['0 mm', 0],
        ['15 mm', 15],
      ] as const) {
        const dress = dressOf({ steps: [['yoke', { line, backRise }]] });
        const path = edgeOf(pieceNamed(dress, 'back-yoke'), 'yoke-line').path;
        expect(path.segments[0].from.y - (path.segments.at(-1)?.to.y ?? 0)).toBeCloseTo(by, 6);
      }
    }
  });

  it('refuses a line above the neckline', () => {
    const steps: [string, Record<string, string>][] = [
      ['neckline', { frontDrop: '50 mm' }],
      ['yoke', { rise: '120 mm' }],
    ];
    expect(refusalOf({ steps })).toBe('yoke.above-neckline');
  });
});

describe('set-in sleeve', () => {
  it('has a cap as long as the armhole plus its ease', () => {
    const dress = dressOf({ steps: [['set-in-sleeve', { capEase: '10 mm' }]] });
    const sleeve = pieceNamed(dress, 'sleeve');
    const cap = edgeLength(sleeve, 'cap-front') + edgeLength(sleeve, 'cap-back');
    const armhole =
      edgeLength(pieceNamed(dress, 'front'), 'armhole') + edgeLength(pieceNamed(dress, 'back'), 'armhole');
    expect(cap - armhole).toBeCloseTo(10, 6);
  });

  it('is as wide at the arm as the arm and its ease', () => {
    const dress = dressOf({
      measured: { upperArmGirth: 180 },
      steps: [['set-in-sleeve', { armEase: '40 mm' }]],
    });
    const sleeve = pieceNamed(dress, 'sleeve');
    expect(edgeEnd(sleeve, 'cap-front').x - edgeStart(sleeve, 'cap-back').x).toBeCloseTo(220, 4);
  });

  it('and a drop shoulder exclude each other', () => {
    expect(refusalOf({ steps: ['set-in-sleeve', 'drop-shoulder'] })).toBe('two-of-a-kind');
  });
});

describe('lining', () => {
  it('begins its trimmed armhole with the curve, not with a speck that has no direction', () => {
    const measured = { height: 654, chestGirth: 417, neckBaseGirth: 227, backNeckToWaist: 164 };
    const dress = dressOf({ ageMonths: 6, measured, steps: [['shoulder-slope', { by: '0 mm' }], 'lining'] });
    const { path } = edgeOf(pieceNamed(dress, 'back-lining'), 'armhole');
    expect(path.segments.map((segment) => distance(segment.from, segment.to) < 0.001)).not.toContain(true);
  });

  it('is trimmed at the neck by the turn of cloth and equal at the waist', () => {
    const dress = dressOf({ steps: [['lining', { turn: '3 mm' }]] });
    const [front, inside] = [pieceNamed(dress, 'front'), pieceNamed(dress, 'front-lining')];
    expect(edgeEnd(inside, 'centre').y - edgeEnd(front, 'centre').y).toBeCloseTo(3, 2);
    expect(edgeLength(inside, 'waist')).toBeCloseTo(edgeLength(front, 'waist'), 6);
    expect(edgeLength(front, 'shoulder') - edgeLength(inside, 'shoulder')).toBeGreaterThan(5);
  });

  it('cut whole has no yoke line; following the yoke it has; below the yoke only the lower part is lined', () => {
    const ids = (cut: string) =>
      dressOf({ steps: ['yoke', ['lining', { cut }]] })
        .pieces.filter((p) => p.layer === 'lining')
        .map((p) => p.id);
    expect(ids('whole')).toEqual(['front-lining', 'back-lining']);
    expect(ids('follow-yoke')).toEqual([
      'front-yoke-lining',
      'front-lining',
      'back-yoke-lining',
      'back-lining',
    ]);
    expect(ids('below-yoke')).toEqual(['front-lining', 'back-lining']);
  });

  it('lines the skirt, shorter than the dress', () => {
    const dress = dressOf({
      steps: [
        ['gathered-skirt', { length: '40 cm' }],
        ['lining', { skirtShorter: '3 cm' }],
      ],
    });
    expect(edgeLength(pieceNamed(dress, 'lining-skirt-front'), 'right')).toBeCloseTo(370, 6);
  });
});

describe('own paper block', () => {
  const own = (by: number) => ({
    neckWidth: 48 - by,
    neckDepth: 55,
    shoulder: 60 + 2 * by,
    shoulderFall: 18,
    armholeDepth: 95,
    armholeHollow: 13,
    chestWidth: 135 + by,
    waistWidth: 128 + by,
    sideWaistLevel: 215 + by,
    centreLength: 160,
  });

  it('gives the same named edges as a drafted one, and every design step works on it', () => {
    const block = {
      kind: 'own',
      fits: null,
      own: {
        front: own(0),
        back: { ...own(0), neckDepth: 15, centreLength: 200 },
        seamIncluded: 0,
        closingIncluded: 0,
      },
    } as const;
    expect(pieceNamed(dressOf({ block }), 'front').edges.map((e) => e.name)).toEqual(
      pieceNamed(dressOf({}), 'front').edges.map((e) => e.name),
    );
    for (const step of DESIGN_STEPS)
      expect(tryDress({ ageMonths: 18, block, steps: withNeeds(step.id) }).ok, step.id).toBe(true);
  });

  it('takes in the allowances that the paper includes', () => {
    // From an edge that holds 25 mm for the closing, every width measures 25 mm more.
    const { neckWidth, chestWidth, waistWidth } = own(10);
    const back = {
      ...own(10),
      neckDepth: 15,
      centreLength: 200,
      neckWidth: neckWidth + 25,
      chestWidth: chestWidth + 25,
      waistWidth: waistWidth + 25,
    };
    const block = {
      kind: 'own',
      fits: null,
      own: { front: own(10), back, seamIncluded: 10, closingIncluded: 25 },
    } as const;
    const dress = dressOf({ block });
    // The side slants in, so where the lowered underarm now lies it is a little narrower than 135.
    for (const id of ['front', 'back']) {
      expect(Math.abs(edgeStart(pieceNamed(dress, id), 'side').x - 135)).toBeLessThan(1);
    }
    expect(edgeEnd(pieceNamed(dress, 'back'), 'centre').x).toBeCloseTo(0, 6);
  });

  it('names what cannot be', () => {
    const block = (front: ReturnType<typeof own>) => ({
      kind: 'own' as const,
      fits: null,
      own: { front, back: own(0), seamIncluded: 0, closingIncluded: 0 },
    });
    expect(refusalOf({ block: block({ ...own(0), shoulder: 10 }) })).toBe('block');
    expect(refusalOf({ block: block({ ...own(0), chestWidth: 90 }) })).toBe('block');
    expect(refusalOf({ block: block({ ...own(0), sideWaistLevel: 100 }) })).toBe('block');
  });
});

describe('edges of pieces', () => {
  it('a closing opens the centre back of every back piece', () => {
    const dress = dressOf({ steps: ['yoke', 'back-zip'] });
    for (const id of ['back', 'back-yoke'])
      expect(edgeOf(pieceNamed(dress, id), 'centre').kind).toBe('closing');
    expect(edgeOf(pieceNamed(dress, 'front'), 'centre').kind).toBe('fold');
  });
});
