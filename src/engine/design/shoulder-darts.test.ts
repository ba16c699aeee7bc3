import { describe, expect, it } from 'vitest';
import { dressOf, pieceNamed, refusalOf, tryDress, type Wish } from '../../../tests/dress-of.ts';
import { completeBody } from '../body/index.ts';
import { checkGarment } from '../check/index.ts';
import { makeCutPieces } from '../cut/index.ts';
import {
  dot,
  outlineContains,
  outlineSelfCrossings,
  pathBounds,
  pathEndTangent,
  pathStartTangent,
} from '../geometry/index.ts';
import { edgeEnd, edgeLength, edgeOf, edgeStart, type Garment } from '../piece/index.ts';

const ageMonths = 120;
const given = { backWidth: '10 mm', backLength: '65 mm' };
const darted = (more = {}, others: NonNullable<Wish['steps']> = []) =>
  dressOf({ ageMonths, steps: [['shoulder-darts', { ...given, ...more }], ...others] });
const plain = dressOf({ ageMonths });

/** What the checks find wrong with seams, notches and outlines. */
function faultsOf(garment: Garment): readonly string[] {
  const completed = completeBody({ ageMonths, measured: {} });
  if (!completed.ok) throw new Error('The middle girl can be completed.');
  const bounds = { chestEase: [20, 160], waistEase: [20, 110] } as const;
  return checkGarment({ garment, body: completed.body, bounds })
    .filter((check) => check.level === 'stop' || check.level === 'warn')
    .map((check) => check.code);
}

describe('shoulder darts', () => {
  it('have two equal legs that meet at the tip, and a mouth as wide as asked', () => {
    const back = pieceNamed(darted(), 'back');
    expect(edgeLength(back, 'shoulder-dart-inner')).toBeCloseTo(65, 9);
    expect(edgeLength(back, 'shoulder-dart-outer')).toBeCloseTo(65, 9);
    const [from, to] = [edgeEnd(back, 'shoulder'), edgeStart(back, 'shoulder-2')];
    expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(10, 9);
  });

  it('leave the sewn shoulder and the armhole as long as they were', () => {
    const dress = darted({ front: true });
    for (const id of ['front', 'back']) {
      const [before, after] = [pieceNamed(plain, id), pieceNamed(dress, id)];
      const sewn = edgeLength(after, 'shoulder') + edgeLength(after, 'shoulder-2');
      expect(sewn).toBeCloseTo(edgeLength(before, 'shoulder'), 5);
      expect(edgeLength(after, 'armhole')).toBeCloseTo(edgeLength(before, 'armhole'), 5);
    }
  });

  it('let the shoulder run through when they are folded, and meet the armhole square', () => {
    const back = pieceNamed(darted(), 'back');
    const path = (name: string) => edgeOf(back, name).path;
    const at = (before: string, after: string) =>
      dot(pathEndTangent(path(before)), pathStartTangent(path(after)));
    expect(at('shoulder', 'shoulder-dart-inner')).toBeCloseTo(0, 6);
    expect(at('shoulder-dart-outer', 'shoulder-2')).toBeCloseTo(0, 6);
    expect(at('shoulder-2', 'armhole')).toBeCloseTo(0, 6);
  });

  it('part the shoulder of every seam that holds it, in shell and lining', () => {
    const dress = darted({}, ['lining']);
    for (const id of ['shoulder', 'shoulder-lining']) {
      const seam = dress.seams.find((s) => s.id === id);
      expect(
        seam?.a.map((edge) => edge.edge),
        id,
      ).toEqual(['shoulder']);
      expect(
        seam?.b.map((edge) => edge.edge),
        id,
      ).toEqual(['shoulder', 'shoulder-2']);
    }
    expect(dress.seams.filter((seam) => seam.name === 'dart').map((seam) => seam.id)).toEqual([
      'shoulder-dart-back',
      'shoulder-dart-back-lining',
    ]);
  });

  it('bring no fault with them that the dress had not before', () => {
    const others = ['set-in-sleeve', 'neckline', 'lining', 'flat-collar', 'back-zip', 'gathered-skirt'];
    for (const steps of [
      [],
      ['lining'],
      others,
      ['neck-facing', 'armhole-binding'],
      ['princess-line'],
      ['waist-darts', 'lining'],
    ]) {
      const known = faultsOf(dressOf({ ageMonths, steps }));
      for (const more of [{ front: true }, { back: 'eased' }, { back: 'eased', front: true }])
        expect(faultsOf(darted(more, steps)), steps.join()).toEqual(known);
    }
  });

  it('are bridged by the cutting line, which takes the mouth in', () => {
    const back = makeCutPieces(darted(), { label: () => LABEL }).find(({ piece }) => piece.id === 'back');
    if (back === undefined) throw new Error('There is a back.');
    expect(outlineSelfCrossings(back.cuttingLine)).toEqual([]);
    const [from, to] = [edgeEnd(back.piece, 'shoulder'), edgeStart(back.piece, 'shoulder-2')];
    expect(outlineContains(back.cuttingLine, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 - 5 })).toBe(
      true,
    );
  });

  it('are worth a notch that meets the one in the middle of the front shoulder', () => {
    const matched = darted().pieces.flatMap((piece) =>
      piece.notches.filter((notch) => notch.match === 'shoulder').map((notch) => [piece.id, notch.edge]),
    );
    expect(matched.map(([id]) => id)).toEqual(['front', 'back']);
  });

  it('or the back shoulder is longer by a quarter inch and eased to the front', () => {
    const dress = darted({ back: 'eased' });
    expect(
      edgeLength(pieceNamed(dress, 'back'), 'shoulder') - edgeLength(pieceNamed(dress, 'front'), 'shoulder'),
    ).toBeCloseTo(6.35, 6);
    expect(dress.seams.find((seam) => seam.id === 'shoulder')?.join).toEqual({ kind: 'eased', ease: 12.7 });
  });

  it('narrow the back across the armholes by no more than a few millimetres', () => {
    const least = (garment: Garment) => pathBounds(edgeOf(pieceNamed(garment, 'back'), 'armhole').path).minX;
    expect(least(plain) - least(darted())).toBeLessThan(4);
  });
});

describe('shoulder darts refuse', () => {
  const refused = (...steps: NonNullable<Wish['steps']>) =>
    refusalOf({ ageMonths, steps: [...steps, 'shoulder-darts'] });

  it('what leaves no plain shoulder', () => {
    expect(refused('drop-shoulder')).toBe('shoulder-darts.over-arm');
    expect(refused('yoke')).toBe('shoulder-darts.yoke');
    expect(refused('shoulder-studs')).toBe('shoulder-darts.opens');
    expect(refused('armhole-facing')).toBe('shoulder-darts.faced');
  });

  it('a blunt dart, one that leaves the piece, and one in a shoulder no wider than a strap', () => {
    const one = (more: Record<string, string>) => refusalOf({ ageMonths, steps: [['shoulder-darts', more]] });
    expect(one({ backWidth: '20 mm', backLength: '40 mm' })).toBe('shoulder-darts.blunt');
    const steps: Wish['steps'] = [
      ['waist-level', { raise: '50 mm' }],
      ['shoulder-darts', { backLength: '120 mm' }],
    ];
    expect(refusalOf({ ageMonths: 6, steps })).toBe('shoulder-darts.tip-outside');
    expect(refused(['neckline', { widen: '75 mm' }])).toBe('shoulder-darts.no-room');
  });

  it('nothing, where neither half is to have one', () => {
    const dress = tryDress({ ageMonths, steps: [['shoulder-darts', { back: 'none' }]] });
    expect(dress.ok && dress.garment.pieces).toEqual(plain.pieces);
  });
});

const LABEL = { title: 'Piece', cutting: 'Cut 1', child: 'Child', size: '', date: '' };
