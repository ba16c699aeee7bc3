import { describe, expect, test } from 'vitest';
import {
  BOUNDS,
  changePiece,
  changeSeam,
  goodGarment,
  goodInput,
  TITLES,
  wearerWith,
  withEdgePath,
} from '../../../tests/fixtures/good-garment.ts';
import {
  curveBetween,
  linePath,
  type Path,
  pathEnd,
  pathEndTangent,
  pathOffset,
  pathReverse,
  pathSlice,
  pathStart,
  pathStartTangent,
  pathTranslate,
  rotate,
} from '../geometry/index.ts';
import type { Garment, Join, Piece, PleatedJoin } from '../piece/index.ts';
import { en, speak } from '../words/index.ts';
import { type Check, type CheckCode, type CheckInput, checkGarment, type Level, summarise } from './index.ts';

const catalogue = { ...en, ...TITLES };

const spoiled = (garment: Garment): CheckInput => ({ ...goodInput(), garment });
const dress = goodGarment();
const pleated = goodGarment({ skirt: 'pleated' });

const withJoin = (garment: Garment, seam: string, join: Join): CheckInput =>
  spoiled(changeSeam(garment, seam, (s) => ({ ...s, join })));

function withPleats(change: Partial<PleatedJoin>): CheckInput {
  return spoiled(
    changeSeam(pleated, 'waist', (s) =>
      s.join.kind === 'pleated' ? { ...s, join: { ...s.join, ...change } } : s,
    ),
  );
}

const measuring = (measures: Parameters<typeof wearerWith>[0], garment = dress): CheckInput => ({
  ...goodInput(),
  garment,
  body: wearerWith(measures),
});

/** The neckline with its end turned by some degrees. */
const turnedAtShoulder =
  (degrees: number) =>
  (neckline: Path): Path =>
    curveBetween(
      pathStart(neckline),
      pathStartTangent(neckline),
      pathEnd(neckline),
      rotate(pathEndTangent(neckline), (degrees * Math.PI) / 180),
    );

const turnedAtCentre =
  (degrees: number) =>
  (neckline: Path): Path =>
    curveBetween(
      pathStart(neckline),
      rotate(pathStartTangent(neckline), (degrees * Math.PI) / 180),
      pathEnd(neckline),
      pathEndTangent(neckline),
    );

const insideOut = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map((e) => ({ ...e, path: pathReverse(e.path) })).reverse(),
});

/** Cuts the last `rest` mm off the hem of the front skirt and makes an edge of them. */
const withShortEdge = (rest: number): Garment =>
  changePiece(dress, 'skirt-front', (piece) => ({
    ...piece,
    edges: piece.edges.flatMap((e) => {
      if (e.name !== 'hem') return [e];
      const from = pathStart(e.path);
      const cut = { x: rest, y: from.y };
      return [
        { ...e, path: linePath(from, cut) },
        { ...e, name: 'hem-rest', path: linePath(cut, pathEnd(e.path)) },
      ];
    }),
  }));

const shiftNotch = (garment: Garment, piece: string, by: number): Garment =>
  changePiece(garment, piece, (p) => ({ ...p, notches: p.notches.map((n) => ({ ...n, at: n.at + by })) }));

const open = (openingLength: number, zipLength = openingLength + 40): CheckInput =>
  spoiled({ ...dress, closing: { kind: 'concealed-zip', openingLength, zipLength } });

const unopened: Garment = { ...dress, closing: null };

const skirtless: Garment = {
  ...dress,
  pieces: dress.pieces.filter((piece) => piece.cloth !== 'skirt'),
  seams: dress.seams.filter((seam) => seam.name !== 'waist' && seam.name !== 'skirt-join'),
};

type Case = readonly [what: string, input: CheckInput, code: CheckCode, level: Level, key: string];

/** A good garment spoiled in one way, and what must be found. */
const CASES: readonly Case[] = [
  ['good', goodInput(), 'outline-closed', 'ok', 'outline-closed.all'],
  [
    'an edge is moved off its neighbours by a hair',
    spoiled(withEdgePath(dress, 'front', 'side', (p) => pathTranslate(p, { x: 0, y: 1e-5 }))),
    'outline-closed',
    'stop',
    'outline-closed.open',
  ],
  ['good', goodInput(), 'outline-simple', 'ok', 'outline-simple.all'],
  [
    'the side of the skirt runs over its fold',
    spoiled(
      withEdgePath(dress, 'skirt-front', 'side', (p) =>
        linePath(pathStart(p), { x: -50, y: 200 }, pathEnd(p)),
      ),
    ),
    'outline-simple',
    'stop',
    'outline-simple.crosses',
  ],
  [
    'all edges of a piece are walked the other way',
    spoiled(changePiece(dress, 'skirt-front', insideOut)),
    'outline-simple',
    'stop',
    'outline-simple.inside-out',
  ],
  ['an edge of 0.9 mm', spoiled(withShortEdge(0.9)), 'outline-simple', 'warn', 'outline-simple.short'],
  ['an edge of 1.1 mm', spoiled(withShortEdge(1.1)), 'outline-simple', 'ok', 'outline-simple.all'],

  ['good', goodInput(), 'seam-lengths', 'ok', 'seam-lengths.flat'],
  ['good', goodInput(), 'seam-lengths', 'ok', 'seam-lengths.eased'],
  ['good', goodInput(), 'seam-lengths', 'ok', 'seam-lengths.gathered'],
  ['pleated', spoiled(pleated), 'seam-lengths', 'ok', 'seam-lengths.pleated'],
  [
    'back shoulder should be 0.7 mm longer',
    withJoin(dress, 'shoulder', { kind: 'eased', ease: 2 * 0.7 }),
    'seam-lengths',
    'warn',
    'seam-lengths.hair',
  ],
  [
    'back shoulder should be 2 mm shorter',
    withJoin(dress, 'shoulder', { kind: 'eased', ease: 2 * -2 }),
    'seam-lengths',
    'warn',
    'seam-lengths.long',
  ],
  [
    'back shoulder should be 5 mm longer',
    withJoin(dress, 'shoulder', { kind: 'eased', ease: 2 * 5 }),
    'seam-lengths',
    'stop',
    'seam-lengths.short',
  ],
  [
    'wrong gather ratio',
    withJoin(dress, 'waist', { kind: 'gathered', ratio: 2.1 }),
    'seam-lengths',
    'stop',
    'seam-lengths.short',
  ],
  ['one pleat less', withPleats({ pleats: 19 }), 'seam-lengths', 'stop', 'seam-lengths.long'],
  ['pleats set too wide', withPleats({ spacing: 29.3 }), 'seam-lengths', 'warn', 'seam-lengths.long'],

  ['good', goodInput(), 'corners-run-smooth', 'ok', 'corners-run-smooth.all'],
  [
    'front neck leaves the shoulder 8 degrees low',
    spoiled(withEdgePath(dress, 'front', 'neckline', turnedAtShoulder(8))),
    'corners-run-smooth',
    'warn',
    'corners-run-smooth.hollow',
  ],
  [
    'front neck leaves the shoulder 20 degrees high',
    spoiled(withEdgePath(dress, 'front', 'neckline', turnedAtShoulder(-20))),
    'corners-run-smooth',
    'stop',
    'corners-run-smooth.peak',
  ],
  [
    'round neck not square to the fold',
    spoiled(withEdgePath(dress, 'front', 'neckline', turnedAtCentre(10))),
    'corners-run-smooth',
    'warn',
    'corners-run-smooth.centre',
  ],
  [
    'V neck',
    spoiled(withEdgePath(dress, 'front', 'neckline', turnedAtCentre(40))),
    'corners-run-smooth',
    'ok',
    'corners-run-smooth.point',
  ],

  ['good', goodInput(), 'notches-meet', 'ok', 'notches-meet.all'],
  ['pleated', spoiled(pleated), 'notches-meet', 'ok', 'notches-meet.all'],
  [
    'notch of the lining moved by 2 mm',
    spoiled(shiftNotch(dress, 'front-lining', 2)),
    'notches-meet',
    'warn',
    'notches-meet.apart',
  ],
  [
    'notch of the pleated skirt moved onto the next pleat',
    spoiled(shiftNotch(pleated, 'skirt-back', 79)),
    'notches-meet',
    'stop',
    'notches-meet.apart',
  ],
  [
    'notch without mate',
    spoiled(
      changePiece(dress, 'back', (p) => ({
        ...p,
        notches: [...p.notches, { edge: 'armhole', at: 60, style: 'double', match: 'sleeve' }],
      })),
    ),
    'notches-meet',
    'warn',
    'notches-meet.alone',
  ],

  ['good', goodInput(), 'lining-fits', 'ok', 'lining-fits.ok'],
  [
    'lining trimmed 10.5 mm at the front neck',
    spoiled(withEdgePath(dress, 'front-lining', 'neckline', (p) => pathOffset(p, -8))),
    'lining-fits',
    'stop',
    'lining-fits.long',
  ],
  [
    'lining 2 mm short at the waist',
    spoiled(withEdgePath(dress, 'back-lining', 'waist', (p) => pathSlice(p, 2, 140))),
    'lining-fits',
    'stop',
    'lining-fits.short',
  ],

  ['pleated', spoiled(pleated), 'pleats-whole', 'ok', 'pleats-whole.ok'],
  ['half a pleat', withPleats({ pleats: 19.5 }), 'pleats-whole', 'stop', 'pleats-whole.broken'],
  ['one pleat', withPleats({ pleats: 1 }), 'pleats-whole', 'stop', 'pleats-whole.broken'],
  ['nothing taken up', withPleats({ takeUp: 0 }), 'pleats-whole', 'stop', 'pleats-whole.flat'],
  ['120 mm taken up every 29', withPleats({ takeUp: 120 }), 'pleats-whole', 'warn', 'pleats-whole.deep'],
  ['10 mm taken up', withPleats({ takeUp: 10 }), 'pleats-whole', 'warn', 'pleats-whole.shallow'],

  ['good', goodInput(), 'gather-ratio', 'ok', 'gather-ratio.ok'],
  [
    '0.9 to 1',
    withJoin(dress, 'waist', { kind: 'gathered', ratio: 0.9 }),
    'gather-ratio',
    'stop',
    'gather-ratio.none',
  ],
  [
    '1.1 to 1',
    withJoin(dress, 'waist', { kind: 'gathered', ratio: 1.1 }),
    'gather-ratio',
    'note',
    'gather-ratio.flat',
  ],
  [
    '5 to 1',
    withJoin(dress, 'waist', { kind: 'gathered', ratio: 5 }),
    'gather-ratio',
    'warn',
    'gather-ratio.thick',
  ],

  ['good', goodInput(), 'head-passes', 'ok', 'head-passes.open.ok'],
  ['opening of 12 cm', open(120), 'head-passes', 'warn', 'head-passes.open.warn'],
  ['opening of 11 cm', open(110), 'head-passes', 'stop', 'head-passes.open.stop'],
  ['no opening', spoiled(unopened), 'head-passes', 'stop', 'head-passes.closed.stop'],
  ['small head', measuring({ headGirth: 280 }, unopened), 'head-passes', 'ok', 'head-passes.closed.ok'],

  ['good', goodInput(), 'neck-clears', 'ok', 'neck-clears.ok'],
  ['neck of 29 cm', measuring({ neckBaseGirth: 290 }), 'neck-clears', 'warn', 'neck-clears.warn'],

  ['good', goodInput(), 'arm-passes', 'ok', 'arm-passes.ok'],
  ['arm of 28 cm', measuring({ upperArmGirth: 280 }), 'arm-passes', 'warn', 'arm-passes.warn'],
  ['arm of 30 cm', measuring({ upperArmGirth: 300 }), 'arm-passes', 'stop', 'arm-passes.stop'],
  ['good', goodInput(), 'armhole-ratio', 'ok', 'armhole-ratio.ok'],
  ['arm of 23 cm', measuring({ upperArmGirth: 230 }), 'armhole-ratio', 'warn', 'armhole-ratio.tight'],
  [
    'arm of 15 cm on a chest of 50',
    measuring({ upperArmGirth: 150, chestGirth: 500 }),
    'armhole-ratio',
    'warn',
    'armhole-ratio.wide',
  ],

  ['good', goodInput(), 'chest-ease', 'ok', 'chest-ease.ok'],
  [
    'wishes 5 cm',
    { ...goodInput(), bounds: { ...BOUNDS, chestEase: [50, 60] } },
    'chest-ease',
    'warn',
    'chest-ease.tight',
  ],
  [
    'wishes 3 cm',
    { ...goodInput(), bounds: { ...BOUNDS, chestEase: [20, 30] } },
    'chest-ease',
    'warn',
    'chest-ease.wide',
  ],
  ['chest of 62.5 cm', measuring({ chestGirth: 625 }), 'chest-ease', 'stop', 'chest-ease.stop'],
  ['good', goodInput(), 'waist-ease', 'ok', 'waist-ease.ok'],
  [
    'wishes 5 cm',
    { ...goodInput(), bounds: { ...BOUNDS, waistEase: [50, 60] } },
    'waist-ease',
    'warn',
    'waist-ease.tight',
  ],
  [
    'wishes 2.5 cm',
    { ...goodInput(), bounds: { ...BOUNDS, waistEase: [20, 25] } },
    'waist-ease',
    'warn',
    'waist-ease.wide',
  ],
  ['waist of 57 cm', measuring({ waistGirth: 570 }), 'waist-ease', 'stop', 'waist-ease.stop'],

  ['good', goodInput(), 'armhole-depth', 'ok', 'armhole-depth.ok'],
  ['chest of 80 cm', measuring({ chestGirth: 800 }), 'armhole-depth', 'warn', 'armhole-depth.high'],
  ['chest of 42 cm', measuring({ chestGirth: 420 }), 'armhole-depth', 'warn', 'armhole-depth.low'],

  ['good', goodInput(), 'closing-long-enough', 'ok', 'closing.ok'],
  ['bodice only', spoiled(skirtless), 'closing-long-enough', 'ok', 'closing.parts'],
  ['opening ends 6 cm below the waist', open(330), 'closing-long-enough', 'warn', 'closing.warn'],
  ['opening ends above the waist', open(250), 'closing-long-enough', 'stop', 'closing.stop'],
  [
    'no opening, hips of 58',
    measuring({ hipGirth: 580 }, unopened),
    'closing-long-enough',
    'ok',
    'closing.none.ok',
  ],
  ['no opening', spoiled(unopened), 'closing-long-enough', 'stop', 'closing.none.stop'],
  ['good', goodInput(), 'closing-long-enough', 'ok', 'closing.zip.ok'],
  ['zip 37 for an opening of 37', open(370, 370), 'closing-long-enough', 'warn', 'closing.zip.short'],

  ['good', goodInput(), 'shoulder-narrow', 'ok', 'shoulder-narrow.ok'],
  [
    'front shoulder of 35 mm',
    spoiled(withEdgePath(dress, 'front', 'shoulder', (p) => pathSlice(p, 0, 35))),
    'shoulder-narrow',
    'note',
    'shoulder-narrow.note',
  ],
  ['net skirt', { ...goodInput(), netCloths: ['skirt'] }, 'net-caution', 'note', 'net-caution.note'],
];

describe('checkGarment', () => {
  test.each(CASES.map(([what, input, code, level, key]) => ({ what, input, code, level, key })))(
    '$code: $what -> $key',
    ({ input, code, level, key }) => {
      const found = checkGarment(input).filter((check) => check.code === code);
      const said = found.find((check) => check.say.key === `check.${key}`);
      expect(said, found.map((check) => check.say.key).join()).toBeDefined();
      expect(said?.level).toBe(level);
      if (level === 'ok') expect(found.map((check) => check.level)).not.toContain('stop');
      expect(said?.todo === null).toBe(level === 'ok');
    },
  );

  test('a good dress is good in every check, gathered or pleated', () => {
    for (const skirt of ['gathered', 'pleated'] as const) {
      const found = checkGarment(goodInput({ skirt }));
      expect(found.filter((check) => check.level !== 'ok')).toEqual([]);
      expect(summarise(found)).toEqual({ ok: found.length, note: 0, warn: 0, stop: 0 });
    }
  });

  test('every sentence of the checks can be said, in both systems, and none is left over', () => {
    const said = new Set<string>();
    for (const [, input] of CASES) {
      for (const check of checkGarment(input)) {
        for (const saying of [check.say, check.todo]) {
          if (saying === null) continue;
          said.add(saying.key);
          for (const units of ['cm', 'in'] as const) {
            expect(speak(saying, units, catalogue)).not.toMatch(/[{}]|undefined|NaN/);
          }
        }
      }
    }
    const sentences = Object.keys(en).filter((key) => /^check\.(?!part\.|seam\.|edge\.)/.test(key));
    expect([...said].sort()).toEqual(sentences.sort());
  });

  test('places name pieces and edges that the garment has', () => {
    for (const [, input] of CASES) {
      for (const { where } of checkGarment(input)) {
        for (const { piece, edge } of where.edges) {
          expect(where.pieces).toContain(piece);
          const named = input.garment.pieces.find((p) => p.id === piece);
          expect(named?.edges.map((e) => e.name)).toContain(edge);
        }
      }
    }
  });

  test('a seam that names an edge which is not there is a mistake of the design, and throws', () => {
    const garment = changeSeam(dress, 'side', (s) => ({
      ...s,
      a: [{ piece: 'front', edge: 'sied', times: 2 }],
    }));
    expect(() => checkGarment(spoiled(garment))).toThrow('front');
  });

  test('sentences read as a dressmaker would say them', () => {
    const saysOf = (input: CheckInput, code: CheckCode): string[] =>
      checkGarment(input)
        .filter((check: Check) => check.code === code)
        .map((check) => speak(check.say, 'cm', catalogue));
    expect(saysOf(goodInput(), 'seam-lengths')[0]).toBe('Shoulder seam agrees: 9 cm on each side.');
    expect(saysOf(open(110), 'head-passes')).toEqual([
      'The head does not pass: neckline and opening give 50.6 cm round, the head measures 51 cm.',
    ]);
    expect(saysOf(spoiled(shiftNotch(dress, 'front-lining', 2)), 'notches-meet')).toEqual([
      'Lining at the waist: the notches of Front and Front lining lie 0.2 cm apart when sewn.',
    ]);
  });
});
