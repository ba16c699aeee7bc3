import { describe, expect, it } from 'vitest';
import { exampleOrder, type RawOrder } from '../../../tests/fixtures/example-order.ts';
import type { Mark } from '../sheet/index.ts';
import { makePack, neededMeasures, type Order, type Pack, type PackDocument } from './index.ts';

/** Wide letters, so that everything is wrapped. */
const measure = { width: (text: string, size: number) => text.length * size * 0.6 };
const TODAY = '2027-03-01';

function packOf(order: Order, evenSo = false): Pack {
  const made = makePack(order, { today: TODAY, measure, evenSo });
  if (!made.ok) throw new Error(made.code);
  return made.pack;
}

const pack = packOf(exampleOrder());

function textsOf(document: PackDocument | undefined): readonly string[] {
  if (document === undefined) throw new Error('No such document.');
  if (document.kind !== 'pages') {
    const inSvg = [...document.text.matchAll(/>([^<>]+)<\/text>/g)].map(([, text = '']) => text);
    return document.kind === 'svg' ? inSvg : [document.text];
  }
  const inside = (marks: readonly Mark[]): readonly string[] =>
    marks.flatMap((mark) =>
      mark.kind === 'text' ? [mark.text] : mark.kind === 'group' ? inside(mark.marks) : [],
    );
  return document.pages.flatMap((page) => inside(page.marks));
}

const documentAt = (path: string, from = pack): PackDocument | undefined =>
  from.documents.find((document) => document.path === path);

/** The example without its zip: no head passes the neck. */
const withoutZip = (order: RawOrder): void => {
  order.dress = order.dress.filter(({ step }: { step: string }) => step !== 'back-zip');
};

describe('the pack of the example order', () => {
  it('has every paper for the party and for each child', () => {
    const paths = new Set(pack.documents.map(({ path }) => path));
    expect(paths.size).toBe(pack.documents.length);
    for (const path of ['README.txt', 'checks.pdf', 'cut-list.pdf', 'lay.pdf']) expect(paths).toContain(path);
    for (const { name, pieces } of pack.report.children) {
      for (const file of ['pattern-A4', 'pattern-A0', 'draw-by-hand', 'checks', 'cut-list', 'lay']) {
        expect(paths).toContain(`${name}/${file}.pdf`);
      }
      const drawn = [...paths].filter((path) => path.startsWith(`${name}/pieces/`));
      expect(drawn).toHaveLength(pieces.length);
    }
  });

  it('finds nothing that must not be cut, and nothing to look at twice', () => {
    const urgent = pack.report.children.flatMap(({ findings }) =>
      findings.filter(({ level }) => level === 'stop' || level === 'warn'),
    );
    expect(urgent).toEqual([]);
  });

  it('holds drafts that can be drawn by hand: rounded to an eighth of an inch, the pieces still fit', () => {
    const spoiled = pack.report.children.flatMap(({ dress }) =>
      (dress.byHand?.checks ?? [{ level: 'stop' }]).filter(
        ({ level }) => level === 'stop' || level === 'warn',
      ),
    );
    expect(spoiled).toEqual([]);
  });

  it('says on each piece what it is, in which cloth, how often, for whom, which size, and the day', () => {
    const yoke = pack.report.children[0]?.pieces.find(({ piece }) => piece.id === 'front-yoke');
    expect(yoke?.label).toEqual({
      title: 'Front yoke',
      cutting: 'Cut 1 in ivory net on the fold',
      child: 'Amina',
      size: 'height 31 3/4 in, chest 18 1/2 in',
      date: '2027-04-24',
    });
    const texts = textsOf(documentAt('Amina/pieces/01 Front yoke.svg')).join(' ');
    for (const words of ['Front yoke', 'Amina', '2027-04-24', 'ivory net']) expect(texts).toContain(words);
  });

  it('adds the allowances of the order, those of one cloth over those for all', () => {
    const allowances = (id: string) =>
      pack.report.children[0]?.pieces.find(({ piece }) => piece.id === id)?.allowances ?? {};
    expect(allowances('front').side).toBeCloseTo(25.4, 9);
    expect(allowances('front-yoke')['yoke-line']).toBeCloseTo(12.7, 9);
    expect(allowances('front')['yoke-line']).toBeCloseTo(10, 9);
    expect(allowances('skirt-1').hem).toBeCloseTo(76.2, 9);
    expect(allowances('lining-skirt-front').hem).toBeCloseTo(25.4, 9);
  });

  it('lists in the index all files there are, what to buy, and no file that is not there', () => {
    const index = textsOf(documentAt('README.txt')).join('\n');
    for (const { name } of pack.report.children) expect(index).toContain(`In the folder "${name}"`);
    const listed = index.match(/\S+\.pdf(?= )/g) ?? [];
    const there = new Set(pack.documents.map(({ path }) => path.split('/').at(-1)));
    expect(listed.length).toBeGreaterThan(20);
    for (const file of listed) expect(there).toContain(file);
    expect(index).toMatch(/ivory satin: \d/);
    expect(Math.max(...index.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('tells straight pieces by measures on small paper unless the order wants them in full', () => {
    const full = packOf(
      exampleOrder((order) => {
        order.paper.rectangles = 'full';
      }),
    );
    const pagesAt = (from: Pack, format: string): number => {
      const document = documentAt(`Amina/pattern-${format}.pdf`, from);
      return document?.kind === 'pages' ? document.pages.length : 0;
    };
    expect(pagesAt(pack, 'A4')).toBeLessThan(pagesAt(full, 'A4') / 2);
    expect(pagesAt(pack, 'A0')).toBe(pagesAt(full, 'A0'));
    expect(textsOf(documentAt('README.txt')).join(' ')).toContain('Straight');
    expect(textsOf(documentAt('README.txt', full)).join(' ')).not.toContain('Straight');
  });

  it('is the same when it is made again', () => {
    expect(packOf(exampleOrder()).documents).toEqual(pack.documents);
  });

  it('lays for all together no more cloth than for each alone', () => {
    expect(pack.cloths.problems).toEqual([]);
    for (const { lengths, saved, toBuy } of pack.cloths.lists) {
      if (saved === null) throw new Error('A party is compared with each child.');
      expect(saved.together).toBe(toBuy);
      expect(saved.saved).toBeGreaterThanOrEqual(0);
      expect(toBuy).toBeGreaterThanOrEqual(lengths.reduce((sum, { lay }) => sum + lay.length, 0));
    }
  });

  it('tells how far it is', () => {
    const steps: string[] = [];
    const progress = ({ done, total, next }: { done: number; total: number; next: string }): void => {
      steps.push(`${done}/${total} ${next}`);
    };
    makePack(exampleOrder(), { today: TODAY, measure, evenSo: false, progress });
    expect(steps).toEqual([
      '0/6 Amina',
      '1/6 Tọ́lá'.normalize('NFC'),
      '2/6 Efua',
      '3/6 Lena',
      '4/6 Noor',
      '5/6 Flower girls for a garden wedding',
    ]);
  });
});

describe('a pack that must not be cut', () => {
  it('is not made', () => {
    const made = makePack(exampleOrder(withoutZip), { today: TODAY, measure, evenSo: false });
    expect(made).toMatchObject({ ok: false, code: 'stops' });
  });

  it('is marked on every piece, list and index when it is made even so', () => {
    const marked = packOf(exampleOrder(withoutZip), true);
    expect(textsOf(documentAt('README.txt', marked)).join('\n')).toMatch(/DO NOT CUT YET for Amina, /);
    for (const document of marked.documents.filter(({ path }) => path.startsWith('Amina/pieces/'))) {
      expect(textsOf(document).join(' ')).toContain('DO NOT CUT YET.');
    }
    for (const file of ['Amina/pattern-A4.pdf', 'Amina/cut-list.pdf', 'cut-list.pdf']) {
      expect(textsOf(documentAt(file, marked)).join(' ')).toContain('DO NOT CUT');
    }
    expect(textsOf(documentAt('Amina/checks.pdf', marked)).join(' ')).toContain('The head does not pass');
  });

  it('is not made either of a piece that the cloth cannot hold', () => {
    const made = makePack(
      exampleOrder((order) => {
        order.cloths[0].width = '20';
      }),
      { today: TODAY, measure, evenSo: false },
    );
    const report = made.ok || made.code === 'problems' ? null : made.report;
    expect(
      report?.children.flatMap(({ findings }) => findings).find(({ level }) => level === 'stop')?.code,
    ).toBe('lay.too-wide');
  });
});

describe('the measures that a dress needs', () => {
  const needed = (change: (order: RawOrder) => void) => {
    const order = exampleOrder(change);
    const [child] = order.children;
    const found = child === undefined ? null : neededMeasures(order, child);
    if (found === null || !found.ok) throw new Error('It can be drawn.');
    return new Map(found.needed.map(({ id, use, value }) => [id, `${use} ${value.from}`]));
  };

  it('are those that a line is drawn by, and those that a check looks at', () => {
    const plain = needed(() => {});
    expect(plain.get('chestGirth')).toBe('drawing measured');
    expect(plain.get('neckBaseGirth')).toBe('drawing estimated');
    expect(plain.get('headGirth')).toBe('checks measured');
    expect(plain.has('wristGirth')).toBe(false);
  });

  it('are no drafting measures where the block comes from paper', () => {
    const half = { ...PAPER_HALF };
    const fromPaper = needed((order) => {
      order.children[0].paperBlock = { front: half, back: half };
    });
    expect(fromPaper.has('frontChestWidth')).toBe(false);
    expect(fromPaper.has('shoulderLength')).toBe(false);
  });

  it('name the height where others are filled in by it', () => {
    const short = needed((order) => {
      order.children[0].dress = ['neckline', 'drop-shoulder', 'pleated-skirt', 'lining', 'yoke'].map(
        (step) => ({
          step,
          off: true,
        }),
      );
    });
    expect(short.get('height')).toBe('estimates measured');
  });
});

const PAPER_HALF = {
  neckWidth: '1 7/8',
  neckDepth: '1 1/2',
  shoulder: '2 1/2',
  shoulderFall: '3/4',
  armholeDepth: '4',
  armholeHollow: '1/2',
  chestWidth: '5 1/4',
  waistWidth: '5',
  sideWaistLevel: '8 1/2',
  centreLength: '7',
};
